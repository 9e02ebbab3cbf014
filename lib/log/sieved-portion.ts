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
 * rig: its bias within what the founder's check found, the same in every weighing of something.
 * Neither: a bare number, and the figure will be "at least".
 * A loss counts when it is more than 0.3 % of the start mass and more than the steps of the scale explain.
 * @example sievedPortion(log.sands[0]!.sievings[0]!).held[0]?.label
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
    ...(sieving.set ? { set: sieving.set.name, setChecked: sieving.set.checked } : {}),
    ...(sieving.scale && sieving.scale.withinG === undefined ? { scaleUnchecked: true } : {}),
    loss,
  };
}

/**
 * Start mass against the sum retained, held against the scale's steps and bias; undefined where either is not in grams.
 * @example sievingBalance(log.sands[0]!.sievings[0]!)?.verdict // "good"
 */
export function sievingBalance({ startG, retained, unit, scale }: Sieving): MassBalance | undefined {
  if (!startG || unit !== "g" || !(startG.value > 0)) return undefined;
  const retainedG = retained.map(({ mass }) => mass.value);
  const balance = massBalance({ startG: startG.value, retainedG, ...(scale ? { stepG: scale.stepG } : {}) });
  // The bias stands once in the start mass and once in every fraction that was weighed.
  const biases = Math.max(0, retainedG.filter((mass) => mass > 0).length - 1);
  const byBias = scale?.withinG !== undefined && Math.abs(balance.lossG) <= biases * scale.withinG;
  return byBias ? { ...balance, withinScale: true } : balance;
}

function massSpread({ label, mass }: RetainedEntry, sieving: Sieving): Spread | number {
  const says = `the weighing of ${label === "pan" ? "the pan" : label}`;
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
    { scale: mass.value > 0 ? (scale.withinG ?? 0) * inGrams : 0, source: bias },
  ]);
}
