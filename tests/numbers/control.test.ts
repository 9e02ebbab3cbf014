// Control charts of a few values: signals, edges, and how well their limits are known.

import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { changePoint } from "../../lib/numbers/change-point.ts";
import { cusum } from "../../lib/numbers/cusum.ts";
import { ewma } from "../../lib/numbers/ewma.ts";
import { individualsChart } from "../../lib/numbers/individuals-chart.ts";
import { limitDoubt } from "../../lib/numbers/limit-doubt.ts";
import { seeded } from "../seeded.ts";

const wobble = [10, 12, 9, 11, 10, 12, 9, 11];
const rules = (values: readonly number[], baseline = values.length) =>
  individualsChart(values, { baseline }).signals.map(({ rule, from, to, side }) => [rule, from, to, side]);

test("a point beyond a limit, and the step to it and back", () => {
  expect(rules([...wobble, 20, 10, 12], 8)).toEqual([
    ["outside", 8, 8, "above"],
    ["range", 7, 8, "above"],
    ["range", 8, 9, "below"],
  ]);
});

test("eight on one side are a run, told once and whole; seven are none, and a value on the mean ends it", () => {
  const low = [10, 9.9, 10.1, 10, 9.9, 10.2, 10, 9.8];
  expect(rules([...wobble, ...low], 8)).toEqual([["run", 8, 15, "below"]]);
  // The wobble ends above its mean of 10.5, so the run begins after it.
  expect(rules([...wobble, ...low, 10], 8)).toEqual([["run", 8, 16, "below"]]);
  expect(rules([...wobble, ...low.slice(0, 7)], 8)).toEqual([]);
  expect(rules([...wobble, ...low.slice(0, 7), 10.5, 10], 8)).toEqual([]);
});

test("six that rise are a trend; five, or one that stands still, are none", () => {
  expect(rules([...wobble, 9, 9.5, 10, 10.5, 11, 11.5], 8)).toEqual([["trend", 8, 13, "above"]]);
  expect(rules([...wobble, 9, 9.5, 10, 10.5, 11], 8)).toEqual([]);
  expect(rules([...wobble, 9, 9.5, 10, 10, 10.5, 11, 11.5], 8)).toEqual([]);
});

test("the same values on another scale give the same signals", () => {
  const values = [...wobble, 20, 10, 12, 9, 9.5, 10, 10.5, 11, 11.5];
  expect(rules(values.map((value) => 6.894757 * value))).toEqual(rules(values));
});

test("values all alike have no width and no signal, also where the mean is rounded", () => {
  const chart = individualsChart(Array.from({ length: 9 }, () => 0.1));
  expect(chart.signals).toEqual([]);
  expect(chart.upper - chart.lower).toBeLessThan(1e-15);
});

test("too few values have no limits; values that are none, and wrong baselines, throw", () => {
  expect(individualsChart([5])).toMatchObject({ mean: 5, upper: Number.NaN, signals: [] });
  expect(individualsChart([])).toMatchObject({ upper: Number.NaN, signals: [] });
  expect(() => individualsChart([1, Number.NaN])).toThrow(Misuse);
  expect(() => individualsChart([1, 2, 3], { baseline: 1 })).toThrow(Misuse);
  expect(() => individualsChart([1, 2, 3], { baseline: 4 })).toThrow(Misuse);
  expect(() => ewma([1], { target: 0, sd: 0 })).toThrow(Misuse);
  expect(() => ewma([1], { target: 0, sd: 1, weight: 1.1 })).toThrow(Misuse);
  expect(() => cusum([1], { target: 0, slack: -1, limit: 1 })).toThrow(Misuse);
  expect(() => changePoint([1, Number.POSITIVE_INFINITY])).toThrow(Misuse);
  expect(() => limitDoubt(1, 2)).toThrow(Misuse);
});

test("limits at each value of a weighted mean: the first is weight × width wide", () => {
  const chart = ewma([1, 2], { target: 0, sd: 2, weight: 0.25, width: 3 });
  expect(chart.upper[0]).toBeCloseTo(0.25 * 3 * 2, 12);
  expect(chart.upper[1]).toBeCloseTo(3 * 2 * Math.hypot(0.25, 0.25 * 0.75), 12);
  expect(chart.lower[1]).toBe(-chart.upper[1]!);
});

test("the weighted mean of weight 1 is the values themselves", () => {
  expect(ewma(wobble, { target: 3, sd: 1, weight: 1 }).smoothed).toEqual(wobble);
});

test("limits and mean of 8 and of 20 values lie within their interval 95 times in 100", () => {
  const random = seeded(5);
  const rows = 2500;
  for (const count of [8, 20]) {
    const inside = { mean: 0, limit: 0 };
    for (let i = 0; i < rows; i++) {
      const chart = individualsChart(Array.from({ length: count }, random.normal));
      const doubt = limitDoubt(chart.meanMovingRange, count);
      if (Math.abs(chart.mean) <= doubt.mean) inside.mean++;
      if (Math.abs(chart.upper - 3) <= doubt.limit) inside.limit++;
    }
    for (const part of Object.values(inside)) {
      expect(part / rows).toBeGreaterThan(0.925);
      expect(part / rows).toBeLessThan(0.975);
    }
  }
});

test("a change of one level is found where it is; the whole row turned round gives the same place", () => {
  const values = [3, 4, 3, 4, 3, 3.5, 8, 9, 8, 8.5, 9, 8];
  const found = changePoint(values)!;
  expect(found).toMatchObject({ at: 6, earliest: 6, latest: 6 });
  expect(found.shift.value).toBeCloseTo(found.after - found.before, 12);
  expect(found.shift.low).toBeGreaterThan(4);
  expect(found.p).toBeLessThan(0.01);
  const turned = changePoint(values.toReversed())!;
  expect(values.length - turned.at).toBe(found.at);
  expect(turned.shift.value).toBeCloseTo(-found.shift.value, 12);
});

test("one outlier at an end is no level; few values, or values all alike, have no change", () => {
  expect(changePoint([10, 11, 10, 11, 10, 11, 10, 11, 10, 30])!.at).toBeLessThanOrEqual(7);
  expect(changePoint([1, 2, 3, 4, 5, 6, 7])).toBeUndefined();
  expect(changePoint(Array.from({ length: 12 }, () => 0.1))).toBeUndefined();
});
