// How steep a trial's curve is at a place, with its ±.

import { studentTQuantile } from "../numbers/distributions.ts";
import type { Spread } from "../quantity/spread.ts";
import { spread } from "../quantity/spread-of.ts";
import { quadraticForm, type ResponseCurve } from "../trial/response-curve.ts";

/**
 * Slope of the curve at x (its middle without one), per unit of the axis: d·b with d the derivative of the row and the
 * fit's covariance for its ±, Student's t. Of a curve helped by a published slope: that of batches and slope together,
 * with the longer side of its 95 % interval. Undefined where there is no curve.
 * Source: linear combination of coefficients, Draper & Smith, Applied Regression Analysis.
 */
export function curveSlope(curve: ResponseCurve, x: number | undefined): Spread | undefined {
  const { from, to, fit, prior, form } = curve;
  if (form === "points only" || !(to > from)) return undefined;
  const at = Math.min(to, Math.max(from, x ?? (from + to) / 2));
  const step = (to - from) / 200;
  const [below, above] = [at - step, at + step];
  const source = "slope of the trial's own curve";
  const words = { source, says: "the slope of the trial's own curve" } as const;
  if (!fit) {
    if (!prior) return undefined;
    const { mean, low, high } = prior.slopeAt(at);
    const halfWidth = Math.max(mean - low, high - mean);
    return spread({ mean, halfWidth, kind: "normal", doubt: "model", ...words });
  }
  const full = (place: number): number[] => [...curve.row(place), ...curve.blocks.map(() => 0)];
  const [low, high] = [full(below), full(above)];
  const derivative = high.map((value, k) => (value - low[k]!) / (2 * step));
  const mean = derivative.reduce((all, value, k) => all + value * fit.coefficients[k]!, 0);
  const halfWidth =
    studentTQuantile(0.975, fit.degreesOfFreedom) * Math.sqrt(quadraticForm(derivative, fit.covariance));
  if (!Number.isFinite(halfWidth)) return undefined;
  return spread({ mean, halfWidth, kind: "t", df: fit.degreesOfFreedom, doubt: "repeat", ...words });
}
