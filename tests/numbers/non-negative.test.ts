import fc from "fast-check";
import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { nonNegativeLeastSquares } from "../../lib/numbers/non-negative.ts";
import { scipyFits } from "./scipy-fits.ts";

// The examples in SciPy's documentation of its own function of this kind.
test("SciPy's documentation", () => {
  const A = [
    [1, 0],
    [1, 0],
    [0, 1],
  ];
  const first = nonNegativeLeastSquares(A, [2, 1, 1]);
  expect(first.x[0]).toBeCloseTo(1.5, 14);
  expect(first.x[1]).toBeCloseTo(1, 14);
  expect(first.residualNorm).toBeCloseTo(0.7071067811865475, 14);
  const second = nonNegativeLeastSquares(A, [-1, -1, -1]);
  expect(second.x).toEqual([0, 0]);
  expect(second.residualNorm).toBeCloseTo(1.7320508075688772, 14);
});

// A widely printed example (data from memory); the free answer has −2.5627.
test("four equations in two unknowns, one held at 0", () => {
  const C = [
    [0.0372, 0.2869],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a figure of the example, not a constant
    [0.6861, 0.7071],
    [0.6233, 0.6245],
    [0.6344, 0.617],
  ];
  const { x, residualNorm } = nonNegativeLeastSquares(C, [0.8587, 0.1781, 0.0747, 0.8405]);
  expect(x[0]).toBe(0);
  expect(x[1]).toBeCloseTo(0.6929344, 7);
  expect(residualNorm).toBeCloseTo(0.9118, 4);
});

// Lawson & Hanson (1974), chapter 23 (from memory): a line with both coefficients ≥ 0 and a sum of at most 1.
// The room that is left is a third unknown; the sum is held by a heavy row.
test("Lawson and Hanson's line: 0.621, 0.379, norm 0.338", () => {
  const heavy = 1e6;
  const t = [0.25, 0.5, 0.5, 0.8];
  const A = [...t.map((v) => [v, 1, 0]), [heavy, heavy, heavy]];
  const { x, residualNorm } = nonNegativeLeastSquares(A, [0.5, 0.6, 0.7, 1.2, heavy]);
  expect(x[0]).toBeCloseTo(0.62131521, 6);
  expect(x[1]).toBeCloseTo(0.37868479, 6);
  expect(x[2]).toBe(0);
  expect(residualNorm).toBeCloseTo(0.33822935, 6);
});

test("invented tables agree with SciPy", () => {
  for (const known of scipyFits["non-negative"]) {
    const { x, residualNorm } = nonNegativeLeastSquares(known.A, known.b);
    expect(residualNorm).toBeCloseTo(known.norm, 9);
    if (!known["one answer"]) continue;
    known.x.forEach((value, j) => {
      expect(x[j]).toBeCloseTo(value, 9);
    });
  }
});

test("nothing leads further down: slopes are 0 where x is above 0, and not downward where it is 0", () => {
  const number = fc.integer({ min: -500, max: 500 }).map((n) => n / 100);
  const table = fc.integer({ min: 1, max: 5 }).chain((size) =>
    fc.array(fc.tuple(fc.array(number, { minLength: size, maxLength: size }), number), {
      minLength: 1,
      maxLength: 8,
    }),
  );
  fc.assert(
    fc.property(table, (rows) => {
      const A = rows.map(([row]) => row);
      const b = rows.map(([, target]) => target);
      const { x } = nonNegativeLeastSquares(A, b);
      const left = A.map((row, i) => b[i]! - row.reduce((total, a, j) => total + a * x[j]!, 0));
      x.forEach((value, j) => {
        const pull = A.reduce((total, row, i) => total + row[j]! * left[i]!, 0);
        const size = Math.hypot(...A.map((row) => row[j]!)) * Math.hypot(...b) + 1e-300;
        expect(value).toBeGreaterThanOrEqual(0);
        expect(pull / size).toBeLessThan(1e-7);
        if (value > 0) expect(Math.abs(pull / size)).toBeLessThan(1e-7);
      });
    }),
    { seed: 3, numRuns: 500 },
  );
});

test("two sands that are the same, and misuse", () => {
  const { x, residualNorm } = nonNegativeLeastSquares(
    [
      [1, 1],
      [2, 2],
    ],
    [3, 6],
  );
  expect(x[0]! + x[1]!).toBeCloseTo(3, 12);
  expect(residualNorm).toBeLessThan(1e-12);
  expect(() => nonNegativeLeastSquares([[1]], [1, 2])).toThrow(Misuse);
  expect(() => nonNegativeLeastSquares([[1], [NaN]], [1, 2])).toThrow(Misuse);
});

test("a column that fits exactly drives the others to just 0 and stays", () => {
  const heavy = 180;
  const A = [
    [-12, 0, 18],
    [5, 0, -5],
    [7, 0, -13],
    [heavy, heavy, heavy],
  ];
  const { x, residualNorm } = nonNegativeLeastSquares(A, [0, 0, 0, heavy]);
  expect(residualNorm).toBeLessThan(1e-9);
  [0, 1, 0].forEach((share, j) => {
    expect(x[j]).toBeCloseTo(share, 9);
  });
});
