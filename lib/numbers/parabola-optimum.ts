// Where a parabola through points is highest or lowest, and how well the points hold that place.

import { invariant } from "../issue.ts";
import { studentTQuantile } from "./distributions.ts";
import { type PolynomialFit, polynomialAt } from "./polynomial-fit.ts";

export interface ParabolaOptimum {
  /** −b₁/(2b₂) */
  readonly x: number;
  /** The parabola there. */
  readonly y: number;
  /** Limits of x; −∞ and ∞ where they are not bounded. */
  readonly low: number;
  readonly high: number;
  /** False where a straight line cannot be ruled out at this level: then there is no optimum to speak of. */
  readonly bounded: boolean;
  readonly kind: "maximum" | "minimum";
}

/**
 * Optimum x₀ = −b₁/(2b₂) of y = b₀ + b₁x + b₂x² with Fieller limits: the roots of
 * 4(b₂² − t²v₂₂)x² + 4(b₁b₂ − t²v₁₂)x + b₁² − t²v₁₁ = 0, bounded only if t²v₂₂ < b₂².
 * fit: from fitPolynomial of degree 2, else throws. level: 0.95 for 95 %, between 0 and 1, else throws. x₀ may lie outside
 * the points: the caller looks. No degree of freedom: not bounded. Points that cannot tell a parabola: x NaN, not bounded.
 * Source: E. C. Fieller, J. R. Stat. Soc. B 16 (1954) 175–185; J. T. Lind and H. Mehlum, Oxf. Bull. Econ. Stat. 72 (2010)
 * 109–118. The same as the limits by inverting the F test of the place (tests/numbers/parabola-optimum.test.ts).
 * @example parabolaOptimum(fitPolynomial([0, 1, 2, 3, 4], [0, 3.1, 3.9, 3.1, 0], 2)).x // 2
 */
export function parabolaOptimum(fit: PolynomialFit, level = 0.95): ParabolaOptimum {
  invariant(fit.degree === 2, "an optimum with limits needs a polynomial of degree 2");
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, as 0.95, not ${level}`);
  const { fit: local, centre, scale } = fit.local;
  const first = fit.intercept ? 1 : 0;
  const { x, low, high, bounded, kind } = turningPoint(
    local.coefficients.slice(first, first + 2),
    local.covariance.slice(first, first + 2).map((line) => line.slice(first, first + 2)),
    fit.degreesOfFreedom,
    level,
  );
  const raw = (u: number): number => centre + scale * u;
  return { x: raw(x), y: polynomialAt(fit, raw(x)).value, low: raw(low), high: raw(high), bounded, kind };
}

/**
 * Where b₁x + b₂x² turns, with Fieller limits from the covariance of the two; it may be that of a larger fit, with
 * offsets beside the parabola. coefficients: b₁, b₂; covariance: 2 × 2; degreesOfFreedom: of that fit; none left, or
 * NaN: not bounded. level: between 0 and 1, else throws.
 * Source and meaning as for parabolaOptimum.
 * @example turningPoint([4, -1], [[0, 0], [0, 0]], 3).x // 2
 */
export function turningPoint(
  coefficients: readonly number[],
  covariance: readonly (readonly number[])[],
  degreesOfFreedom: number,
  level = 0.95,
): Omit<ParabolaOptimum, "y"> {
  invariant(coefficients.length === 2 && covariance.length === 2, "a turning point needs b₁, b₂ and a 2 × 2");
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, as 0.95, not ${level}`);
  const [b1, b2] = coefficients as [number, number];
  const v = (i: number, j: number): number => covariance[i]![j]!;
  const base = { x: -b1 / (2 * b2), kind: b2 < 0 ? "maximum" : "minimum" } as const;
  const t2 = studentTQuantile((1 + level) / 2, degreesOfFreedom) ** 2;
  const square = b2 * b2 - t2 * v(1, 1);
  if (!(square > 0)) {
    return { ...base, low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY, bounded: false };
  }
  const half = b1 * b2 - t2 * v(0, 1);
  const root = Math.sqrt(Math.max(0, half * half - square * (b1 * b1 - t2 * v(0, 0))));
  return { ...base, low: (-half - root) / (2 * square), high: (-half + root) / (2 * square), bounded: true };
}
