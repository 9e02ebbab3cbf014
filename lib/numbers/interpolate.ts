// Straight lines between points. For a smooth curve see monotone-cubic.ts.

import { invariant } from "../issue.ts";

/** Throws unless xs is strictly upward, finite, and as long as ys. */
export function checkPoints(xs: ArrayLike<number>, ys: ArrayLike<number>, least = 1): void {
  invariant(xs.length === ys.length, "interpolation needs one y for each x");
  invariant(xs.length >= least, `interpolation needs at least ${least} point${least === 1 ? "" : "s"}`);
  invariant(Number.isFinite(xs[0]!), "interpolation needs finite x");
  for (let i = 1; i < xs.length; i++) {
    invariant(xs[i]! > xs[i - 1]!, "interpolation needs x in strictly upward order");
  }
  invariant(Number.isFinite(xs[xs.length - 1]!), "interpolation needs finite x");
}

/** Index i with xs[i] ≤ x ≤ xs[i + 1]; −1 where x is NaN or outside the points. */
export function segmentAt(xs: ArrayLike<number>, x: number): number {
  let low = 0;
  let high = xs.length - 1;
  if (!(x >= xs[0]! && x <= xs[high]!)) return -1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle]! <= x) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * y at x on the straight lines through the points (xs, ys); xs strictly upward, else it throws.
 * Outside the points: NaN, for nothing is known there.
 * Source: algebra.
 * @example linearAt([0, 10], [5, 7], 5) // 6
 */
export function linearAt(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  checkPoints(xs, ys);
  const i = segmentAt(xs, x);
  if (i < 0) return Number.NaN;
  if (x === xs[i]) return ys[i]!;
  const share = (x - xs[i]!) / (xs[i + 1]! - xs[i]!);
  return ys[i]! * (1 - share) + ys[i + 1]! * share;
}

/**
 * y at x on lines that are straight in ln x: y = y₀ + (y₁ − y₀)·ln(x/x₀)/ln(x₁/x₀), the usual way to read a
 * grading curve (common practice). xs positive and strictly upward, else it throws; outside the points: NaN.
 * Source: algebra; for grading curves common practice.
 * @example logLinearAt([0.1, 10], [0, 100], 1) // 50
 */
export function logLinearAt(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  checkPoints(xs, ys);
  invariant(xs[0]! > 0, "interpolation in ln x needs x above 0");
  const i = segmentAt(xs, x);
  if (i < 0) return Number.NaN;
  if (x === xs[i]) return ys[i]!;
  const share = Math.log(x / xs[i]!) / Math.log(xs[i + 1]! / xs[i]!);
  return ys[i]! * (1 - share) + ys[i + 1]! * share;
}
