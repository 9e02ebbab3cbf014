// Splitting strength: a specimen laid on its side under a line of load.

import { GRAVITY_M_S2 } from "./compression.ts";
import { requireAboveZero } from "./require.ts";

/**
 * The load drops when the specimen splits: a stop under it, no fingers beneath.
 *
 * Splitting (indirect tensile) strength, kPa: 2 load × g / (π d h).
 * loadKg: all that bears on the line, > 0, kg. heightMm, diameterMm of the specimen: > 0, mm. Else RangeError.
 * It wants about half the weight of a compression test per kPa, and the strength is a fraction of it.
 * Source: line load on a cylinder (elastic solution).
 * @example splittingKPa({ loadKg: 1, heightMm: 50.8, diameterMm: 50.8 }) // 2.42
 */
export function splittingKPa(test: {
  readonly loadKg: number;
  readonly heightMm: number;
  readonly diameterMm: number;
}): number {
  const { loadKg, heightMm, diameterMm } = test;
  requireAboveZero("splittingKPa", { loadKg, heightMm, diameterMm });
  return (2000 * loadKg * GRAVITY_M_S2) / (Math.PI * diameterMm * heightMm);
}
