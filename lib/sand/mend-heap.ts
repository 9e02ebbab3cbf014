// A heap brought back to what is wanted: water, clay and new sand in one balance.

import { requireAboveZero, requireBelow100, requireFromZero } from "./require.ts";

export interface HeapToMend {
  /** As it lies, damp, kg. */
  readonly heapKg: number;
  readonly moistureOfDampPercent: number;
  readonly liveClayOfDryMixPercent: number;
  readonly deadClayOfDryMixPercent: number;
  readonly gfn: number;
  readonly finesOfGrainPercent: number;
  readonly toMoistureOfDampPercent: number;
  readonly toLiveClayOfDryMixPercent: number;
  readonly toGfn: number;
  readonly toFinesOfGrainPercent: number;
  readonly clayMoisturePercent: number;
  /** Of the bag's dry clay, %. */
  readonly clayLivePercent: number;
  readonly newSandMoisturePercent: number;
  readonly newSandGfn: number;
  readonly newSandFinesPercent: number;
  /** New sand at most, dry, % of the dry heap; no limit where left out. */
  readonly mostNewSandOfHeapPercent?: number;
}

export interface HeapMend {
  /** As weighed, kg. */
  readonly clayKg: number;
  readonly newSandKg: number;
  /** False where fineness or fines ask for sand, and this sand cannot bring them to the aim. */
  readonly sandHelps: boolean;
  /** Grain fineness number with the new sand in; NaN where one of the two numbers is not known. */
  readonly gfnAfter: number;
  /** Below zero: so much must dry off. */
  readonly waterKg: number;
  readonly dampAfterKg: number;
  /** Where water is below zero: dry sand with its share of dry clay that would take it up instead, kg. */
  readonly dryMixInsteadKg: number;
  /** The same with the heap's dry mass kept: so much thrown out first, dry, and less of all put in. */
  readonly keepingMass: {
    readonly throwOutDryKg: number;
    readonly clayKg: number;
    readonly newSandKg: number;
    readonly waterKg: number;
  };
}

/** What may be put in at once. Our own. */
export const mendLimits = Object.freeze({
  /** Clay at one mulling, % of the dry heap. */
  clayOfHeapPercent: 1,
  /** New sand at one mulling, % of the dry heap. */
  sandOfHeapPercent: 10,
});

/**
 * Clay, new sand and water that bring a heap to its aims, kg as weighed. New sand first, as fineness and fines ask:
 * S′ = G (g − g*)/(g* − gₛ) and G (f − f*)/(f* − fₛ), the larger, on the heap's grain G; then clay
 * C′ = (c* (dry + S′) − A)/(π − c*), on the dry mix; then water to the moisture wanted, less what sand and clay bring.
 * Keeping the mass, the share x = 1 − dry/(dry + S′ + C′) is thrown out first and all additions shrink by 1 − x.
 *
 * heapKg > 0, kg. Moistures 0 to below 100, % of their own damp mass. Clay shares 0 to below 100, % of dry mix; wanted
 * live clay below clayLivePercent. gfn and fines: NaN where not known or not wanted, and new sand then is not asked
 * for by them. Else RangeError. A heap with more clay than wanted gets none; one with fewer fines than wanted no sand
 * for them. mostNewSandOfHeapPercent from 0 caps S′: fineness and fines then stop short of their aims, gfnAfter says
 * where, and clay and water are those of the sand that goes in. Where the new sand is on the heap's side of the aim it is no help: none is asked for, sandHelps is false.
 * Source: mass balance; a grain fineness number is a mean by mass, so blends of grain are straight in it.
 * @example
 * mendHeap({ heapKg: 100, moistureOfDampPercent: 2.5, toMoistureOfDampPercent: 3.5, liveClayOfDryMixPercent: 6.8,
 *   toLiveClayOfDryMixPercent: 8, deadClayOfDryMixPercent: 0, clayMoisturePercent: 10, clayLivePercent: 100,
 *   gfn: NaN, toGfn: NaN, finesOfGrainPercent: NaN, toFinesOfGrainPercent: NaN,
 *   newSandGfn: NaN, newSandMoisturePercent: 0, newSandFinesPercent: 0 }) // { clayKg: 1.413, waterKg: 0.941 }
 */
export function mendHeap(heap: HeapToMend): HeapMend {
  const { heapKg, moistureOfDampPercent, toMoistureOfDampPercent, clayMoisturePercent } = heap;
  const { liveClayOfDryMixPercent, deadClayOfDryMixPercent, newSandMoisturePercent } = heap;
  const { toLiveClayOfDryMixPercent, clayLivePercent } = heap;
  const shares = {
    moistureOfDampPercent,
    toMoistureOfDampPercent,
    clayMoisturePercent,
    newSandMoisturePercent,
    liveClayOfDryMixPercent,
    deadClayOfDryMixPercent,
    toLiveClayOfDryMixPercent,
  };
  requireAboveZero("mendHeap", { heapKg, toMoistureOfDampPercent, clayLivePercent });
  requireFromZero("mendHeap", shares);
  requireBelow100("mendHeap", shares);
  if (!(toLiveClayOfDryMixPercent < clayLivePercent))
    throw new RangeError("mendHeap: no clay can bring a heap above its own live share");
  const { mostNewSandOfHeapPercent = 0 } = heap;
  requireFromZero("mendHeap", { mostNewSandOfHeapPercent });
  return mendHeapUnchecked(heap);
}

/** mendHeap without a look at its arguments: for draws about a heap that was checked. */
export function mendHeapUnchecked(heap: HeapToMend): HeapMend {
  const dryKg = heap.heapKg * (1 - heap.moistureOfDampPercent / 100);
  const liveKg = (dryKg * heap.liveClayOfDryMixPercent) / 100;
  const grainKg = dryKg - liveKg - (dryKg * heap.deadClayOfDryMixPercent) / 100;
  const sand = sandPerGrain(heap);
  const mostKg = (dryKg * (heap.mostNewSandOfHeapPercent ?? Number.POSITIVE_INFINITY)) / 100;
  const sandKg = Math.min(grainKg * sand.per, mostKg);
  const wanted = heap.toLiveClayOfDryMixPercent / 100;
  const clayKg = Math.max(0, (wanted * (dryKg + sandKg) - liveKg) / (heap.clayLivePercent / 100 - wanted));
  const weighed = {
    clayKg: clayKg / (1 - heap.clayMoisturePercent / 100),
    newSandKg: sandKg / (1 - heap.newSandMoisturePercent / 100),
  };
  const dryAfterKg = dryKg + sandKg + clayKg;
  const perDry = heap.toMoistureOfDampPercent / (100 - heap.toMoistureOfDampPercent);
  const broughtKg = weighed.clayKg - clayKg + (weighed.newSandKg - sandKg);
  const haveKg = heap.heapKg - dryKg + broughtKg;
  const waterKg = dryAfterKg * perDry - haveKg;
  const kept = dryKg / dryAfterKg;
  return {
    ...weighed,
    sandHelps: sand.helps,
    gfnAfter: sandKg > 0 ? (grainKg * heap.gfn + sandKg * heap.newSandGfn) / (grainKg + sandKg) : heap.gfn,
    waterKg,
    dampAfterKg: dryAfterKg * (1 + perDry),
    dryMixInsteadKg: Math.max(0, -waterKg / perDry),
    keepingMass: {
      throwOutDryKg: dryKg * (1 - kept),
      clayKg: kept * weighed.clayKg,
      newSandKg: kept * weighed.newSandKg,
      waterKg: kept * waterKg,
    },
  };
}

interface PerGrain {
  readonly per: number;
  readonly helps: boolean;
}

/** Dry new sand for each kg of the heap's grain. */
function sandPerGrain(heap: HeapToMend): PerGrain {
  const byNumber = blend(heap.gfn, heap.toGfn, heap.newSandGfn);
  const tooManyFines = heap.finesOfGrainPercent > heap.toFinesOfGrainPercent;
  const byFines = tooManyFines
    ? blend(heap.finesOfGrainPercent, heap.toFinesOfGrainPercent, heap.newSandFinesPercent)
    : none;
  return { per: Math.max(byNumber.per, byFines.per), helps: byNumber.helps && byFines.helps };
}

const none: PerGrain = { per: 0, helps: true };

/** Of the new, for each of the old, so that the mean comes to what is wanted; 0 where nothing is known or wanted. */
function blend(have: number, wanted: number, added: number): PerGrain {
  if (Number.isNaN(have) || Number.isNaN(wanted) || have === wanted) return none;
  const per = (have - wanted) / (wanted - added);
  return per >= 0 && Number.isFinite(per) ? { per, helps: true } : { per: 0, helps: false };
}
