// The distributions that a source of doubt may have, by their quantiles; the share below x of those that a test asks.

export { curvilinearTrapezoidQuantile } from "./curvilinear-trapezoid.ts";
export { normalCumulative, normalQuantile } from "./normal.ts";
export { studentTCumulative, studentTQuantile } from "./student-t.ts";

/** A bounded distribution is given by its two ends; low below high, else it throws. */
function widthOf(low: number, high: number): number {
  if (!(low < high)) throw new RangeError(`a distribution from ${low} to ${high} has no width`);
  return high - low;
}

/** The place at a share of the way, worked out from the middle so that it is antisymmetric. */
function placeOf(fromMiddle: number, low: number, high: number): number {
  return low + widthOf(low, high) / 2 + fromMiddle * (high - low);
}

function isShare(p: number): boolean {
  return p >= 0 && p <= 1;
}

/**
 * Quantile of the rectangular distribution (JCGM 101:2008, 6.4.2), low + p·(high − low); p from 0 to 1, else NaN.
 * @example rectangularQuantile(0.975) // 0.95
 */
export function rectangularQuantile(p: number, low = -1, high = 1): number {
  return isShare(p) ? placeOf(p - 0.5, low, high) : Number.NaN;
}

/**
 * Quantile of the symmetric triangular distribution (JCGM 101:2008, 6.4.5), the sum of two equal rectangular ones; p from 0 to 1, else NaN.
 * @example triangularQuantile(0.875) // 0.5
 */
export function triangularQuantile(p: number, low = -1, high = 1): number {
  if (!isShare(p)) return Number.NaN;
  const fromMiddle = p < 0.5 ? Math.sqrt(p / 2) - 0.5 : 0.5 - Math.sqrt((1 - p) / 2);
  return placeOf(fromMiddle, low, high);
}

/**
 * Quantile of the arcsine distribution (JCGM 101:2008, 6.4.6), of a value that swings like a sine between two ends;
 * p from 0 to 1, else NaN.
 * @example arcsineQuantile(0.6666666666666666) // 0.5
 */
export function arcsineQuantile(p: number, low = -1, high = 1): number {
  return isShare(p) ? placeOf(Math.sin(Math.PI * (p - 0.5)) / 2, low, high) : Number.NaN;
}
