// Whether the curves of a trial follow its batches: a wild batch, a form that does not fit.

import type { BatchFigures } from "../log/batch-figures.ts";
import { type LackOfFit, lackOfFit } from "./lack-of-fit.ts";
import { levelsOf } from "./response-curve.ts";
import type { TrialProperty } from "./trial-property.ts";
import { outlyingRow, type WildBatch } from "./wild-batch.ts";

const level = 0.05;

/** At most one a property: the batch furthest off, where chance puts one so far in fewer than one trial of twenty. */
export function wildBatches(
  properties: readonly TrialProperty[],
  rows: readonly BatchFigures[],
): readonly WildBatch[] {
  return properties.flatMap(({ test, curve }): WildBatch[] => {
    const found = curve.fit && outlyingRow(curve.fit);
    if (!found || found.p > level) return [];
    const { row, ...figures } = found;
    return [{ test, batch: rows[curve.used[row]!]!.batch.name, ...figures }];
  });
}

/** One for each property with repeats at a level, whether it fits or not; a block's batches are compared within it. */
export function misfits(
  properties: readonly TrialProperty[],
  rows: readonly BatchFigures[],
  x: readonly number[],
): readonly LackOfFit[] {
  return properties.flatMap(({ test, curve, figures }): LackOfFit[] => {
    if (!curve.fit) return [];
    const { used, blocks } = curve;
    const block = (i: number): string => rows[i]!.batch.block ?? "";
    const levels = levelsOf(used.map((i) => x[i]!));
    const design = used.map((i) => [
      ...curve.row(x[i]!),
      ...blocks.map((name) => (block(i) === name ? 1 : 0)),
    ]);
    const cells = used.map((i, k) => `${levels[k]}${blocks.length > 0 ? ` ${block(i)}` : ""}`);
    const found = lackOfFit(
      design,
      used.map((i) => figures[i]!.value),
      cells,
    );
    return found ? [{ test, ...found }] : [];
  });
}
