// Published slopes: the figures they come from, where they are used, and that their intervals hold.

import { expect, test } from "vitest";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";
import { sampleStandardDeviation } from "../../lib/numbers/summary.ts";
import { permeabilitySeries } from "../../lib/sand/typical-points.ts";
import { publishedSlope } from "../../lib/trial/published-slopes.ts";
import { type ResponseCurve, responseCurve } from "../../lib/trial/response-curve.ts";
import type { SlopePrior } from "../../lib/trial/slope-prior.ts";
import { seeded } from "../seeded.ts";

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
  expect(turned.slope).toBeCloseTo(1 / 11, 12);
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
  expect([fit, prior!.slope, prior!.sd]).toEqual([undefined, 11, 3]);
  const alone = responseCurve({ x: waters.slice(0, 3), y: rising.slice(0, 3) }, { peaked: false });
  const width = ({ low, high }: { low: number; high: number }): number => high - low;
  expect(width(at(3.5)!)).toBeLessThan(0.8 * width(alone.at(3.5)!));
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

// 500 founders: 98.2 and 97.6 % (mean, new batch); 96.8 and 97.8 %; 95.2 and 95.8 %.
test.each([
  ["compactability", 3, [0.8, 2]],
  ["permeability", 3, [2, 5]],
  ["permeability", 4, [2, 5]],
] as const)(
  "%s of %d batches: intervals hold 93 to 98 % of founders as far apart as 1.3 × published",
  (test, n, scatter) => {
    const [drawn, size] = test === "compactability" ? [compactability, 45] : [permeability, 60];
    const priorFor = (x: readonly number[]): SlopePrior =>
      publishedSlope(
        test,
        "moisture",
        x,
        x.map(() => size),
      )!;
    const count = 160;
    const { mean: held, fresh, asked } = tryFounders(31 + n, count, n, scatter, drawn, priorFor, size);
    for (const share of [held / asked, fresh / asked]) {
      // So few founders give a share to within 1 point or so.
      expect(share).toBeGreaterThan(0.93);
      expect(share).toBeLessThan(0.995);
    }
  },
);
