import { expect, test } from "vitest";
import { pooledRepeatScatter, repeatScatter } from "../../lib/sand/repeats.ts";

test("by hand", () => {
  expect(repeatScatter([69, 70, 71])).toEqual({ mean: 70, sd: 1, degreesOfFreedom: 2 });
  const pooled = pooledRepeatScatter([[1, 3], [10, 12, 14], [99]])!;
  expect(pooled.sd).toBeCloseTo(Math.sqrt(10 / 3), 12);
  expect(pooled.degreesOfFreedom).toBe(3);
});

test("one value says nothing about scatter", () => {
  expect(repeatScatter([69])).toBeUndefined();
  expect(repeatScatter([])).toBeUndefined();
  expect(pooledRepeatScatter([[69], [70]])).toBeUndefined();
  expect(() => repeatScatter([1, Number.NaN])).toThrow(RangeError);
  expect(() => pooledRepeatScatter([[1, Number.POSITIVE_INFINITY]])).toThrow(RangeError);
});

test("pooled scatter of a certified one-way layout", () => {
  // NIST StRD SiRstv (Ehrstein & Croarkin): within instruments, certified residual standard deviation.
  const instruments = [
    [196.3052, 196.124, 196.189, 196.2569, 196.3403],
    [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
    [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
    [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
    [196.2119, 196.1051, 196.185, 196.0052, 196.209],
  ];
  const pooled = pooledRepeatScatter(instruments)!;
  expect(pooled.degreesOfFreedom).toBe(20);
  expect(pooled.sd).toBeCloseTo(0.104076068334656, 13);
});
