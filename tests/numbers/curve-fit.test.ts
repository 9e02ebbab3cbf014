import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { fitCurve } from "../../lib/numbers/curve-fit.ts";
import { derivativesByParameter } from "../../lib/numbers/derivatives.ts";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";

const x = [0, 1, 2, 3, 4, 6];
const y = [1, 3.1, 4.2, 7.4, 8.1, 13.5];

test("a straight line fitted as a curve is the straight line, with weights too", () => {
  const weights = [1, 2, 1, 3, 1, 0.5];
  const curve = fitCurve((at, [a, b]) => a! + b! * at, [5, -5], x, y, { weights });
  const line = fitPolynomial(x, y, 1, { weights });
  line.coefficients.forEach((b, k) => {
    expect(curve.parameters[k]).toBeCloseTo(b, 10);
    expect(curve.standardErrors[k]).toBeCloseTo(line.standardErrors[k]!, 10);
  });
  expect(curve.residualSumOfSquares).toBeCloseTo(line.residualSumOfSquares, 10);
  expect(curve.converged).toBe(true);
});

test("differences agree with the derivative by hand", () => {
  const at = [0.5, 1, 3];
  const [byA, byK] = derivativesByParameter(
    ([a, k]) => at.map((t) => a! * (1 - Math.exp(-k! * t))),
    [80, 0.7],
  );
  at.forEach((t, i) => {
    expect(byA![i]).toBeCloseTo(1 - Math.exp(-0.7 * t), 11);
    expect(byK![i]).toBeCloseTo(80 * t * Math.exp(-0.7 * t), 9);
  });
});

test("x may be anything; a place where the model has no value turns the search back", () => {
  const minutes = [1, 2, 3, 5, 8].map((t) => ({ minutes: t }));
  const fit = fitCurve(
    ({ minutes: t }, [s, tau]) => (tau! > 0 ? s! * (1 - Math.exp(-t / tau!)) : Number.NaN),
    [60, 0.4],
    minutes,
    minutes.map(({ minutes: t }) => 90 * (1 - Math.exp(-t / 2.5))),
  );
  expect(fit.parameters[0]).toBeCloseTo(90, 9);
  expect(fit.parameters[1]).toBeCloseTo(2.5, 9);
});

test("as many points as parameters, or parameters that cannot be told apart: no errors", () => {
  const exact = fitCurve((at, [a, b]) => a! + b! * at, [1, 1], [1, 2], [3, 5]);
  expect(exact.parameters[1]).toBeCloseTo(2, 10);
  expect(exact.standardErrors).toEqual([NaN, NaN]);
  const twin = fitCurve((at, [a, b]) => a! * b! * at, [1, 1], x, y);
  expect(twin.standardErrors.every(Number.isNaN)).toBe(true);
});

test("misuse throws", () => {
  const line = (at: number, [a]: readonly number[]) => a! * at;
  expect(() => fitCurve(line, [1], [1, 2], [1])).toThrow(Misuse);
  expect(() => fitCurve(line, [1, 2, 3], [1, 2], [1, 2])).toThrow(Misuse);
  expect(() => fitCurve(line, [Number.NaN], [1, 2], [1, 2])).toThrow("not finite at the start");
  expect(() => fitCurve(line, [1], [1], [1], { weights: [-1] })).toThrow(RangeError);
});
