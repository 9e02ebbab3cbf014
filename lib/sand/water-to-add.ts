// Water that takes a heap from one moisture to another.

import { isAboveZero, isBelow100, requireAboveZero, requireBelow100 } from "./require.ts";

interface Wetting {
  /** Mass of the heap as it lies, damp, kg. */
  readonly heapKg: number;
  readonly fromOfDampPercent: number;
  readonly toOfDampPercent: number;
}

/**
 * Water between two moistures, kg, above zero to add, below zero to lose: heap (to − from) / (100 − to).
 *
 * heapKg: damp mass, > 0, kg. from…, to…: moisture, % of damp mass, below 100. Else RangeError.
 * The dry mass stays: adding 1 % of the heap's mass does not raise moisture by a whole point.
 * Source: mass balance. Example: waterNeedKg({ heapKg: 100, fromOfDampPercent: 4, toOfDampPercent: 3.5 }) is −0.5181.
 */
export function waterNeedKg({ heapKg, fromOfDampPercent, toOfDampPercent }: Wetting): number {
  if (!isAboveZero(heapKg)) requireAboveZero("waterNeedKg", { heapKg });
  if (!(isBelow100(fromOfDampPercent) && isBelow100(toOfDampPercent)))
    requireBelow100("waterNeedKg", { fromOfDampPercent, toOfDampPercent });
  return (heapKg * (toOfDampPercent - fromOfDampPercent)) / (100 - toOfDampPercent);
}

/**
 * Water to add, kg: waterNeedKg, and 0 where the heap is as wet or wetter; waterToLoseKg then says how much must go.
 * Arguments and limits as waterNeedKg. Before pouring it in: this is the whole of it, firstDoseKg says how much at once.
 * Source: mass balance.
 * Example: waterToAddKg({ heapKg: 100, fromOfDampPercent: 2.5, toOfDampPercent: 3.5 }) is 1.036.
 */
export function waterToAddKg(wetting: Wetting): number {
  return Math.max(0, waterNeedKg(wetting));
}

/**
 * Water that must dry off, kg: heap (from − to) / (100 − to), and 0 where the heap is as dry or drier.
 * Arguments and limits as waterNeedKg.
 * Source: mass balance.
 * Example: waterToLoseKg({ heapKg: 100, fromOfDampPercent: 4, toOfDampPercent: 3.5 }) is 0.5181.
 */
export function waterToLoseKg(wetting: Wetting): number {
  return Math.max(0, -waterNeedKg(wetting));
}

/**
 * Dry sand and clay that would bring an over-wet heap to its aim instead of drying it, kg: heap (from − to) / to; 0
 * where the heap is not too wet. Its own clay share must be that of the heap, or the clay thins.
 * Arguments as waterNeedKg, toOfDampPercent above 0, else RangeError.
 * Source: mass balance. Example: 100 kg at 5 %, down to 4 %: 25 kg.
 */
export function dryMixToAddKg(wetting: Wetting): number {
  const { heapKg, fromOfDampPercent, toOfDampPercent } = wetting;
  requireAboveZero("dryMixToAddKg", { heapKg, toOfDampPercent });
  requireBelow100("dryMixToAddKg", { fromOfDampPercent, toOfDampPercent });
  return Math.max(0, (heapKg * (fromOfDampPercent - toOfDampPercent)) / toOfDampPercent);
}
