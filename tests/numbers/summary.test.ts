import fc from "fast-check";
import { expect, test } from "vitest";
import { sum, weightedMean } from "../../lib/numbers/sum.ts";
import { mean, median, pooledStandardDeviation, sampleStandardDeviation } from "../../lib/numbers/summary.ts";

test("sums keep what plain addition loses", () => {
  // Neumaier's own example (1974): plain and Kahan's compensated sums both give 0.
  expect(sum([1, 1e100, 1, -1e100])).toBe(2);
  expect(sum([0.1, 0.2, 0.3])).toBe(0.6);
  expect(sum(new Array(10).fill(0.1))).toBe(1);
  expect(sum([])).toBe(0);
  expect(sum([1, Number.POSITIVE_INFINITY])).toBe(Number.POSITIVE_INFINITY);
  expect(sum([1, Number.NaN])).toBeNaN();
});

test("weighted mean", () => {
  expect(weightedMean([40, 70], [1, 3])).toBe(62.5);
  expect(weightedMean([40], [0])).toBeNaN();
  expect(() => weightedMean([1, 2], [1])).toThrow("one weight");
  expect(() => weightedMean([1], [-1])).toThrow(RangeError);
});

/** A first value, then 500 pairs: the shape of NIST's NumAcc sets. */
const paired = (first: number, a: number, b: number): number[] => [
  first,
  ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? a : b)),
];

test.each([
  // NIST Statistical Reference Datasets, univariate summary statistics; data and certified values from memory.
  ["NumAcc1", [10_000_001, 10_000_003, 10_000_002], 10_000_002, 1, 1e-15],
  ["NumAcc2", paired(1.2, 1.1, 1.3), 1.2, 0.1, 1e-14],
  // From here on the decimals of the data themselves are not exact in a computer: 1e6 + 0.1 is off by 1e-11.
  ["NumAcc3", paired(1_000_000.2, 1_000_000.1, 1_000_000.3), 1_000_000.2, 0.1, 1e-9],
  ["NumAcc4", paired(10_000_000.2, 10_000_000.1, 10_000_000.3), 10_000_000.2, 0.1, 1e-7],
] as const)("mean and sd of %s are the certified ones", (_, data, certifiedMean, certifiedSd, relative) => {
  expect(Math.abs(mean(data) / certifiedMean - 1)).toBeLessThan(1e-15);
  expect(Math.abs(sampleStandardDeviation(data) / certifiedSd - 1)).toBeLessThan(relative);
});

test("three green compression tests, as printed: mean 3.133, with the sd the numbers really have", () => {
  // 3.0, 3.4, 3.0 N/cm² of a Universitas Brawijaya laboratory report (Scribd 202593539). It prints sd 0.2313, off by
  // rounding on the way: by hand √((2·0.13333² + 0.26667²)/2) = 0.23094.
  expect(mean([3.0, 3.4, 3.0])).toBeCloseTo(3.133, 3);
  expect(sampleStandardDeviation([3.0, 3.4, 3.0])).toBeCloseTo(0.23094, 5);
});

test("pooled sd, by hand", () => {
  // Squares about own means: (1 + 1) + (4 + 0 + 4) = 10 with 1 + 2 degrees of freedom.
  expect(pooledStandardDeviation([[1, 3], [10, 12, 14], [99]])).toEqual({
    sd: Math.sqrt(10 / 3),
    degreesOfFreedom: 3,
  });
  expect(pooledStandardDeviation([[1], []])).toEqual({ sd: Number.NaN, degreesOfFreedom: 0 });
});

test("nothing to summarise gives NaN", () => {
  expect(mean([])).toBeNaN();
  expect(median([])).toBeNaN();
  expect(sampleStandardDeviation([4])).toBeNaN();
});

test("median, and what shifting and scaling do to mean and sd", () => {
  expect(median([7, 1, 3, 2])).toBe(2.5);
  expect(median([7, 1, 3])).toBe(3);
  const values = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 2, maxLength: 30 });
  fc.assert(
    fc.property(values, fc.double({ min: 1, max: 50, noNaN: true }), (x, by) => {
      const moved = x.map((v) => v * by + 12);
      expect(mean(moved)).toBeCloseTo(mean(x) * by + 12, 9);
      expect(sampleStandardDeviation(moved)).toBeCloseTo(sampleStandardDeviation(x) * by, 9);
    }),
  );
});
