// The plain product of two lists.

/**
 * Σ aᵢbᵢ over the length of a, added one after the other; b at least as long.
 * @example dot([1, 2], [3, 4]) // 11
 */
export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < a.length; i++) total += a[i]! * b[i]!;
  return total;
}

/** A·Aᵀ for a table of rows, times a factor. */
export function rowProducts(rows: readonly ArrayLike<number>[], factor: number): number[][] {
  return rows.map((a) => rows.map((b) => factor * dot(a, b)));
}
