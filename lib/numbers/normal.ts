// The standard normal distribution: mean 0, standard deviation 1.

import cumulative from "@stdlib/stats-base-dists-normal-cdf";
import quantile from "@stdlib/stats-base-dists-normal-quantile";

/**
 * Share of a standard normal distribution below x: Φ(x). Any x; NaN for NaN.
 * Relative error below 2e-14 down to x = −10, 2e-13 down to −37.5 (measured against SciPy and mpmath); below −38.5: 0.
 * @example normalCumulative(1.96) // 0.97500210485...
 */
export function normalCumulative(x: number): number {
  return cumulative(x, 0, 1);
}

/**
 * The x below which a share p of a standard normal distribution lies. p from 0 to 1 (0 gives −∞, 1 gives ∞), else NaN.
 * Relative error below 1e-13 for p from 1e-300 (measured against SciPy); exactly antisymmetric about p = 0.5.
 * @example normalQuantile(0.975) // 1.95996398454...
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) return Number.NaN;
  if (p > 0.5) return -normalQuantile(1 - p);
  if (p === 0) return Number.NEGATIVE_INFINITY;
  if (p > 0.02) return quantile(p, 0, 1);
  // The package works from 2p − 1, where the digits of a small p are lost: polish on ln Φ.
  let x = p > 1e-12 ? quantile(p, 0, 1) : -Math.sqrt(-2 * Math.log(p));
  for (let round = 0; round < 12; round++) {
    const below = normalCumulative(x);
    const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
    const step = ((Math.log(below) - Math.log(p)) * below) / density;
    x -= step;
    if (Math.abs(step) <= 1e-15 * Math.abs(x)) break;
  }
  return x;
}
