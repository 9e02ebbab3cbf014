// Mean, spread and middle of a list of numbers.

import { quantile } from "./quantile.ts";
import { sum } from "./sum.ts";

/**
 * Arithmetic mean Σx / n. Empty: NaN.
 * Source: its definition.
 * @example mean([1, 2, 6]) // 3
 */
export function mean(values: ArrayLike<number>): number {
  return sum(values) / values.length;
}

/** Σ (x − mean)², in two passes, less what rounding of the mean leaves over. */
function squaresAboutMean(values: ArrayLike<number>): number {
  const middle = mean(values);
  const from = Float64Array.from(values, (x) => x - middle);
  const left = sum(from);
  return sum(from.map((d) => d * d)) - (left * left) / values.length;
}

/**
 * Standard deviation of a sample: √(Σ(x − mean)² / (n − 1)). Fewer than two values: NaN.
 * Method: two passes with a correction, T. F. Chan, G. H. Golub and R. J. LeVeque, The American Statistician 37 (1983) 242–247.
 * @example sampleStandardDeviation([3.0, 3.4, 3.0]) // 0.2309...
 */
export function sampleStandardDeviation(values: ArrayLike<number>): number {
  if (values.length < 2) return Number.NaN;
  return Math.sqrt(Math.max(0, squaresAboutMean(values)) / (values.length - 1));
}

/**
 * One standard deviation learnt from repeats of several things: √(Σ Σ(x − own mean)² / Σ(nᵢ − 1)).
 * Groups with fewer than two values teach nothing and are passed over. No repeat at all: sd NaN with 0 degrees of freedom.
 * Source: GUM (JCGM 100:2008) 4.2.4 and H.3.6; ISO 5725-2:1994 7.4.5 (from memory).
 * @example pooledStandardDeviation([[1, 3], [10, 12, 14]]) // { sd: 1.825..., degreesOfFreedom: 3 }
 */
export function pooledStandardDeviation(groups: readonly ArrayLike<number>[]): {
  readonly sd: number;
  readonly degreesOfFreedom: number;
} {
  const repeated = groups.filter((group) => group.length >= 2);
  const degreesOfFreedom = sum(repeated.map((group) => group.length - 1));
  const squares = sum(repeated.map((group) => Math.max(0, squaresAboutMean(group))));
  return { sd: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom };
}

/**
 * The middle value, or the mean of the middle two. Empty: NaN.
 * Source: its definition.
 * @example median([7, 1, 3, 2]) // 2.5
 */
export function median(values: ArrayLike<number>): number {
  return quantile(values, 0.5);
}
