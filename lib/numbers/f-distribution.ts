// The F distribution: a ratio of two variances.

import { betaShare } from "./beta-share.ts";
import { logGamma } from "./log-gamma.ts";
import { positiveQuantile, type Tails } from "./positive-quantile.ts";

/**
 * Share of an F distribution below x: I(d₁x/(d₁x + d₂); d₁/2, d₂/2), with I the regularised incomplete beta function
 * (NIST Digital Library of Mathematical Functions 8.17).
 * df1, df2: degrees of freedom of numerator and denominator, above 0 and finite, fractions allowed; else NaN. x below 0: 0.
 * Relative error below 1e-12 for degrees from 1 to 200 (measured against SciPy).
 * @example fCumulative(4.737414, 2, 7) // 0.95
 */
export function fCumulative(x: number, df1: number, df2: number): number {
  if (!(areDegrees(df1) && areDegrees(df2)) || Number.isNaN(x)) return Number.NaN;
  return x <= 0 ? 0 : tails(x, df1, df2).below;
}

/**
 * The x below which a share p of an F distribution lies; p from 0 to 1, degrees above 0 and finite, else NaN.
 * Relative error below 1e-12 for degrees from 1 to 200 and p from 0.001 to 0.999 (measured against SciPy).
 * @example fQuantile(0.95, 2, 7) // 4.737414...
 */
export function fQuantile(p: number, df1: number, df2: number): number {
  if (!(areDegrees(df1) && areDegrees(df2))) return Number.NaN;
  return positiveQuantile((x) => tails(x, df1, df2), p, 1);
}

function areDegrees(df: number): boolean {
  return df > 0 && df < Number.POSITIVE_INFINITY;
}

function tails(x: number, df1: number, df2: number): Tails {
  if (x === Number.POSITIVE_INFINITY) return { below: 1, above: 0, slope: 0 };
  const [a, b] = [df1 / 2, df2 / 2];
  const part = (df1 * x) / (df1 * x + df2);
  const rest = df2 / (df1 * x + df2);
  const logBeta = logGamma(a) + logGamma(b) - logGamma(a + b);
  // part^a·rest^b/B is x times the density.
  const slope = Math.exp(a * Math.log(part) + b * Math.log(rest) - logBeta);
  if (part < (a + 1) / (a + b + 2)) {
    const below = (slope / a) * betaShare(part, a, b);
    return { below, above: 1 - below, slope };
  }
  const above = (slope / b) * betaShare(rest, b, a);
  return { below: 1 - above, above, slope };
}
