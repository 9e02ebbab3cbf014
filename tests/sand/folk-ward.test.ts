import { expect, test } from "vitest";
import {
  folkWard,
  kurtosisClass,
  skewnessClass,
  sortingClass,
  transformedKurtosis,
} from "../../lib/sand/folk-ward.ts";

/** Standard normal deviates at 5, 16, 25 % in the tail, from printed tables (Abramowitz & Stegun, table 26.5). */
const Z = { z5: 1.64485, z16: 0.99446, z25: 0.67449 };
const normal = (mean: number, sd: number) => ({
  phi5: mean - Z.z5 * sd,
  phi16: mean - Z.z16 * sd,
  phi25: mean - Z.z25 * sd,
  phi50: mean,
  phi75: mean + Z.z25 * sd,
  phi84: mean + Z.z16 * sd,
  phi95: mean + Z.z5 * sd,
});

test("a normal curve gives its own mean and deviation, no skewness, kurtosis 1", () => {
  const { meanPhi, sortingPhi, skewness, kurtosis } = folkWard(normal(2, 0.5));
  expect(meanPhi).toBeCloseTo(2, 12);
  expect(sortingPhi! / 0.5).toBeCloseTo(1, 2);
  expect(skewness).toBeCloseTo(0, 12);
  expect(kurtosis).toBeCloseTo(1, 2);
});

test("the divisor is 6.6: one journal's table prints 6, which a normal curve refutes", () => {
  const phi = normal(0, 1);
  const misprinted = (phi.phi84 - phi.phi16) / 4 + (phi.phi95 - phi.phi5) / 6;
  expect(Math.abs(folkWard(phi).sortingPhi! - 1)).toBeLessThan(0.005);
  expect(misprinted - 1).toBeGreaterThan(0.04);
});

test("a tail of fine grains makes skewness positive, and each half of it lies within 0.5", () => {
  const { skewness } = folkWard({ ...normal(2, 0.5), phi84: 2.8, phi95: 4 });
  expect(skewness).toBeGreaterThan(0.3);
  // φ16 = φ50 and φ5 = φ50: the limit of one-sidedness.
  const limit = folkWard({ phi5: 2, phi16: 2, phi25: 2, phi50: 2, phi75: 3, phi84: 3.5, phi95: 4 });
  expect(limit.skewness).toBeCloseTo(1, 12);
});

test("what lacks its percentiles is undefined, and nothing else", () => {
  const { phi5: _, ...rest } = normal(2, 0.5);
  const noTail = folkWard({ ...rest, phi5: undefined });
  expect(noTail.meanPhi).toBeCloseTo(2, 12);
  expect(noTail.sortingPhi).toBeUndefined();
  expect(noTail.skewness).toBeUndefined();
  expect(noTail.kurtosis).toBeUndefined();
  const point = { phi5: 2, phi16: 2, phi25: 2, phi50: 2, phi75: 2, phi84: 2, phi95: 2 };
  expect(folkWard(point)).toEqual({
    meanPhi: 2,
    sortingPhi: 0,
    skewness: undefined,
    kurtosis: undefined,
  });
});

// Folk, Petrology of Sedimentary Rocks, digitised pages 48–51: verbal limits.
test("words for sorting", () => {
  const words = [0.2, 0.4, 0.6, 0.8, 1.5, 3, 5].map((sorting) => sortingClass(sorting));
  expect(words).toEqual([
    "very well sorted",
    "well sorted",
    "moderately well sorted",
    "moderately sorted",
    "poorly sorted",
    "very poorly sorted",
    "extremely poorly sorted",
  ]);
});

test("between 0.70 and 0.71 phi the sources disagree, and the caller may choose", () => {
  // 0.71: Folk and a national survey's notes; 0.70: a university's page.
  expect(sortingClass(0.705)).toBe("moderately well sorted");
  expect(sortingClass(0.705, 0.7)).toBe("moderately sorted");
});

test("words for skewness and kurtosis", () => {
  expect([-0.5, -0.2, 0, 0.2, 0.5].map(skewnessClass)).toEqual([
    "strongly coarse-skewed",
    "coarse-skewed",
    "near-symmetrical",
    "fine-skewed",
    "strongly fine-skewed",
  ]);
  expect([0.5, 0.8, 1, 1.3, 2, 4].map(kurtosisClass)).toEqual([
    "very platykurtic",
    "platykurtic",
    "mesokurtic",
    "leptokurtic",
    "very leptokurtic",
    "extremely leptokurtic",
  ]);
});

test("transformed kurtosis of a normal curve is 0.50", () => {
  // Folk & Ward 1957.
  expect(transformedKurtosis(1)).toBe(0.5);
  expect(transformedKurtosis(1.5)).toBeCloseTo(0.6, 12);
});

test("misuse throws", () => {
  for (const bad of [Number.NaN, -1.5]) {
    expect(() => sortingClass(bad)).toThrow(RangeError);
    expect(() => skewnessClass(bad)).toThrow(RangeError);
    expect(() => kurtosisClass(bad)).toThrow(RangeError);
    expect(() => transformedKurtosis(bad)).toThrow(RangeError);
  }
});
