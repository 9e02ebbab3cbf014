// Mulling efficiency against a batch of the same sand that was mulled until nothing more changed.

import type { BatchFigures } from "../log/batch-figures.ts";
import type { Log } from "../log/types.ts";
import { combine } from "../quantity/combine.ts";
import type { Figure } from "../quantity/figure.ts";
import { mullingEfficiencyPercent, mullingReferenceIssues } from "../sand/mulling-efficiency.ts";

export interface Mulled {
  readonly batch: string;
  readonly reference: string;
  readonly efficiencyPercent: Figure;
  readonly atLeast: boolean;
}

/** Mulled so many times as long, a batch may stand as a reference for another: our own. */
const longer = 1.5;

/**
 * Each batch against the longest mulled one of the same sand: that one mulled more than ten minutes (TJFS-108) and half
 * as long again as the batch, clay added within a tenth, both with strength, compactability and moisture. Without such
 * a pair, and for sand that has not been through a heap, there is no figure, and why.
 * @example mulledAgainstReference(batchFigures(log).figures, log).why
 */
export function mulledAgainstReference(
  rows: readonly BatchFigures[],
  { sands }: Pick<Log, "sands">,
): { readonly mulled: readonly Mulled[]; readonly why: string | undefined } {
  const whole = rows.filter(
    ({ tests, batch }) =>
      tests["green compression"] && tests.compactability && tests.moisture && batch.mulledMin,
  );
  // Longest first; of two alike the first of the log. Whatever comes after one too short is as well.
  const references = whole
    .filter((row) => mullingReferenceIssues({ mulledMin: minutes(row), newMix: false }).length === 0)
    .sort((a, b) => minutes(b) - minutes(a));
  const pairs = whole.flatMap((row) => {
    for (const other of references) {
      if (!(minutes(other) >= longer * minutes(row))) break;
      if (other !== row && alike(row, other)) return [{ row, reference: other }];
    }
    return [];
  });
  if (pairs.length === 0) {
    return {
      mulled: [],
      why: "Mulling efficiency needs a reference: mull part of one used batch on, more than ten minutes and until compactability changes by less than 5 %, test it, and log it as a batch of its own with its minutes.",
    };
  }
  const used = pairs.filter(({ row }) => stateOf(row, sands) === "used");
  if (used.length === 0) {
    return {
      mulled: [],
      why: "Mulling efficiency is not given for a mix of new sand and new clay, whose clay is still taking up water; where the sand has been through the heap, write its state as used, and name it at the batch.",
    };
  }
  return { mulled: used.map(({ row, reference }) => efficiency(row, reference)), why: undefined };
}

const minutes = ({ batch }: BatchFigures): number => batch.mulledMin?.value ?? 0;

function stateOf({ batch }: BatchFigures, sands: Log["sands"]): "new" | "used" | undefined {
  const named = sands.find(({ name }) => name === batch.sand);
  return (named ?? (batch.sand === undefined && sands.length === 1 ? sands[0] : undefined))?.state;
}

function alike(a: BatchFigures, b: BatchFigures): boolean {
  if (a.batch.sand !== b.batch.sand) return false;
  const [one, other] = [a, b].map(({ recipe }) => recipe?.clayOfDryMixPercent.value);
  if (one === undefined || other === undefined) return one === other;
  return Math.abs(one - other) <= 0.1 * Math.max(one, other);
}

function efficiency(row: BatchFigures, reference: BatchFigures): Mulled {
  const read = ({ tests }: BatchFigures) => [
    tests["green compression"]!.spread,
    tests.compactability!.spread,
    tests.moisture!.spread,
  ];
  const state = (v: ArrayLike<number>, from: number) => ({
    strengthKPa: Math.max(1e-6, v[from]!),
    compactabilityPercent: Math.max(1e-6, v[from + 1]!),
    moistureOfDampPercent: Math.max(1e-6, v[from + 2]!),
  });
  const all = [row, reference].flatMap(({ tests }) => Object.values(tests));
  return {
    batch: row.batch.name,
    reference: reference.batch.name,
    efficiencyPercent: combine(
      (v) => mullingEfficiencyPercent({ batch: state(v, 0), reference: state(v, 3) }),
      [...read(row), ...read(reference)],
    ),
    atLeast: all.some(({ missing }) => missing.length > 0),
  };
}
