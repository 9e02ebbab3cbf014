// Limits of a sum of independent errors that are known only within bounds, without drawing.

import { invariant } from "../issue.ts";
import { normalQuantile } from "./distributions.ts";

/** Terms of the series at most, and what may be left out of the distribution function. */
const mostTerms = 600;
const leftOut = 5e-6;

/** Used again from call to call. */
const weights = new Float64Array(mostTerms + 1);
type Columns = [Float64Array, Float64Array, Float64Array, Float64Array];
let [lastP, lastZ] = [0.5, 0];
let [sines, cosines, sin1, cos1] = [8, 8, 8, 8].map((n) => new Float64Array(n)) as Columns;

/**
 * Quantile p of X₁ + … + Xₖ + Z: Xᵢ even within ± halfWidths[i], Z normal about 0 with normalSd, all independent.
 * (An error within ± a that is triangular is the sum of two even ones within ± a/2.)
 * From the Fourier series of the sum over (−L, L): F(x) = ½ + x/2L + Σₙ φ(πn/L)·sin(πnx/L)/πn with
 * φ(t) = exp(−(sd·t)²/2)·Π sin(aᵢt)/aᵢt; L holds the whole sum, or six standard deviations of it; then Newton's steps.
 * halfWidths and normalSd: ≥ 0 and finite, any unit, which the result keeps; p: above 0 and below 1; outside throws.
 * Error: below 0.1 % of the limit for p from 0.005 to 0.995; one and two even errors are in closed form.
 * Source: the inversion of a characteristic function, as in JCGM 101:2008 5.2 (derived); for two even errors the
 * trapezoid of GUM (JCGM 100:2008) F.2.3.3.
 * @example symmetricSumQuantile(0.975, [1, 1]) // 1.5527864…, which is 2 − √0.2
 */
export function symmetricSumQuantile(p: number, halfWidths: ArrayLike<number>, normalSd = 0): number {
  invariant(p > 0 && p < 1, "a quantile of a sum needs p above 0 and below 1");
  invariant(isWidth(normalSd), "a quantile of a sum needs a standard deviation of 0 or more");
  if (p < 0.5) return -symmetricSumQuantile(1 - p, halfWidths, normalSd);
  if (p === 0.5) return 0;
  let largest = 0;
  for (let i = 0; i < halfWidths.length; i++) {
    invariant(isWidth(halfWidths[i]!), "a quantile of a sum needs half-widths of 0 or more");
    largest = Math.max(largest, halfWidths[i]!);
  }
  if (largest <= 1e-6 * normalSd) return normalQuantile(p) * normalSd;
  const even: number[] = [];
  for (let i = 0; i < halfWidths.length; i++) {
    // What is left out widens a limit by less than one part in a million.
    if (halfWidths[i]! > 1e-6 * largest) even.push(halfWidths[i]! / largest);
  }
  const sd = normalSd > 1e-6 * largest ? normalSd / largest : 0;
  if (sd === 0 && even.length === 1) return largest * (2 * p - 1);
  if (sd === 0 && even.length === 2) return largest * ofTwo(p, Math.min(even[0]!, even[1]!));
  return largest * bySeries(p, even, sd);
}

function isWidth(size: number): boolean {
  return size >= 0 && size < Number.POSITIVE_INFINITY;
}

/** Even within ± 1 and within ± b, b at most 1. */
function ofTwo(p: number, b: number): number {
  const tail = 1 - p;
  return tail <= b / 2 ? 1 + b - Math.sqrt(8 * b * tail) : 1 - 2 * tail;
}

function bySeries(p: number, even: readonly number[], sd: number): number {
  let variance = sd * sd;
  let fourth = 0;
  let reach = 6 * sd;
  for (const a of even) {
    variance += (a * a) / 3;
    fourth -= (2 * a ** 4) / 15;
    reach += a;
  }
  const whole = Math.sqrt(variance);
  const half = Math.min(reach, 6 * whole);
  const count = seriesOf(even, sd, half);
  if (p !== lastP) [lastP, lastZ] = [p, normalQuantile(p)];
  const z = lastZ;
  // Cornish and Fisher's first term for a symmetric sum.
  let x = whole * (z + ((fourth / variance ** 2) * (z ** 3 - 3 * z)) / 24);
  let below = 0;
  let above = half;
  x = Math.min(Math.max(x, 0.01 * half), 0.999 * half);
  for (let step = 0; step < 30; step++) {
    const { distribution, density } = valuesAt(x, count, half);
    const off = distribution - p;
    if (off > 0) above = x;
    else below = x;
    let next = x - off / density;
    if (!(next > below && next < above)) next = (below + above) / 2;
    if (Math.abs(next - x) <= 1e-6 * x) return next;
    x = next;
  }
  return x;
}

/** Fills weights[n] with φ(πn/L)/πn; returns how many terms count. */
function seriesOf(even: readonly number[], sd: number, half: number): number {
  const k = even.length;
  if (sines.length < k)
    [sines, cosines, sin1, cos1] = [k, k, k, k].map((n) => new Float64Array(n)) as Columns;
  for (let i = 0; i < k; i++) {
    const angle = (Math.PI * even[i]!) / half;
    sin1[i] = Math.sin(angle);
    cos1[i] = Math.cos(angle);
    sines[i] = 0;
    cosines[i] = 1;
  }
  for (let n = 1; n <= mostTerms; n++) {
    const t = (Math.PI * n) / half;
    let phi = Math.exp(-0.5 * (sd * t) ** 2);
    let envelope = phi;
    for (let i = 0; i < k; i++) {
      const s = sines[i]! * cos1[i]! + cosines[i]! * sin1[i]!;
      cosines[i] = cosines[i]! * cos1[i]! - sines[i]! * sin1[i]!;
      sines[i] = s;
      const at = even[i]! * t;
      phi *= s / at;
      if (at > 1) envelope /= at;
      else envelope *= 1 - at * at * 0.15;
    }
    weights[n] = phi / (Math.PI * n);
    if (envelope / (Math.PI * n) < leftOut) return n;
  }
  return mostTerms;
}

function valuesAt(x: number, count: number, half: number): { distribution: number; density: number } {
  const angle = (Math.PI * x) / half;
  const [sin1, cos1] = [Math.sin(angle), Math.cos(angle)];
  let [s, c] = [0, 1];
  let distribution = 0.5 + x / (2 * half);
  let density = 1 / (2 * half);
  for (let n = 1; n <= count; n++) {
    const next = s * cos1 + c * sin1;
    c = c * cos1 - s * sin1;
    s = next;
    distribution += weights[n]! * s;
    density += (weights[n]! * c * Math.PI * n) / half;
  }
  return { distribution, density };
}
