// What two blocks of one trial differ by, at like places on the axis: two clays, two days, before and after.

import { studentTCumulative, studentTQuantile } from "../numbers/distributions.ts";
import type { ResponseCurve } from "./response-curve.ts";

export interface BlockDifference {
  /** The named block less the other, in the property's unit. */
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly p: number;
  readonly df: number;
}

/**
 * The offset of the second block in the fit, with its 95 % interval by Student's t: both blocks are taken to follow
 * one curve, one above the other. Undefined where the curve has not just two blocks.
 * Source: analysis of covariance, Draper & Smith, Applied Regression Analysis.
 * @example
 * const x = [1, 2, 3, 4, 1, 2, 3, 4];
 * const blocks = ["old", "old", "old", "old", "new", "new", "new", "new"];
 * blockDifference(responseCurve({ x, y: [1, 2.1, 2.9, 4, 3, 4.1, 4.9, 6], blocks }, { peaked: false }))?.difference // 2
 */
export function blockDifference({ fit, blocks }: ResponseCurve): BlockDifference | undefined {
  if (!fit || blocks.length !== 1 || !(fit.degreesOfFreedom > 0)) return undefined;
  const [difference, se] = [fit.coefficients.at(-1)!, fit.standardErrors.at(-1)!];
  const df = fit.degreesOfFreedom;
  const half = studentTQuantile(0.975, df) * se;
  return {
    difference,
    low: difference - half,
    high: difference + half,
    p: 2 * studentTCumulative(-Math.abs(difference / se), df),
    df,
  };
}
