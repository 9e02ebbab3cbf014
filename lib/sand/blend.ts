// How much of each sand makes a wanted fineness number, or a wanted grain curve.

import { invariant } from "../issue.ts";
import { nonNegativeLeastSquares } from "../numbers/non-negative.ts";
import { sum } from "../numbers/sum.ts";

/** What holds the shares to a sum of 1: a row so much heavier than the largest figure. */
const heavy = 1e4;

/**
 * Shares x of the sands, 0 to 1 with sum 1, that make Σᵢ wᵢ(Σⱼ xⱼ·aᵢⱼ − bᵢ)² least; shares are of dry mass.
 *
 * of: for each sand its figures a in one order: percents retained on common sieves and pan, or its fineness number alone;
 * to: the wanted figures b, as many; finite. One sand at least, else throws. weights: above 0, one for each figure; 1 unless given.
 * A blend is linear in dry mass, and so is the fineness number, which is a mean over mass. What no blend reaches ends at the nearest one.
 * Where several blends come as near (three sands to one number), one of them is given: see blendPairs.
 * Method: non-negative least squares with a heavy row of ones, C. L. Lawson and R. J. Hanson, Solving Least Squares Problems (1974), chapter 23.
 * @example blendShares({ of: [[45], [70]], to: [60] }) // [0.4, 0.6]
 */
export function blendShares({
  of,
  to,
  weights,
}: {
  readonly of: readonly (readonly number[])[];
  readonly to: readonly number[];
  readonly weights?: readonly number[];
}): number[] {
  invariant(
    of.length > 0 && of.every((figures) => figures.length === to.length),
    "a blend needs sands, each with one figure for each that is wanted",
  );
  if (of.length === 1) return [1];
  // Less the target on both sides, which changes nothing while the shares add to 1, and keeps the figures small.
  const rows = to.map((wanted, i) => of.map((figures) => (weights?.[i] ?? 1) * (figures[i]! - wanted)));
  const size = Math.max(1, ...rows.flat().map(Math.abs));
  const all = [...rows, of.map(() => heavy * size)];
  const { x } = nonNegativeLeastSquares(all, [...to.map(() => 0), heavy * size]);
  const total = sum(x);
  return total > 0 ? x.map((share) => share / total) : of.map((_, j) => (j === 0 ? 1 : 0));
}

/**
 * The figure of a blend: Σ share × figure. Shares and figures of one length, else throws.
 * Source: a mean over mass.
 * @example blended([0.4, 0.6], [45, 70]) // 60
 */
export function blended(shares: ArrayLike<number>, figures: ArrayLike<number>): number {
  invariant(shares.length === figures.length, "a blend has a share for each figure");
  let all = 0;
  for (let j = 0; j < shares.length; j++) all += shares[j]! * figures[j]!;
  return all;
}

export interface BlendPair {
  /** Places of the two sands, the lower number first. */
  readonly of: readonly [number, number];
  /** Of each sand of the list, 0 to 1. */
  readonly shares: readonly number[];
  readonly cost?: number;
}

/**
 * Every pair of sands that reaches a number between theirs: every other blend that reaches it is a mixture of these. The cheapest
 * first where every sand has a cost, else those nearest each other in number first, which leave the least of a gap.
 * numbers: of each sand, finite; wanted: the number; costs: of a kilogram of each, in any currency. Empty: no pair reaches it.
 * Source: two linear conditions leave at most two shares above 0 in a basic solution (from memory).
 * @example
 * blendPairs({ numbers: [45, 70, 58], wanted: 60 })
 * // [{ of: [2, 1], shares: [0, 0.167, 0.833] }, { of: [0, 1], shares: [0.4, 0.6, 0] }]
 */
export function blendPairs({
  numbers,
  wanted,
  costs,
}: {
  readonly numbers: readonly number[];
  readonly wanted: number;
  readonly costs?: readonly number[];
}): readonly BlendPair[] {
  invariant(numbers.every(Number.isFinite), "a blend needs the number of each sand");
  const pairs: (BlendPair & { readonly apart: number })[] = [];
  for (const [i, low] of numbers.entries()) {
    for (const [j, high] of numbers.entries()) {
      if (!(low < high && low <= wanted && wanted <= high)) continue;
      const part = (wanted - low) / (high - low);
      const shares = numbers.map((_, k) => (k === i ? 1 - part : k === j ? part : 0));
      const cost = costs ? { cost: blended(shares, costs) } : {};
      pairs.push({ of: [i, j], shares, ...cost, apart: high - low });
    }
  }
  return pairs
    .sort((a, b) => (a.cost ?? 0) - (b.cost ?? 0) || a.apart - b.apart)
    .map(({ apart: _, ...pair }) => pair);
}
