// What a heap is made of, and what each event does to it: mass in equals mass out and mass there, for every part.

import { requireFromZero } from "./require.ts";

/** Masses in a heap, kg; all but the water dry. */
export interface HeapContents {
  /** Grain that is no fines. */
  readonly sandKg: number;
  /** Grain finer than No. 140: stone dust, not clay. */
  readonly finesKg: number;
  /** Clay that binds, counted as clay of the founder's own bag. */
  readonly liveClayKg: number;
  /** Clay that heat has killed, and what of a bag never bound. */
  readonly deadClayKg: number;
  /** Additives and what is left of them. */
  readonly otherKg: number;
  readonly waterKg: number;
}

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

/** A heap that steps are worked into, for many draws in a row. */
export type HeapDraft = { -readonly [part in keyof HeapContents]: number };

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
  const draft = { ...heap };
  workIn(draft, step);
  return draft;
}

/** heapAfter into the heap itself, without a look at its arguments. */
export function workIn(heap: HeapDraft, step: HeapStep): void {
  if (step.kind === "pour") burn(heap, step.burntKg);
  else if (step.kind === "lost") lose(heap, step.dryKg);
  else if (step.kind === "clay") addClay(heap, step.weighedKg, step.moisturePercent, step.livePercent);
  else if (step.kind === "new sand")
    addNewSand(heap, step.weighedKg, step.moisturePercent, step.finesPercent);
  else addWater(heap, step.kg);
}

// Each step into the heap itself, without a look at its arguments: for draws, and so without a record for each.

export function burn(heap: HeapDraft, burntKg: number): void {
  const killed = heap.liveClayKg * Math.min(1, burntKg / dryHeapKg(heap));
  heap.liveClayKg -= killed;
  heap.deadClayKg += killed;
}

export function lose(heap: HeapDraft, dryKg: number): void {
  const kept = 1 - Math.min(1, dryKg / dryHeapKg(heap));
  heap.sandKg *= kept;
  heap.finesKg *= kept;
  heap.liveClayKg *= kept;
  heap.deadClayKg *= kept;
  heap.otherKg *= kept;
  heap.waterKg *= kept;
}

export function addClay(
  heap: HeapDraft,
  weighedKg: number,
  moisturePercent: number,
  livePercent: number,
): void {
  const dry = weighedKg * (1 - moisturePercent / 100);
  heap.liveClayKg += (dry * livePercent) / 100;
  heap.deadClayKg += dry * (1 - livePercent / 100);
  heap.waterKg += weighedKg - dry;
}

export function addNewSand(
  heap: HeapDraft,
  weighedKg: number,
  moisturePercent: number,
  finesPercent: number,
): void {
  const dry = weighedKg * (1 - moisturePercent / 100);
  heap.finesKg += (dry * finesPercent) / 100;
  heap.sandKg += dry * (1 - finesPercent / 100);
  heap.waterKg += weighedKg - dry;
}

/** Below zero it dries. */
export function addWater(heap: HeapDraft, kg: number): void {
  heap.waterKg = Math.max(0, heap.waterKg + kg);
}
