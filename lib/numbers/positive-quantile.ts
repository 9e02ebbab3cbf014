// Quantiles of a distribution of positive numbers, by Newton's steps on the logarithm of the smaller tail.

export interface Tails {
  /** Share below x, and share above it, each with its own digits. */
  readonly below: number;
  readonly above: number;
  /** x times the density at x. */
  readonly slope: number;
}

/**
 * The x above 0 below which a share p lies. p from 0 (gives 0) to 1 (gives ∞), else NaN. start: a first guess above 0.
 * Steps are kept inside the bracket found so far, so a poor guess costs rounds, not the answer.
 * @example positiveQuantile((x) => ({ below: 1 - Math.exp(-x), above: Math.exp(-x), slope: x * Math.exp(-x) }), 0.5, 1) // 0.693...
 */
export function positiveQuantile(tails: (x: number) => Tails, p: number, start: number): number {
  if (!(p >= 0 && p <= 1)) return Number.NaN;
  if (p === 0 || p === 1) return p === 0 ? 0 : Number.POSITIVE_INFINITY;
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  let y = Math.log(start);
  for (let round = 0; round < 200; round++) {
    const { below, above, slope } = tails(Math.exp(y));
    const miss = p < 0.5 ? Math.log(below / p) : Math.log((1 - p) / above);
    if (miss < 0) low = y;
    else high = y;
    const step = (-miss * (p < 0.5 ? below : above)) / slope;
    let next = y + Math.max(-3, Math.min(3, step));
    if (Number.isNaN(next)) next = miss < 0 ? y + 3 : y - 3;
    if (!(next > low && next < high)) {
      // Nothing lies between any more, or Newton's step left the bracket.
      if (!(high - low > 4e-16 * Math.abs(y))) break;
      if (Number.isFinite(low) && Number.isFinite(high)) next = low + (high - low) / 2;
    }
    const moved = Math.abs(next - y);
    y = next;
    if (moved <= 2e-16 * Math.max(1, Math.abs(y))) break;
  }
  return Math.exp(y);
}
