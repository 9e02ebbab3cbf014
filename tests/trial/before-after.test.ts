// Before and after: like with like, drifts, and neighbours that go together.

import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { welch } from "../../lib/numbers/welch.ts";
import { spread } from "../../lib/quantity/spread-of.ts";
import { beforeAfter } from "../../lib/trial/before-after.ts";
import { knownConditions, unlikeConditions } from "../../lib/trial/like-conditions.ts";
import { type Seeded, seeded } from "../seeded.ts";

const steady = [50, 52, 49, 51];
const better = [58, 57, 60, 59];

test("figures that do not go together: Welch's own interval, and nothing widened", () => {
  const found = beforeAfter(steady, better);
  const { difference, low, high, p, df } = welch(better, steady);
  expect(found).toMatchObject({ difference, low, high, p, df, widened: false, unlike: [] });
  expect(found.effective).toEqual({ before: 4, after: 4 });
  expect(found.drift).toEqual({ before: false, after: false });
});

test("figures that rise by themselves are a drift in both groups", () => {
  expect(beforeAfter([50, 52, 54, 56], [58, 60, 62, 64]).drift).toEqual({ before: true, after: true });
});

test("two figures before and two after are the least", () => {
  expect(() => beforeAfter([50], better)).toThrow(Misuse);
  expect(beforeAfter([50, 51], [58, 59]).difference).toBe(8);
});

test("neighbours that go together: n(1 − r)/(1 + r), by hand", () => {
  // Runs of four: Σ(x − x̄)² is 16, the products 12 within runs less 3 between them, so r = 9/16.
  const runs = [1, 1, 1, 1, -1, -1, -1, -1, 1, 1, 1, 1, -1, -1, -1, -1];
  const found = beforeAfter(
    runs,
    runs.map((value) => value + 3),
  );
  expect(found).toMatchObject({ autocorrelation: 9 / 16, widened: true, difference: 3 });
  expect(found.effective.before).toBeCloseTo((16 * 7) / 25, 12);
  expect(found.df).toBeCloseTo(6.96, 10);
  // s² = 16/15; t at 6.96 degrees of freedom by SciPy 1.17.1.
  expect(found.high - 3).toBeCloseTo(2.3673819 * Math.sqrt((2 * 16) / 15 / 4.48), 6);
  // Six of one, then six of the other: 12/7 values are counted as two.
  const steps = runs.slice(0, 4).concat(1, 1, runs.slice(4, 8), -1, -1);
  expect(beforeAfter(steps, steps).effective).toEqual({ before: 2, after: 2 });
});

/** A row of figures where each keeps a share r of the one before. */
function row(random: Seeded, n: number, r: number, middle: number): number[] {
  let left = random.normal();
  return Array.from({ length: n }, () => {
    const value = middle + left;
    left = r * left + Math.sqrt(1 - r * r) * random.normal();
    return value;
  });
}

test("by simulation: where they are widened, intervals hold the difference in 95 % or more; plain ones far less", () => {
  const random = seeded(77);
  for (const r of [0.6, 0.75]) {
    let [asked, plain, wide] = [0, 0, 0];
    for (let k = 0; k < 500; k++) {
      const [before, after] = [row(random, 15, r, 70), row(random, 15, r, 74)];
      const found = beforeAfter(before, after);
      if (!found.widened) continue;
      const { low, high } = welch(after, before);
      asked++;
      if (low <= 4 && 4 <= high) plain++;
      if (found.low <= 4 && 4 <= found.high) wide++;
    }
    expect(asked).toBeGreaterThan(120);
    // Three standard errors below 95 % are 6 for 120.
    expect(wide / asked).toBeGreaterThan(0.89);
    expect(plain / asked).toBeLessThan(0.8);
  }
});

test("conditions: seven points of compactability apart are named, one is not", () => {
  const found = unlikeConditions({
    compactability: { before: [44, 45, 46], after: [51, 52, 53] },
    moisture: { before: [3.4, 3.5, 3.6], after: [3.4, 3.5, 3.7] },
  });
  expect(found.map(({ condition }) => condition)).toEqual(["compactability"]);
  expect(found[0]!.difference).toBe(7);
  // Standard error √(1/3 + 1/3), four degrees of freedom: t 2.776445.
  expect(found[0]!.high).toBeCloseTo(7 + 2.776445 * Math.sqrt(2 / 3), 5);
});

test("conditions: with spreads the doubt is that of the readings, and a rig that both share cancels", () => {
  const at = (mean: number, source: string) => spread({ mean, sd: 0.5, source });
  const apart = { before: [at(44, "a"), at(46, "b")], after: [at(47, "c"), at(49, "d")] };
  // Plain numbers 3 apart with these scatters would not be told apart: √2 × 4.30 = 6.1.
  expect(unlikeConditions({ compactability: { before: [44, 46], after: [47, 49] } })).toEqual([]);
  const [found] = unlikeConditions({ compactability: apart });
  expect(found!.difference).toBe(3);
  expect(found!.high - 3).toBeCloseTo(1.96 * 0.5, 1);
  const rig = (mean: number) => spread({ mean, sd: 4, source: "one tube" });
  const [shared] = unlikeConditions({ compactability: { before: [rig(44)], after: [rig(48)] } });
  expect(shared!.high - shared!.low).toBeCloseTo(0, 9);
});

test("conditions: a difference that matters to nobody is none, however well it is known", () => {
  const clay = { before: [8, 8.001, 8.002], after: [8.05, 8.051, 8.052] };
  expect(unlikeConditions({ clay })).toEqual([]);
  expect(unlikeConditions({ clay: { before: [8, 8, 8], after: [9, 9, 9] } })[0]?.difference).toBe(1);
});

test("which conditions are known, and which of them are alike", () => {
  expect(knownConditions({})).toEqual([]);
  const conditions = {
    clay: { before: [8], after: [8] },
    moisture: { before: [3.4, 3.5], after: [3.5, 3.6] },
    compactability: { before: [44, 45, 46], after: [51, 52, 53] },
  };
  expect(knownConditions(conditions)).toEqual(["moisture", "compactability"]);
  const { unlike, alike } = beforeAfter(steady, better, conditions);
  expect([alike, unlike.map(({ condition }) => condition)]).toEqual([["moisture"], ["compactability"]]);
});
