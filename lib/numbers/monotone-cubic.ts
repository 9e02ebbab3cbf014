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
