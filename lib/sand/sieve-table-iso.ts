// ISO 565 openings of woven wire test sieves, mm, coarse to fine.

/**
 * Principal series R20/3: steps of about the square root of two.
 * ISO 565 / ISO 3310-1:2016, as transcribed in open code.
 */
export const isoPrincipalMm: readonly number[] = Object.freeze([
  125, 90, 63, 45, 31.5, 22.4, 16, 11.2, 8, 5.6, 4, 2.8, 2, 1.4, 1, 0.71, 0.5, 0.355, 0.25, 0.18, 0.125, 0.09,
  0.063, 0.045,
]);

/** Supplementary series R40/3, which is the family of the US numbers. Same source. */
export const isoSupplementaryMm: readonly number[] = Object.freeze([
  4.75, 4, 3.35, 2.8, 2.36, 2, 1.7, 1.4, 1.18, 1, 0.85, 0.71, 0.6, 0.5, 0.425, 0.355, 0.3, 0.25, 0.212, 0.18,
  0.15, 0.125, 0.106, 0.09, 0.075, 0.063, 0.053, 0.045, 0.038,
]);

/**
 * What the series R20 adds. Below 1 mm from the same source; above 1 mm from memory (the preferred numbers
 * of ISO 3).
 */
const isoR20Mm: readonly number[] = Object.freeze([
  112, 100, 80, 71, 56, 50, 40, 35.5, 28, 25, 20, 18, 14, 12.5, 10, 9, 7.1, 6.3, 5, 4.5, 3.55, 3.15, 2.5,
  2.24, 1.8, 1.6, 1.25, 1.12, 0.9, 0.8, 0.63, 0.56, 0.45, 0.4, 0.315, 0.28, 0.224, 0.2, 0.16, 0.14, 0.112,
  0.1, 0.08, 0.071, 0.056, 0.05, 0.04, 0.036,
]);

/** Every ISO 565 opening that the library knows, coarse to fine. */
export const isoOpeningsMm: readonly number[] = Object.freeze(
  [...new Set([...isoPrincipalMm, ...isoSupplementaryMm, ...isoR20Mm])].sort((a, b) => b - a),
);
