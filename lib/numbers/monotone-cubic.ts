// A smooth curve through points that never swings past them.

import { invariant } from "../issue.ts";
import { checkPoints, segmentAt } from "./interpolate.ts";

/**
 * Piecewise cubic through the points (xs, ys) that rises only where they rise and falls only where they fall:
 * slope at an inner point the weighted harmonic mean of its two secants, (w₁ + w₂)/(w₁/s₁ + w₂/s₂) with
 * w₁ = 2h₂ + h₁ and w₂ = h₂ + 2h₁, 0 at a turn; at an end the three-point slope, held to the sign of the end secant
 * and to three times its size. Two points: a straight line.
 * xs strictly upward and finite, ys finite, at least two points, else it throws; outside the points: NaN.
 * Source: F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238–246, with the slopes of F. N. Fritsch and
 * J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304; the same curve as SciPy's PchipInterpolator.
 * @example monotoneCubic([0, 1, 3], [0, 10, 11])(0.5) // 6.5134803921...
 */
export function monotoneCubic(xs: ArrayLike<number>, ys: ArrayLike<number>): (x: number) => number {
  const curve = monotoneCurve(xs, ys);
  return (x) => {
    const i = segmentAt(curve.xs, x);
    return i < 0 ? Number.NaN : valueIn(curve, i, x);
  };
}

/**
 * The derivative dy/dx of monotoneCubic's curve; same arguments, same limits.
 * @example monotoneCubicDerivative([1, 3], [2, 8])(2) // 3
 */
export function monotoneCubicDerivative(xs: ArrayLike<number>, ys: ArrayLike<number>): (x: number) => number {
  const curve = monotoneCurve(xs, ys);
  return (x) => {
    const i = segmentAt(curve.xs, x);
    return i < 0 ? Number.NaN : slopeIn(curve, i, x);
  };
}

/**
 * The x at which monotoneCubic's curve reaches y, to 1e-14 of its segment or the rounding of y. The ys must rise
 * throughout or fall throughout (equal neighbours are allowed), else it throws. Where the curve lies flat at y, the lowest such x.
 * y outside the points: NaN. Not the same as interpolating x over y.
 * @example monotoneInverse([1, 3], [2, 8])(5) // 2
 */
export function monotoneInverse(xs: ArrayLike<number>, ys: ArrayLike<number>): (y: number) => number {
  const curve = monotoneCurve(xs, ys);
  const last = curve.ys.length - 1;
  const sign = curve.ys[last]! >= curve.ys[0]! ? 1 : -1;
  const heights = curve.ys.map((y) => y * sign);
  for (let i = 1; i <= last; i++) {
    invariant(heights[i]! >= heights[i - 1]!, "monotoneInverse needs y that only rises or only falls");
  }
  return (y) => {
    const height = y * sign;
    if (!(height >= heights[0]! && height <= heights[last]!)) return Number.NaN;
    const end = heights.findIndex((h) => h >= height);
    return heights[end] === height ? curve.xs[end]! : solveIn(curve, end - 1, y, sign);
  };
}

interface Curve {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly slopes: Float64Array;
}

function monotoneCurve(xs: ArrayLike<number>, ys: ArrayLike<number>): Curve {
  checkPoints(xs, ys, 2);
  for (let i = 0; i < ys.length; i++) invariant(Number.isFinite(ys[i]!), "a smooth curve needs finite y");
  const curve = { xs: Float64Array.from(xs), ys: Float64Array.from(ys), slopes: new Float64Array(xs.length) };
  const n = xs.length - 1;
  const width = Array.from({ length: n }, (_, i) => xs[i + 1]! - xs[i]!);
  const secant = Array.from({ length: n }, (_, i) => (ys[i + 1]! - ys[i]!) / width[i]!);
  if (n === 1) {
    curve.slopes.fill(secant[0]!);
    return curve;
  }
  for (let i = 1; i < n; i++) {
    const [h1, h2, s1, s2] = [width[i - 1]!, width[i]!, secant[i - 1]!, secant[i]!];
    if (Math.sign(s1) * Math.sign(s2) > 0) {
      const w1 = 2 * h2 + h1;
      const w2 = h2 + 2 * h1;
      curve.slopes[i] = (w1 + w2) / (w1 / s1 + w2 / s2);
    }
  }
  curve.slopes[0] = endSlope(width[0]!, width[1]!, secant[0]!, secant[1]!);
  curve.slopes[n] = endSlope(width[n - 1]!, width[n - 2]!, secant[n - 1]!, secant[n - 2]!);
  return curve;
}

/** Three-point slope at an end; h1, s1 belong to the segment at the end. */
function endSlope(h1: number, h2: number, s1: number, s2: number): number {
  const slope = ((2 * h1 + h2) * s1 - h1 * s2) / (h1 + h2);
  if (Math.sign(slope) !== Math.sign(s1)) return 0;
  return Math.sign(s1) !== Math.sign(s2) && Math.abs(slope) > 3 * Math.abs(s1) ? 3 * s1 : slope;
}

function valueIn({ xs, ys, slopes }: Curve, i: number, x: number): number {
  const [y0, y1] = [ys[i]!, ys[i + 1]!];
  const width = xs[i + 1]! - xs[i]!;
  const t = (x - xs[i]!) / width;
  const u = 1 - t;
  const y =
    y0 * (1 + 2 * t) * u * u +
    y1 * t * t * (3 - 2 * t) +
    width * t * u * (slopes[i]! * u - slopes[i + 1]! * t);
  // Rounding may carry it past an end by a last digit.
  return Math.min(Math.max(y, Math.min(y0, y1)), Math.max(y0, y1));
}

function slopeIn({ xs, ys, slopes }: Curve, i: number, x: number): number {
  const width = xs[i + 1]! - xs[i]!;
  const t = (x - xs[i]!) / width;
  const u = 1 - t;
  return (
    (6 * t * u * (ys[i + 1]! - ys[i]!)) / width +
    slopes[i]! * u * (1 - 3 * t) +
    slopes[i + 1]! * t * (3 * t - 2)
  );
}

/** Newton's steps, halved back into the bracket whenever one would leave it. */
function solveIn(curve: Curve, i: number, y: number, sign: number): number {
  const start = curve.xs[i]!;
  const width = curve.xs[i + 1]! - start;
  let low = start;
  let high = start + width;
  let x = start + width * ((y - curve.ys[i]!) / (curve.ys[i + 1]! - curve.ys[i]!));
  for (let round = 0; round < 200 && high - low > 1e-15 * width; round++) {
    const miss = (valueIn(curve, i, x) - y) * sign;
    if (miss === 0) return x;
    if (miss > 0) high = x;
    else low = x;
    const step = x - (miss * sign) / slopeIn(curve, i, x);
    const next = step > low && step < high ? step : low + (high - low) / 2;
    if (Math.abs(next - x) <= 1e-16 * Math.abs(x)) return next;
    x = next;
  }
  return x;
}
