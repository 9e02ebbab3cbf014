import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { exactShare } from "../../lib/numbers/exact-share.ts";
import { type FourCounts, fisherExact } from "../../lib/numbers/fisher-exact.ts";
import { holm } from "../../lib/numbers/holm.ts";
import { mannWhitneyExact } from "../../lib/numbers/mann-whitney-exact.ts";
import { ranks } from "../../lib/numbers/ranks.ts";
import { median } from "../../lib/numbers/summary.ts";
import { seeded } from "../seeded.ts";

test("Fisher's tea tasting: three of four right is 17 of 70, four of four 1 of 70", () => {
  // R. A. Fisher, The Design of Experiments (1935) II (from memory): 1 in 70; 0.243 and 0.0143 as usually printed.
  expect(
    fisherExact([
      [3, 1],
      [1, 3],
    ]).greater,
  ).toBeCloseTo(17 / 70, 14);
  expect(
    fisherExact([
      [4, 0],
      [0, 4],
    ]).greater,
  ).toBeCloseTo(1 / 70, 14);
  expect(
    fisherExact([
      [4, 0],
      [0, 4],
    ]).twoSided,
  ).toBeCloseTo(2 / 70, 14);
});

test("Fisher's exact test agrees with SciPy 1.17.1, fisher_exact: two-sided, greater, less", () => {
  const known: readonly (readonly [FourCounts, number, number, number])[] = [
    [
      [
        [8, 2],
        [1, 5],
      ],
      0.034965034965034975,
      0.024475524475524483,
      0.9991258741258742,
    ],
    [
      [
        [3, 0],
        [1, 5],
      ],
      0.04761904761904762,
      0.047619047619047616,
      1,
    ],
    [
      [
        [2, 7],
        [8, 2],
      ],
      0.02301413756522116,
      0.9990149169715733,
      0.01852172595206651,
    ],
    [
      [
        [12, 5],
        [29, 2],
      ],
      0.08026855207410463,
      0.9945252060218822,
      0.04455473783507688,
    ],
    [
      [
        [0, 6],
        [3, 4],
      ],
      0.1923076923076923,
      1,
      0.12237762237762238,
    ],
    [
      [
        [40, 60],
        [30, 90],
      ],
      0.020274509265898813,
      0.012801422894697016,
      0.9941907252931148,
    ],
  ];
  for (const [table, twoSided, greater, less] of known) {
    const ours = fisherExact(table);
    expect(ours.twoSided).toBeCloseTo(twoSided, 11);
    expect(ours.greater).toBeCloseTo(greater, 11);
    expect(ours.less).toBeCloseTo(less, 11);
  }
});

test("what so few could show at best: the likeliest-against table of the same margins", () => {
  expect(
    fisherExact([
      [0, 1],
      [3, 3],
    ]).least,
  ).toBeCloseTo(3 / 7, 12);
  expect(
    fisherExact([
      [1, 0],
      [2, 4],
    ]).least,
  ).toBeCloseTo(3 / 7, 12);
  expect(
    fisherExact([
      [1, 2],
      [2, 2],
    ]).least,
  ).toBeCloseTo(1 / 35, 12);
  expect(
    fisherExact([
      [0, 0],
      [2, 2],
    ]),
  ).toEqual({ greater: 1, less: 1, twoSided: 1, least: 1 });
  expect(mannWhitneyExact([4], [1, 2, 3, 5, 6, 7]).least).toBeCloseTo(2 / 7, 12);
});

test("Mann–Whitney agrees with SciPy 1.17.1, mannwhitneyu exact", () => {
  // Hollander and Wolfe 1973, table 4.1, permeability of membranes: W = 35, one-sided p = 0.1272 (from memory of print).
  const term = [0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46];
  const early = [1.15, 0.88, 0.9, 0.74, 1.21];
  const { u, p, shift } = mannWhitneyExact(term, early);
  expect(u).toBe(35);
  expect(p).toBeCloseTo(0.2544122544122544, 12);
  expect(p / 2).toBeCloseTo(0.1272, 4);
  // The same book's Hodges–Lehmann estimate, as R prints it: 0.305 (from memory).
  expect(shift).toBeCloseTo(0.305, 12);
  const few = mannWhitneyExact([4.6, 5.1, 4.9], [3.4, 3.6, 3.9, 3.2, 4.0]);
  expect(few.p).toBeCloseTo(0.03571428571428571, 12);
  expect(few.least).toBeCloseTo(few.p, 12);
});

test("with equal values as SciPy 1.17.1's permutation_test of the rank sum, every parting counted", () => {
  expect(mannWhitneyExact([4, 4, 5], [3, 3, 4, 3, 2]).p).toBeCloseTo(0.10714285714285714, 12);
  expect(mannWhitneyExact([3, 3, 4, 5, 5], [2, 3, 3, 4]).p).toBeCloseTo(0.2698412698412698, 12);
  // SciPy gives 0.4 here, and does so by adding both tails of unequal ranks as we do.
  expect(mannWhitneyExact([1, 1], [1, 2, 2, 2]).p).toBeCloseTo(0.4, 12);
  expect(mannWhitneyExact([2, 2], [2, 2]).p).toBe(1);
});

test("Mann–Whitney against every parting by hand, and its interval against the published critical values", () => {
  const { uniform } = seeded(11);
  const values = Array.from({ length: 9 }, () => Math.round(uniform() * 12));
  const [a, b] = [values.slice(0, 4), values.slice(4)];
  const all = ranks(values);
  const sums: number[] = [];
  for (let set = 0; set < 512; set++) {
    const own = all.filter((_, i) => set & (1 << i));
    if (own.length === 4) sums.push(own.reduce((x, y) => x + y, 0));
  }
  const found = all.slice(0, 4).reduce((x, y) => x + y, 0);
  const tails = [sums.filter((s) => s <= found).length, sums.filter((s) => s >= found).length];
  expect(mannWhitneyExact(a, b).p).toBeCloseTo(Math.min(1, (2 * Math.min(...tails)) / sums.length), 12);

  // Critical U at 5 % two-sided, as textbooks' tables have them (from memory): 5 and 5: 2; 4 and 6: 2; 8 and 8: 13; 3 and 4: none.
  for (const [m, n, critical] of [
    [5, 5, 2],
    [4, 6, 2],
    [8, 8, 13],
    [10, 10, 23],
  ] as const) {
    const x = Array.from({ length: m }, (_, i) => 10 * i + i * i);
    const y = Array.from({ length: n }, (_, i) => 7 * i + 1.5 + i * i * i);
    const sorted = x.flatMap((one) => y.map((two) => one - two)).sort((one, two) => one - two);
    expect(mannWhitneyExact(x, y).interval).toEqual({
      low: sorted[critical],
      high: sorted.at(-1 - critical),
    });
    expect(mannWhitneyExact(x, y).shift).toBe(median(sorted));
  }
  expect(mannWhitneyExact([1, 2, 3], [4, 5, 6, 7]).interval).toBeUndefined();
});

test("the interval holds a true shift in 95 of 100 samples or more, however the values scatter", () => {
  const { uniform } = seeded(3);
  let held = 0;
  for (let i = 0; i < 800; i++) {
    // Lopsided scatter, a shift of 1.
    const a = Array.from({ length: 5 }, () => 1 - Math.log(1 - uniform()));
    const b = Array.from({ length: 6 }, () => -Math.log(1 - uniform()));
    const { low, high } = mannWhitneyExact(a, b).interval!;
    if (low <= 1 && 1 <= high) held++;
  }
  expect(held / 800).toBeGreaterThan(0.95);
  expect(held / 800).toBeLessThan(0.99);
});

test("Holm's steps by hand, and the order of the list kept", () => {
  expect(holm([0.01, 0.04, 0.03])).toEqual([0.03, 0.06, 0.06]);
  // As R's p.adjust(c(0.01, 0.02, 0.03, 0.04), "holm") prints it: 0.04 0.06 0.06 0.06 (from memory).
  holm([0.01, 0.02, 0.03, 0.04]).forEach((p, i) => {
    expect(p).toBeCloseTo([0.04, 0.06, 0.06, 0.06][i]!, 12);
  });
  expect(holm([0.9, 0.8])).toEqual([1, 1]);
  expect(holm([])).toEqual([]);
});

test("a share in few cases agrees with SciPy 1.17.1, binomtest(…).proportion_ci()", () => {
  const known = [
    [3, 7, 0.09898827844243689, 0.81594843235993],
    [0, 5, 0, 0.5218237501049814],
    [5, 5, 0.47817624989501856, 1],
    [1, 10, 0.0025285785444625728, 0.44501611702819543],
    [40, 200, 0.14689448821574452, 0.2622263645896002],
  ] as const;
  for (const [hits, of, low, high] of known) {
    expect(exactShare(hits, of).low).toBeCloseTo(low, 10);
    expect(exactShare(hits, of).high).toBeCloseTo(high, 10);
  }
});

test("counts that are none throw", () => {
  expect(() =>
    fisherExact([
      [1.5, 1],
      [1, 1],
    ]),
  ).toThrow(Misuse);
  expect(() => mannWhitneyExact([], [1])).toThrow(Misuse);
  expect(() => mannWhitneyExact([Number.NaN], [1])).toThrow(Misuse);
  expect(() => holm([1.2])).toThrow(Misuse);
  expect(() => exactShare(3, 2)).toThrow(Misuse);
});
