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
  const [b1, b2] = [local.coefficients[first]!, local.coefficients[first + 1]!];
  const v = (i: number, j: number): number => local.covariance[first + i]![first + j]!;
  const x = centre + scale * (-b1 / (2 * b2));
  const base = { x, y: polynomialAt(fit, x).value, kind: b2 < 0 ? "maximum" : "minimum" } as const;
  const t2 = studentTQuantile((1 + level) / 2, fit.degreesOfFreedom) ** 2;
  const square = b2 * b2 - t2 * v(1, 1);
  if (!(square > 0)) {
    return { ...base, low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY, bounded: false };
  }
  const half = b1 * b2 - t2 * v(0, 1);
  const root = Math.sqrt(Math.max(0, half * half - square * (b1 * b1 - t2 * v(0, 0))));
  return {
    ...base,
    low: centre + (scale * (-half - root)) / (2 * square),
    high: centre + (scale * (-half + root)) / (2 * square),
    bounded: true,
  };
}
