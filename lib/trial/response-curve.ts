// A curve through a founder's own trials, as curved as the number of batches allows.

import { invariant } from "../issue.ts";
import { studentTQuantile } from "../numbers/distributions.ts";
import { fitLinear, type LinearFit } from "../numbers/least-squares.ts";
import { sum } from "../numbers/sum.ts";
import { type BlockScatter, blockScatter, leastBlocks } from "./block-scatter.ts";
import { type CurvePrior, publishedFit, type SlopePrior } from "./slope-prior.ts";

export type { CurvePrior } from "./slope-prior.ts";

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
  /** Of three blocks or more. */
  readonly blockScatter?: BlockScatter;
  /** Powers of the centred axis: 1, u, u² with u = (x − middle)/half. */
  row(x: number): readonly number[];
  /** Mean of the property at x, its 95 % interval, and that of one new batch; undefined for points only. */
  at(x: number): CurveValue | undefined;
}

/** A prior for the places and figures that a curve rests on; undefined where nothing is published. */
export type PriorFor = (x: readonly number[], y: readonly number[]) => SlopePrior | undefined;

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
 * straight is true (a property that only rises or falls); else, from three batches at two levels on, with the help of
 * a published slope where there is one; else the points alone. A line through just three takes that help too. Repeats
 * weigh as their number; blocks add an offset each, which sums to nothing over the batches; with three blocks or more
 * their scatter is in the interval of a new batch. Extrapolation: none is refused here; ask from and to.
 * peaked: the property is known to rise and fall over the axis (strength, permeability).
 * block: the curve is that of this block; default, of the mean of the batches.
 * published: what others have found, from publishedSlope; asked with the x and y that are used.
 * x: finite; y: finite or NaN; lengths alike, else throws.
 * Method: Draper & Smith, Applied Regression Analysis; forms and counts our own.
 * @example
 * responseCurve({ x: [2.5, 3, 3.5, 4], y: [32, 38, 43, 50] }, { peaked: false }).form // "straight line"
 */
export function responseCurve(
  points: CurvePoints,
  options: { readonly peaked: boolean; readonly published?: PriorFor; readonly block?: string },
): ResponseCurve {
  const { x, y, repeats, blocks } = points;
  invariant(x.length === y.length, "a response curve needs an x for every y");
  const used = x.map((_, i) => i).filter((i) => Number.isFinite(x[i]!) && Number.isFinite(y[i]!));
  const xs = used.map((i) => x[i]!);
  const ys = used.map((i) => y[i]!);
  const from = Math.min(...xs);
  const to = Math.max(...xs);
  const levels = levelCount(xs);
  const middle = (from + to) / 2;
  const half = (to - from) / 2 || 1;
  const told = used.map((i) => blocks?.[i] ?? "");
  const names = blockNames(told);
  const form = formFor(used.length - names.length, levels, options.peaked);
  const rowOf = (degree: number) => (at: number) => powers((at - middle) / half, degree);
  const base = { used, levels, from, to, blocks: [], prior: undefined, newBlock: undefined };
  const few = form === "points only" || (form === "straight line" && used.length === 3);
  const prior = few && used.length >= 3 && levels >= 2 ? options.published?.(xs, ys) : undefined;
  if (prior) {
    const row = rowOf(prior.bend ? 2 : 1);
    const { at, slopeAt } = publishedFit(prior, xs, ys);
    const { says, source } = prior;
    return { ...base, form: "published slope", prior: { says, source, slopeAt }, row, at };
  }
  const row = rowOf(form === "curve" ? 2 : 1);
  if (form === "points only") return { ...base, form, row, at: () => undefined };
  const weights = repeats ? { weights: used.map((i) => repeats[i] ?? 1) } : {};
  const plain = xs.map(row);
  const withOffsets = (which: readonly string[]): LinearFit => {
    const offsets = blockColumns(told, which, options.block);
    return fitLinear(
      plain.map((powersAt, k) => [...powersAt, ...offsets[k]!]),
      ys,
      weights,
    );
  };
  const full = withOffsets(names);
  // Blocks that go along with the axis cannot be told from it.
  const apart = full.rank === full.coefficients.length;
  const fit = apart ? full : withOffsets([]);
  const fitted = apart ? names : [];
  const scatter =
    fitted.length + 1 >= leastBlocks && fit.degreesOfFreedom > 0
      ? blockScatter(plain, ys, told, fit)
      : undefined;
  return {
    ...base,
    form,
    row,
    fit,
    blocks: fitted,
    newBlock: new Set(told).size < 2 ? undefined : scatter !== undefined || eachItsOwn(told),
    ...(scatter ? { blockScatter: scatter } : {}),
    at: (where) => valueAt(fit, [...row(where), ...fitted.map(() => 0)], scatter),
  };
}

function powers(u: number, degree: number): number[] {
  return degree === 2 ? [1, u, u * u] : [1, u];
}

function valueAt(fit: LinearFit, row: readonly number[], scatter: BlockScatter | undefined): CurveValue {
  const { degreesOfFreedom: df, residualSd: sd, coefficients, covariance } = fit;
  const mean = sum(row.map((value, k) => value * coefficients[k]!));
  const variance = quadraticForm(row, covariance);
  const half = studentTQuantile(0.975, df) * Math.sqrt(variance);
  const fresh =
    scatter && sd > 0 ? scatter.ofNewBatch(variance / sd ** 2) : { variance: variance + sd ** 2, df };
  const newHalf = studentTQuantile(0.975, fresh.df) * Math.sqrt(fresh.variance);
  return {
    mean,
    low: mean - half,
    high: mean + half,
    newLow: mean - newHalf,
    newHigh: mean + newHalf,
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
  return new Set(levelsOf(xs)).size;
}

/** The level of each x, numbered upward from 0: places closer than a twenty-fifth of the range are one. */
export function levelsOf(xs: readonly number[]): readonly number[] {
  const sorted = [...xs].sort((a, b) => a - b);
  const least = sameLevel * (sorted.at(-1)! - sorted[0]!);
  const starts: number[] = [];
  for (const value of sorted) {
    const start = starts.at(-1);
    if (start === undefined || (value - start > least && value > start)) starts.push(value);
  }
  return xs.map((x) => starts.filter((start) => start <= x).length - 1);
}

/** Blocks beyond the first, in the order in which they come; none where every batch has one of its own or all are alike. */
function blockNames(blocks: readonly string[]): readonly string[] {
  const names = [...new Set(blocks)];
  return names.length > 1 && names.length <= blocks.length / 2 ? names.slice(1) : [];
}

/** So many blocks that none has an offset: then the scatter of the batches holds that of the blocks. */
function eachItsOwn(blocks: readonly string[]): boolean {
  const count = new Set(blocks).size;
  return count >= leastBlocks && count > blocks.length / 2;
}

/** A column for each of the blocks named, moved so that 0 stands for the block at, else for the mean of the batches. */
function blockColumns(
  blocks: readonly string[],
  names: readonly string[],
  at: string | undefined,
): readonly (readonly number[])[] {
  const columns = names.map((name) => {
    const member = blocks.map((block) => (block === name ? 1 : 0));
    const zero = at === undefined ? sum(member) / member.length : Number(at === name);
    return member.map((one) => one - zero);
  });
  return blocks.map((_, k) => columns.map((column) => column[k]!));
}
