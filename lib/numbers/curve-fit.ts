// A curve of any form through points, by least squares.

import { invariant } from "../issue.ts";
import { atRightAngle, dampedStep } from "./damped-step.ts";
import { derivativesByParameter } from "./derivatives.ts";
import { dot, rowProducts } from "./dot.ts";
import { invertUpper, triangleOf } from "./householder.ts";

export interface CurveFit {
  readonly parameters: readonly number[];
  /** NaN where no degree of freedom is left, or where the points cannot tell the parameters apart. */
  readonly standardErrors: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly residuals: readonly number[];
  readonly residualSumOfSquares: number;
  readonly residualSd: number;
  readonly degreesOfFreedom: number;
  /** False: the search stopped before it stood still. The figures are then where it stopped, not a fit. */
  readonly converged: boolean;
}

/**
 * Parameters p that make Σ wᵢ(yᵢ − model(xᵢ, p))² least, found from start; standard errors √diag(s²(JᵀWJ)⁻¹).
 * model: any smooth function, of one number or of whatever x is a list of; where it gives no finite number the search
 * turns back, but at the start it must be finite, else throws. start: of the size of the answer, sign included; a poor one may end in another
 * valley. x, y, weights: one length, finite y, weights ≥ 0, at least as many points as parameters, else throws.
 * Method: Levenberg–Marquardt with the parameters scaled as in J. J. Moré, Lecture Notes in Mathematics 630 (1978) 105–116
 * (from memory), steps by QR, derivatives by differences; then plain Gauss–Newton steps until they shrink no more.
 * NIST StRD from both starts: 9 digits and more (tests/reference/nist-curves.test.ts).
 * @example fitCurve((x, [a, k]) => a! * (1 - Math.exp(-k! * x)), [10, 1], [1, 2, 3], [6.32, 8.65, 9.5]).parameters // [10.0, 1.0]
 */
export function fitCurve<X = number>(
  model: (x: X, parameters: readonly number[]) => number,
  start: readonly number[],
  x: readonly X[],
  y: readonly number[],
  options: { readonly weights?: readonly number[] } = {},
): CurveFit {
  const weights = options.weights ?? y.map(() => 1);
  invariant(
    x.length === y.length && weights.length === y.length,
    "a curve needs an x and a weight for each y",
  );
  invariant(y.every(Number.isFinite), "a curve needs finite y");
  if (weights.some((weight) => !(weight >= 0 && weight < Number.POSITIVE_INFINITY))) {
    throw new RangeError("a weight must be a finite number of at least 0");
  }
  const count = weights.filter((weight) => weight > 0).length;
  invariant(start.length > 0 && count >= start.length, "a curve needs at least as many points as parameters");
  const roots = weights.map(Math.sqrt);
  const values = (p: readonly number[]): Float64Array =>
    Float64Array.from(x, (at, i) => (roots[i] === 0 ? 0 : roots[i]! * model(at, p)));
  const misses = (p: readonly number[]): Float64Array => values(p).map((v, i) => roots[i]! * y[i]! - v);
  invariant(misses(start).every(Number.isFinite), "the model is not finite at the start");

  const found = descend(misses, values, start);
  const parameters = settle(misses, values, found.parameters);
  const weighted = misses(parameters);
  const residualSumOfSquares = dot(weighted, weighted);
  const degreesOfFreedom = count - start.length;
  const variance = degreesOfFreedom > 0 ? residualSumOfSquares / degreesOfFreedom : Number.NaN;
  const covariance = inverseOfSquares(derivativesByParameter(values, parameters)).map((row) =>
    row.map((v) => v * variance),
  );
  return {
    parameters,
    standardErrors: covariance.map((row, j) => Math.sqrt(row[j]!)),
    covariance,
    residuals: x.map((at, i) => y[i]! - model(at, parameters)),
    residualSumOfSquares,
    residualSd: Math.sqrt(variance),
    degreesOfFreedom,
    converged: found.still,
  };
}

type Values = (p: readonly number[]) => Float64Array;

/** Damped steps, each of which must lower the sum of squares, until a step no longer moves anything. */
function descend(
  misses: Values,
  values: Values,
  start: readonly number[],
): { parameters: readonly number[]; still: boolean } {
  let parameters = start;
  let left = misses(parameters);
  let squares = dot(left, left);
  let damping = 1e-3;
  let sizes = start.map(() => 0);
  for (let round = 0; round < 2000; round++) {
    const slopes = derivativesByParameter(values, parameters);
    sizes = slopes.map((column, j) => Math.max(sizes[j]!, Math.hypot(...column)));
    for (;;) {
      const step = dampedStep(slopes, left, sizes, damping);
      const moved = parameters.map((p, j) => p + step[j]!);
      const still = step.every((d, j) => Math.abs(d) <= 1e-10 * Math.abs(parameters[j]!));
      const tried = misses(moved);
      const trial = dot(tried, tried);
      if (trial < squares) {
        parameters = moved;
        left = tried;
        squares = trial;
        damping = Math.max(1e-15, damping / 8);
        if (still) return { parameters, still: true };
        break;
      }
      // At the bottom rounding hides a further gain: the right angle to every slope tells.
      if (still || damping > 1e12) return { parameters, still: atRightAngle(slopes, left) };
      damping *= 4;
    }
  }
  return { parameters, still: false };
}

/** Gauss–Newton steps for the last digits, as long as each is smaller than the one before. */
function settle(misses: Values, values: Values, from: readonly number[]): readonly number[] {
  let parameters = from;
  let before = 1e-5;
  for (let round = 0; round < 20; round++) {
    const slopes = derivativesByParameter(values, parameters);
    const step = dampedStep(
      slopes,
      misses(parameters),
      slopes.map(() => 0),
      0,
    );
    const size = Math.max(...step.map((d, j) => Math.abs(d / (parameters[j]! || 1))));
    if (!(size < before)) break;
    before = size;
    parameters = parameters.map((p, j) => p + step[j]!);
  }
  return parameters;
}

/** (JᵀJ)⁻¹, NaN where the columns depend on each other. */
function inverseOfSquares(slopes: readonly Float64Array[]): number[][] {
  const triangle = triangleOf(slopes);
  if (!(triangle.rank === slopes.length)) return slopes.map(() => slopes.map(() => Number.NaN));
  const inverse = invertUpper(triangle.upper);
  return rowProducts(inverse, 1);
}
