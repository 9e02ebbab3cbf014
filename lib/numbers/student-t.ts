// Student's t distribution. Our own: the package that has it would add 184 KB to every live page and takes
// several times as long; the tests hold the two against each other.

import { betaShare } from "./beta-share.ts";
import { normalCumulative, normalQuantile } from "./normal.ts";

/** From here on the t distribution is worked out from the normal, by the first terms of series in 1/ν. */
const manyDegrees = 1e6;

/**
 * Share of a t distribution below x: ½·I(ν/(ν + x²); ν/2, ½) for x ≤ 0, with I the regularised incomplete beta function
 * (NIST Digital Library of Mathematical Functions 8.17), and 1 less that for x > 0.
 * df: degrees of freedom ν above 0, a fraction is allowed, ∞ is the normal; else NaN.
 * Above 1e6 degrees: the share of the normal beyond √y·(1 + (y + 3 − (0.4y³ + 3.3y² + 24y + 85.5)/(0.8y² + 100 + b))/b),
 * with y = a·ln(1 + x²/ν), a = ν − ½, b = 48a² (G. W. Hill, Communications of the ACM 13 (1970) 617–619, from memory,
 * checked by the tests).
 * Relative error of the smaller share: for df from 0.5 to 200 below 2e-14, and 1e-13 where it is below 1e-50;
 * from 200 to 1e6 below 1e-10; above that below 1e-12 (measured against mpmath). Shares below 1e-307 lose digits, then are 0.
 * @example studentTCumulative(1, 1) // 0.75
 */
export function studentTCumulative(x: number, df: number): number {
  if (!(df > 0) || Number.isNaN(x)) return Number.NaN;
  if (df > manyDegrees) return normalCumulative(Math.sign(x) * normalScore(Math.abs(x), df));
  const below = lowerShare(Math.abs(x), df);
  return x > 0 ? 1 - below : below;
}

/** The score of a normal distribution with the same share beyond it. */
function normalScore(size: number, df: number): number {
  // No share is left out there, and the steps below would overflow.
  if (df === Number.POSITIVE_INFINITY || size > 100) return size;
  const a = df - 0.5;
  const b = 48 * a * a;
  const y = a * Math.log1p((size * size) / df);
  const correction = (((-0.4 * y - 3.3) * y - 24) * y - 85.5) / (0.8 * y * y + 100 + b) + y + 3;
  return Math.sqrt(y) * (1 + correction / b);
}

/**
 * The x below which a share p of a t distribution lies. p from 0 to 1 (0 gives −∞, 1 gives ∞), df as above; else NaN.
 * Relative error for p from 1e-300 to 0.48: for df from 0.5 to 200 below 2e-14, from 200 to 1e6 below 1e-10, above that
 * below 1e-13; nearer to 0.5 an absolute one below 1e-15 (measured against mpmath). Beyond 1.8e308: −∞.
 * Exactly antisymmetric about p = 0.5, so that near 1 it is as good as 1 − p is.
 * @example studentTQuantile(0.975, 4) // 2.7764451...
 */
export function studentTQuantile(p: number, df: number): number {
  if (!(df > 0 && p >= 0 && p <= 1)) return Number.NaN;
  if (p > 0.5) return -studentTQuantile(1 - p, df);
  if (p === 0.5) return 0;
  if (p === 0) return Number.NEGATIVE_INFINITY;
  // A curve asks for the same few again and again, once for each of its points.
  if (p === asked.p && df === asked.df) return asked.x;
  const ofShare = known.get(p);
  const found = ofShare?.get(df);
  const x = found ?? quantileBelowHalf(p, df);
  if (found === undefined) remember(p, df, x);
  asked.p = p;
  asked.df = df;
  asked.x = x;
  return x;
}

/** The last one, and by share and degrees those before it. */
const asked = { p: 0, df: 0, x: 0 };
const known = new Map<number, Map<number, number>>();
let kept = 0;
const MOST_KEPT = 4096;

function remember(p: number, df: number, x: number): void {
  if (kept === MOST_KEPT) {
    known.clear();
    kept = 0;
  }
  const ofShare = known.get(p) ?? new Map<number, number>();
  known.set(p, ofShare.set(df, x));
  kept++;
}

function quantileBelowHalf(p: number, df: number): number {
  const z = normalQuantile(p);
  // Abramowitz and Stegun (1964) 26.7.5, from memory.
  if (df > manyDegrees)
    return (
      z +
      (z ** 3 + z) / (4 * df) +
      (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * df * df) +
      (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * df ** 3)
    );
  // With x = √ν·sinh y the logarithm of the share is concave in y and straight in the tail, so Newton's steps
  // cannot miss from any start.
  const root = Math.sqrt(df);
  const top = densityAtZero(df);
  let y = Math.asinh(z / root);
  for (let round = 0; round < 50; round++) {
    const share = lowerShare(-root * Math.sinh(y), df, top);
    // d(share)/dy: the density times dx/dy, with one power of cosh cancelled.
    const slope = top * root * Math.cosh(y) ** -df;
    const step = ((Math.log(share) - Math.log(p)) * share) / slope;
    y -= step;
    if (!(Math.abs(step) > 4e-16 * Math.abs(y))) break;
  }
  const x = root * Math.sinh(y);
  // Few degrees and a tiny share lie beyond what a number can hold.
  return Number.isNaN(x) ? Number.NEGATIVE_INFINITY : x;
}

/** Share below −size, from whichever side of the incomplete beta function converges. */
function lowerShare(size: number, df: number, top = densityAtZero(df)): number {
  const ratio = size / df;
  const odds = size * ratio;
  // Γ((ν + 1)/2)/(Γ(ν/2)·√π) is 1/B(ν/2, ½).
  const overBeta = top * Math.sqrt(df);
  if (!(odds > 0)) return 0.5;
  if (odds === Number.POSITIVE_INFINITY)
    return (overBeta / df) * Math.exp(-df * Math.log(size / Math.sqrt(df)));
  const tail = 1 / (1 + odds);
  const powers = Math.exp((-df / 2) * Math.log1p(odds)) * Math.sqrt(odds * tail) * overBeta;
  return tail < (df / 2 + 1) / (df / 2 + 2.5)
    ? (powers / df) * betaShare(tail, df / 2, 0.5)
    : 0.5 - powers * betaShare(odds * tail, 0.5, df / 2);
}

/** Γ((ν + 1)/2)/(√(νπ)·Γ(ν/2)). */
function densityAtZero(df: number): number {
  return halfStepOfGamma(df / 2) / Math.sqrt(df * Math.PI);
}

/**
 * Γ(z + ½)/Γ(z) by its series for large z (NIST DLMF 5.11.13; coefficients from memory, checked by the tests), after
 * stepping z up to 30 with Γ(z + 1) = z·Γ(z).
 */
function halfStepOfGamma(z: number): number {
  let down = 1;
  while (z < 30) {
    down *= z / (z + 0.5);
    z += 1;
  }
  const w = 1 / z;
  const coefficients = [
    39325 / 33554432,
    869 / 4194304,
    -399 / 262144,
    -21 / 32768,
    5 / 1024,
    1 / 128,
    -1 / 8,
    1,
  ];
  return down * Math.sqrt(z) * coefficients.reduce((total, c) => total * w + c, 0);
}
