// The distributions that a source of doubt may have: share below x, quantile, standard deviation.

export {
  curvilinearTrapezoidCumulative,
  curvilinearTrapezoidQuantile,
  curvilinearTrapezoidStandardDeviation,
} from "./curvilinear-trapezoid.ts";
export { normalCumulative, normalQuantile } from "./normal.ts";
export { studentTCumulative, studentTQuantile, studentTStandardDeviation } from "./student-t.ts";

/** A bounded distribution is given by its two ends; low below high, else it throws. */
function widthOf(low: number, high: number): number {
  if (!(low < high)) throw new RangeError(`a distribution from ${low} to ${high} has no width`);
  return high - low;
}

/** x as a share of the way from low to high, held to 0..1. */
function shareOf(x: number, low: number, high: number): number {
  return Math.min(1, Math.max(0, (x - low) / widthOf(low, high)));
}

/** The place at a share of the way, worked out from the middle so that it is antisymmetric. */
function placeOf(fromMiddle: number, low: number, high: number): number {
  return low + widthOf(low, high) / 2 + fromMiddle * (high - low);
}

function isShare(p: number): boolean {
  return p >= 0 && p <= 1;
}

/**
 * Rectangular distribution (JCGM 101:2008, 6.4.2): share below x = (x − low)/(high − low), 0 below and 1 above.
 * @example rectangularCumulative(0.5) // 0.75
 */
export function rectangularCumulative(x: number, low = -1, high = 1): number {
  return shareOf(x, low, high);
}

/**
 * Quantile low + p·(high − low); p from 0 to 1, else NaN.
 * @example rectangularQuantile(0.975) // 0.95
 */
export function rectangularQuantile(p: number, low = -1, high = 1): number {
  return isShare(p) ? placeOf(p - 0.5, low, high) : Number.NaN;
}

/** (high − low)/√12 (GUM 4.3.7). */
export function rectangularStandardDeviation(low = -1, high = 1): number {
  return widthOf(low, high) / Math.sqrt(12);
}

/**
 * Symmetric triangular distribution (JCGM 101:2008, 6.4.5): sum of two equal rectangular ones.
 * With s the share of the way: 2s² up to the middle, 1 − 2(1 − s)² after it.
 * @example triangularCumulative(0.5) // 0.875
 */
export function triangularCumulative(x: number, low = -1, high = 1): number {
  const s = shareOf(x, low, high);
  return s < 0.5 ? 2 * s * s : 1 - 2 * (1 - s) ** 2;
}

/**
 * Quantile of the symmetric triangular distribution; p from 0 to 1, else NaN.
 * @example triangularQuantile(0.875) // 0.5
 */
export function triangularQuantile(p: number, low = -1, high = 1): number {
  if (!isShare(p)) return Number.NaN;
  const fromMiddle = p < 0.5 ? Math.sqrt(p / 2) - 0.5 : 0.5 - Math.sqrt((1 - p) / 2);
  return placeOf(fromMiddle, low, high);
}

/** (high − low)/√24 (GUM 4.3.9, with the top of the trapezoid shrunk to a point). */
export function triangularStandardDeviation(low = -1, high = 1): number {
  return widthOf(low, high) / Math.sqrt(24);
}

/**
 * Arcsine distribution (JCGM 101:2008, 6.4.6), of a value that swings like a sine between two ends:
 * share below x = ½ + arcsin((2x − low − high)/(high − low))/π, 0 below and 1 above.
 * @example arcsineCumulative(0.5) // 0.6666...
 */
export function arcsineCumulative(x: number, low = -1, high = 1): number {
  return 0.5 + Math.asin(2 * shareOf(x, low, high) - 1) / Math.PI;
}

/**
 * Quantile of the arcsine distribution; p from 0 to 1, else NaN.
 * @example arcsineQuantile(0.6666666666666666) // 0.5
 */
export function arcsineQuantile(p: number, low = -1, high = 1): number {
  return isShare(p) ? placeOf(Math.sin(Math.PI * (p - 0.5)) / 2, low, high) : Number.NaN;
}

/** (high − low)/√8 (JCGM 101:2008, 6.4.6.3). */
export function arcsineStandardDeviation(low = -1, high = 1): number {
  return widthOf(low, high) / Math.sqrt(8);
}
