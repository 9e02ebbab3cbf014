// A full quadratic surface over two factors, by least squares.

import { invariant } from "../issue.ts";
import { fitLinear, type LinearFit } from "./least-squares.ts";
import { type Prediction, predictAt } from "./predict-at.ts";

export interface QuadraticSurface {
  /** Coefficients in the order 1, x₁, x₂, x₁x₂, x₁², x₂², then a step for each block beyond the first. */
  readonly fit: LinearFit;
  /** Blocks in the order in which they came; the surface is that of the first. None: empty. */
  readonly blocks: readonly string[];
  /** At a place, in the first block. */
  at(x1: number, x2: number): Prediction;
}

/**
 * y = b₀ + b₁x₁ + b₂x₂ + b₁₂x₁x₂ + b₁₁x₁² + b₂₂x₂² + the step of its block.
 * x1, x2: the factors, best coded so that the trials run from about −1 to 1; eigenvalues are then comparable. blocks: a name a row,
 * for trials of one day or one bag. Six different places at least, well spread; else the fit is NaN (see fitLinear's
 * rank). Lists of different lengths, numbers that are not finite: throws.
 * Source: R. H. Myers, D. C. Montgomery and C. M. Anderson-Cook, Response Surface Methodology (2009).
 * @example fitQuadraticSurface([-1, 1, -1, 1, 0, 2, 0], [-1, -1, 1, 1, 0, 0, 2], [8, 8, 8, 8, 10, 6, 6]).at(0, 0).value // 10
 */
export function fitQuadraticSurface(
  x1: readonly number[],
  x2: readonly number[],
  y: readonly number[],
  options: { readonly weights?: readonly number[]; readonly blocks?: readonly string[] } = {},
): QuadraticSurface {
  const { weights, blocks } = options;
  invariant(x1.length === y.length && x2.length === y.length, "a surface needs x1 and x2 for each y");
  invariant(!blocks || blocks.length === y.length, "a surface needs a block for each y, or none");
  const names = [...new Set(blocks ?? [])];
  const design = x1.map((a, i) => [
    ...terms(a, x2[i]!),
    ...names.slice(1).map((name) => (blocks![i] === name ? 1 : 0)),
  ]);
  const fit = fitLinear(design, y, weights ? { weights } : {});
  return {
    fit,
    blocks: names,
    at: (a, b) => predictAt(fit, [...terms(a, b), ...names.slice(1).map(() => 0)]),
  };
}

function terms(a: number, b: number): number[] {
  return [1, a, b, a * b, a * a, b * b];
}
