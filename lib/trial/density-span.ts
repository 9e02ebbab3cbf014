// Which batches were rammed near enough alike for their strengths to stand on one curve.

import { median } from "../numbers/summary.ts";

/** Our own: strength and permeability go steeply with density. */
const densityApartPercent = 3;

/**
 * True for every batch that is left out: the largest set whose densities lie within 3 % of its lightest is kept; of
 * two sets of one size, that whose middle lies nearer to the median of all. densities: g/cm³, above 0, undefined
 * where not known; those batches are kept. Fewer than three known: none is left out, since nothing says which.
 * @example offDensity([1.50, 1.55, 1.56, 1.57]) // [true, false, false, false]
 */
export function offDensity(densities: readonly (number | undefined)[]): readonly boolean[] {
  const known = densities.filter((density) => density !== undefined).sort((a, b) => a - b);
  if (known.length < 3) return densities.map(() => false);
  const middle = median(known);
  // Both ends only go up: the first that is as dense as low, and the first that is too dense to stand with it.
  let [first, end] = [0, 0];
  const spans = known.map((low) => {
    // A hair more than 3 %, so that 1.5 and 1.545 are joined whatever the rounding.
    const most = low * (1 + densityApartPercent / 100) * (1 + 1e-9);
    while (known[first]! < low) first++;
    while (end < known.length && known[end]! <= most) end++;
    const high = known[end - 1]!;
    return { low, high, count: end - first, off: Math.abs((low + high) / 2 - middle) };
  });
  const kept = spans.reduce((best, span) =>
    span.count > best.count || (span.count === best.count && span.off < best.off) ? span : best,
  );
  return densities.map((density) => density !== undefined && (density < kept.low || density > kept.high));
}
