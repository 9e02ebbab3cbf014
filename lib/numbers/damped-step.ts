// One step of a search for least squares, held back where the slopes cannot be trusted far.

import { dot } from "./dot.ts";
import { solveUpper, triangleOf } from "./householder.ts";

/**
 * δ that makes ‖J·δ − r‖² + damping·Σ(sizeⱼδⱼ)² least. slopes: columns of J; left: r; damping ≥ 0, 0 is Gauss–Newton.
 * Slopes that are not finite or depend on each other, without damping: NaN.
 * Source: K. Levenberg, Q. Appl. Math. 2 (1944) 164–168; D. W. Marquardt, J. SIAM 11 (1963) 431–441.
 * @example dampedStep([Float64Array.of(2)], Float64Array.of(6), [2], 0) // [3]
 */
export function dampedStep(
  slopes: readonly Float64Array[],
  left: Float64Array,
  sizes: readonly number[],
  damping: number,
): number[] {
  const below = damping > 0 ? slopes.length : 0;
  const columns = slopes.map((column, j) => {
    const long = new Float64Array(column.length + below);
    long.set(column);
    if (below > 0) long[column.length + j] = Math.sqrt(damping) * sizes[j]!;
    return long;
  });
  const right = new Float64Array(left.length + below);
  right.set(left);
  const triangle = triangleOf(columns);
  if (triangle.rank < slopes.length) return slopes.map(() => Number.NaN);
  return solveUpper(triangle.upper, triangle.turn(right));
}

/** True when what is left stands at a right angle to every slope, to within 1e-6: no direction leads down any more. */
export function atRightAngle(slopes: readonly Float64Array[], left: Float64Array): boolean {
  const size = Math.hypot(...left);
  return slopes.every((column) => {
    return Math.abs(dot(column, left)) <= 1e-6 * Math.hypot(...column) * size;
  });
}
