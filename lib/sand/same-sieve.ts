// When two openings are one sieve.

/**
 * Openings that differ by less than this share are one sieve. Older tables and makers' labels print 1.68 mm for what
 * is 1.70 mm today, 0.84 for 0.850 and 0.105 for 0.106 (up to 1.2 % apart); the next finer sieve of the closest standard
 * series (ISO 565, R 40/3 with R 20) lies 5 % away. Our own, from those.
 */
const sameSieveWithin = 0.015;

/**
 * True where two openings, mm, 0 or more, are one sieve: the smaller ≥ 0.985 × the larger. The pan (0) is like the
 * pan alone, and no sieve at all (infinite) like none alone.
 * @example sameSieve(1.68, 1.7) // true
 */
export function sameSieve(aMm: number, bMm: number): boolean {
  return Math.min(aMm, bMm) >= (1 - sameSieveWithin) * Math.max(aMm, bMm);
}
