import fc from "fast-check";
import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { fitPolynomial, polynomialAt } from "../../lib/numbers/polynomial-fit.ts";

test("a parabola through four points, by hand", () => {
  const fit = fitPolynomial([0, 1, 2, 3], [1, 2, 5, 10], 2);
  [1, 0, 1].forEach((b, k) => {
    expect(fit.coefficients[k]).toBeCloseTo(b, 12);
  });
  expect(polynomialAt(fit, 10).value).toBeCloseTo(101, 9);
});

test("a straight line's errors by the textbook formulas", () => {
  const x = [0, 1, 2, 3, 4];
  const y = [1, 3, 2, 5, 4];
  const fit = fitPolynomial(x, y, 1);
  // Sxy 8, Sxx 10, Syy 10: slope 0.8, residual sum of squares 10 − 64/10 = 3.6.
  expect(fit.coefficients[1]).toBeCloseTo(0.8, 12);
  expect(fit.residualSd ** 2).toBeCloseTo(3.6 / 3, 12);
  expect(fit.standardErrors[1]! ** 2).toBeCloseTo(1.2 / 10, 12);
  expect(fit.standardErrors[0]! ** 2).toBeCloseTo(1.2 * (1 / 5 + 4 / 10), 12);
  expect(fit.covariance[0]![1]).toBeCloseTo(-1.2 * (2 / 10), 12);
  expect(fit.rSquared).toBeCloseTo(0.64, 12);
  const { value, meanSe, newSe } = polynomialAt(fit, 6);
  expect(value).toBeCloseTo(3 + 0.8 * 4, 12);
  expect(meanSe ** 2).toBeCloseTo(1.2 * (1 / 5 + 16 / 10), 12);
  expect(newSe ** 2).toBeCloseTo(1.2 * (1 + 1 / 5 + 16 / 10), 12);
});

test("a shift of x and y or another unit changes neither the curve nor its error", () => {
  const x = [2.4, 2.9, 3.3, 3.8, 4.4];
  const y = [51, 64, 69, 66, 52];
  const fit = fitPolynomial(x, y, 2);
  const number = fc.double({ min: -50, max: 50, noNaN: true });
  const factor = fc.double({ min: 0.01, max: 100, noNaN: true });
  fc.assert(
    fc.property(number, number, factor, factor, (dx, dy, kx, ky) => {
      const other = fitPolynomial(
        x.map((v) => kx * v + dx),
        y.map((v) => ky * v + dy),
        2,
      );
      const ours = polynomialAt(fit, 3.5);
      const theirs = polynomialAt(other, kx * 3.5 + dx);
      expect((theirs.value - dy) / ky).toBeCloseTo(ours.value, 6);
      expect(theirs.meanSe / ky).toBeCloseTo(ours.meanSe, 6);
    }),
    { seed: 7, numRuns: 200 },
  );
});

test("fewer different places than coefficients: no figures; all places the same: none either", () => {
  expect(fitPolynomial([3, 3, 4, 4], [60, 61, 70, 71], 2).coefficients.every(Number.isNaN)).toBe(true);
  expect(fitPolynomial([3, 3, 3], [60, 61, 70], 1).coefficients.every(Number.isNaN)).toBe(true);
  expect(fitPolynomial([3, 3, 3], [60, 61, 65], 0).coefficients[0]).toBeCloseTo(62, 12);
});

test("misuse throws", () => {
  expect(() => fitPolynomial([1, 2], [1], 1)).toThrow(Misuse);
  expect(() => fitPolynomial([1, NaN], [1, 2], 1)).toThrow(Misuse);
  expect(() => fitPolynomial([1, 2], [1, 2], 1.5)).toThrow(RangeError);
  expect(() => fitPolynomial([1, 2], [1, 2], 0, { intercept: false })).toThrow(RangeError);
});
