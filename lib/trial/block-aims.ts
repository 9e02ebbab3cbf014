// Where each of two blocks is best, such as two mullings or two clays: a batch is made in one of them, never between.

import { type AimResult, aimFor } from "./aim.ts";
import { aimedCurve } from "./aimed-curves.ts";
import { type ResponseCurve, responseCurve } from "./response-curve.ts";
import type { TrialProperty } from "./trial-property.ts";

export interface BlockAim {
  readonly block: string;
  readonly result: AimResult;
}

/**
 * The aim of each block by itself, the first named first: the curve that both share, moved by the offset of the block,
 * with the doubt of that offset. None unless every curve of the aim has just two blocks.
 * x, blocks: of every batch of the trial.
 * Example: strength 10 kPa higher in one block, and all else alike: its chance is the better one where strength is short.
 */
export function blockAims(
  found: readonly TrialProperty[],
  x: readonly number[],
  blocks: readonly (string | undefined)[],
): readonly BlockAim[] {
  const aimed = found.filter((property) => aimedCurve(property).length > 0);
  if (aimed.length === 0 || aimed.some(({ curve }) => curve.blocks.length !== 1)) return [];
  const names = [...new Set(blocks.filter((name) => name !== undefined))];
  if (names.length !== 2) return [];
  return names.map((block) => ({
    block,
    result: aimFor(
      aimed.flatMap((property) =>
        aimedCurve({ ...property, curve: curveInBlock(property, x, blocks, block) }),
      ),
    ),
  }));
}

/** The curve of a property as it runs in one block: its constant term is the mean there, at the middle of the axis. */
export function curveInBlock(
  { figures, curve }: Pick<TrialProperty, "figures" | "curve">,
  x: readonly number[],
  blocks: readonly (string | undefined)[],
  block: string,
): ResponseCurve {
  const y = figures.map((figure, i) => (figure && curve.used.includes(i) ? figure.value : Number.NaN));
  // As many batches at as many levels take the same form again.
  const peaked = curve.form === "curve";
  return responseCurve({ x, y, blocks }, { peaked, block });
}
