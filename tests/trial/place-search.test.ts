// The search for the best place finds what looking at every place finds, wherever it begins.

import { expect, test } from "vitest";
import { LnChance } from "../../lib/trial/ln-chance.ts";
import { PlaceSearch } from "../../lib/trial/place-search.ts";
import { seeded } from "../seeded.ts";

const grid = Array.from({ length: 81 }, (_, row) => 2 + row / 40);
const u = grid.map((x) => x - 3);

interface Drawn {
  readonly low: number;
  readonly high: number;
  readonly residualSd: number;
  readonly b: readonly [number, number, number];
}

/** Every place by itself, the first of the best. */
function byEvery(drawn: readonly Drawn[]): number {
  const chances = drawn.map(
    ({ low, high, residualSd }) => new LnChance({ curve: { fit: { residualSd } }, low, high }),
  );
  const sums = u.map((at) =>
    drawn.reduce((all, { b: [b0, b1, b2] }, k) => all + chances[k]!.of(b0 + at * (b1 + at * b2)), 0),
  );
  return sums.indexOf(Math.max(...sums));
}

function bySearch(drawn: readonly Drawn[], near: number, stride: number): number {
  const curves = drawn.map(({ low, high, residualSd }) => ({
    curve: { fit: { residualSd }, row: (x: number) => [1, x - 3] },
    low,
    high,
  }));
  const search = new PlaceSearch(curves, grid);
  drawn.forEach(({ b }, k) => {
    search.set(k, ...b);
  });
  return search.best(near, stride);
}

test("of 400 sets of curves, turning or straight, in reach of their ranges or not, the place that is best of all", () => {
  const random = seeded(20260711);
  let twoTops = 0;
  for (let round = 0; round < 400; round++) {
    const drawn = Array.from({ length: random.integer(1, 4) }, (): Drawn => {
      const low = random.uniform(20, 60);
      const bend = random.pick([0, random.normal() * 30]);
      const b = [low + random.normal() * 15, random.normal() * 20, bend] as const;
      return { low, high: low + random.uniform(1, 20), residualSd: random.uniform(0.3, 4), b };
    });
    const every = byEvery(drawn);
    if (drawn.some(({ b }) => Math.abs(b[2]) > 10)) twoTops++;
    for (const [near, stride] of [
      [0, 3],
      [80, 3],
      [random.integer(0, 80), 1],
      [every, 1],
    ] as const)
      expect(bySearch(drawn, near, stride)).toBe(every);
  }
  expect(twoTops).toBeGreaterThan(50);
});

test("of places alike the first, whichever side it is come from", () => {
  // Flat: every place is as good as another.
  const flat: Drawn = { low: 40, high: 50, residualSd: 2, b: [44, 0, 0] };
  for (const near of [0, 1, 40, 80]) expect(bySearch([flat], near, 1)).toBe(0);
  // A parabola about the middle of its range is as near to it on the left as on the right.
  const mirrored: Drawn = { low: 40, high: 50, residualSd: 2, b: [43, 0, 8] };
  const first = byEvery([mirrored]);
  expect(first).toBeLessThan(40);
  for (const near of [0, 40, 80 - first, 80]) expect(bySearch([mirrored], near, 1)).toBe(first);
});

test("the chance in ln is that of the normal distribution, and falls with the distance", () => {
  const chance = new LnChance({ curve: { fit: { residualSd: 2 } }, low: 40, high: 44 });
  // Φ(1) − Φ(−1) = 0.682689492, Φ(2) − Φ(0) = 0.477249868: Abramowitz & Stegun table 26.1.
  expect(Math.exp(chance.of(42))).toBeCloseTo(0.682689492, 5);
  expect(Math.exp(chance.of(44))).toBeCloseTo(0.477249868, 5);
  expect(chance.of(40)).toBe(chance.of(44));
  const falling = Array.from({ length: 200 }, (_, k) => chance.ofDistance(k / 4));
  expect(falling).toEqual([...falling].sort((a, b) => b - a));
  expect(Math.max(...falling)).toBeLessThanOrEqual(0);
});
