// Least squares where no unknown may be negative: how much of each sand makes this grading?

import { invariant } from "../issue.ts";
import { dot } from "./dot.ts";
import { solveUpper, triangleOf } from "./householder.ts";

/**
 * x ≥ 0 that makes ‖A·x − b‖ least, and that norm.
 * A: rows of one length, one for each b, finite numbers, else throws. For shares that add to 1 append a row of a large
 * number throughout, with the same number in b. Where columns depend on each other, one of the equally good answers.
 * Source: C. L. Lawson and R. J. Hanson, Solving Least Squares Problems (1974), algorithm NNLS, chapter 23.
 * @example nonNegativeLeastSquares([[1, 0], [1, 0], [0, 1]], [2, 1, 1]) // { x: [1.5, 1], residualNorm: 0.7071... }
 */
export function nonNegativeLeastSquares(
  A: readonly (readonly number[])[],
  b: readonly number[],
): { x: number[]; residualNorm: number } {
  const size = A[0]?.length ?? 0;
  invariant(A.length === b.length && size > 0, "non-negative least squares needs one row for each b");
  invariant(
    A.every((row) => row.length === size && row.every(Number.isFinite)) && b.every(Number.isFinite),
    "non-negative least squares needs finite rows of one length",
  );
  const columns = Array.from({ length: size }, (_, j) => Float64Array.from(A, (row) => row[j]!));
  const target = Float64Array.from(b);
  const lengthOfB = Math.hypot(...b);
  const least = columns.map((column) => 1e-14 * Math.hypot(...column) * lengthOfB);
  let x: number[] = columns.map(() => 0);
  /** Columns that are free to be above 0. */
  let free: number[] = [];
  const residual = (): Float64Array => target.map((v, i) => v - dot(A[i]!, x));

  for (let round = 0; round < 30 * size; round++) {
    const left = residual();
    const pull = columns.map((column) => dot(column, left));
    const wanting = columns
      .map((_, j) => j)
      .filter((j) => !free.includes(j) && pull[j]! > least[j]!)
      .sort((j, k) => pull[k]! - pull[j]!);
    // A column that depends on the free ones, or that rounding alone pulls, is passed over.
    const chosen = wanting.find((j) => (solveFree(columns, [...free, j], target)?.at(-1) ?? 0) > 0);
    if (chosen === undefined) break;
    free = [...free, chosen];
    for (;;) {
      const trial = solveFree(columns, free, target)!;
      if (trial.every((value) => value > 0)) {
        x = columns.map((_, j) => (free.includes(j) ? trial[free.indexOf(j)]! : 0));
        break;
      }
      // Go towards the trial until the first unknown reaches 0, and hold it there.
      // One that stays above 0 has no step, so that a step of just 1 for another does not hold it too.
      const none = Number.POSITIVE_INFINITY;
      const steps = free.map((j, k) => (trial[k]! > 0 ? none : x[j]! / (x[j]! - trial[k]!)));
      const step = Math.min(...steps);
      free.forEach((j, k) => {
        x[j] = steps[k]! <= step ? 0 : x[j]! + step * (trial[k]! - x[j]!);
      });
      free = free.filter((j) => x[j]! > 0);
    }
  }
  return { x, residualNorm: Math.hypot(...residual()) };
}

/** Plain least squares on the free columns; undefined where they depend on each other. */
function solveFree(
  columns: readonly Float64Array[],
  free: readonly number[],
  target: Float64Array,
): number[] | undefined {
  const triangle = triangleOf(free.map((j) => columns[j]!));
  return triangle.rank < free.length ? undefined : solveUpper(triangle.upper, triangle.turn(target));
}
