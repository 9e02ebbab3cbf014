// A fitted parabola without one of its batches, from that batch's leverage and residual.

import type { LinearFit } from "../numbers/linear-fit.ts";
import { levelCount, type ResponseCurve } from "./response-curve.ts";

/** As much of a curve as tells where the aim lies. */
export interface CurveMean {
  readonly from: number;
  readonly to: number;
  readonly fit: Pick<LinearFit, "residualSd">;
  mean(x: number): number;
}

/** With so many batches at so many levels, a curve without one of them is a parabola still. */
const leastBatches = 6;
const leastLevels = 4;

/**
 * The curve without batch i, an index of the trial: b − (XᵀX)⁻¹xᵢeᵢ/(1 − hᵢ), and the residual sum of squares less
 * eᵢ²/(1 − hᵢ), with e the residual and h the leverage; the curve itself where it does not rest on the batch. x: places
 * of the trial's batches. Undefined where that does not hold, or may not: a curve with blocks, or of another form, or
 * one that loses its first or last place, or a batch that no other holds.
 * Source: R. D. Cook and S. Weisberg, Residuals and Influence in Regression (1982) 2.1 and 2.2 (from memory); held in
 * tests against a fit without the batch.
 * @example leaveOneOut(curve, x)?.(3)?.mean(3.4)
 */
export function leaveOneOut(
  curve: ResponseCurve,
  x: readonly number[],
): ((i: number) => CurveMean | undefined) | undefined {
  const { form, fit, used, from, to, newBlock } = curve;
  const xs = used.map((i) => x[i]!);
  const plain = form === "curve" && newBlock === undefined && used.length >= leastBatches;
  if (!plain || !fit || !(fit.residualSd > 0) || levelCount(xs) < leastLevels) return undefined;
  const rowOf = new Map(used.map((i, row) => [i, row]));
  const [atFrom, atTo] = [from, to].map((end) => xs.filter((place) => place === end).length);
  const inverse = fit.covariance.map((line) => line.map((value) => value / fit.residualSd ** 2));
  const meanBy = (coefficients: readonly number[]) => (at: number) =>
    curve.row(at).reduce((all, power, k) => all + power * coefficients[k]!, 0);
  return (i) => {
    const row = rowOf.get(i);
    if (row === undefined) return { from, to, fit, mean: meanBy(fit.coefficients) };
    const [place, free, residual] = [x[i]!, 1 - fit.leverages[row]!, fit.residuals[row]!];
    const end = (place === from && atFrom === 1) || (place === to && atTo === 1);
    if (end || free < 1e-6) return undefined;
    const powers = curve.row(place);
    const coefficients = fit.coefficients.map((b, j) => {
      const along = powers.reduce((all, power, k) => all + inverse[j]![k]! * power, 0);
      return b - (along * residual) / free;
    });
    const squares = Math.max(0, fit.residualSumOfSquares - residual ** 2 / free);
    return {
      from,
      to,
      fit: { residualSd: Math.sqrt(squares / (fit.degreesOfFreedom - 1)) },
      mean: meanBy(coefficients),
    };
  };
}
