// A straight line or a curve through two columns of a sheet.

import { studentTQuantile } from "../numbers/distributions.ts";
import { parabolaOptimum } from "../numbers/parabola-optimum.ts";
import { fitPolynomial, polynomialAt } from "../numbers/polynomial-fit.ts";
import { sum } from "../numbers/sum.ts";
import { combine } from "../quantity/combine.ts";
import type { Spread } from "../quantity/spread.ts";
import { movedBy } from "../quantity/spread-of.ts";
import type { SheetPoint } from "./sheet-points.ts";

export interface FitAt {
  readonly x: number;
  readonly mean: number;
  /** 95 % interval of the mean, and of one new row. */
  readonly low: number;
  readonly high: number;
  readonly newLow: number;
  readonly newHigh: number;
}

export interface SheetFit {
  /** "points only": too few rows, or too few different x. */
  readonly form: "points only" | "straight" | "curve";
  readonly rows: number;
  readonly different: number;
  /** How many rows and how many different x the wanted form asks for. */
  readonly needs: { readonly rows: number; readonly different: number };
  readonly course: readonly FitAt[];
  /** Rise for each unit of x with its 95 % interval; of a straight line. */
  readonly slope?: { readonly value: number; readonly low: number; readonly high: number };
  /** Where a curve turns, with its Fieller limits. */
  readonly turning?: {
    readonly x: number;
    readonly low: number;
    readonly high: number;
    readonly bounded: boolean;
    readonly kind: "highest" | "lowest";
  };
}

type Pair = { readonly x: SheetPoint; readonly y: SheetPoint };

/**
 * Least squares y = b₀ + b₁x (4 rows at 3 different x at least) or y = b₀ + b₁x + b₂x² (6 rows at 4). Intervals are
 * Student's t at the fit's degrees of freedom: what scatters from row to row is in the residuals and is not counted
 * again. A source of doubt that rows share, such as the bias of one scale, is not in the residuals: for the slope it is
 * drawn over them and added in quadrature. Doubt of x that rows don't share is taken to be small.
 * Rows without both figures are left out. Forms and counts our own.
 * Method: N. R. Draper and H. Smith, Applied Regression Analysis (from memory); Fieller's limits by parabolaOptimum.
 * @example
 * const at = (value: number) => ({ value, low: value, high: value });
 * sheetFit([1, 2, 3, 4].map(at), [2, 4, 6, 8].map(at), "straight").slope?.value // 2
 */
export function sheetFit(
  xs: readonly (SheetPoint | undefined)[],
  ys: readonly (SheetPoint | undefined)[],
  line: "straight" | "curve",
): SheetFit {
  const pairs = xs.flatMap((x, i): Pair[] => (x && ys[i] ? [{ x, y: ys[i] }] : []));
  const x = pairs.map((pair) => pair.x.value);
  const y = pairs.map((pair) => pair.y.value);
  const needs = line === "straight" ? { rows: 4, different: 3 } : { rows: 6, different: 4 };
  const different = new Set(x).size;
  const base = { rows: pairs.length, different, needs };
  if (pairs.length < needs.rows || different < needs.different)
    return { ...base, form: "points only", course: [] };
  const fit = fitPolynomial(x, y, line === "straight" ? 1 : 2);
  if (!fit.coefficients.every(Number.isFinite)) return { ...base, form: "points only", course: [] };
  const t = studentTQuantile(0.975, fit.degreesOfFreedom);
  const [from, to] = [Math.min(...x), Math.max(...x)];
  const steps = line === "straight" ? 20 : 40;
  const course = Array.from({ length: steps + 1 }, (_, k): FitAt => {
    const at = from + ((to - from) * k) / steps;
    const { value: mean, meanSe, newSe } = polynomialAt(fit, at);
    return {
      x: at,
      mean,
      low: mean - t * meanSe,
      high: mean + t * meanSe,
      newLow: mean - t * newSe,
      newHigh: mean + t * newSe,
    };
  });
  if (line === "straight") {
    const value = fit.coefficients[1]!;
    const half = Math.hypot(t * fit.standardErrors[1]!, 1.96 * sharedSd(pairs));
    return { ...base, form: line, course, slope: { value, low: value - half, high: value + half } };
  }
  const { x: at, low, high, bounded } = parabolaOptimum(fit);
  const kind = fit.coefficients[2]! < 0 ? "highest" : "lowest";
  return { ...base, form: line, course, turning: { x: at, low, high, bounded, kind } };
}

/** Standard deviation of the slope by the sources that two figures or more share. */
function sharedSd(pairs: readonly Pair[]): number {
  const figures = pairs.flatMap(({ x, y }) => [x, y]);
  const seen = new Map<string, number>();
  for (const { figure } of figures) {
    const ids = new Set(figure?.sources.flatMap(({ id }) => id ?? []) ?? []);
    for (const id of ids) seen.set(id, (seen.get(id) ?? 0) + 1);
  }
  const shared = new Set([...seen].flatMap(([id, count]) => (count > 1 ? [id] : [])));
  if (shared.size === 0) return 0;
  const inputs = figures.map(({ value, figure }) => (figure ? onlyOf(figure, shared) : value));
  return combine((values: ArrayLike<number>) => slopeOf(values), inputs, { as: "slope of a sheet's rows" })
    .sd;
}

/** values: x, y, x, y, … */
function slopeOf(values: ArrayLike<number>): number {
  const n = values.length / 2;
  let [meanX, meanY] = [0, 0];
  for (let i = 0; i < n; i++) {
    meanX += values[2 * i]! / n;
    meanY += values[2 * i + 1]! / n;
  }
  let [xx, xy] = [0, 0];
  for (let i = 0; i < n; i++) {
    const off = values[2 * i]! - meanX;
    xx += off * off;
    xy += off * (values[2 * i + 1]! - meanY);
  }
  return xy / xx;
}

/** The spread with every source but these at its middle. */
function onlyOf(spread: Spread, ids: ReadonlySet<string>): Spread {
  const as = `only ${JSON.stringify([...ids].sort())}`;
  return movedBy(spread, ({ id }) => id !== undefined && ids.has(id), as);
}

/** True where the x of the rows are themselves in doubt by more than a tenth of how far they lie apart. */
export function doubtfulX(xs: readonly (SheetPoint | undefined)[]): boolean {
  const known = xs.flatMap((x) => x ?? []);
  if (known.length < 2) return false;
  const middle = sum(known.map(({ value }) => value)) / known.length;
  const apart = Math.sqrt(sum(known.map(({ value }) => (value - middle) ** 2)) / (known.length - 1));
  const half = sum(known.map(({ low, high }) => (high - low) / 2)) / known.length;
  return half / 2 > 0.1 * apart;
}
