// The largest value of a function of direction.

const ring = 90;
const golden = (Math.sqrt(5) - 1) / 2;

/**
 * Largest value over all directions: the best of a ring of 90, then by golden section between its neighbours, to about 1e-12
 * of a smooth value without finer ripples. value: of an angle in radians, with a turn of 2π. Any NaN on the ring: NaN.
 * @example largestOverAngles((angle) => Math.cos(angle - 1)) // 1
 */
export function largestOverAngles(value: (angle: number) => number): number {
  const step = (2 * Math.PI) / ring;
  const values = Array.from({ length: ring }, (_, k) => value(k * step));
  const top = Math.max(...values);
  if (Number.isNaN(top)) return top;
  const best = values.indexOf(top);
  let low = (best - 1) * step;
  let high = (best + 1) * step;
  let a = high - golden * (high - low);
  let b = low + golden * (high - low);
  let [atA, atB] = [value(a), value(b)];
  for (let round = 0; round < 32; round++) {
    if (atA > atB) {
      [high, b, atB] = [b, a, atA];
      a = high - golden * (high - low);
      atA = value(a);
    } else {
      [low, a, atA] = [a, b, atB];
      b = low + golden * (high - low);
      atB = value(b);
    }
  }
  return Math.max(top, atA, atB);
}
