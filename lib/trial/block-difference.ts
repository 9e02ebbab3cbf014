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

export interface BlockShare {
  readonly percent: number;
  readonly low: number;
  readonly high: number;
}

/**
 * What the second block has more than the first in percent of the first, at the middle of the axis, with its 95 %
 * interval: r = d/m, var r = (var d + r² var m − 2 r cov(d, m))/m², by Student's t. inFirst: the curve in the first
 * block, as curveInBlock gives it. Undefined where the curve has not just two blocks, or m lies less than eight of its
 * standard errors above zero, where a straight line through the quotient will not do.
 * Source: propagation of uncertainty, JCGM 100:2008, equation 13.
 * @example
 * const x = [1, 2, 3, 4, 1, 2, 3, 4];
 * const blocks = ["old", "old", "old", "old", "new", "new", "new", "new"];
 * const y = [10, 10.1, 9.9, 10, 12, 12.1, 11.9, 12];
 * blockShare(responseCurve({ x, y, blocks }, { peaked: false, block: "old" }))?.percent.toFixed(0) // "20"
 */
export function blockShare(inFirst: ResponseCurve): BlockShare | undefined {
  const { fit, blocks } = inFirst;
  if (!fit || blocks.length !== 1 || !(fit.degreesOfFreedom > 0)) return undefined;
  const last = fit.coefficients.length - 1;
  const [m, d] = [fit.coefficients[0]!, fit.coefficients[last]!];
  const { covariance: v } = fit;
  if (!(m > 8 * Math.sqrt(v[0]![0]!))) return undefined;
  const r = d / m;
  const variance = (v[last]![last]! + r * r * v[0]![0]! - 2 * r * v[0]![last]!) / (m * m);
  const half = studentTQuantile(0.975, fit.degreesOfFreedom) * Math.sqrt(Math.max(0, variance));
  return { percent: 100 * r, low: 100 * (r - half), high: 100 * (r + half) };
}
