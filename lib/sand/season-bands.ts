// What the draws of a heap come to: a middle with its 95 % interval.

import { drawQuantiles } from "../quantity/draw-summary.ts";
import { dryKgAt, type HeapColumns } from "./heap-columns.ts";

export interface Band {
  readonly value: number;
  /** Ends of the 95 % interval. */
  readonly low: number;
  readonly high: number;
}

/** What heaps are made of. */
export interface HeapBands {
  readonly liveClayOfDryMixPercent: Band;
  readonly deadClayOfDryMixPercent: Band;
  readonly finesOfGrainPercent: Band;
  readonly dryKg: Band;
}

/** Middle (median) and 95 % interval of draws; the draws are left as they are. */
export function bandOf(draws: Float64Array): Band {
  const [low, value, high] = drawQuantiles(draws.slice(), [0.025, 0.5, 0.975]);
  return { value: value!, low: low!, high: high! };
}

/** Live clay of each heap, % of dry mix. */
export const liveShares = (heaps: HeapColumns): Float64Array =>
  heaps.liveClayKg.map((kg, i) => (100 * kg) / dryKgAt(heaps, i));

/** Bands of what heaps are made of. */
export function heapBands(heaps: HeapColumns): HeapBands {
  const { sandKg, finesKg, deadClayKg } = heaps;
  const dryKg = sandKg.map((_, i) => dryKgAt(heaps, i));
  return {
    liveClayOfDryMixPercent: bandOf(liveShares(heaps)),
    deadClayOfDryMixPercent: bandOf(deadClayKg.map((kg, i) => (100 * kg) / dryKg[i]!)),
    finesOfGrainPercent: bandOf(finesKg.map((kg, i) => (100 * kg) / (sandKg[i]! + kg))),
    dryKg: bandOf(dryKg),
  };
}
