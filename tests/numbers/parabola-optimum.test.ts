import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { fitLinear } from "../../lib/numbers/least-squares.ts";
import { parabolaOptimum } from "../../lib/numbers/parabola-optimum.ts";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";
import { seeded } from "../seeded.ts";

/** Invented strengths in kPa at moistures in % of damp mass. */
const x = [2.2, 2.6, 3.0, 3.0, 3.4, 3.8, 4.2];
const y = [52, 65, 73, 70, 74, 69, 57];

/** What the parabola with its top at x₀ leaves over: y = a + c(x² − 2x₀x), another fit altogether. */
function leftOver(top: number): number {
  return fitLinear(
    x.map((v) => [1, (v - top) ** 2]),
    y,
  ).residualSumOfSquares;
}

test("Fieller's limits are where the F test of the place turns", () => {
  const fit = fitPolynomial(x, y, 2);
  const { x: top, low, high, bounded, kind } = parabolaOptimum(fit);
  expect([bounded, kind]).toEqual([true, "maximum"]);
  const t2 = studentTQuantile(0.975, 4) ** 2;
  const excess = (at: number): number => (leftOver(at) - fit.residualSumOfSquares) / fit.residualSd ** 2 - t2;
  for (const [inner, outer, limit] of [
    [top, top - 1, low],
    [top, top + 1, high],
  ] as const) {
    let [a, b] = [inner, outer];
    for (let k = 0; k < 60; k++) {
      const middle = (a + b) / 2;
      if (excess(middle) < 0) a = middle;
      else b = middle;
    }
    expect(limit).toBeCloseTo(a, 9);
  }
});

test("the equation as printed, on the coefficients of x itself", () => {
  const { coefficients: b, covariance: v } = fitPolynomial(x, y, 2);
  const { low, high } = parabolaOptimum(fitPolynomial(x, y, 2), 0.9);
  const t2 = studentTQuantile(0.95, 4) ** 2;
  for (const root of [low, high]) {
    const value =
      4 * (b[2]! ** 2 - t2 * v[2]![2]!) * root ** 2 +
      4 * (b[1]! * b[2]! - t2 * v[1]![2]!) * root +
      b[1]! ** 2 -
      t2 * v[1]![1]!;
    expect(Math.abs(value)).toBeLessThan(1e-6 * b[1]! ** 2);
  }
});

test("a bend that may be none is not bounded; nor is one without a degree of freedom, or without a bend", () => {
  const flat = parabolaOptimum(fitPolynomial([1, 2, 3, 4, 5], [1, 2.2, 2.9, 4.1, 5], 2));
  expect([flat.bounded, flat.low, flat.high]).toEqual([false, -Infinity, Infinity]);
  const exact = parabolaOptimum(fitPolynomial([1, 2, 3], [1, 3, 1], 2));
  expect(exact.x).toBeCloseTo(2, 12);
  expect(exact.y).toBeCloseTo(3, 12);
  expect([exact.bounded, exact.low, exact.high]).toEqual([false, -Infinity, Infinity]);
  const none = parabolaOptimum(fitPolynomial([3, 3, 4, 4], [1, 2, 3, 4], 2));
  expect([none.x, none.bounded]).toEqual([NaN, false]);
});

test("a valley is a minimum", () => {
  expect(parabolaOptimum(fitPolynomial([0, 1, 2, 3], [4, 1, 0.1, 1], 2)).kind).toBe("minimum");
});

test("limits cover the true top in 95 % of 4,000 simulated trials of five to nine batches", () => {
  const random = seeded(20240509);
  const runs = 4000;
  let [covered, unbounded] = [0, 0];
  for (let k = 0; k < runs; k++) {
    const places = Array.from({ length: random.integer(5, 9) }, (_, i) => 2.4 + 0.25 * i);
    const top = random.uniform(2.7, 3.5);
    const values = places.map((at) => 70 - 25 * (at - top) ** 2 + 1.5 * random.normal());
    const { x: at, low, high, bounded } = parabolaOptimum(fitPolynomial(places, values, 2));
    if (top >= low && top <= high) covered++;
    if (!bounded) unbounded++;
    else expect(low <= at && at <= high).toBe(true);
  }
  // Fieller's set covers exactly 95 %; where it is two rays it is given as everything, which can only add.
  expect(covered / runs).toBeGreaterThan(0.94);
  expect(covered / runs).toBeLessThan(0.96 + unbounded / runs);
  expect(unbounded / runs).toBeLessThan(0.2);
  expect(unbounded).toBeGreaterThan(0);
});

test("misuse throws", () => {
  expect(() => parabolaOptimum(fitPolynomial(x, y, 1))).toThrow(Misuse);
  expect(() => parabolaOptimum(fitPolynomial(x, y, 2), 95)).toThrow(RangeError);
});
