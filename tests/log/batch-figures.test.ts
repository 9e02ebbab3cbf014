// Repeats averaged, scatter pooled, methods kept apart; and what the ± of repeated tests covers.

import { expect, test } from "vitest";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import { studentTQuantile } from "../../lib/numbers/distributions.ts";
import { figure } from "../../lib/quantity/figure.ts";
import { seeded } from "../seeded.ts";
import { readTrial } from "./trial-log.ts";

const figuresOf = (batches: readonly string[]) =>
  batchFigures(readTrial(`format: 1\nbatches:\n${batches.map((line) => `  ${line}\n`).join("")}`).value!);

test("repeats are averaged; the scatter of all of them stands in for a test done once", () => {
  const { figures, pooled } = figuresOf([
    "A: { date: 2026-04-11, compactability: [44, 46, 45] }",
    "B: { date: 2026-04-11, compactability: [50, 52, 51] }",
    "C: { date: 2026-04-11, compactability: 48 }",
  ]);
  // Each triple has variance 1 with 2 degrees of freedom: pooled sd 1 with 4.
  expect(pooled.compactability).toEqual({ sd: 1, degreesOfFreedom: 4 });
  const [a, , c] = figures.map(({ tests }) => tests.compactability!);
  expect(a).toMatchObject({
    value: 45,
    each: [44, 46, 45],
    repeat: { sd: 1, degreesOfFreedom: 4, pooled: true },
  });
  const half = studentTQuantile(0.975, 4);
  expect(figure(a!.spread).high - 45).toBeCloseTo(half / Math.sqrt(3), 2);
  expect(figure(c!.spread).high - 48).toBeCloseTo(half, 2);
  expect(c!.missing).toEqual([]);
});

test("too few repeats stand in for nothing: the ± is said to lack them", () => {
  const { figures } = figuresOf([
    "A: { date: 2026-04-11, compactability: [44, 46] }",
    "B: { date: 2026-04-11, compactability: 48 ± 1 }",
  ]);
  const [a, b] = figures.map(({ tests }) => tests.compactability!);
  expect(a?.repeat).toMatchObject({ degreesOfFreedom: 1, pooled: false });
  expect(b?.repeat).toBeUndefined();
  expect(b?.missing).toEqual(["repeats"]);
});

test("drying methods are kept apart, and the middle of squeezes is a step", () => {
  const { figures } = figuresOf([
    "A: { date: 2026-04-11, moisture: { method: oven, damp: 100 g, dry: 97 g }, squeeze: [2, 3, 3] }",
    "B: { date: 2026-04-11, moisture: [{ method: oven, damp: 100 g, dry: 96.6 g }, { method: pan, damp: 100 g, dry: 96.2 g }] }",
    "C: { date: 2026-04-11, moisture: { method: pan, damp: 100 g, dry: 95.8 g } }",
  ]);
  const [a, b, c] = figures;
  expect(a?.tests.squeeze).toMatchObject({ value: 3, each: [2, 3, 3] });
  expect(b?.tests.moisture?.value).toBeCloseTo(3.4, 9);
  expect(b?.apart.map(({ method, value }) => [method, value.toFixed(1)])).toEqual([["pan", "3.8"]]);
  expect(c?.tests.moisture).toBeUndefined();
  expect(c?.apart).toHaveLength(1);
});

test("the recipe gives its shares with the doubt of the weighings", () => {
  const text = `format: 1
scales: { s: { reads to: 10 g, within: 20 g } }
batches:
  A: { date: 2026-04-11, made of: { sand: 10 kg, bentonite: 0.8 kg, water: 0.5 kg, scale: s }, squeeze: 3 }
`;
  const recipe = batchFigures(readTrial(text).value!).figures[0]!.recipe!;
  // Exam-note batch: 7.41 % of dry mix, 4.42 % of damp mass, water per clay 0.625.
  expect(recipe.clayOfDryMixPercent.value).toBeCloseTo(7.407, 3);
  expect(recipe.moistureOfDampPercent.value).toBeCloseTo(4.425, 3);
  expect(recipe.waterPerClay?.value).toBeCloseTo(0.625, 9);
  // By hand: triangular ± 10 g has sd 4.08 g, the shared bias ± 20 g has 11.55 g; w/c moves by 1.25 and −0.781 per kg.
  const byHand = Math.hypot(1.25 * 0.00408, 0.781 * 0.00408, (1.25 - 0.781) * 0.01155);
  expect(figure(recipe.waterPerClay!).sd).toBeCloseTo(byHand, 3);
  expect(recipe.assumed).toEqual(["the sand went in dry", "the bagged clay held no water"]);
});

test("95 % intervals of repeated tests hold the truth in 93 to 97 % of invented logs", () => {
  const random = seeded(20_260_411);
  const logs = 500;
  let held = 0;
  let count = 0;
  for (let i = 0; i < logs; i++) {
    const truths = [38, 43, 47, 52];
    const lines = truths.map((truth, k) => {
      const each = Array.from({ length: [3, 2, 1, 2][k]! }, () => (truth + 1.3 * random.normal()).toFixed(2));
      return `B${k}: { date: 2026-04-11, compactability: [${each.join(", ")}] }`;
    });
    // Three degrees of freedom or more among them, so that the one done once has an interval too.
    const { figures } = figuresOf(lines);
    figures.forEach(({ tests }, k) => {
      const { low, high } = figure(tests.compactability!.spread, { draws: 1024 });
      count++;
      if (low <= truths[k]! && truths[k]! <= high) held++;
    });
  }
  expect(count).toBe(4 * logs);
  expect(held / count).toBeGreaterThan(0.93);
  expect(held / count).toBeLessThan(0.97);
});
