// What a linear fit says at one place.

import { invariant } from "../issue.ts";
import { dot } from "./dot.ts";
import type { LinearFit } from "./linear-fit.ts";

export interface Prediction {
  readonly value: number;
  /** Standard error of the mean there. */
  readonly meanSe: number;
  /** Standard error of one new observation there. */
  readonly newSe: number;
}

/**
 * value = rowᵀb, meanSe = s·√(rowᵀ(XᵀWX)⁻¹row), newSe = √(meanSe² + s²/weight).
 * Multiply by Student's t at the fit's degrees of freedom for an interval. row: as long as a row of the design, else
 * throws; weight: of the new observation, above 0, default 1. A fit without a degree of freedom has value alone, the
 * errors are NaN.
 * Source: any text on regression, e.g. N. R. Draper and H. Smith, Applied Regression Analysis (from memory).
 * @example predictAt(fitLinear([[1, 0], [1, 1], [1, 2]], [1, 2, 4]), [1, 3]).value // 5.333...
 */
export function predictAt(fit: LinearFit, row: readonly number[], weight = 1): Prediction {
  const { axes, coefficients, root } = fit.local;
  invariant(row.length === coefficients.length, "a prediction needs one number for each coefficient");
  if (!(weight > 0)) throw new RangeError(`a new observation needs a weight above 0, not ${weight}`);
  const z = axes.row(row);
  const along = coefficients.map((_, k) => z.reduce((total, x, j) => total + x * root[j]![k]!, 0));
  const meanSe = fit.residualSd * Math.hypot(...along);
  return {
    value: dot(z, coefficients),
    meanSe,
    newSe: Math.hypot(meanSe, fit.residualSd / Math.sqrt(weight)),
  };
}
