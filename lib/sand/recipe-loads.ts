// A heap cut into loads that a muller pan takes, and into buckets.

import { requireAboveZero, requireFromZero } from "./require.ts";

/**
 * How many equal loads a heap is made in, and the damp mass of one, kg: the fewest that fit, n = ⌈heap/pan⌉.
 * heapKg, panKg: damp, > 0, else RangeError. A heap within a billionth of a whole number of pans is that number.
 * Equal loads, so that every load is weighed alike and mulls alike.
 * Source: arithmetic.
 * Example: recipeLoads({ heapKg: 120, panKg: 13 }) is { loads: 10, loadKg: 12 }.
 */
export function recipeLoads({ heapKg, panKg }: { readonly heapKg: number; readonly panKg: number }): {
  readonly loads: number;
  readonly loadKg: number;
} {
  requireAboveZero("recipeLoads", { heapKg, panKg });
  const loads = Math.max(1, Math.ceil(heapKg / panKg - 1e-9));
  return { loads, loadKg: heapKg / loads };
}

/**
 * A mass in buckets: full ones, and what is weighed of the last, kg. bucketKg: what one holds net when it was weighed.
 * massKg: 0 or more; bucketKg > 0; else RangeError. Source: arithmetic. A bucket measures volume: damp sand bulks, by a
 * fifth to a third at 5 to 8 % of water (Neville, Properties of Concrete, from memory), so a bucket holds less sand
 * when it is damp than when it was weighed dry; weigh it anew when the sand's dampness changes.
 * Example: inBuckets({ massKg: 46, bucketKg: 13.5 }) is { full: 3, restKg: 5.5, buckets: 3.407 }.
 */
export function inBuckets({ massKg, bucketKg }: { readonly massKg: number; readonly bucketKg: number }): {
  readonly full: number;
  readonly restKg: number;
  readonly buckets: number;
} {
  requireFromZero("inBuckets", { massKg });
  requireAboveZero("inBuckets", { bucketKg });
  const buckets = massKg / bucketKg;
  const full = Math.floor(buckets + 1e-9);
  return { full, restKg: Math.max(0, massKg - full * bucketKg), buckets };
}
