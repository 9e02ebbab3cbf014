// Student's t distribution.

import cumulative from "@stdlib/stats-base-dists-t-cdf";
import quantile from "@stdlib/stats-base-dists-t-quantile";
import { normalCumulative, normalQuantile } from "./normal.ts";

/**
 * Share of a t distribution below x. df: degrees of freedom above 0, a fraction is allowed, ∞ is the normal; else NaN.
 * Relative error below 2e-14 for df from 0.7 to 200 (measured against SciPy).
 * @example studentTCumulative(1, 1) // 0.75
 */
export function studentTCumulative(x: number, df: number): number {
  return df === Number.POSITIVE_INFINITY ? normalCumulative(x) : cumulative(x, df);
}

/**
 * The x below which a share p of a t distribution lies. p from 0 to 1 (0 gives −∞, 1 gives ∞), df as above; else NaN.
 * Relative error below 1e-13 for df from 0.7 to 200 and p from 1e-4 to 0.4 (measured against SciPy);
 * exactly antisymmetric about p = 0.5.
 * @example studentTQuantile(0.975, 4) // 2.7764451...
 */
export function studentTQuantile(p: number, df: number): number {
  if (df === Number.POSITIVE_INFINITY) return normalQuantile(p);
  if (p > 0.5 && p <= 1) return -studentTQuantile(1 - p, df);
  if (p === 0.5 && df > 0) return 0;
  const x = quantile(p, df);
  if (!Number.isFinite(x)) return x;
  // The package's quantile is good to 2e-9, its share below x to 1e-14: one step of Newton's, slope by difference.
  const h = 1e-4 * x;
  const slope = (cumulative(x + h, df) - cumulative(x - h, df)) / (2 * h);
  const step = (cumulative(x, df) - p) / slope;
  return Math.abs(step) < 1e-6 * Math.abs(x) ? x - step : x;
}

/**
 * Standard deviation of a t distribution of scale 1: √(df/(df − 2)). df of 2 or less: infinite; df not above 0: NaN.
 * @example studentTStandardDeviation(4) // 1.4142...
 */
export function studentTStandardDeviation(df: number): number {
  if (!(df > 0)) return Number.NaN;
  if (df === Number.POSITIVE_INFINITY) return 1;
  return df > 2 ? Math.sqrt(df / (df - 2)) : Number.POSITIVE_INFINITY;
}
