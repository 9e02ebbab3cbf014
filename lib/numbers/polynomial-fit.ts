// A polynomial through points by least squares.

import { invariant } from "../issue.ts";
import { dot, rowProducts } from "./dot.ts";
import { fitLinear, type LinearFit } from "./least-squares.ts";
import { type Prediction, predictAt } from "./predict-at.ts";

export interface PolynomialFit {
  /** Upward from the constant; from x where there is no intercept. */
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly residualSd: number;
  readonly residualSumOfSquares: number;
  /** About the mean; about zero where there is no intercept. */
  readonly rSquared: number;
  readonly degreesOfFreedom: number;
  readonly degree: number;
  readonly intercept: boolean;
  /** The same curve in u = (x − centre)/scale, which loses fewer digits. */
  readonly local: { readonly fit: LinearFit; readonly centre: number; readonly scale: number };
}

/**
 * y = b₀ + b₁x + … + b_d·x^d by weighted least squares (fitLinear on powers of u = (x − centre)/scale, −1 to 1, then
 * multiplied out). degree: a whole number, 0 to 15, at least 1 without an intercept, else throws; x, y: finite and of
 * one length, else throws; weights: as for fitLinear. Fewer different x than coefficients: all figures NaN.
 * Certified digits (NIST StRD, tests/reference/nist.test.ts): Norris 11, Filip (degree 10) 12, Wampler 9 and more.
 * @example fitPolynomial([0, 1, 2, 3], [1, 2, 5, 10], 2).coefficients // [1, 0, 1]
 */
export function fitPolynomial(
  x: readonly number[],
  y: readonly number[],
  degree: number,
  options: { readonly intercept?: boolean; readonly weights?: readonly number[] } = {},
): PolynomialFit {
  const { intercept = true, weights } = options;
  const least = intercept ? 0 : 1;
  if (!(Number.isInteger(degree) && degree >= least && degree <= 15)) {
    throw new RangeError(`a polynomial has a degree from ${least} to 15, not ${degree}`);
  }
  invariant(x.length === y.length && x.length > 0, "a polynomial needs an x for each y");
  invariant(x.every(Number.isFinite), "a polynomial needs finite x");
  const low = Math.min(...x);
  const high = Math.max(...x);
  // Without an intercept the curve passes through x = 0, so that must stay where it is.
  const centre = intercept ? low / 2 + high / 2 : 0;
  const half = (intercept ? high / 2 - low / 2 : Math.max(-low, high)) || 1;
  // A power of two, so that the division is exact.
  const scale = 2 ** Math.ceil(Math.log2(half));
  const from = intercept ? 0 : 1;
  const design = x.map((value) => powers((value - centre) / scale, from, degree));
  const fit = fitLinear(design, y, weights ? { weights } : {});
  const toRaw = rawFromLocal(centre, scale, from, degree);
  const localRoot = fit.local.axes.rawColumns(fit.local.root);
  const root = toRaw.map((row) =>
    localRoot[0]!.map((_, k) => row.reduce((total, t, j) => total + t * localRoot[j]![k]!, 0)),
  );
  const covariance = rowProducts(root, fit.residualSd ** 2);
  return {
    coefficients: toRaw.map((row) => dot(row, fit.coefficients)),
    standardErrors: covariance.map((row, j) => Math.sqrt(row[j]!)),
    covariance,
    residualSd: fit.residualSd,
    residualSumOfSquares: fit.residualSumOfSquares,
    rSquared: fit.rSquared,
    degreesOfFreedom: fit.degreesOfFreedom,
    degree,
    intercept,
    local: { fit, centre, scale },
  };
}

/** The fitted polynomial at x, the standard error of its mean and of one new observation of weight 1. */
export function polynomialAt(fit: PolynomialFit, x: number): Prediction {
  const { fit: inner, centre, scale } = fit.local;
  return predictAt(inner, powers((x - centre) / scale, fit.intercept ? 0 : 1, fit.degree));
}

function powers(u: number, from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, k) => u ** (from + k));
}

/** T with b = T·c: the coefficient of x^k in ((x − centre)/scale)^j is C(j, k)(−centre)^(j − k)/scale^j. */
function rawFromLocal(centre: number, scale: number, from: number, degree: number): number[][] {
  const exponents = Array.from({ length: degree - from + 1 }, (_, k) => from + k);
  return exponents.map((k) =>
    exponents.map((j) => (k > j ? 0 : (choose(j, k) * (-centre) ** (j - k)) / scale ** j)),
  );
}

function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i++) ways = (ways * (n - k + i)) / i;
  return ways;
}
