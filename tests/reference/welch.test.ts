// Two means of unlike scatter: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.3, data set AUTO83B.

import { expect, test } from "vitest";
import { mean, sampleStandardDeviation } from "../../lib/numbers/summary.ts";
import { welch } from "../../lib/numbers/welch.ts";
import { american, japanese } from "./statistics-data.ts";

test("AUTO83B: means and deviations as printed", () => {
  expect([american.length, japanese.length]).toEqual([249, 79]);
  expect(mean(american)).toBeCloseTo(20.14458, 5);
  expect(mean(japanese)).toBeCloseTo(30.48101, 5);
  expect(sampleStandardDeviation(american)).toBeCloseTo(6.4147, 5);
  expect(sampleStandardDeviation(japanese)).toBeCloseTo(6.10771, 5);
});

// t and degrees of freedom printed in the handbook (from memory); further digits and the interval worked out apart.
test("AUTO83B: t −12.94627 with 136.8750 degrees of freedom; interval of the difference", () => {
  const { t, df, low, high, p, difference } = welch(american, japanese);
  expect(t).toBeCloseTo(-12.946273, 6);
  expect(df).toBeCloseTo(136.874977, 6);
  expect(low).toBeCloseTo(-11.915248, 6);
  expect(high).toBeCloseTo(-8.757621, 6);
  expect(difference).toBeCloseTo(20.14458 - 30.48101, 4);
  expect(p).toBeLessThan(1e-20);
});
