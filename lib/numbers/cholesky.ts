// The square root of a covariance.

import { invariant } from "../issue.ts";

/** A pivot below this share of its own variance is rounding: the row then depends on those above. */
const leastPivot = 1e-12;

/**
 * Lower triangle L with L·Lᵀ = V (Cholesky): L·z of independent standard scores z has covariance V.
 * covariance: V, square and symmetric, no negative variance in any direction, in any unit squared. A direction
 * without variance gets a column of zeros. Not square or not symmetric: throws; a negative variance: throws
 * RangeError; any NaN: NaN throughout.
 * @example lowerTriangle([[4, 2], [2, 5]]) // [[2, 0], [1, 2]]
 */
export function lowerTriangle(covariance: readonly (readonly number[])[]): number[][] {
  const size = covariance.length;
  invariant(
    covariance.every((row) => row.length === size),
    "a covariance is square",
  );
  const lower = covariance.map((row) => row.map(() => 0));
  if (covariance.some((row) => row.some(Number.isNaN))) return lower.map((row) => row.map(() => Number.NaN));
  for (let j = 0; j < size; j++) {
    const own = covariance[j]![j]!;
    let pivot = own;
    for (let k = 0; k < j; k++) pivot -= lower[j]![k]! ** 2;
    if (own < 0 || pivot < -1e-8 * own) {
      throw new RangeError("a covariance cannot have a negative variance in any direction");
    }
    const root = pivot > leastPivot * own ? Math.sqrt(pivot) : 0;
    lower[j]![j] = root;
    for (let i = j + 1; i < size; i++) {
      const size2 = Math.sqrt(Math.abs(covariance[i]![i]! * own));
      invariant(
        Math.abs(covariance[i]![j]! - covariance[j]![i]!) <= 1e-9 * size2,
        "a covariance is symmetric",
      );
      if (root === 0) continue;
      let rest = covariance[i]![j]!;
      for (let k = 0; k < j; k++) rest -= lower[i]![k]! * lower[j]![k]!;
      lower[i]![j] = rest / root;
    }
  }
  return lower;
}
