// Expected figures are differences and sums by hand.

import { expect, test } from "vitest";
import { withoutPassing, withoutRunningTotals } from "../../lib/log/running-totals.ts";
import { readSieveLabel } from "../../lib/sand/sieve-label.ts";

const stack = ["No. 20", "No. 40", "No. 60", "No. 100", "pan"];
const rows = (...values: number[]) =>
  values.map((value, k) => {
    const sieve = readSieveLabel(stack[k]!).value;
    return { label: stack[k]!, mass: { value }, ...(sieve && sieve !== "pan" ? { sieve } : {}) };
  });

test("masses that rise to the start mass are what each sieve held and all above it", () => {
  expect(withoutRunningTotals(rows(9.5, 52.4, 89.7, 99.5, 100), 100)).toEqual([9.5, 42.9, 37.3, 9.8, 0.5]);
});

test("the pan may have been written by itself", () => {
  expect(withoutRunningTotals(rows(9.5, 52.4, 89.7, 99.5, 0.5), 100)).toEqual([9.5, 42.9, 37.3, 9.8, 0.5]);
});

test("other masses are taken as they stand", () => {
  // Sound; a start mass of another portion; one that rises by chance; one weighed with its dish.
  expect(withoutRunningTotals(rows(9.5, 42.9, 37.3, 9.8, 0.5), 100)).toBeUndefined();
  expect(withoutRunningTotals(rows(9.5, 52.4, 89.7, 99.5, 100), 50)).toBeUndefined();
  expect(withoutRunningTotals(rows(1, 2, 3, 98, 1), 100)).toBeUndefined();
  expect(withoutRunningTotals(rows(9.5, 142.9, 37.3, 9.8, 0.5), 100)).toBeUndefined();
});

test("percentages that fall from sieve to sieve are what passed", () => {
  expect(withoutPassing(rows(90.5, 47.6, 10.3, 0.5, 0))).toEqual([9.5, 42.9, 37.3, 9.8, 0.5]);
  expect(withoutPassing(rows(40, 30, 20, 9, 1))).toBeUndefined();
});
