// A sieving of the log as the sand models take it: each mass with the doubt of its scale.

import type { Source } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import { linear, spreadOfQuantity } from "../quantity/spread-of.ts";
import type { SievedPortion } from "../sand/fineness-figure.ts";
import { type MassBalance, massBalance } from "../sand/mass-balance.ts";
import type { RetainedEntry, Sieving } from "./types.ts";

/**
 * Masses with their ±. The founder's own ± goes before the scale's. Without one, a declared scale gives
 * reading: two roundings to its step, of the empty pan and of the full one (triangular, ± one step);
 * rig: its bias within what the founder's check found, the same in every weighing.
 * Neither: a bare number, and the figure will be "at least".
 * A loss counts when it is more than 0.3 % of the start mass and more than the steps of the scale explain.
 */
export function sievedPortion(sieving: Sieving): SievedPortion {
  const balance = sievingBalance(sieving);
  const counts = balance && balance.verdict !== "good" && balance.withinScale !== true;
  const loss = counts ? Math.max(0, balance.lossG) : 0;
  return {
    id: sieving.id,
    held: sieving.retained.map((entry) => ({
      label: entry.label,
      mass: massSpread(entry, sieving),
      ...(entry.sieve ? { sieve: entry.sieve } : {}),
    })),
    ...(sieving.set ? { set: sieving.set.name } : {}),
    loss: sieving.unit === "g" || !sieving.startG ? loss : (100 * loss) / sieving.startG.value,
  };
}

/** Start mass against the sum retained; undefined where either is not in grams. */
export function sievingBalance({ startG, retained, unit, scale }: Sieving): MassBalance | undefined {
  if (!startG || unit !== "g" || !(startG.value > 0)) return undefined;
  const retainedG = retained.map(({ mass }) => mass.value);
  return massBalance({ startG: startG.value, retainedG, ...(scale ? { stepG: scale.stepG } : {}) });
}

function massSpread({ label, mass }: RetainedEntry, sieving: Sieving): Spread | number {
  const says = `the weighing of ${label}`;
  const source = `weighing of ${label}, ${sieving.id}`;
  if (mass.plusMinus)
    return spreadOfQuantity({ value: mass.value, plusMinus: mass.plusMinus }, { source, says });
  const { scale, unit, startG } = sieving;
  if (!scale || (unit === "percent" && !startG)) return mass.value;
  const inGrams = unit === "g" ? 1 : 100 / startG!.value;
  const reading: Source = { id: source, kind: "reading", shape: { kind: "triangular" }, says };
  const bias: Source = {
    id: `bias of ${scale.name}`,
    kind: "rig",
    shape: { kind: "rectangular" },
    says: `the bias of the ${scale.name}`,
  };
  return linear(mass.value, [
    { scale: scale.stepG * inGrams, source: reading },
    { scale: (scale.withinG ?? 0) * inGrams, source: bias },
  ]);
}
