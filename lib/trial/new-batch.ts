// Where one new batch of a trial falls, also in one of two blocks.

import { studentTQuantile } from "../numbers/distributions.ts";
import { predictAt } from "../numbers/least-squares.ts";
import type { ResponseCurve } from "./response-curve.ts";

export interface NewBatch {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/**
 * The mean of a curve at x and the 95 % interval of one new batch there, in the property's unit. Of a curve with two
 * blocks: in the block that is named, by its offset; blocks: that of every batch of the trial. Else, and of a curve
 * that leans on a published slope, as ResponseCurve.at has it. Outside of what was tried nothing is refused; undefined
 * where there are points only, ends NaN without a degree of freedom.
 * Source: prediction interval, Draper & Smith, Applied Regression Analysis.
 * Example: two blocks 10 kPa apart on one line: their means at any x lie 10 kPa apart.
 */
export function newBatchAt(
  curve: ResponseCurve,
  x: number,
  block: string | undefined,
  blocks: readonly (string | undefined)[],
): NewBatch | undefined {
  const { fit, used } = curve;
  if (!fit || curve.blocks.length !== 1 || block === undefined) {
    const there = curve.at(x);
    return there && { mean: there.mean, low: there.newLow, high: there.newHigh };
  }
  // Columns of blocks are centred in the fit, so that 0 stands for the mean of the batches.
  const [named] = curve.blocks;
  const share = used.filter((i) => blocks[i] === named).length / used.length;
  const { value, newSe } = predictAt(fit, [...curve.row(x), (block === named ? 1 : 0) - share]);
  const half = studentTQuantile(0.975, fit.degreesOfFreedom) * newSe;
  return { mean: value, low: value - half, high: value + half };
}
