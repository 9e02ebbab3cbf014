// A property over two things varied together: moisture and clay, or compactability and clay.

import { invariant } from "../issue.ts";
import type { TestName, TrialAxis } from "../log/batch.ts";
import { studentTQuantile } from "../numbers/distributions.ts";
import { fitLinear, type LinearFit, predictAt } from "../numbers/least-squares.ts";
import { fitQuadraticSurface } from "../numbers/quadratic-surface.ts";
import { stationaryPoint } from "../numbers/stationary-point.ts";
import { type CurveValue, levelCount } from "./response-curve.ts";
import { correlation, placeCount, toldApart } from "./surface-places.ts";

/** "none": the batches cannot tell the two apart, or are too few. */
export type SurfaceForm = "none" | "plane" | "quadratic";

export interface SurfaceTop {
  /** A saddle, a ridge and a place outside what was tried are no optimum. */
  readonly kind: "maximum" | "minimum" | "saddle" | "ridge" | "outside what was tried";
  /** Where the surface is level, along the trial's axis and the other. */
  readonly x: number;
  readonly other: number;
  /** The property there. */
  readonly mean: number;
  /** How far the 95 % region of a maximum reaches; undefined for every other kind. */
  readonly region: { readonly x: Reach; readonly other: Reach } | undefined;
}
export interface Reach {
  readonly low: number;
  readonly high: number;
}

export interface ResponseSurface {
  readonly form: SurfaceForm;
  /** Why it is no full quadratic, or none at all. */
  readonly why: "too few batches" | "too few places" | "the two went together" | undefined;
  /** Pearson's correlation of the two over the batches used; NaN where one of them does not vary. */
  readonly rho: number;
  /** Indices of the batches that it rests on. */
  readonly used: readonly number[];
  /** Mean over the blocks, its 95 % interval and that of a new batch in these; undefined where there is no surface. */
  at(x: number, other: number): CurveValue | undefined;
  /** True where the mean is no less sure than at the least sure of the batches. */
  tried(x: number, other: number): boolean;
  /** Of a quadratic alone. */
  readonly top: SurfaceTop | undefined;
}

export interface TrialSurface {
  readonly test: TestName;
  /** What was varied beside the trial's axis. */
  readonly other: TrialAxis;
  /** Where each batch of the trial stands along that; NaN where it is not known. */
  readonly places: readonly number[];
  readonly surface: ResponseSurface;
}

/** Least degrees of freedom that a surface must leave for its scatter: as many as a curve through five batches. */
const leastFree = 2;
const apartUpTo = 0.8;

/**
 * y = b₀ + b₁u + b₂v + b₁₂uv + b₁₁u² + b₂₂v² + the offset of its block, u and v the two coded to −1 to 1 over what
 * was tried: from eight batches (and one for each further block) at six places, three levels of each, on. A plane
 * b₀ + b₁u + b₂v from five at three places on, or where the places do not tell the bends apart. None where the two
 * went together: |Pearson's ρ| ≥ 0.8, or columns that depend on each other. The mean is that over the blocks, by the
 * share of batches in each.
 * x, other: finite or NaN; y: finite or NaN; a batch without one of the three is left out; lists of different length
 * throw. Nothing is refused outside what was tried here: ask tried().
 * Source: Myers, Montgomery & Anderson-Cook, Response Surface Methodology (2009); region of the top, Box & Hunter,
 * Biometrika 41 (1954) 190–199. Counts and limits are our own.
 * Example: the yields of ChemReact give a maximum at 86.86 min and 176.67 °F.
 */
export function responseSurface(points: {
  readonly x: readonly number[];
  readonly other: readonly number[];
  readonly y: readonly number[];
  readonly blocks?: readonly (string | undefined)[];
}): ResponseSurface {
  const { x, other, y, blocks } = points;
  invariant(x.length === y.length && other.length === y.length, "a surface needs two places for every y");
  const used = x.map((_, i) => i).filter((i) => [x[i]!, other[i]!, y[i]!].every(Number.isFinite));
  const of = (values: readonly number[]): readonly number[] => used.map((i) => values[i]!);
  const along = coding(of(x));
  const across = coding(of(other));
  const u = of(x).map(along.code);
  const v = of(other).map(across.code);
  const rho = correlation(u, v);
  const none = (why: ResponseSurface["why"]): ResponseSurface => ({
    form: "none",
    why,
    rho,
    used,
    at: () => undefined,
    tried: () => false,
    top: undefined,
  });
  const names = used.map((i) => blocks?.[i] ?? "");
  const told = new Set(names).size <= used.length / 2 ? names : names.map(() => "");
  const steps = [...new Set(told)].slice(1);
  const free = used.length - steps.length;
  if (free < 3 + leastFree) return none("too few batches");
  if (placeCount(u, v) < 3 || Number.isNaN(rho)) return none("too few places");
  if (Math.abs(rho) >= apartUpTo) return none("the two went together");
  const shares = steps.map((name) => told.filter((one) => one === name).length / told.length);
  const offsets = (i: number): number[] => steps.map((name) => (told[i] === name ? 1 : 0));
  const plane = (a: number, b: number): number[] => [1, a, b];
  const terms = (a: number, b: number): number[] => [1, a, b, a * b, a * a, b * b];
  const columns = u.map((a, i) => [...terms(a, v[i]!), ...offsets(i)]);
  const few = free < 6 + leastFree;
  const flat = few || placeCount(u, v) < 6 || levelCount(u) < 3 || levelCount(v) < 3 || !toldApart(columns);
  const surface = flat ? undefined : fitQuadraticSurface(u, v, of(y), { blocks: told });
  const row = flat ? plane : terms;
  const fit =
    surface?.fit ??
    fitLinear(
      u.map((a, i) => [...plane(a, v[i]!), ...offsets(i)]),
      of(y),
    );
  if (fit.rank < fit.coefficients.length) return none("the two went together");
  const whole = (a: number, b: number): number[] => [...row(along.code(a), across.code(b)), ...shares];
  const at = (a: number, b: number): CurveValue => valueAt(fit, whole(a, b));
  const widest = fit.residualSd * Math.sqrt(Math.max(...fit.leverages)) * (1 + 1e-9);
  const tried = (a: number, b: number): boolean => predictAt(fit, whole(a, b)).meanSe <= widest;
  return {
    form: flat ? "plane" : "quadratic",
    why: flat ? (few ? "too few batches" : "too few places") : undefined,
    rho,
    used,
    at,
    tried,
    top: surface && topOf(stationaryPoint(surface), along, across, at, tried),
  };
}

interface Coding {
  code(value: number): number;
  raw(coded: number): number;
}

function coding(values: readonly number[]): Coding {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const middle = (low + high) / 2;
  const half = (high - low) / 2 || 1;
  return { code: (value) => (value - middle) / half, raw: (coded) => middle + half * coded };
}

function valueAt(fit: LinearFit, row: readonly number[]): CurveValue {
  const { value, meanSe, newSe } = predictAt(fit, row);
  const t = studentTQuantile(0.975, fit.degreesOfFreedom);
  return {
    mean: value,
    low: value - t * meanSe,
    high: value + t * meanSe,
    newLow: value - t * newSe,
    newHigh: value + t * newSe,
  };
}

function topOf(
  point: ReturnType<typeof stationaryPoint>,
  along: Coding,
  across: Coding,
  at: (x: number, other: number) => CurveValue,
  tried: (x: number, other: number) => boolean,
): SurfaceTop {
  const x = along.raw(point.x[0]);
  const other = across.raw(point.x[1]);
  const held = point.kind === "maximum" || point.kind === "minimum";
  const kind = held && !tried(x, other) ? "outside what was tried" : point.kind;
  const reach = ({ low, high }: Reach, { raw }: Coding): Reach => ({ low: raw(low), high: raw(high) });
  return {
    kind,
    x,
    other,
    mean: at(x, other).mean,
    // Worked out when first read: it takes longer than all the rest.
    get region() {
      if (kind !== "maximum") return undefined;
      return { x: reach(point.region.x1, along), other: reach(point.region.x2, across) };
    },
  };
}
