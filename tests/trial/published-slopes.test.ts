// Published slopes: the figures they come from, where they are used, and that their intervals hold.

import { expect, test } from "vitest";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";
import { sampleStandardDeviation } from "../../lib/numbers/summary.ts";
import { equilibriumMoisturePercent } from "../../lib/sand/equilibrium-moisture.ts";
import { publishedWaterSensitivity } from "../../lib/sand/published-water-sensitivity.ts";
import { permeabilitySeries } from "../../lib/sand/typical-points.ts";
import { publishedSlope } from "../../lib/trial/published-slopes.ts";
import { type ResponseCurve, responseCurve } from "../../lib/trial/response-curve.ts";
import type { SlopePrior } from "../../lib/trial/slope-prior.ts";
import { seeded } from "../seeded.ts";
import { fewFounders } from "./few-founders.ts";

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

test("permeability: slope at 4.5 % and bend are those of the three series, the sd what one more may show", () => {
  // Universitas Brawijaya, table 2.2; the cell of a second copy is left out.
  const series = [6, 8].map((clay) =>
    permeabilitySeries.filter((row) => row.clayPercent === clay && !("note" in row)),
  );
  const fits = series.map((rows) => {
    const x = rows.map(({ moisturePercent }) => moisturePercent - 4.5);
    const y = rows.map(({ permeability }) => permeability);
    const { coefficients } = fitPolynomial(x, y, 2);
    return coefficients.map((b) => b / mean(y));
  });
  const bends = fits.map(([, , b2]) => b2!);
  // Universitas Sebelas Maret: 103.67 at 4 % and 83.00 at 8 %, so the slope of 6 %, brought to 4.5 % by the bend.
  const third = (83 - 103.67) / 4 / mean([83, 103.67]) - 2 * mean(bends) * 1.5;
  const slopes = [...fits.map(([, b1]) => b1!), third];
  const prior = publishedSlope("permeability", "moisture", [3, 4, 5], [100, 100, 100])!;
  expect(prior.slope / 100).toBeCloseTo(mean(slopes), 3);
  expect(prior.bend!.value / 100).toBeCloseTo(mean(bends), 3);
  const widened = (values: readonly number[]): number =>
    (studentTQuantile(0.975, values.length - 1) / 1.96) *
    sampleStandardDeviation(values) *
    Math.sqrt(1 + 1 / values.length);
  expect(prior.sd / 100).toBeCloseTo(widened(slopes), 2);
  expect(prior.bend!.sd / 100).toBeCloseTo(widened(bends), 2);
});

test("no prior for strength, for a natural order of things unknown, nor outside the waters tried", () => {
  expect(publishedSlope("green compression", "moisture", [3, 4, 5], [50, 60, 55])).toBeUndefined();
  expect(publishedSlope("permeability", "moisture", [2.4, 3, 4], [50, 60, 55])).toBeUndefined();
  expect(publishedSlope("compactability", "clay", [6, 8, 10], [40, 41, 42])).toBeUndefined();
  const turned = publishedSlope("moisture", "compactability", [38, 44, 50], [3, 3.5, 4])!;
  expect([turned.slope - 2 * turned.sd, turned.slope + 2 * turned.sd]).toEqual([
    expect.closeTo(0.0149, 4),
    expect.closeTo(0.1061, 4),
  ]);
});

test("compactability: the prior holds the whole range that the dose takes, whose low end is the relation's", () => {
  const { low, high } = publishedWaterSensitivity;
  // ICRI Report 610, 8 % live clay: the table of its relation gives 3.903 − 3.690 at 45 and 35 %.
  const at = (compactabilityPercent: number) =>
    equilibriumMoisturePercent({ liveClayPercent: 8, compactabilityPercent })!;
  expect(at(45) - at(35)).toBeCloseTo(low, 2);
  // A shop's ratio of compactability to moisture, 10 at the least.
  expect(10 / high).toBe(10);
  const { slope, sd } = publishedSlope("compactability", "moisture", [3, 3.5, 4], [40, 50, 60])!;
  expect(slope - 1.74 * sd).toBeLessThan(10 / high);
  expect(slope + 1.74 * sd).toBeGreaterThan(10 / low);
  // The words of the page: 10 to 48, 29 ± 21.
  const words = publishedSlope("compactability", "moisture", [3], [40])!.says;
  for (const figure of [10 / high, 10 / low, slope, 1.96 * sd])
    expect(words).toMatch(new RegExp(`\\b${figure.toFixed(0)}\\b`));
});

const compactability = (x: readonly number[], y: readonly number[]): ResponseCurve =>
  responseCurve(
    { x, y },
    { peaked: false, published: (at, of) => publishedSlope("compactability", "moisture", at, of) },
  );
const permeability = (x: readonly number[], y: readonly number[]): ResponseCurve =>
  responseCurve(
    { x, y },
    { peaked: true, published: (at, of) => publishedSlope("permeability", "moisture", at, of) },
  );

test("used for three batches of what only rises, and for three or four of what peaks; never a fit to promise from", () => {
  const waters = [3, 3.5, 4, 4.5, 5];
  const rising = [40, 46, 50, 56, 61];
  const forms = [2, 3, 4, 5].map((n) => [
    compactability(waters.slice(0, n), rising.slice(0, n)).form,
    permeability(waters.slice(0, n), rising.slice(0, n)).form,
  ]);
  expect(forms).toEqual([
    ["points only", "points only"],
    ["published slope", "published slope"],
    ["straight line", "published slope"],
    ["curve", "curve"],
  ]);
  const { fit, prior, at } = compactability(waters.slice(0, 3), rising.slice(0, 3));
  expect([fit, prior!.source]).toEqual([undefined, publishedWaterSensitivity.source]);
  const alone = responseCurve({ x: waters.slice(0, 3), y: rising.slice(0, 3) }, { peaked: false });
  const width = ({ low, high }: { low: number; high: number }): number => high - low;
  expect(width(at(3.5)!)).toBeLessThan(width(alone.at(3.5)!));
  // Batches and range together: between the founder's own 10 points and the 29 in the middle.
  const steep = prior!.slopeAt(3.5);
  expect(steep.mean).toBeGreaterThan(10);
  expect(steep.mean).toBeLessThan(29);
  // One water says nothing of a slope, and none is drawn.
  expect(compactability([3, 3, 3], [40, 41, 42]).form).toBe("points only");
});

interface Tally {
  mean: number;
  fresh: number;
  asked: number;
}

/** Founders whose true slope (and bend) scatters 1.3 × as widely as the prior takes it to. */
function tryFounders(
  seed: number,
  count: number,
  batches: number,
  [least, most]: readonly [number, number],
  drawn: (x: readonly number[], y: readonly number[]) => ResponseCurve,
  priorFor: (x: readonly number[]) => SlopePrior,
  size: number,
): Tally {
  const random = seeded(seed);
  const tally = { mean: 0, fresh: 0, asked: 0 };
  for (let n = 0; n < count; n++) {
    const x = Array.from(
      { length: batches },
      (_, i) => 3.1 + (1.6 * i) / (batches - 1) + random.uniform(-0.1, 0.1),
    );
    const { slope, sd, at, bend } = priorFor(x);
    const [b1, b2] = [
      slope + 1.3 * sd * random.normal(),
      bend ? bend.value + 1.3 * bend.sd * random.normal() : 0,
    ];
    const truth = (where: number): number => size + b1 * (where - at) + b2 * (where - at) ** 2;
    const scatter = random.uniform(least, most);
    const y = x.map((where) => truth(where) + scatter * random.normal());
    const where = random.uniform(x[0]!, x.at(-1)!);
    const { low, high, newLow, newHigh } = drawn(x, y).at(where)!;
    const fresh = truth(where) + scatter * random.normal();
    tally.asked++;
    if (truth(where) >= low && truth(where) <= high) tally.mean++;
    if (fresh >= newLow && fresh <= newHigh) tally.fresh++;
  }
  return tally;
}

// 500 founders: 96.8 and 97.8 % (mean, new batch); 95.2 and 95.8 %.
test.each([
  ["permeability", 3],
  ["permeability", 4],
] as const)(
  "%s of %d batches: intervals hold 93 to 98 % of founders as far apart as 1.3 × published",
  (test, n) => {
    const size = 60;
    const priorFor = (x: readonly number[]): SlopePrior =>
      publishedSlope(
        test,
        "moisture",
        x,
        x.map(() => size),
      )!;
    const { mean: held, fresh, asked } = tryFounders(31 + n, 160, n, [2, 5], permeability, priorFor, size);
    for (const share of [held / asked, fresh / asked]) {
      // So few founders give a share to within 1 point or so.
      expect(share).toBeGreaterThan(0.93);
      expect(share).toBeLessThan(0.995);
    }
  },
);

// Of 500 founders each, by tests/bench/few-batches.ts (mean, new batch, median width against a plain line's): over 1 % of
// water 96.2 and 95.6 %, 0.56 × as wide; rounded to 1 point 96.8 and 97.2 %, 0.55 ×; over 2.5 % 95.8 and 95.8 %, 0.69 ×,
// and 96.8 and 96.4 %, 0.68 ×; with a scatter of 2 to 4 points 94.0 to 95.6 and 93.4 to 94.6 %, 0.45 to 0.60 ×.
test.each([1, 2.5])(
  "compactability of three batches over %s points of water, true slopes evenly over all that is published: intervals hold, and are narrower than a plain line's",
  (span) => {
    const asked = { seed: 5, founders: 120, batches: 3, span, scatter: [0.8, 2], roundTo: 1 } as const;
    const tried = fewFounders(asked).map(({ x, y, at, truth, newBatch }) => {
      const value = compactability(x, y).at(at)!;
      const line = responseCurve({ x, y }, { peaked: false }).at(at)!;
      return {
        held: Number(value.low <= truth && truth <= value.high),
        fresh: Number(value.newLow <= newBatch && newBatch <= value.newHigh),
        width: value.high - value.low,
        plain: line.high - line.low,
      };
    });
    const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[60]!;
    for (const share of [mean(tried.map(({ held }) => held)), mean(tried.map(({ fresh }) => fresh))])
      expect(share).toBeGreaterThan(0.93);
    const narrower = median(tried.map(({ width }) => width)) / median(tried.map(({ plain }) => plain));
    expect(narrower).toBeLessThan(0.9);
  },
);

test("three readings that fall on one line by their rounding are not taken for exact", () => {
  const { low, high } = compactability([3, 3.5, 4], [40, 50, 60]).at(3.5)!;
  expect(high - low).toBeGreaterThan(0.4);
});
