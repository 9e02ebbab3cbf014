// What cannot be told apart from the axis, and what the log does not let us look at.

import { expect, test } from "vitest";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { companionsOf } from "../../lib/trial/companions.ts";
import { confounding, uncheckedCompanions } from "../../lib/trial/confounding.ts";

const x = [2.6, 3, 3.4, 3.8, 4.2, 4.8];

test("clay that grew with the axis is named; weighings that differ by crumbs are not", () => {
  const clay = [7, 7.3, 7.9, 8.2, 8.8, 9];
  expect(confounding({ x, companions: { clay } })).toEqual([{ companion: "clay", rho: 1 }]);
  const crumbs = clay.map((value) => 8 + value / 100);
  expect(confounding({ x, companions: { clay: crumbs } })).toEqual([]);
});

test("a day at one end is named with how far; with 7 of 9 pairs left over it is not at one end", () => {
  const days = ["a", "a", "a", "b", "b", "b"];
  expect(confounding({ x, blocks: days, companions: {} })).toEqual([
    { companion: "day or block", rho: -1, block: "a" },
  ]);
  // SciPy 1.17.1, mannwhitneyu([2.6, 3, 3.8], [3.4, 4.2, 4.8]): U 1 of 9, so 2/9 − 1.
  const [swapped] = confounding({ x, blocks: ["a", "a", "b", "a", "b", "b"], companions: {} });
  expect(swapped).toBeUndefined();
  const eight = [...x, 5, 5.2];
  // U 1 of 16: 2/16 − 1.
  const [one] = confounding({ x: eight, blocks: ["a", "a", "a", "b", "a", "b", "b", "b"], companions: {} });
  expect(one?.rho).toBeCloseTo(-0.875, 12);
});

test("days that are spread over the axis, or of one batch each, are no fault", () => {
  expect(confounding({ x, blocks: ["a", "b", "a", "b", "a", "b"], companions: {} })).toEqual([]);
  expect(confounding({ x, blocks: ["a", "b", "c", "d", "e", "f"], companions: {} })).toEqual([]);
  expect(confounding({ x, blocks: ["a", "a", "a", "a", "a", "b"], companions: {} })).toEqual([]);
});

test("a heap wetted in part is named apart from one wetted all the way", () => {
  const part = [false, true, false, true, false, false];
  expect(confounding({ x, sameHeap: part, companions: {} })).toEqual([
    { companion: "some batches wetted from the one before", rho: 2 / 5, batches: 2 },
  ]);
  const all = [false, true, true, true, true, true];
  expect(confounding({ x, sameHeap: all, companions: {} })).toEqual([
    { companion: "one heap wetted step by step", rho: 1 },
  ]);
  expect(confounding({ x, sameHeap: x.map(() => false), companions: {} })).toEqual([]);
});

test("what the log does not say was not looked at, and is listed with the reason", () => {
  const none = x.map(() => undefined);
  const found = uncheckedCompanions({
    x,
    companions: {
      "trial order": none,
      "minutes mulled": [10, 10, 10, 10, 10, 10],
      density: [1.55, 1.56, undefined, undefined, undefined, undefined],
    },
  });
  expect(found).toEqual([
    { companion: "trial order", why: "order not said" },
    { companion: "density", why: "density tested for fewer than four batches" },
    { companion: "day or block", why: "day and block not said" },
  ]);
});

test("two or three batches cannot show what went along, even where the order is said", () => {
  const of = (places: readonly number[]) =>
    uncheckedCompanions({ x: places, companions: { "trial order": places.map((_, i) => i + 1) } });
  expect(of([3])).toEqual([]);
  for (const few of [[3, 4], [3, 3.5, 4]]) // biome-ignore format: a list of two
    expect(of(few)).toEqual([{ companion: "trial order", why: "fewer than four batches in all" }]);
  expect(of([3, 3.5, 4, 4.5]).map(({ why }) => why)).toEqual(["day and block not said"]);
});

function rowsOf(compactability: readonly number[]) {
  const batches = compactability.map(
    (value, i) =>
      `  C${i}: { date: 2026-08-0${1 + (i % 2)}, compactability: ${value} ± 1 %, moisture: ${(2.5 + i / 3).toFixed(2)} ± 0.1 %, made of: { sand: 5 kg, bentonite: ${(0.3 + i / 10).toFixed(1)} kg, water: 0.15 kg } }`,
  );
  const { value } = readLog(`format: 1\nbatches:\n${batches.join("\n")}\n`, { name: "log.yaml" });
  const { figures } = batchFigures(value!);
  return { figures, clay: figures.map(({ recipe }) => recipe!.clayOfDryMixPercent!.value) };
}

test("along clay: water that follows the clay at one compactability is meant to; without tempering it confounds", () => {
  const tempered = rowsOf([45, 46, 44, 45, 46]);
  expect(confounding(companionsOf("clay", tempered.figures, tempered.clay))).toEqual([]);
  const loose = rowsOf([35, 39, 44, 50, 55]);
  const found = confounding(companionsOf("clay", loose.figures, loose.clay));
  expect(found.map(({ companion }) => companion)).toEqual(["compactability", "moisture"]);
});

test("along moisture: clay is looked at and compactability, which the water moves, is not", () => {
  const { figures } = rowsOf([35, 39, 44, 50, 55]);
  const wet = figures.map(({ tests }) => tests.moisture!.value);
  const found = confounding(companionsOf("moisture", figures, wet));
  expect(found.map(({ companion }) => companion)).toEqual(["clay"]);
  const why = uncheckedCompanions(companionsOf("moisture", figures, wet)).map((one) => one.why);
  expect(why).toEqual([
    "order not said",
    "minutes mulled not said",
    "minutes stood not said",
    "density not tested",
  ]);
});
