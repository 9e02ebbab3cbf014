// Lag-one autocorrelation against the NIST Statistical Reference Datasets, univariate: data and certified values from
// memory; that all three certified figures of Michelso follow from its 100 values to 13 digits vouches for the memory.

import { expect, test } from "vitest";
import { lagOneAutocorrelation } from "../../lib/numbers/autocorrelation.ts";
import { mean, sampleStandardDeviation } from "../../lib/numbers/summary.ts";
import { michelson, wave } from "./statistics-data.ts";

test("Michelso: mean 299.8524, deviation 0.0790105478190518, autocorrelation 0.535199668621283", () => {
  expect(mean(michelson)).toBeCloseTo(299.8524, 11);
  expect(sampleStandardDeviation(michelson)).toBeCloseTo(0.0790105478190518, 12);
  expect(lagOneAutocorrelation([michelson])).toBeCloseTo(0.535199668621283, 11);
});

test("NumAcc1 to NumAcc4: −0.5, and −0.999 however large the mean", () => {
  expect(lagOneAutocorrelation([[10000001, 10000003, 10000002]])).toBe(-0.5);
  expect(lagOneAutocorrelation([wave(1)])).toBeCloseTo(-0.999, 13);
  expect(lagOneAutocorrelation([wave(1_000_000)])).toBeCloseTo(-0.999, 8);
  expect(lagOneAutocorrelation([wave(10_000_000)])).toBeCloseTo(-0.999, 7);
});
