// How days, or bags, scatter about each other: what a batch on a new day adds.

import { fitLinear, type LinearFit } from "../numbers/least-squares.ts";
import { sum } from "../numbers/sum.ts";

export interface BlockScatter {
  /** Variance of a new block about the mean of these, in the property's unit squared; 0 or more. */
  readonly variance: number;
  /** Variance of one new batch at a place with this leverage, in a block that is not among these. */
  ofNewBatch(leverage: number): { readonly variance: number; readonly df: number };
}

/** Fewer blocks say nothing of the next one. */
export const leastBlocks = 3;

/**
 * Scatter of blocks from the offsets of a fit: σ_b² = (MS_b − s²)/n₀ with MS_b the mean square that the K − 1 offsets
 * take up after the curve, s² the residual one, n₀ = tr(ZᵀMZ)/(K − 1), Z the blocks' indicators and M what the curve
 * leaves of them; 0 where MS_b is below s². A new block lies about the mean of these with σ_b²(1 + Σw²), w the shares
 * of the batches in each. Degrees of freedom of the sum of mean squares by Satterthwaite.
 * curve: rows of powers without offsets; fit: with offsets; blocks: the name of each batch's block, three or more.
 * Source: C. R. Henderson, Biometrics 9 (1953) 226–252, method 3; F. E. Satterthwaite, Biometrics Bull. 2 (1946)
 * 110–114 (both from memory; checked against a balanced analysis of variance and by simulation).
 */
export function blockScatter(
  curve: readonly (readonly number[])[],
  y: readonly number[],
  blocks: readonly string[],
  fit: LinearFit,
): BlockScatter {
  const names = [...new Set(blocks)];
  const members = names.map((name) => blocks.map((block) => (block === name ? 1 : 0)));
  const left = sum(members.map((member) => fitLinear(curve, member).residualSumOfSquares));
  const steps = names.length - 1;
  const blockMean = (fitLinear(curve, y).residualSumOfSquares - fit.residualSumOfSquares) / steps;
  const residual = fit.residualSd ** 2;
  const shares = members.map((member) => sum(member) / blocks.length);
  const far = 1 + sum(shares.map((share) => share * share));
  const perBlock = far / (left / steps);
  const between = Math.max(blockMean, residual);
  return {
    variance: perBlock * (between - residual),
    ofNewBatch(leverage) {
      const ofBlocks = perBlock * between;
      const ofBatch = Math.max(0, 1 + leverage - perBlock) * residual;
      const variance = ofBlocks + ofBatch;
      return { variance, df: variance ** 2 / (ofBlocks ** 2 / steps + ofBatch ** 2 / fit.degreesOfFreedom) };
    },
  };
}
