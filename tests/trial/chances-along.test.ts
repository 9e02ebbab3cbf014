// Shares of draws that meet ranges, told run by run, are those of looking at every draw at every place.

import { expect, test } from "vitest";
import { chancesAlong, type DrawnRange } from "../../lib/trial/chances-along.ts";
import { seeded } from "../seeded.ts";

function byEvery(ranges: readonly DrawnRange[]): { each: number[][]; all: number[] } {
  const [{ u, batch }] = ranges as readonly [DrawnRange];
  const isMet = (
    { low, high, level, slope, bend, batch, u }: DrawnRange,
    i: number,
    row: number,
  ): boolean => {
    const y = batch[i]! + level[i]! + u[row]! * slope[i]! + u[row]! * u[row]! * (bend?.[i] ?? 0);
    return y >= low && y <= high;
  };
  const share = (met: (i: number, row: number) => boolean): number[] =>
    u.map((_, row) => batch.reduce((sum, _, i) => sum + Number(met(i, row)), 0) / batch.length);
  return {
    each: ranges.map((range) => share((i, row) => isMet(range, i, row))),
    all: share((i, row) => ranges.every((range) => isMet(range, i, row))),
  };
}

const told = (ranges: readonly DrawnRange[]) => {
  const { each, all } = chancesAlong(ranges);
  return { each: each.map((of) => [...of]), all: [...all] };
};

test("60 sets of one to four properties, straight and turning, over 1 to 81 places", () => {
  const random = seeded(20260711);
  let between = 0;
  for (let round = 0; round < 60; round++) {
    const places = random.pick([1, 2, 8, 9, 16, 65, 81]);
    const u = Array.from({ length: places }, (_, row) =>
      places === 1 ? 0.3 : -1 + (2 * row) / (places - 1),
    );
    const column = (mean: number, sd: number) =>
      Float64Array.from({ length: 64 }, () => mean + sd * random.normal());
    const ranges = Array.from({ length: random.integer(1, 4) }, (): DrawnRange => {
      const low = random.uniform(20, 60);
      const high = low + random.uniform(1, 20);
      const bend = random.pick([undefined, column(0, 20), new Float64Array(64)]);
      const level = column((low + high) / 2, 6);
      return { low, high, level, slope: column(0, 12), bend, batch: column(0, 2), u };
    });
    const found = told(ranges);
    expect(found).toEqual(byEvery(ranges));
    between += found.all.filter((share) => share > 0.1 && share < 0.9).length;
  }
  expect(between).toBeGreaterThan(300);
});

test("a batch that lies on an edge meets the range; one that turns within a run is seen there", () => {
  const one = (value: number) => Float64Array.of(value);
  const line: DrawnRange = {
    low: 40,
    high: 44,
    level: one(42),
    slope: one(2),
    bend: undefined,
    batch: one(0),
    u: [-1.5, -1, -0.5, 0, 0.5, 1, 1.5],
  };
  expect(told([line])).toEqual({ each: [[0, 1, 1, 1, 1, 1, 0]], all: [0, 1, 1, 1, 1, 1, 0] });
  // 41 at both ends of the run and 45 in its middle, where it is too high.
  const hill: DrawnRange = {
    ...line,
    slope: one(0),
    level: one(45),
    bend: one(-4),
    u: [-1, -0.5, 0, 0.5, 1, 1, 1, 1],
  };
  expect(told([hill]).all).toEqual([1, 1, 0, 1, 1, 1, 1, 1]);
});
