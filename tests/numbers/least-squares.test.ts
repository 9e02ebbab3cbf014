import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { fitLinear } from "../../lib/numbers/least-squares.ts";
import { predictAt } from "../../lib/numbers/predict-at.ts";
import { sum } from "../../lib/numbers/sum.ts";
import { relativeError } from "./close.ts";
import { scipyFits } from "./scipy-fits.ts";

test("weighted fits agree with NumPy: coefficients, covariance, leverages, prediction", () => {
  for (const known of scipyFits["weighted fits"]) {
    const fit = fitLinear(known.design, known.y, { weights: known.weights });
    const near = (ours: number, truth: number): void =>
      expect(relativeError(ours, truth)).toBeLessThan(1e-10);
    known.coefficients.forEach((b, j) => {
      near(fit.coefficients[j]!, b);
      near(fit.standardErrors[j]!, Math.sqrt(known.covariance[j]![j]!));
      known.covariance[j]!.forEach((v, k) => {
        near(fit.covariance[j]![k]!, v);
      });
    });
    known.leverages.forEach((h, i) => {
      near(fit.leverages[i]!, h);
    });
    near(fit.residualSd, known["residual sd"]);
    const { value, meanSe, newSe } = predictAt(fit, known.at);
    near(value, known.value);
    near(meanSe, known["mean se"]);
    near(newSe, Math.hypot(known["mean se"], known["residual sd"]));
    near(predictAt(fit, known.at, 4).newSe, Math.hypot(known["mean se"], known["residual sd"] / 2));
  }
});

test("leverages add to the number of coefficients; each is what leaving its own row out would show", () => {
  const design = [0, 1, 2, 3, 4, 7].map((x) => [1, x]);
  const y = [1, 3, 2, 5, 4, 9];
  const fit = fitLinear(design, y);
  expect(sum(fit.leverages)).toBeCloseTo(2, 12);
  design.forEach((row, i) => {
    const others = (_: unknown, j: number) => j !== i;
    const without = predictAt(fitLinear(design.filter(others), y.filter(others)), row);
    // Prediction error left out = residual/(1 − leverage).
    expect(y[i]! - without.value).toBeCloseTo(fit.residuals[i]! / (1 - fit.leverages[i]!), 10);
  });
});

test("a row of weight 0 counts for nothing; a row of weight 2 moves the fit as two rows do", () => {
  const x = [0, 1, 2, 3, 4];
  const design = x.map((v) => [1, v]);
  const y = [1, 3, 2, 5, 99];
  const left = fitLinear(design, y, { weights: [1, 1, 1, 1, 0] });
  const shorter = fitLinear(design.slice(0, 4), y.slice(0, 4));
  expect(left.coefficients[1]).toBeCloseTo(shorter.coefficients[1]!, 12);
  expect([left.degreesOfFreedom, left.residualSd]).toEqual([2, expect.closeTo(shorter.residualSd, 12)]);
  expect(left.rSquared).toBeCloseTo(shorter.rSquared, 12);
  const heavy = fitLinear(design, y, { weights: [2, 1, 1, 1, 1] });
  const twice = fitLinear([[1, 0], ...design], [1, ...y]);
  expect(heavy.coefficients[0]).toBeCloseTo(twice.coefficients[0]!, 12);
});

test("far from zero the digits stay: moisture shifted by a million", () => {
  const x = [3, 3.2, 3.4, 3.6];
  const y = [60, 70, 72, 69];
  const near = fitLinear(
    x.map((v) => [1, v, v * v]),
    y,
  );
  const far = fitLinear(
    x.map((v) => [1, v + 1e6]),
    y,
  );
  const straight = fitLinear(
    x.map((v) => [1, v]),
    y,
  );
  expect(far.coefficients[1]).toBeCloseTo(straight.coefficients[1]!, 6);
  expect(predictAt(far, [1, 3.5 + 1e6]).value).toBeCloseTo(predictAt(straight, [1, 3.5]).value, 6);
  expect(near.degreesOfFreedom).toBe(1);
});

test("batches that cannot tell the columns apart: no figures, and how many can be told", () => {
  const same = fitLinear(
    [3.2, 3.2, 3.2].map((x) => [1, x]),
    [60, 61, 65],
  );
  expect(same.rank).toBe(1);
  expect([...same.coefficients, same.residualSd, same.rSquared, ...same.leverages].every(Number.isNaN)).toBe(
    true,
  );
  const tooFew = fitLinear(
    [
      [1, 3, 9],
      [1, 4, 16],
    ],
    [60, 61],
  );
  expect(tooFew.rank).toBe(2);
  expect(tooFew.standardErrors.every(Number.isNaN)).toBe(true);
  expect(predictAt(tooFew, [1, 3, 9]).value).toBeNaN();
});

test("as many rows as columns: the coefficients stand, their errors are not known", () => {
  const fit = fitLinear(
    [
      [1, 2],
      [1, 4],
    ],
    [10, 20],
  );
  expect(fit.coefficients[0]).toBeCloseTo(0, 12);
  expect(fit.coefficients[1]).toBeCloseTo(5, 12);
  expect([fit.degreesOfFreedom, fit.residualSd, ...fit.standardErrors]).toEqual([0, NaN, NaN, NaN]);
});

test("misuse throws", () => {
  expect(() => fitLinear([[1]], [1, 2])).toThrow(Misuse);
  expect(() => fitLinear([], [])).toThrow(Misuse);
  expect(() => fitLinear([[1, 2], [1]], [1, 2])).toThrow(Misuse);
  expect(() => fitLinear([[1], [NaN]], [1, 2])).toThrow(Misuse);
  expect(() => fitLinear([[1], [1]], [1, Infinity])).toThrow(Misuse);
  expect(() => fitLinear([[1], [1]], [1, 2], { weights: [1, -1] })).toThrow(RangeError);
  const fit = fitLinear([[1], [1]], [1, 2]);
  expect(() => predictAt(fit, [1, 2])).toThrow(Misuse);
  expect(() => predictAt(fit, [1], 0)).toThrow(RangeError);
});
