// What a linear least-squares fit knows.

import type { LocalAxes } from "./local-axes.ts";

export interface LinearFit {
  /** One for each column of the design. NaN throughout where the columns cannot be told apart: see rank. */
  readonly coefficients: readonly number[];
  /** NaN where no degree of freedom is left. */
  readonly standardErrors: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  /** y less the fitted value, one a row. */
  readonly residuals: readonly number[];
  /** How much a row's own y decides its fitted value, 0 to 1; they add to the number of coefficients. */
  readonly leverages: readonly number[];
  /** Rows with a weight above 0, less coefficients. */
  readonly degreesOfFreedom: number;
  /** √(Σ w·residual²/degreesOfFreedom): the scatter of a row of weight 1. */
  readonly residualSd: number;
  readonly residualSumOfSquares: number;
  /** Share of Σ w(y − mean)² that the fit explains; of Σ w·y² where no constant is in the columns. */
  readonly rSquared: number;
  /** Below the number of columns where these depend on each other. */
  readonly rank: number;
  /** The fit on axes of its own, for prediction without loss of digits. */
  readonly local: LocalFit;
}

export interface LocalFit {
  readonly axes: LocalAxes;
  readonly coefficients: readonly number[];
  /** G on the local axes: their covariance is residualSd²·G·Gᵀ. */
  readonly root: readonly (readonly number[])[];
}
