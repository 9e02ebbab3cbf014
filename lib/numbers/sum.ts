// Sums that keep the digits which plain addition drops.

import { invariant } from "../issue.ts";

/**
 * Sum of the values with compensation: each addition's lost low-order part is kept and added at the end.
 * Error: about one unit in the last place of the result plus n²·1e-32·Σ|x|, where plain addition has n·1e-16·Σ|x|.
 * Empty: 0. Any NaN gives NaN, an infinity gives that infinity.
 * Source: A. Neumaier, Z. angew. Math. Mech. 54 (1974) 39–51.
 * @example sum([0.1, 0.2, 0.3]) // 0.6, where 0.1 + 0.2 + 0.3 is 0.6000000000000001
 */
export function sum(values: ArrayLike<number>): number {
  let total = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const x = values[i]!;
    const next = total + x;
    lost += Math.abs(total) >= Math.abs(x) ? total - next + x : x - next + total;
    total = next;
  }
  return Number.isFinite(total) ? total + lost : total;
}

/**
 * Weighted mean Σ wᵢxᵢ / Σ wᵢ. Weights ≥ 0, in any unit; values in any unit, which the result keeps.
 * Lists of different lengths, a negative or a not finite weight: throws. No weight at all: NaN.
 * Source: its definition.
 * @example weightedMean([40, 70], [1, 3]) // 62.5
 */
export function weightedMean(values: ArrayLike<number>, weights: ArrayLike<number>): number {
  invariant(values.length === weights.length, "weightedMean needs one weight for each value");
  const products = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) {
    const weight = weights[i]!;
    if (!(weight >= 0 && weight < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`a weight must be a finite number of at least 0, not ${weight}`);
    }
    products[i] = values[i]! * weight;
  }
  return sum(products) / sum(weights);
}
