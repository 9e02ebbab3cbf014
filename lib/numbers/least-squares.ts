// Linear least squares with everything that is asked of a fit afterwards.

import { invariant } from "../issue.ts";
import { dot, rowProducts } from "./dot.ts";
import { invertUpper, solveUpper, triangleOf } from "./householder.ts";
import type { LinearFit } from "./linear-fit.ts";
import { type LocalAxes, localAxes } from "./local-axes.ts";
import { sum } from "./sum.ts";

export type { LinearFit } from "./linear-fit.ts";
export { type Prediction, predictAt } from "./predict-at.ts";

/**
 * Coefficients b that make Σ wᵢ(yᵢ − Σⱼ Xᵢⱼbⱼ)² least, with covariance s²(XᵀWX)⁻¹.
 * design: X, a row for each y, of any real numbers; an intercept is a column of ones. weights: wᵢ ≥ 0, as 1/variance
 * in any unit, default 1; a row of weight 0 is left out of the count. Lists of different lengths, an empty design, a
 * number that is not finite, a negative weight: throws. Columns that depend on each other, or fewer rows than
 * columns: all figures NaN, and rank says how many can be told apart. No degree of freedom left: coefficients stand,
 * their errors are NaN.
 * Method: columns centred on their weighted means where one of them is all ones, brought to length 1, Householder QR,
 * then one round of refinement.
 * Certified digits (NIST StRD) are held by tests/reference/nist.test.ts: Longley 13.
 * @example fitLinear([[1, 0], [1, 1], [1, 2]], [1, 2, 4]).coefficients // [0.8333..., 1.5]
 */
export function fitLinear(
  design: readonly (readonly number[])[],
  y: readonly number[],
  options: { readonly weights?: readonly number[] } = {},
): LinearFit {
  const weights = options.weights ?? y.map(() => 1);
  checkRows(design, y, weights);
  const count = weights.filter((weight) => weight > 0).length;
  const roots = Float64Array.from(weights, Math.sqrt);
  const axes = localAxes(design, weights);
  const local = design.map((row) => axes.row(row));
  const middle = axes.constant === undefined ? 0 : sum(y.map((v, i) => v * weights[i]!)) / sum(weights);
  const shifted = Float64Array.from(y, (v, i) => (v - middle) * roots[i]!);
  const columns = axes.scales.map((_, j) => Float64Array.from(local, (row, i) => row[j]! * roots[i]!));
  const size = columns.length;
  const triangle = triangleOf(columns);
  if (triangle.rank < size) return untold(y.length, size, triangle.rank, count, axes);

  const b = solveUpper(triangle.upper, triangle.turn(shifted));
  const left = (): number[] => y.map((v, i) => v - middle - dot(local[i]!, b));
  // What the first solution left over is solved for again: it takes back the rounding of the reflections.
  const correction = triangle.turn(Float64Array.from(left(), (r, i) => r * roots[i]!));
  solveUpper(triangle.upper, correction).forEach((step, j) => {
    b[j]! += step;
  });
  const residuals = left();
  if (axes.constant !== undefined) b[axes.constant]! += middle * axes.scales[axes.constant]!;
  const residualSumOfSquares = sum(residuals.map((r, i) => weights[i]! * r * r));
  const degreesOfFreedom = count - size;
  const residualSd = degreesOfFreedom > 0 ? Math.sqrt(residualSumOfSquares / degreesOfFreedom) : Number.NaN;
  const root = invertUpper(triangle.upper);
  const rawRoot = axes.rawColumns(root);
  const covariance = rowProducts(rawRoot, residualSd ** 2);
  const thin = columns.map((_, k) => triangle.turnBack(unit(k, y.length)));
  return {
    coefficients: axes.rawCoefficients(b),
    standardErrors: covariance.map((row, j) => Math.sqrt(row[j]!)),
    covariance,
    residuals,
    leverages: y.map((_, i) => thin.reduce((total, column) => total + column[i]! ** 2, 0)),
    degreesOfFreedom,
    residualSd,
    residualSumOfSquares,
    rSquared: 1 - residualSumOfSquares / totalSquares(y, weights, triangle.turn(roots), size),
    rank: size,
    local: { axes, coefficients: b, root },
  };
}

function checkRows(
  design: readonly (readonly number[])[],
  y: readonly number[],
  weights: readonly number[],
): void {
  const size = design[0]?.length ?? 0;
  invariant(
    design.length === y.length && y.length > 0,
    "least squares needs one row of the design for each y",
  );
  invariant(weights.length === y.length, "least squares needs one weight for each y");
  invariant(
    size > 0 && design.every((row) => row.length === size),
    "rows of a design are of one length, not 0",
  );
  invariant(y.every(Number.isFinite), "least squares needs finite y");
  invariant(
    design.every((row) => row.every(Number.isFinite)),
    "least squares needs a finite design",
  );
  for (const weight of weights) {
    if (!(weight >= 0 && weight < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`a weight must be a finite number of at least 0, not ${weight}`);
    }
  }
}

/** About the mean where a constant can be made of the columns: then Q holds the whole of it. */
function totalSquares(
  y: readonly number[],
  weights: readonly number[],
  turnedOnes: Float64Array,
  size: number,
): number {
  const outside = sum(turnedOnes.subarray(size).map((x) => x * x));
  const total = sum(weights);
  const middle = outside < 1e-20 * total ? sum(y.map((v, i) => v * weights[i]!)) / total : 0;
  return sum(y.map((v, i) => weights[i]! * (v - middle) ** 2));
}

function unit(k: number, length: number): Float64Array {
  const e = new Float64Array(length);
  e[k] = 1;
  return e;
}

function untold(rows: number, size: number, rank: number, count: number, axes: LocalAxes): LinearFit {
  const nothing = (length: number): number[] => new Array(length).fill(Number.NaN);
  const square = nothing(size).map(() => nothing(size));
  return {
    coefficients: nothing(size),
    standardErrors: nothing(size),
    covariance: square,
    residuals: nothing(rows),
    leverages: nothing(rows),
    degreesOfFreedom: count - rank,
    residualSd: Number.NaN,
    residualSumOfSquares: Number.NaN,
    rSquared: Number.NaN,
    rank,
    local: { axes, coefficients: nothing(size), root: square },
  };
}
