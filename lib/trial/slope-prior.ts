// What others have found, as a guess that a founder's own few batches soon outweigh.

import { informedFit, type NormalPrior, type ScatterPrior } from "../numbers/informed-fit.ts";

/** What others have found, which helped a curve through few batches. Never a ground for an aim or a chance. */
export interface CurvePrior {
  /** A sentence for a page. */
  readonly says: string;
  readonly source: string;
  /** How steep the curve is at a place, per unit of the axis, with the ends of its 95 % interval: batches and prior. */
  slopeAt(where: number): { readonly mean: number; readonly low: number; readonly high: number };
}

/** A normal guess at the slope at one place of the axis, and at the bend, in the property's unit. */
export interface SlopePrior extends Omit<CurvePrior, "slopeAt"> {
  /** Per unit of the axis, in the property's unit, and how far it is taken to scatter from sand to sand (one sd). */
  readonly slope: number;
  readonly sd: number;
  /** The place on the axis that the slope is of. */
  readonly at: number;
  /** Half the second derivative, and its sd; undefined: the course is taken as straight. */
  readonly bend: { readonly value: number; readonly sd: number } | undefined;
  /** What home batches are taken to scatter by about their curve, and with how many degrees of freedom: our own. */
  readonly scatter: ScatterPrior;
}

/**
 * The curve y = b₀ + b₁d + b₂d², d = x − at, through the batches with b₁ (and b₂) normal about what was published, as
 * informedFit has it: mean, its 95 % interval and that of a new batch; and how steep it is. x, y: finite, two different x at least.
 */
export function publishedFit(prior: SlopePrior, x: readonly number[], y: readonly number[]) {
  const { at, bend, slope, sd, scatter } = prior;
  const row = (where: number): number[] => {
    const d = where - at;
    return bend ? [1, d, d * d] : [1, d];
  };
  const priors: NormalPrior[] = [{ row: bend ? [0, 1, 0] : [0, 1], mean: slope, sd }];
  if (bend) priors.push({ row: [0, 0, 1], mean: bend.value, sd: bend.sd });
  const fit = informedFit(x.map(row), y, priors, scatter);
  return {
    at: (where: number) => fit.at(row(where)),
    slopeAt: (where: number) => fit.at(bend ? [0, 1, 2 * (where - at)] : [0, 1]),
  };
}
