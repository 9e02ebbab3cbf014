// How far the average opening of a test sieve may stand from its name.

/**
 * Permitted deviation of the average opening of a woven test sieve, mm.
 *
 * Y = w^0.98 / 27 + 1.6, with w (nominal opening) and Y in µm.
 * openingMm: 0.02 to 125 mm. Below and above the formula is only carried on; zero or less throws.
 * Source: ISO 3310-1, as ASTM E11 uses it too (formula from memory; every row of the E11 table agrees
 * with it to the digits printed, see tests/reference/sieves.test.ts).
 *
 *     standardToleranceMm(0.150)   // 0.0066: a No. 100 averages 143.4 to 156.6 µm
 */
export function standardToleranceMm(openingMm: number): number {
  if (!(openingMm > 0)) throw new RangeError(`An opening must be above 0 mm, not ${openingMm}.`);
  return ((openingMm * 1000) ** 0.98 / 27 + 1.6) / 1000;
}

/**
 * Largest single opening that a woven test sieve may show, mm.
 *
 * X = 2 w^0.75 / 3 + 4 w^0.25, with w and X in µm; the largest opening is w + X.
 * openingMm: 0.02 to 125 mm; zero or less throws.
 * Source: ISO 3310-1 (formula from memory; the E11 table agrees with it to its rounding).
 *
 *     largestOpeningMm(0.150)   // 0.193
 */
export function largestOpeningMm(openingMm: number): number {
  if (!(openingMm > 0)) throw new RangeError(`An opening must be above 0 mm, not ${openingMm}.`);
  const w = openingMm * 1000;
  return (w + (2 * w ** 0.75) / 3 + 4 * w ** 0.25) / 1000;
}
