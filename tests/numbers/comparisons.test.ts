import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { ranks } from "../../lib/numbers/ranks.ts";
import { spearman } from "../../lib/numbers/spearman.ts";
import { welch, welchOf } from "../../lib/numbers/welch.ts";
import { seeded } from "../seeded.ts";
import { scipyFits } from "./scipy-fits.ts";

test("Welch agrees with SciPy, also where one group has no scatter", () => {
  for (const known of scipyFits.welch) {
    const { t, df, p, low, high } = welch(known.a, known.b, 0.9);
    expect(t).toBeCloseTo(known.t, 10);
    expect(df).toBeCloseTo(known.df, 10);
    expect(p).toBeCloseTo(known.p, 10);
    expect(low).toBeCloseTo(known.low90, 10);
    expect(high).toBeCloseTo(known.high90, 10);
  }
});

test("Welch from means, deviations and counts agrees with SciPy's ttest_ind_from_stats", () => {
  // AUTO83B by its printed figures, SciPy 1.17.1: t −12.946267565658848, p 1.57e-25.
  const american = { mean: 20.14458, sd: 6.4147, count: 249 };
  const japanese = { mean: 30.48101, sd: 6.10771, count: 79 };
  const { t, p } = welchOf(american, japanese);
  expect(t).toBeCloseTo(-12.946267565658848, 11);
  expect(p / 1.5709046154648375e-25).toBeCloseTo(1, 8);
  expect(welchOf(american, { ...japanese, count: 39.5 }).df).toBeLessThan(60);
});

test("Welch with one value, or without any scatter: the difference alone", () => {
  for (const result of [welch([70], [71, 72]), welch([70, 70], [72, 72])]) {
    expect(result.difference).toBeLessThan(0);
    expect([result.t, result.df, result.p, result.low, result.high]).toEqual([NaN, NaN, NaN, NaN, NaN]);
  }
  expect(() => welch([1, 2], [1, 2], 95)).toThrow(RangeError);
});

test("Welch's interval covers the true difference in 95 % of 1,500 pairs of unlike scatter", () => {
  const random = seeded(31);
  let covered = 0;
  for (let k = 0; k < 1500; k++) {
    const a = Array.from({ length: random.integer(3, 6) }, () => 70 + random.normal());
    const b = Array.from({ length: random.integer(4, 9) }, () => 66 + 3 * random.normal());
    const { low, high } = welch(a, b);
    if (low <= 4 && 4 <= high) covered++;
  }
  // Three standard errors: 3·√(0.05·0.95/1500).
  expect(Math.abs(covered / 1500 - 0.95)).toBeLessThan(0.017);
});

test("ranks: equal values share theirs", () => {
  expect(ranks([10, 30, 10, 20])).toEqual([1.5, 4, 1.5, 3]);
  expect(ranks([])).toEqual([]);
  expect(ranks([1, NaN]).every(Number.isNaN)).toBe(true);
});

test("Spearman with equal values: by Student's t as in SciPy, and counted as in its permutation test", () => {
  const { x, y, rho, p } = scipyFits["spearman ties"];
  expect(spearman(x, y).rho).toBeCloseTo(rho, 12);
  expect(spearman(x, y).p).toBeCloseTo(p, 12);
  const counted = scipyFits["spearman counted"];
  expect(spearman(counted.x, counted.y).rho).toBeCloseTo(counted.rho, 12);
  expect(spearman(counted.x, counted.y).p).toBeCloseTo(counted.p, 12);
});

test("Spearman of four in order: 2 of 24 orders are as straight; ends and misuse", () => {
  expect(spearman([1, 2, 3, 4], [5, 6, 7, 9])).toEqual({ rho: 1, p: 2 / 24 });
  expect(spearman([1, 2, 3, 4], [9, 7, 6, 5])).toEqual({ rho: -1, p: 2 / 24 });
  expect(spearman([1, 2, 3, 4], [2, 1, 4, 3]).p).toBeCloseTo(10 / 24, 12);
  const twelve = Array.from({ length: 12 }, (_, k) => k);
  expect(spearman(twelve, twelve)).toEqual({ rho: 1, p: 0 });
  for (const nothing of [spearman([3, 3, 3], [1, 2, 3]), spearman([1, NaN], [1, 2]), spearman([1], [1])]) {
    expect(nothing).toEqual({ rho: NaN, p: NaN });
  }
  expect(() => spearman([1], [1, 2])).toThrow(Misuse);
});
