// A curve through a founder's own trials, as curved as the number of batches allows.

import { invariant } from "../issue.ts";
import { studentTQuantile } from "../numbers/distributions.ts";
import { fitLinear, type LinearFit } from "../numbers/least-squares.ts";
import { sum } from "../numbers/sum.ts";

export interface CurvePoints {
  /** Where each batch stands on the axis. */
  readonly x: readonly number[];
  /** What was measured; NaN where a batch was not tested. */
  readonly y: readonly number[];
  /** How many repeats stand behind each y; default 1. */
  readonly repeats?: readonly number[];
  /** Batches of one block share an offset: a day, a bag of clay. */
  readonly blocks?: readonly (string | undefined)[];
}

/** "points only": too few to draw anything through. "published slope": few, and helped by what others have found. */
export type CurveForm = "points only" | "published slope" | "straight line" | "curve";

/** What others have found, which helped a curve through few batches. Never a ground for an aim or a chance. */
export interface CurvePrior {
  /** A sentence for a page. */
  readonly says: string;
  readonly source: string;
  /** Per unit of the axis, in the property's unit, and how far it is taken to scatter from sand to sand (one sd). */
  readonly slope: number;
  readonly sd: number;
}

export interface ResponseCurve {
  readonly form: CurveForm;
  /** Indices of the batches that the curve rests on. */
  readonly used: readonly number[];
  readonly levels: number;
  readonly from: number;
  readonly to: number;
  readonly fit?: LinearFit;
  /** Blocks that have an offset of their own in the fit, against all the others; the first block is not among them. */
  readonly blocks: readonly string[];
  /** Set where the form is "published slope"; there is then no fit, so that nothing is promised from it. */
  readonly prior: CurvePrior | undefined;
  /**
   * Whether the interval of a new batch holds on a new day or with a new bag: true where the scatter of three blocks or
   * more is in it, false where it holds for these blocks alone, undefined where the batches name none.
   */
  readonly newBlock: boolean | undefined;
  /** Powers of the centred axis: 1, u, u² with u = (x − middle)/half. */
  row(x: number): readonly number[];
  /** Mean of the property at x, its 95 % interval, and that of one new batch; undefined for points only. */
  at(x: number): CurveValue | undefined;
}

export interface CurveValue {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  readonly newLow: number;
  readonly newHigh: number;
}

/** Two moistures closer than this share of the whole range are one level. */
const sameLevel = 0.04;

/**
 * Least squares through the batches, in y = b₀ + b₁u + b₂u² with u = (x − middle)/half range.
 * Curved from five batches at three levels on; a straight line from three batches at two levels on where
 * straight is true (a property that only rises or falls); else the points alone. Repeats weigh as their number;
 * blocks add an offset each, which sums to nothing over the batches. Extrapolation: none is refused here; ask
 * from and to.
 * peaked: the property is known to rise and fall over the axis (strength, permeability).
 * x: finite; y: finite or NaN; lengths alike, else throws.
 * Method: Draper & Smith, Applied Regression Analysis; forms and counts our own.
 * Example: four batches of compactability against moisture give a straight line with 2 degrees of freedom.
 */
export function responseCurve(points: CurvePoints, options: { readonly peaked: boolean }): ResponseCurve {
  const { x, y, repeats, blocks } = points;
  invariant(x.length === y.length, "a response curve needs an x for every y");
  const used = x.map((_, i) => i).filter((i) => Number.isFinite(x[i]!) && Number.isFinite(y[i]!));
  const xs = used.map((i) => x[i]!);
  const from = Math.min(...xs);
  const to = Math.max(...xs);
  const levels = levelCount(xs);
  const middle = (from + to) / 2;
  const half = (to - from) / 2 || 1;
  const names = blockNames(used, blocks);
  const form = formFor(used.length - names.length, levels, options.peaked);
  const degree = form === "curve" ? 2 : 1;
  const row = (at: number): number[] => {
    const u = (at - middle) / half;
    return degree === 2 ? [1, u, u * u] : [1, u];
  };
  const base = {
    form,
    used,
    levels,
    from,
    to,
    row,
    blocks: form === "points only" ? [] : names,
    prior: undefined,
    newBlock: names.length > 0 ? false : undefined,
  };
  if (form === "points only") return { ...base, at: () => undefined };
  const offsets = blockColumns(used, blocks, names);
  const fit = fitLinear(
    used.map((i, k) => [...row(x[i]!), ...offsets[k]!]),
    used.map((i) => y[i]!),
    repeats ? { weights: used.map((i) => repeats[i] ?? 1) } : {},
  );
  const t = studentTQuantile(0.975, fit.degreesOfFreedom);
  return {
    ...base,
    fit,
    at(where) {
      const full = [...row(where), ...names.map(() => 0)];
      const mean = sum(full.map((value, k) => value * fit.coefficients[k]!));
      const variance = quadraticForm(full, fit.covariance);
      const se = Math.sqrt(variance);
      const newSe = Math.sqrt(variance + fit.residualSd ** 2);
      return {
        mean,
        low: mean - t * se,
        high: mean + t * se,
        newLow: mean - t * newSe,
        newHigh: mean + t * newSe,
      };
    },
  };
}

/** rowᵀ·V·row */
export function quadraticForm(row: readonly number[], covariance: readonly (readonly number[])[]): number {
  let all = 0;
  for (let i = 0; i < row.length; i++) {
    for (let j = 0; j < row.length; j++) all += row[i]! * covariance[i]![j]! * row[j]!;
  }
  return Math.max(0, all);
}

/** batches: less one for each block beyond the first, since its offset takes one. */
function formFor(batches: number, levels: number, peaked: boolean): CurveForm {
  if (batches >= 5 && levels >= 3) return "curve";
  if (!peaked && batches >= 3 && levels >= 2) return "straight line";
  return "points only";
}

export function levelCount(xs: readonly number[]): number {
  const sorted = [...xs].sort((a, b) => a - b);
  const least = sameLevel * (sorted.at(-1)! - sorted[0]!);
  let count = sorted.length > 0 ? 1 : 0;
  let start = sorted[0]!;
  for (const value of sorted) {
    if (value - start > least && value > start) {
      count++;
      start = value;
    }
  }
  return count;
}

/** Blocks beyond the first, in the order in which they come; none where every batch has one of its own or all are alike. */
function blockNames(used: readonly number[], blocks: CurvePoints["blocks"]): readonly string[] {
  const names = [...new Set(used.map((i) => blocks?.[i] ?? ""))];
  return names.length > 1 && names.length <= used.length / 2 ? names.slice(1) : [];
}

/** A column for each block beyond the first, centred, so that 0 stands for the mean of the batches. */
function blockColumns(
  used: readonly number[],
  blocks: CurvePoints["blocks"],
  names: readonly string[],
): readonly (readonly number[])[] {
  const columns = names.map((name) => {
    const member = used.map((i) => ((blocks?.[i] ?? "") === name ? 1 : 0));
    const share = sum(member) / member.length;
    return member.map((one) => one - share);
  });
  return used.map((_, k) => columns.map((column) => column[k]!));
}
