import { expect, test } from "vitest";
import { normalQuantile } from "../../lib/numbers/distributions.ts";
import { symmetricSumQuantile } from "../../lib/numbers/symmetric-sum.ts";

const off = (ours: number, exact: number): number => Math.abs(ours / exact - 1);

test("one and two even errors in closed form (GUM F.2.3.3, the trapezoid)", () => {
  expect(symmetricSumQuantile(0.975, [3])).toBeCloseTo(2.85, 12);
  expect(symmetricSumQuantile(0.975, [1, 1])).toBeCloseTo(2 - Math.sqrt(0.2), 12);
  // Much narrower: the limit lies on the flat of the trapezoid.
  expect(symmetricSumQuantile(0.975, [1, 0.01])).toBeCloseTo(0.95, 12);
});

// Irwin and Hall's distribution of n even errors on 0 to 1: the tail is xⁿ/n! for x below 1 (textbook, derived).
test("three and four even errors: Irwin and Hall", () => {
  expect(off(symmetricSumQuantile(0.975, [1, 1, 1]), 3 - 2 * Math.cbrt(6 * 0.025))).toBeLessThan(1e-4);
  expect(off(symmetricSumQuantile(0.975, [1, 1, 1, 1]), 4 - 2 * (24 * 0.025) ** 0.25)).toBeLessThan(1e-4);
});

// JCGM 101:2008 (GUM Supplement 1), 9.2.3 and 9.2.4: four even errors; intervals 3.88 and, one ten times as wide, 17.0.
test("Supplement 1, 9.2.3 and 9.2.4", () => {
  const r = Math.sqrt(3);
  expect(Math.abs(symmetricSumQuantile(0.975, [r, r, r, r]) - 3.88)).toBeLessThan(0.005);
  expect(Math.abs(symmetricSumQuantile(0.975, [r, r, r, 10 * r]) - 17)).toBeLessThan(0.05);
});

test("normal errors alone, and where the even ones are small", () => {
  expect(symmetricSumQuantile(0.975, [], 2)).toBeCloseTo(2 * normalQuantile(0.975), 12);
  const wide = Math.hypot(2, 0.05 / Math.sqrt(3));
  expect(off(symmetricSumQuantile(0.975, [0.05], 2), wide * normalQuantile(0.975))).toBeLessThan(1e-4);
});

/** The distribution function of one even error within ± 1 and a normal one, by the trapezoid rule. */
function evenAndNormal(x: number, sd: number): number {
  const n = 4000;
  let all = 0;
  for (let i = 0; i <= n; i++) {
    const z = -8 + (16 * i) / n;
    const weight = (Math.exp(-z * z * 0.5) / Math.sqrt(2 * Math.PI)) * (16 / n);
    all += weight * Math.min(1, Math.max(0, (x - sd * z + 1) / 2));
  }
  return all;
}

test("an even error and a normal one, against their convolution worked out apart", () => {
  for (const sd of [0.01, 0.1, 0.5, 2]) {
    for (const p of [0.9, 0.975, 0.995]) {
      expect(evenAndNormal(symmetricSumQuantile(p, [1], sd), sd)).toBeCloseTo(p, 3);
    }
  }
});

test("both sides are alike, the scale goes along, nothing gives 0, nonsense throws", () => {
  expect(symmetricSumQuantile(0.1, [1, 2, 3])).toBe(-symmetricSumQuantile(0.9, [1, 2, 3]));
  expect(
    off(symmetricSumQuantile(0.9, [1e-9, 2e-9, 3e-9]), 1e-9 * symmetricSumQuantile(0.9, [1, 2, 3])),
  ).toBeLessThan(1e-9);
  expect(symmetricSumQuantile(0.975, [0, 0])).toBe(0);
  expect(() => symmetricSumQuantile(1, [1])).toThrow("p above 0");
  for (const nonsense of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => symmetricSumQuantile(0.9, [2, nonsense])).toThrow("half-widths");
    expect(() => symmetricSumQuantile(0.9, [1, 2], nonsense)).toThrow("standard deviation");
  }
});
