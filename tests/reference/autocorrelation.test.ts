// Lag-one autocorrelation against the NIST Statistical Reference Datasets, univariate: data and certified values from
// memory; that all three certified figures of Michelso follow from its 100 values to 13 digits vouches for the memory.

import { expect, test } from "vitest";
import { lagOneAutocorrelation } from "../../lib/numbers/autocorrelation.ts";
import { mean, sampleStandardDeviation } from "../../lib/numbers/summary.ts";

// A. A. Michelson's speeds of light of 1879, thousandths of 1000 km/s above 299.
const michelson = [
  850, 740, 900, 1070, 930, 850, 950, 980, 980, 880, 1000, 980, 930, 650, 760, 810, 1000, 1000, 960, 960, 960,
  940, 960, 940, 880, 800, 850, 880, 900, 840, 830, 790, 810, 880, 880, 830, 800, 790, 760, 800, 880, 880,
  880, 860, 720, 720, 620, 860, 970, 950, 880, 910, 850, 870, 840, 840, 850, 840, 840, 840, 890, 810, 810,
  820, 800, 770, 760, 740, 750, 760, 910, 920, 890, 860, 880, 720, 840, 850, 850, 780, 890, 840, 780, 810,
  760, 810, 790, 810, 820, 850, 870, 870, 810, 740, 810, 940, 950, 800, 810, 870,
].map((value) => 299 + value / 1000);

test("Michelso: mean 299.8524, deviation 0.0790105478190518, autocorrelation 0.535199668621283", () => {
  expect(mean(michelson)).toBeCloseTo(299.8524, 11);
  expect(sampleStandardDeviation(michelson)).toBeCloseTo(0.0790105478190518, 12);
  expect(lagOneAutocorrelation([michelson])).toBeCloseTo(0.535199668621283, 11);
});

test("NumAcc1 to NumAcc4: −0.5, and −0.999 however large the mean", () => {
  expect(lagOneAutocorrelation([[10000001, 10000003, 10000002]])).toBe(-0.5);
  const wave = (base: number): number[] => [
    base + 0.2,
    ...Array.from({ length: 1000 }, (_, k) => base + (k % 2 === 0 ? 0.1 : 0.3)),
  ];
  expect(lagOneAutocorrelation([wave(1)])).toBeCloseTo(-0.999, 13);
  expect(lagOneAutocorrelation([wave(1_000_000)])).toBeCloseTo(-0.999, 8);
  expect(lagOneAutocorrelation([wave(10_000_000)])).toBeCloseTo(-0.999, 7);
});
