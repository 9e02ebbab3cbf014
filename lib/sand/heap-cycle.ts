// One cycle of a heap by shares: clay burnt, sand lost, clay and new sand put in.

import { dryHeapKg, type HeapContents, heapAfter } from "./heap-balance.ts";

/** Alike in every cycle. Clay and sand are dry. */
export interface HeapCycle {
  /** β: of the live clay, killed by one pour, %. */
  readonly burntPercent: number;
  /** λ: of everything, lost after it, %. */
  readonly lostPercent: number;
  readonly clayKg: number;
  /** Of the clay put in, % of its dry mass. */
  readonly clayLivePercent: number;
  readonly newSandKg: number;
  readonly newSandFinesPercent?: number;
}

/**
 * The heap after one cycle: A′ = (1 − β)(1 − λ) A + π a, D′ = (1 − λ)(D + β A) + (1 − π) a, S′ = (1 − λ) S + s.
 * Percentages 0 to 100, masses 0 or more, kg, dry; else RangeError.
 * Source: mass balance, in this order.
 * @example
 * heapCycle({ sandKg: 92, finesKg: 0, liveClayKg: 8, deadClayKg: 0, otherKg: 0, waterKg: 0 },
 *   { burntPercent: 2, lostPercent: 5, clayKg: 0.552, clayLivePercent: 100, newSandKg: 4.448 }).deadClayKg
 * // 0.152
 */
export function heapCycle(heap: HeapContents, cycle: HeapCycle): HeapContents {
  const { burntPercent, lostPercent, clayKg, clayLivePercent, newSandKg, newSandFinesPercent = 0 } = cycle;
  const burnt = heapAfter(heap, { kind: "pour", burntKg: (dryHeapKg(heap) * burntPercent) / 100 });
  const kept = heapAfter(burnt, { kind: "lost", dryKg: (dryHeapKg(heap) * lostPercent) / 100 });
  const clay = { weighedKg: clayKg, moisturePercent: 0, livePercent: clayLivePercent };
  const sand = { weighedKg: newSandKg, moisturePercent: 0, finesPercent: newSandFinesPercent };
  return heapAfter(heapAfter(kept, { kind: "clay", ...clay }), { kind: "new sand", ...sand });
}
