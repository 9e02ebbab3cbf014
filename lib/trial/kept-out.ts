// Batches that the log leaves out of a trial: where they would stand, and the log with them counted.

import type { BatchFigures } from "../log/batch-figures.ts";
import type { Log } from "../log/types.ts";
import type { Spread } from "../quantity/spread.ts";
import { type AxisFigure, axisFigure } from "./trial-axis.ts";

export interface KeptOut {
  readonly row: BatchFigures;
  /** Undefined where it has no figure on the axis. */
  readonly x: AxisFigure | undefined;
  /** The founder's reason, as in the log. */
  readonly why: string;
}

export function keptOutOf(
  figures: readonly BatchFigures[],
  placeOf: (row: BatchFigures) => Spread | undefined,
): readonly KeptOut[] {
  return figures.flatMap((row) => {
    const { keptOut } = row.batch;
    if (!keptOut) return [];
    const at = placeOf(row);
    return [{ row, x: at && axisFigure(at), why: keptOut.why }];
  });
}

/** The log as if it left out none of the batches of these names. */
export function withCounted(log: Log, names: readonly string[]): Log {
  return {
    ...log,
    batches: log.batches.map((batch) => {
      if (!batch.keptOut || !names.includes(batch.name)) return batch;
      const { keptOut: _, ...counted } = batch;
      return counted;
    }),
  };
}
