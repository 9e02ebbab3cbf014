// The honesty of trials on simulated founders with known truth: intervals cover, and chances come true.

import { expect, test } from "vitest";
import { percent, tryFounders } from "./coverage.ts";

const counts = [5, 6, 8, 12];
const tallies = counts.map((batches) => tryFounders(220, batches, 0, 512));
const together = (pick: (tally: (typeof tallies)[number]) => readonly [number, number]): number =>
  percent(tallies.map(pick).reduce((a, b) => [a[0] + b[0], a[1] + b[1]], [0, 0]) as [number, number]);

test("the interval of the curve covers the true curve in 93 to 97 %", () => {
  const covered = together(({ curve }) => curve);
  expect(covered).toBeGreaterThan(93);
  expect(covered).toBeLessThan(97);
});

test("the interval for a new batch covers it in 93 to 97 %", () => {
  const covered = together(({ newBatch }) => newBatch);
  expect(covered).toBeGreaterThan(93);
  expect(covered).toBeLessThan(97);
});

test("the interval of the aim covers the place that the true curves have in 93 to 97 %", () => {
  const covered = together(({ aim }) => aim);
  expect(covered).toBeGreaterThan(93);
  expect(covered).toBeLessThan(97.5);
});

test("what is given a chance of 70 % comes true in 65 to 75 %", () => {
  const sums = tallies.reduce(
    (all, { chance }) => ({
      promised: all.promised + chance.promised,
      kept: all.kept + chance.kept,
      asked: all.asked + chance.asked,
    }),
    { promised: 0, kept: 0, asked: 0 },
  );
  expect((100 * sums.promised) / sums.asked).toBeGreaterThan(68);
  expect((100 * sums.promised) / sums.asked).toBeLessThan(72);
  expect((100 * sums.kept) / sums.asked).toBeGreaterThan(65);
  expect((100 * sums.kept) / sums.asked).toBeLessThan(75);
});

test("more batches narrow the aim", () => {
  const middles = tallies.map(
    ({ aimWidths }) => [...aimWidths].sort((a, b) => a - b)[aimWidths.length >> 1]!,
  );
  expect(middles.at(-1)!).toBeLessThan(0.8 * middles[0]!);
});

test("four batches make a line where only up or down is possible, and no peak", () => {
  const { curve, aim } = tryFounders(150, 4);
  expect(percent(curve)).toBeGreaterThan(91);
  expect(aim[1]).toBe(0);
});
