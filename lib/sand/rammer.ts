// The rammer: energy of a falling weight, so that any tube and weight can stand in for the standard one.

import { GRAVITY_M_S2 } from "./compression.ts";
import { requireAboveZero } from "./require.ts";

/**
 * US: 14 lb falling 2 in (from memory). Metric: 6,666 g (Abdullah et al., Pertanika J. Sci. Technol. 21(2), 2013)
 * falling 50 mm (from memory). Three blows each.
 */
export const rammers = Object.freeze({
  us: Object.freeze({ weightKg: 6.35029318, dropMm: 50.8, blows: 3 }),
  metric: Object.freeze({ weightKg: 6.666, dropMm: 50, blows: 3 }),
});

/**
 * A falling weight takes fingers with it: both hands on the handle, none on the tube.
 *
 * Energy of one blow, J: weight × g × drop. weightKg, dropMm: > 0, kg and mm, else RangeError.
 * A light weight from high up bounces more: match the density of the specimen, not the energy alone.
 * Source: m g h. Example: rammerEnergyJ({ weightKg: 6.350, dropMm: 50.8 }) is 3.163.
 */
export function rammerEnergyJ({
  weightKg,
  dropMm,
}: {
  readonly weightKg: number;
  readonly dropMm: number;
}): number {
  requireAboveZero("rammerEnergyJ", { weightKg, dropMm });
  return (weightKg * GRAVITY_M_S2 * dropMm) / 1000;
}

/** Energy of one blow of the US rammer, J: 3.164. */
const standardBlowJ = rammerEnergyJ(rammers.us);

/**
 * Drop that gives a weight the energy of a standard blow, mm: energy / (weight × g).
 * weightKg: > 0, kg; energyJ: of one blow, > 0, that of the US rammer unless given. Else RangeError.
 * Source: m g h. Example: dropForMm({ weightKg: 2 }) is 161.
 */
export function dropForMm({
  weightKg,
  energyJ = standardBlowJ,
}: {
  readonly weightKg: number;
  readonly energyJ?: number;
}): number {
  requireAboveZero("dropForMm", { weightKg, energyJ });
  return (1000 * energyJ) / (weightKg * GRAVITY_M_S2);
}

/**
 * Energy that all blows bring to a kilogram of sand, J/kg: what to keep alike in tubes of another size; the standard
 * specimen of 155 g gets 61. weightKg, dropMm, blows, sandG: > 0, else RangeError.
 * Source: m g h n / mass.
 * @example rammingJKg({ weightKg: 6.35, dropMm: 50.8, blows: 3, sandG: 155 }) // 61.2
 */
export function rammingJKg(ramming: {
  readonly weightKg: number;
  readonly dropMm: number;
  readonly blows: number;
  readonly sandG: number;
}): number {
  const { weightKg, dropMm, blows, sandG } = ramming;
  requireAboveZero("rammingJKg", { blows, sandG });
  return (1000 * blows * rammerEnergyJ({ weightKg, dropMm })) / sandG;
}
