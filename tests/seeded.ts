// Seeded random numbers for simulations: the same on every machine.

export interface Seeded {
  uniform(low?: number, high?: number): number;
  normal(): number;
  integer(low: number, high: number): number;
  pick<T>(items: readonly T[]): T;
  shuffle<T>(items: readonly T[]): T[];
}

/** SplitMix32 (Steele, Lea & Flood 2014, in 32 bits); normals by Box and Muller. */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return ((z ^ (z >>> 16)) >>> 0) / 2 ** 32;
  };
  const uniform = (low = 0, high = 1): number => low + (high - low) * next();
  const integer = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  return {
    uniform,
    integer,
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    pick: (items) => items[integer(0, items.length - 1)]!,
    shuffle(items) {
      const copy = [...items];
      for (let i = copy.length - 1; i > 0; i--) {
        const j = integer(0, i);
        [copy[i], copy[j]] = [copy[j]!, copy[i]!];
      }
      return copy;
    },
  };
}
