// Water to add now and the next batch in what to weigh, against a mass balance by hand.

import { expect, test } from "vitest";
import { nextRecipe } from "../../lib/finding/next-recipe.ts";
import { tubeAim } from "../../lib/finding/tube-aim.ts";
import { lastBatch, waterNow } from "../../lib/finding/water-now.ts";
import { nextBatchWords, trialFindings, trialReport, waterFindings } from "../../lib/index.ts";
import { lowerTriangle } from "../../lib/numbers/cholesky.ts";
import { normalCumulative } from "../../lib/numbers/normal.ts";
import { seeded } from "../seeded.ts";
import { type InventedBatch, logOf, madeOf } from "./trial-logs.ts";

const aims = ["aims: { moisture: 3.4 to 3.6 % }"];
const single = (moisture: string, head: readonly string[] = aims) =>
  logOf([{ name: "only", moisture }], head);

test("one batch and an aim are enough: 10 kg from 3.0 to 3.5 % need 51.8 g in all", () => {
  const log = single("3.0 ± 0.1 % (95 %)");
  const [dose] = waterNow(trialReport(log), log);
  expect(dose!.per10.verdict).toBe("add");
  // 10 (3.5 − 3.0)/(100 − 3.5) kg, by hand; the first dose is its 10 % quantile: 1.2816 × 0.051 points less.
  const inAll = dose!.per10.verdict === "add" ? dose!.per10.inAllKg.value : Number.NaN;
  expect(inAll).toBeCloseTo(5 / 96.5, 6);
  expect(dose!.per10.nowKg).toBeCloseTo((10 * (0.5 - 1.2816 * (0.1 / 1.96))) / 96.5, 3);
  const [found] = waterFindings(trialReport(log), log);
  expect(found!.text).toMatch(
    /^45 g of water for each 10 kg of sand like only: add that now, mull, test again; about 52 ± at least 10 g in all/,
  );
});

test("too wet: no number below zero, spread and dry, and never poured on", () => {
  const log = single("4.2 ± 0.1 % (95 %)");
  const [found] = waterFindings(trialReport(log), log);
  expect(found!.code).toBe("water/too-wet");
  expect(found!.tone).toBe("doubt");
  expect(found!.text).toContain("never pour on it");
  expect(found!.text).not.toMatch(/[−-]\d/);
});

test("not to be told from the aim: no water yet", () => {
  const log = single("3.5 ± 0.1 % (95 %)");
  expect(waterFindings(trialReport(log), log)[0]!.code).toBe("water/hold");
});

test("the log's heap is dosed as well; without an aim there is no dose", () => {
  const log = single("3.0 ± 0.1 % (95 %)", [...aims, "heap: { mass: 120 kg ± 5 kg }"]);
  const [dose] = waterNow(trialReport(log), log);
  const whole = dose!.heap!.dose;
  expect(whole.verdict === "add" && whole.inAllKg.value).toBeCloseTo((120 * 0.5) / 96.5, 3);
  expect(waterFindings(trialReport(log), log)[0]!.text).toContain("For the heap of 120 ± 5 kg: ");
  const natural = logOf([{ name: "only", compactability: "40 ± 1 %" }]);
  expect(waterNow(trialReport(natural), { ...natural, aims: [] })).toEqual([]);
});

test("in pounds: 10 lb need as many ounces as 10 kg need grams, in proportion", () => {
  const log = single("3.0 ± 0.1 % (95 %)", [...aims, "units: US"]);
  // 0.5/96.5 of 160 oz is 0.83 oz.
  expect(waterFindings(trialReport(log), log)[0]!.text).toContain("about 0.83 ± at least 0.17 oz in all");
});

test("by compactability through the trial's own slope; what each instrument tells apart is known", () => {
  const x = [2.6, 3.0, 3.4, 3.8, 4.2];
  const log = logOf(
    x
      .map(
        (at, k): InventedBatch => ({
          name: `W${k + 1}`,
          moisture: `${at} ± 0.1 % (95 %)`,
          compactability: `${(45 + 12 * (at - 3.4) + [0.2, -0.2, 0.1, -0.2, 0.1][k]!).toFixed(2)} ± 0.5 % (95 %)`,
        }),
      )
      .reverse(),
    ["aims: { compactability: 42 to 48 % }"],
  );
  const doses = waterNow(trialReport(log), log);
  expect(doses.map(({ by }) => by).sort()).toEqual(["compactability", "moisture"]);
  const first = doses.find(({ by }) => by === "compactability");
  expect(first!.tellsPoints).toBeLessThan(doses.find(({ by }) => by === "moisture")!.tellsPoints);
  // 12 points of compactability for one of water: 10/12 for ten.
  expect(first!.sensitivityPercent!.value).toBeCloseTo(10 / 12, 1);
  expect(first!.tellsPoints).toBeCloseTo(0.5 / 12, 2);
  expect(first!.batch).toBe("W1");
});

test("the last batch: by date, then order", () => {
  const log = logOf([
    { name: "early", moisture: "3 %" },
    { name: "late", moisture: "3 %" },
  ]);
  const rows = trialReport(log).rows;
  expect(lastBatch([...rows].reverse())!.batch.name).toBe("late");
  expect(lastBatch([])).toBeUndefined();
});

test("the next batch is weighed by mass balance, waters counted", () => {
  const log = logOf([
    { name: "A", moisture: "3.0 ± 0.05 %", more: [madeOf("0.1272 kg")] },
    { name: "B", moisture: "4.0 ± 0.05 %", more: [madeOf("0.1852 kg")] },
  ]);
  const report = trialReport(log);
  const next = nextRecipe(report)!;
  expect(next.why).toBe("fills a gap");
  expect(next.at).toBeCloseTo(3.5, 6);
  // Dry 5.00 + 0.445 × 0.91 = 5.40495 kg; 3.5 % of damp is 0.19603 kg of water, 0.04005 of it in the clay.
  expect(next.broughtKg).toBeCloseTo(0.04005, 5);
  expect(next.waterKg!.value).toBeCloseTo(0.19603 - 0.04005, 3);
  expect(nextBatchWords(report)).toMatch(
    /^Make the next batch: at 3\.5\d* % moisture of damp mass that is 5\.00 kg of this sand, 445 g of clay from the bag, and about 156 g of water\. Counted in: the 40 g/,
  );
});

test("two batches, or a trial of clay: the dose by compactability goes through published slopes, and follows the least", () => {
  const two = (head: readonly string[]) =>
    logOf(
      [
        { name: "A", compactability: "48 ± 0.5 % (95 %)", more: [madeOf("0.17 kg")] },
        { name: "B", compactability: "40 ± 0.5 % (95 %)", more: [madeOf("0.13 kg")] },
      ],
      ["aims: { compactability: 44 to 46 % }", ...head],
    );
  for (const head of ["trial: { axis: moisture }", "trial: { axis: clay }"]) {
    const log = two([head]);
    const [dose] = waterNow(trialReport(log), log);
    expect(dose!.slopeFrom).toBe("published slopes alone");
    // 5 points up through 0.21 to 1.0 points of moisture for 10: 0.105 to 0.5 points, of 10 kg at 3.5 %, by hand.
    const { inAllKg, nowKg } = dose!.per10 as { inAllKg: { low: number; high: number }; nowKg: number };
    expect(inAllKg.low).toBeGreaterThan((10 * 0.09) / 96.5);
    expect(inAllKg.high).toBeLessThan((10 * 0.55) / 96.5);
    expect(nowKg).toBeLessThan((10 * 0.2) / 96.5);
    const [found] = waterFindings(trialReport(log), log);
    expect(found!.because.join(" ")).toContain("Through published slopes alone");
  }
  const natural = two(["trial: { axis: moisture }"]);
  expect(waterNow(trialReport(natural), { ...natural, bond: "natural" })).toEqual([]);
});

test("three batches of bentonite sand: their slope and what is published give less than half the published range", () => {
  // 3.0, 3.5 and 4.0 %, 36, 46 and 57: 21 points for 1 % of water, 0.476 points for 10.
  const log = logOf(
    [
      { name: "A", moisture: "3.0 ± 0.1 %", compactability: "36 ± 1 %" },
      { name: "B", moisture: "3.5 ± 0.1 %", compactability: "46 ± 1 %" },
      { name: "C", moisture: "4.0 ± 0.1 %", compactability: "57 ± 1 %" },
    ],
    ["trial: { axis: moisture }", "aims: { compactability: 42 to 48 % }"],
  );
  const dose = waterNow(trialReport(log), log).find(({ by }) => by === "compactability")!;
  expect(dose.slopeFrom).toBe("your batches and a published slope");
  const { low, high } = dose.sensitivityPercent!;
  expect(low).toBeLessThan(10 / 21);
  expect(high).toBeGreaterThan(10 / 21);
  expect(high - low).toBeLessThan(0.5 * (1 - 0.21));
});

test("through published slopes the first dose is too much no more often than once in ten, wherever the truth lies between", () => {
  const log = logOf(
    [{ name: "B", compactability: "40 ± 0.5 % (95 %)" }],
    ["trial: { axis: moisture }", "aims: { compactability: 44 to 46 % }"],
  );
  const [dose] = waterNow(trialReport(log), log);
  const truths = Array.from({ length: 400 }, (_, k) => 0.21 + (0.79 * (k + 0.5)) / 400);
  // The need of a heap whose own sensitivity is s: moisture up by s × 5/10 points, of 10 kg at 3.5 %.
  const needs = truths.map((s) => (10 * s * 0.5) / (96.5 - s * 0.5));
  const share = needs.filter((need) => need < dose!.per10.nowKg).length / needs.length;
  expect(share).toBeGreaterThan(0.05);
  expect(share).toBeLessThan(0.13);
  const { low, high } = (dose!.per10 as { inAllKg: { low: number; high: number } }).inAllKg;
  const held = needs.filter((need) => low <= need && need <= high).length / needs.length;
  expect(held).toBeGreaterThan(0.93);
});

const waters = [2.6, 3.0, 3.4, 3.8, 4.2, 4.6];
const risingBatches = waters.map(
  (at, k): InventedBatch => ({
    name: `W${k + 1}`,
    moisture: `${at} ± 0.05 % (95 %)`,
    compactability: `${(45 + 10 * (at - 3.4) + [0.5, -0.5, 0.3, -0.5, 0.5, -0.3][k]!).toFixed(2)} ± 0.5 % (95 %)`,
    strength: `${(70 - 20 * (at - 3.4) + [1, -1, 0.6, -1, 1, -0.6][k]!).toFixed(1)} ± 1 kPa (95 %)`,
  }),
);

test("the aim by the tube: where compactability alone is wanted, the middle of its range, however the curve lies", () => {
  const log = logOf(risingBatches, ["aims: { compactability: 44 to 48 % }"]);
  const report = trialReport(log);
  const { aim } = report.result!;
  const tube = tubeAim(report)!;
  expect(tube.value).toBeCloseTo(46, 0);
  expect(tube.low).toBeLessThanOrEqual(46);
  expect(tube.high).toBeGreaterThanOrEqual(46);
  // Places are looked at a step of the grid apart; height and aim taken as apart would give four times that.
  const step = 10 * ((4.6 - 2.6) / 80);
  const apart = 10 * ((aim.high - aim.low) / 2);
  expect((tube.high - tube.low) / 2).toBeLessThan(step);
  expect(apart).toBeGreaterThan(3 * step);
  const text = trialFindings(report).find(({ code }) => code === "trial/aim-by-tube")!.text;
  expect(text).toMatch(
    /^4[56]\.\d+ ± (at least )?0\.\d+ % compactability is what your own curve has at that aim/,
  );
});

test("the aim by the tube with a strength wanted too: as by curves drawn anew, the best place of each looked for", () => {
  const log = logOf(risingBatches, ["aims: { compactability: 40 to 52 %, green compression: 60 to 64 kPa }"]);
  const report = trialReport(log);
  const tube = tubeAim(report)!;
  const curves = report.properties.filter(({ test: which }) => report.aimed.includes(which));
  const random = seeded(7);
  const heights = Array.from({ length: 3000 }, () => {
    const drawn = curves.map(({ curve }) => {
      const { coefficients, covariance, degreesOfFreedom: df } = curve.fit!;
      const chi = Array.from({ length: df }, () => random.normal() ** 2).reduce((all, one) => all + one, 0);
      const widen = Math.sqrt((df + 0.2) / (chi + 0.2));
      const scores = coefficients.map(() => random.normal());
      const lower = lowerTriangle(covariance);
      const own = coefficients.map(
        (value, k) => value + widen * lower[k]!.reduce((all, one, m) => all + one * (scores[m] ?? 0), 0),
      );
      return (x: number) => curve.row(x).reduce((all, one, k) => all + one * own[k]!, 0);
    });
    const chance = (x: number): number =>
      curves.reduce((all, { curve, wanted }, k) => {
        const sd = curve.fit!.residualSd;
        const y = drawn[k]!(x);
        return (
          all + Math.log(normalCumulative((wanted!.high - y) / sd) - normalCumulative((wanted!.low - y) / sd))
        );
      }, 0);
    const places = Array.from({ length: 81 }, (_, k) => 2.6 + k / 40);
    const best = places.reduce((a, b) => (chance(b) > chance(a) ? b : a));
    return drawn[curves.findIndex(({ test: which }) => which === "compactability")]!(best);
  }).sort((a, b) => a - b);
  const [low, high] = [heights[75]!, heights[2925]!];
  const half = Math.max(tube.value - low, high - tube.value);
  expect((tube.high - tube.low) / 2 / half).toBeGreaterThan(0.88);
  expect((tube.high - tube.low) / 2 / half).toBeLessThan(1.12);
});

test("sand within the range that is wanted is not too wet for lying above its middle", () => {
  const log = logOf(
    [{ name: "B", compactability: "46.5 ± 0.5 % (95 %)" }],
    ["trial: { axis: moisture }", "aims: { compactability: 42 to 48 % }"],
  );
  expect(waterFindings(trialReport(log), log)[0]!.code).toBe("water/hold");
  const above = logOf(
    [{ name: "B", compactability: "49.5 ± 0.5 % (95 %)" }],
    ["trial: { axis: moisture }", "aims: { compactability: 42 to 48 % }"],
  );
  expect(waterFindings(trialReport(above), above)[0]!.code).toBe("water/too-wet");
});
