// Graphic grain measures of Folk and Ward (1957), and the words for them.

import type { PhiPercentiles } from "./percentiles.ts";

export interface GrainMeasures {
  readonly meanPhi: number | undefined;
  /** Standard deviation, phi: the smaller, the better sorted. */
  readonly sortingPhi: number | undefined;
  /** Above 0: a tail of fine grains. */
  readonly skewness: number | undefined;
  readonly kurtosis: number | undefined;
}

/**
 * Inclusive graphic measures, phi.
 *   mean      (φ16 + φ50 + φ84) / 3
 *   sorting   (φ84 − φ16) / 4 + (φ95 − φ5) / 6.6
 *   skewness  (φ16 + φ84 − 2φ50) / (2(φ84 − φ16)) + (φ5 + φ95 − 2φ50) / (2(φ95 − φ5))
 *   kurtosis  (φ95 − φ5) / (2.44(φ75 − φ25)), 1 for a normal curve
 * Percentiles are cumulative from the coarse end. A measure whose percentiles are missing, or whose spread is 0,
 * is undefined.
 * Source: Folk & Ward 1957, as Folk, Petrology of Sedimentary Rocks, prints them. (One journal table prints /6
 * for /6.6: a misprint, since φ95 − φ5 of a normal curve is 3.29 standard deviations, half of 6.6.)
 * Example: φ5, 16, 25, 50, 75, 84, 95 of a normal curve with mean 2 and deviation 0.5: 2, 0.50, 0, 1.00.
 */
export function folkWard(phi: PhiPercentiles): GrainMeasures {
  const { phi5, phi16, phi25, phi50, phi75, phi84, phi95 } = phi;
  const core = phi16 !== undefined && phi50 !== undefined && phi84 !== undefined;
  const tails = core && phi5 !== undefined && phi95 !== undefined;
  const skewable = tails && phi84 > phi16 && phi95 > phi5;
  return {
    meanPhi: core ? (phi16 + phi50 + phi84) / 3 : undefined,
    sortingPhi: tails ? (phi84 - phi16) / 4 + (phi95 - phi5) / 6.6 : undefined,
    skewness: skewable
      ? (phi16 + phi84 - 2 * phi50) / (2 * (phi84 - phi16)) +
        (phi5 + phi95 - 2 * phi50) / (2 * (phi95 - phi5))
      : undefined,
    kurtosis:
      phi5 !== undefined && phi95 !== undefined && phi25 !== undefined && phi75 !== undefined && phi75 > phi25
        ? (phi95 - phi5) / (2.44 * (phi75 - phi25))
        : undefined,
  };
}

/**
 * Transformed kurtosis KG / (1 + KG): 0.50 for a normal curve, always below 1. Source: Folk & Ward 1957.
 * kurtosis: ≥ 0, else RangeError. Example: transformedKurtosis(1.5) is 0.6.
 */
export function transformedKurtosis(kurtosis: number): number {
  if (!(kurtosis >= 0))
    throw new RangeError(`transformedKurtosis: kurtosis must not be negative, got ${kurtosis}`);
  return kurtosis / (1 + kurtosis);
}

type Words = readonly (readonly [below: number, words: string])[];

/** A figure on a limit belongs to the class above it. */
function wordsFor(figure: number, words: Words): string {
  return words.find(([below]) => figure < below)![1];
}

/**
 * Folk's word for a sorting in phi. Limits 0.35, 0.50, 0.71, 1, 2, 4.
 * Sources disagree on one limit: 0.71 in Folk and in notes of a national survey, 0.70 in a university's page;
 * moderatelyFrom chooses, and a figure between the two deserves both words.
 * sortingPhi: ≥ 0, else RangeError. Example: sortingClass(0.42) is "well sorted".
 */
export function sortingClass(sortingPhi: number, moderatelyFrom: 0.71 | 0.7 = 0.71): string {
  if (!(sortingPhi >= 0))
    throw new RangeError(`sortingClass: sortingPhi must not be negative, got ${sortingPhi}`);
  return wordsFor(sortingPhi, [
    [0.35, "very well sorted"],
    [0.5, "well sorted"],
    [moderatelyFrom, "moderately well sorted"],
    [1, "moderately sorted"],
    [2, "poorly sorted"],
    [4, "very poorly sorted"],
    [Number.POSITIVE_INFINITY, "extremely poorly sorted"],
  ]);
}

/**
 * Folk's word for a graphic skewness. Limits ±0.10 and ±0.30; graphic skewness lies within −1 to 1, beyond: RangeError.
 * Source: Folk & Ward 1957.
 * Example: skewnessClass(-0.046) is "near-symmetrical".
 */
export function skewnessClass(skewness: number): string {
  if (!(Math.abs(skewness) <= 1 + 1e-9))
    throw new RangeError(`skewnessClass: skewness must be −1 to 1, got ${skewness}`);
  return wordsFor(skewness, [
    [-0.3, "strongly coarse-skewed"],
    [-0.1, "coarse-skewed"],
    [0.1, "near-symmetrical"],
    [0.3, "fine-skewed"],
    [Number.POSITIVE_INFINITY, "strongly fine-skewed"],
  ]);
}

/**
 * Folk's word for a graphic kurtosis. Limits 0.67, 0.90, 1.11, 1.50, 3.00.
 * kurtosis: ≥ 0, else RangeError.
 * Source: Folk & Ward 1957. Example: kurtosisClass(1) is "mesokurtic".
 */
export function kurtosisClass(kurtosis: number): string {
  if (!(kurtosis >= 0)) throw new RangeError(`kurtosisClass: kurtosis must not be negative, got ${kurtosis}`);
  return wordsFor(kurtosis, [
    [0.67, "very platykurtic"],
    [0.9, "platykurtic"],
    [1.11, "mesokurtic"],
    [1.5, "leptokurtic"],
    [3, "very leptokurtic"],
    [Number.POSITIVE_INFINITY, "extremely leptokurtic"],
  ]);
}
