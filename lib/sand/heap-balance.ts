// What an event does to a heap, with a look at its arguments; and the shares of a heap.

import {
  addClay,
  addNewSand,
  addWater,
  burn,
  columnsOfHeaps,
  type HeapContents,
  heapAt,
  lose,
} from "./heap-columns.ts";
import { requireFromZero } from "./require.ts";

export type { HeapContents };

/**
 * One event. pour: burntKg of the dry mix has its clay wholly killed, its mass stays. lost: dryKg of the dry mix goes
 * as it is, its water with it. clay, new sand: as weighed, with the water that they hold. water: below zero it dries.
 */
export type HeapStep =
  | { readonly kind: "pour"; readonly burntKg: number }
  | { readonly kind: "lost"; readonly dryKg: number }
  | {
      readonly kind: "clay";
      readonly weighedKg: number;
      readonly moisturePercent: number;
      /** % of its dry mass. */
      readonly livePercent: number;
    }
  | {
      readonly kind: "new sand";
      readonly weighedKg: number;
      readonly moisturePercent: number;
      /** % of its dry mass. */
      readonly finesPercent: number;
    }
  | { readonly kind: "water"; readonly kg: number };

export interface HeapShares {
  readonly dryKg: number;
  readonly dampKg: number;
  readonly liveClayOfDryMixPercent: number;
  readonly deadClayOfDryMixPercent: number;
  /** % of the grain, as a washed sieving gives it. */
  readonly finesOfGrainPercent: number;
  readonly moistureOfDampPercent: number;
}

/** All that is dry, kg. Example: 92 kg of sand and 8 of live clay: 100. */
export function dryHeapKg(heap: HeapContents): number {
  return heap.sandKg + heap.finesKg + heap.liveClayKg + heap.deadClayKg + heap.otherKg;
}

/**
 * Shares of a heap, %: clay 100 A/(dry mix), fines 100 F/(sand + fines), moisture 100 W/(dry mix + W). Masses: kg, 0 or
 * more; a heap without anything dry has NaN. Source: mass balance.
 * @example
 * heapShares({ sandKg: 92, finesKg: 0, liveClayKg: 8, deadClayKg: 0, otherKg: 0, waterKg: 3.627 })
 * // { liveClayOfDryMixPercent: 8, moistureOfDampPercent: 3.5 }
 */
export function heapShares(heap: HeapContents): HeapShares {
  const dryKg = dryHeapKg(heap);
  const dampKg = dryKg + heap.waterKg;
  return {
    dryKg,
    dampKg,
    liveClayOfDryMixPercent: (100 * heap.liveClayKg) / dryKg,
    deadClayOfDryMixPercent: (100 * heap.deadClayKg) / dryKg,
    finesOfGrainPercent: (100 * heap.finesKg) / (heap.sandKg + heap.finesKg),
    moistureOfDampPercent: (100 * heap.waterKg) / dampKg,
  };
}

/**
 * The heap after one event; the one given stays as it is. Nothing is made or lost but what the event says: a pour
 * turns live clay into dead, share burntKg / dry mix of it.
 *
 * heap: masses 0 or more, kg. step: masses 0 or more, kg (water may dry, below zero); percentages 0 to 100. Else
 * RangeError. More burnt, lost or dried than there is: all of it, no more.
 * Source: mass balance; burnt sand as the trade's wear factor counts it (kg of sand whose clay is destroyed).
 * @example
 * heapAfter({ sandKg: 92, finesKg: 0, liveClayKg: 8, deadClayKg: 0, otherKg: 0, waterKg: 0 },
 *   { kind: "pour", burntKg: 2 }) // { liveClayKg: 7.84, deadClayKg: 0.16 }
 */
export function heapAfter(heap: HeapContents, step: HeapStep): HeapContents {
  const { kind: _, ...numbers } = step;
  const { kg = 0, ...rest } = numbers as { readonly [name: string]: number };
  requireFromZero("heapAfter", { ...heap, ...rest });
  if (!Number.isFinite(kg)) throw new RangeError(`heapAfter: kg must be a number, got ${kg}`);
  for (const [name, percent] of Object.entries(rest))
    if (name.endsWith("Percent") && percent > 100)
      throw new RangeError(`heapAfter: ${name} must be 100 or less, got ${percent}`);
  const columns = columnsOfHeaps([heap]);
  if (step.kind === "pour") burn(columns, 0, step.burntKg);
  else if (step.kind === "lost") lose(columns, 0, step.dryKg);
  else if (step.kind === "clay") addClay(columns, 0, step.weighedKg, step.moisturePercent, step.livePercent);
  else if (step.kind === "new sand")
    addNewSand(columns, 0, step.weighedKg, step.moisturePercent, step.finesPercent);
  else addWater(columns, 0, step.kg);
  return heapAt(columns, 0);
}
