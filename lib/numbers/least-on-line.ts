// The least value of a function of one number, where it may have more than one valley.

/** Rounds of golden section after the grid: each keeps 0.618 of the stretch. */
const goldenRounds = 40;
const golden = (Math.sqrt(5) - 1) / 2;

/**
 * The x from low to high at which f is least, and f there: a grid even over ln x, then golden section about its best.
 * x is right to about 1e-5 of a piece of the grid.
 * low, high: above 0, low ≤ high, else throws; steps: pieces of the grid, 2 or more. A valley narrower than two pieces can be missed.
 * @example leastOnLine((x) => (x - 3) ** 2, 1, 10).x // 3.0000…
 */
export function leastOnLine(
  f: (x: number) => number,
  low: number,
  high: number,
  steps = 40,
): { readonly x: number; readonly value: number } {
  if (!(low > 0 && high >= low))
    throw new RangeError(`leastOnLine: from ${low} to ${high} is no stretch above 0`);
  const [from, step] = [Math.log(low), Math.log(high / low) / steps];
  const at = (place: number): number => f(Math.exp(from + step * place));
  let best = { place: 0, value: at(0) };
  for (let place = 1; place <= steps; place++) {
    const value = at(place);
    if (value < best.value) best = { place, value };
  }
  let [left, right] = [Math.max(0, best.place - 1), Math.min(steps, best.place + 1)];
  for (let round = 0; round < goldenRounds && right - left > 1e-5; round++) {
    const [a, b] = [right - golden * (right - left), left + golden * (right - left)];
    const [fa, fb] = [at(a), at(b)];
    if (fa < best.value) best = { place: a, value: fa };
    if (fb < best.value) best = { place: b, value: fb };
    if (fa <= fb) right = b;
    else left = a;
  }
  return { x: Math.exp(from + step * best.place), value: best.value };
}
