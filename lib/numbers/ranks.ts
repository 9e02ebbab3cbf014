// Ranks of a list of numbers.

/**
 * Rank of each value, 1 for the smallest; equal values share the mean of their ranks. Any NaN: NaN throughout.
 * @example ranks([10, 30, 10]) // [1.5, 3, 1.5]
 */
export function ranks(values: readonly number[]): number[] {
  if (values.some(Number.isNaN)) return values.map(() => Number.NaN);
  const order = values.map((_, i) => i).sort((i, j) => values[i]! - values[j]!);
  const result = values.map(() => 0);
  for (let from = 0; from < order.length; ) {
    let to = from;
    while (to + 1 < order.length && values[order[to + 1]!] === values[order[from]!]) to++;
    for (let k = from; k <= to; k++) result[order[k]!] = (from + to) / 2 + 1;
    from = to + 1;
  }
  return result;
}
