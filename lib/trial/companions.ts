// What may have gone along with the axis of a trial, taken from its batches.

import type { TrialAxis } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import type { NumberCompanion, TrialToCheck } from "./confounding.ts";

/** Batches within so many points of compactability were tempered to one: our own. */
const temperedWithin = 6;

/**
 * The companions to look at for an axis. For clay, the batches' moisture and compactability: moisture only where they
 * were not tempered to one compactability, for then the water follows the clay on purpose. For moisture and
 * compactability, the clay weighed in; that these two go along with each other is what a trial is for. Days where no
 * block is said.
 */
export function companionsOf(
  axis: TrialAxis,
  rows: readonly BatchFigures[],
  x: readonly number[],
): TrialToCheck {
  const compactability = rows.map(({ tests }) => tests.compactability?.value);
  const known = compactability.filter((value) => value !== undefined);
  const tempered = known.length >= 4 && Math.max(...known) - Math.min(...known) <= temperedWithin;
  const moisture = rows.map(
    ({ tests, recipe }) => tests.moisture?.value ?? recipe?.moistureOfDampPercent?.value,
  );
  const clay = rows.map(({ recipe }) => recipe?.clayOfDryMixPercent?.value);
  const ofAxis: { readonly [name in NumberCompanion]?: readonly (number | undefined)[] } =
    axis !== "clay" ? { clay } : tempered ? { compactability } : { compactability, moisture };
  return {
    x,
    sameHeap: rows.map(({ batch }) => batch.sameHeap),
    blocks: rows.some(({ batch }) => batch.block !== undefined)
      ? rows.map(({ batch }) => batch.block)
      : rows.map(({ batch }) => batch.date),
    companions: {
      "trial order": rows.map(({ batch }) => batch.order),
      "minutes mulled": rows.map(({ batch }) => batch.mulledMin?.value),
      "minutes stood": rows.map(({ batch }) => batch.stoodMin?.value),
      density: rows.map(({ tests }) => tests.density?.value),
      ...ofAxis,
    },
  };
}
