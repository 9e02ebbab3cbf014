// Quantiles of a list of numbers.

import { invariant } from "../issue.ts";

/** Where quantile p of n sorted values lies, counted from 0: (n − 1)·p. */
export function quantilePosition(count: number, p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`a quantile needs a share from 0 to 1, not ${p}`);
  return (count - 1) * p;
}

/** A point on the straight line from low (share 0) to high (share 1), never outside the two; NaN between −∞ and ∞. */
export function between(low: number, high: number, share: number): number {
  if (share === 0 || low === high) return low;
  // An end without bounds, or two whose distance is too large for a number.
  if (high - low === Number.POSITIVE_INFINITY) return low * (1 - share) + high * share;
  return share < 0.5 ? low + (high - low) * share : high - (high - low) * (1 - share);
}

/**
 * Quantile of values that are already sorted upwards: straight between order statistics at (n − 1)·p.
 * This is definition 7 of R. J. Hyndman and Y. Fan, The American Statistician 50 (1996) 361–365,
 * which R and numpy take when nothing is said. p from 0 to 1, outside it throws. Empty: NaN.
 * @example quantileSorted([1, 2, 4], 0.75) // 3
 */
export function quantileSorted(sorted: ArrayLike<number>, p: number): number {
  const position = quantilePosition(sorted.length, p);
  if (sorted.length === 0) return Number.NaN;
  const below = Math.floor(position);
  const above = Math.min(below + 1, sorted.length - 1);
  return between(sorted[below]!, sorted[above]!, position - below);
}

/**
 * Quantile of values in any order; the values are left as they are. Definition as for quantileSorted.
 * Any NaN among the values gives NaN.
 * Source: that of quantileSorted.
 * @example quantile([4, 1, 2], 0.5) // 2
 */
export function quantile(values: ArrayLike<number>, p: number): number {
  const sorted = Float64Array.from(values).sort();
  // A typed array sorts NaN to the end.
  if (Number.isNaN(sorted[sorted.length - 1])) return Number.NaN;
  return quantileSorted(sorted, p);
}

/**
 * Several quantiles at once by selection instead of a sort; the order of the values is changed.
 * Definition as for quantileSorted; ps in upward order, each from 0 to 1. Any NaN among the values gives NaN.
 * Two limits of 4,096 to 65,536 draws take about a fifth to a seventh of the time of a typed array's sort
 * (`npm run bench fineness`).
 * Source of the selection: R. W. Floyd and R. L. Rivest, Communications of the ACM 18 (1975) 165–173.
 * @example quantilesInPlace(Float64Array.of(3, 1, 2), [0, 0.5]) // [1, 2]
 */
export function quantilesInPlace(values: Float64Array, ps: readonly number[]): number[] {
  const count = values.length;
  const positions = ps.map((p) => quantilePosition(count, p));
  for (let i = 1; i < positions.length; i++) {
    invariant(positions[i]! >= positions[i - 1]!, "quantilesInPlace needs its shares in upward order");
  }
  for (let i = 0; i < count; i++) if (Number.isNaN(values[i])) return ps.map(() => Number.NaN);
  if (count === 0) return ps.map(() => Number.NaN);
  // Places before `settled` hold what a sort would put there, or will not be asked for; the rest is not smaller.
  let settled = 0;
  const settle = (index: number): void => {
    if (index < settled) return;
    select(values, settled, count - 1, index);
    settled = index + 1;
  };
  return positions.map((position) => {
    const below = Math.floor(position);
    if (below === position) {
      settle(below);
      return values[below]!;
    }
    if (below + 1 >= settled) {
      // One of the two by selection, its neighbour by one pass over the shorter side.
      if (below < settled || below - settled > count - below) {
        settle(below);
        swap(values, below + 1, leastIn(values, below + 1, count));
      } else {
        const from = settled;
        settle(below + 1);
        swap(values, below, largestIn(values, from, below + 1));
      }
      settled = below + 2;
    }
    return between(values[below]!, values[below + 1]!, position - below);
  });
}

function leastIn(values: Float64Array, from: number, end: number): number {
  let place = from;
  for (let i = from + 1; i < end; i++) if (values[i]! < values[place]!) place = i;
  return place;
}

function largestIn(values: Float64Array, from: number, end: number): number {
  let place = from;
  for (let i = from + 1; i < end; i++) if (values[i]! > values[place]!) place = i;
  return place;
}

/** Puts at k what a sort of left..right would put there, nothing larger before it, nothing smaller after it. */
function select(values: Float64Array, left: number, right: number, k: number): void {
  while (right > left) {
    if (right - left > 600) {
      // Select within a sample first, so that the pivot lies just beside the one that is wanted.
      const n = right - left + 1;
      const i = k - left + 1;
      const z = Math.log(n);
      const s = 0.5 * Math.exp((2 * z) / 3);
      const sd = 0.5 * Math.sqrt((z * s * (n - s)) / n) * Math.sign(i - n / 2);
      const from = Math.max(left, Math.floor(k - (i * s) / n + sd));
      const to = Math.min(right, Math.floor(k + ((n - i) * s) / n + sd));
      select(values, from, to, k);
    }
    const pivot = values[k]!;
    let i = left;
    let j = right;
    swap(values, left, k);
    if (values[right]! > pivot) swap(values, left, right);
    while (i < j) {
      const x = values[i]!;
      values[i++] = values[j]!;
      values[j--] = x;
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
    }
    if (values[left] === pivot) {
      swap(values, left, j);
    } else {
      j++;
      swap(values, j, right);
    }
    if (j <= k) left = j + 1;
    if (k <= j) right = j - 1;
  }
}

function swap(values: Float64Array, i: number, j: number): void {
  const x = values[i]!;
  values[i] = values[j]!;
  values[j] = x;
}
