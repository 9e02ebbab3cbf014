import { expect, test } from "vitest";
import { chiSquareQuantile } from "../../lib/numbers/chi-square.ts";
import { lowerTriangle } from "../../lib/numbers/cholesky.ts";
import { coefficientScores } from "../../lib/numbers/coefficient-scores.ts";
import { fitPolynomial, polynomialAt } from "../../lib/numbers/polynomial-fit.ts";
import { quantile } from "../../lib/numbers/quantile.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";
import { seeded } from "../seeded.ts";

test("L·Lᵀ gives the covariance back; a textbook matrix", () => {
  // A widely printed example (from memory): whole numbers all the way.
  const V = [
    [4, 12, -16],
    [12, 37, -43],
    [-16, -43, 98],
  ];
  expect(lowerTriangle(V)).toEqual([
    [2, 0, 0],
    [6, 1, 0],
    [-8, 5, 3],
  ]);
});

test("a direction without variance gets zeros; what is no covariance throws; NaN stays NaN", () => {
  expect(lowerTriangle([[1, 1], [1, 1]])).toEqual([[1, 0], [1, 0]]); // biome-ignore format: two matrices
  expect(lowerTriangle([[0, 0], [0, 4]])).toEqual([[0, 0], [0, 2]]); // biome-ignore format: two matrices
  expect(() => lowerTriangle([[1, 2], [2, 1]])).toThrow(RangeError); // biome-ignore format: a matrix
  expect(() => lowerTriangle([[1, 0.5], [0.4, 1]])).toThrow("symmetric"); // biome-ignore format: a matrix
  expect(() => lowerTriangle([[1, 2]])).toThrow("square");
  expect(lowerTriangle([[NaN]])).toEqual([[NaN]]);
});

test("draws of a parabola's coefficients give Student's interval of its mean", () => {
  const fit = fitPolynomial([2.2, 2.6, 3, 3.4, 3.8, 4.2], [52, 65, 72, 74, 69, 57], 2);
  const scores = coefficientScores(fit);
  const random = seeded(17);
  const values = Array.from({ length: 40_000 }, () => {
    const z = fit.coefficients.map(() => random.normal());
    const [a, b, c] = scores.at(z, chiSquareQuantile(random.uniform(), 3));
    return a! + b! * 2.8 + c! * 2.8 ** 2;
  });
  const { value, meanSe } = polynomialAt(fit, 2.8);
  for (const p of [0.025, 0.25, 0.5, 0.9, 0.975]) {
    const expected = studentTQuantile(p, 3);
    expect(Math.abs((quantile(values, p) - value) / meanSe - expected)).toBeLessThan(0.08);
  }
});

test("without a degree of freedom there is nothing to draw", () => {
  expect(() => coefficientScores(fitPolynomial([1, 2], [1, 2], 1))).toThrow(RangeError);
  const scores = coefficientScores({ coefficients: [3], covariance: [[4]], degreesOfFreedom: 5 });
  expect(scores.at([1], 5)).toEqual([5]);
  expect(() => scores.at([], 5)).toThrow("one score for each");
});
