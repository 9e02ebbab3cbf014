// Draws of a fit's coefficients, from standard scores.

import { invariant } from "../issue.ts";
import { lowerTriangle } from "./cholesky.ts";

export interface CoefficientScores {
  /** L, with L·Lᵀ the covariance. */
  readonly lower: readonly (readonly number[])[];
  /** b + L·z·√(df/χ²): z a standard normal score for each coefficient, chiSquare a score of χ² with the fit's df. */
  at(z: ArrayLike<number>, chiSquare: number): number[];
}

/**
 * Multivariate t of the coefficients of a fit, given a flat prior: b + L·z·√(df/χ²_df).
 * A score of χ² from one normal score: chiSquareQuantile(normalCumulative(score), df). df of 0, where nothing is
 * known of the scatter, throws; z of another length throws.
 * Source: A. Gelman et al., Bayesian Data Analysis, section on the standard linear model (from memory).
 * @example coefficientScores({ coefficients: [3], covariance: [[4]], degreesOfFreedom: 5 }).at([1], 5) // [5]
 */
export function coefficientScores(fit: {
  readonly coefficients: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly degreesOfFreedom: number;
}): CoefficientScores {
  const { coefficients, covariance, degreesOfFreedom } = fit;
  invariant(covariance.length === coefficients.length, "a fit has a variance for each coefficient");
  if (!(degreesOfFreedom > 0)) {
    throw new RangeError("draws of a fit need at least one degree of freedom, more points than coefficients");
  }
  const lower = lowerTriangle(covariance);
  return {
    lower,
    at(z, chiSquare) {
      invariant(z.length === coefficients.length, "draws need one score for each coefficient");
      const widen = Math.sqrt(degreesOfFreedom / chiSquare);
      return coefficients.map((b, j) => {
        let step = 0;
        for (let k = 0; k <= j; k++) step += lower[j]![k]! * z[k]!;
        return b + step * widen;
      });
    },
  };
}
