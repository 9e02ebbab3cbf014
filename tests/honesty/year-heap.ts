// The heap at the end of its season: what its record says of burn-out and clay, what mends it, when to rebond.

import { heapReport } from "../../lib/finding/heap-report.ts";
import { type HeapContents, heapAfter, heapShares } from "../../lib/sand/heap-balance.ts";
import { heapSteadyState } from "../../lib/sand/heap-steady-state.ts";
import { mendHeapUnchecked } from "../../lib/sand/mend-heap.ts";
import type { Seeded } from "../seeded.ts";
import { trueHeap } from "./heap-log.ts";
import type { Ledger } from "./ledger.ts";
import { asPrinted } from "./printed.ts";
import { logOf } from "./read.ts";

const notebook = "heap";
const metalKg = 3;

export function heapOfTheYear(random: Seeded, founder: number, { note }: Ledger): void {
  const { text, heap, burntKgPerKg, bagMoisturePercent, lostKg, sweptKg, pourOn } = trueHeap(
    random,
    random.pick([8, 12, 16]),
  );
  const { burnOut, course, mending, season } = heapReport(logOf(text));
  if (!burnOut || !mending || !season) throw new Error("a simulated heap has no figures");
  type Band = { readonly value: number; readonly low: number; readonly high: number };
  const put = (figure: string, ends: Band, truth: number, atLeast = false): void =>
    note({ founder, notebook, figure, ends: asPrinted(ends, atLeast), truth });
  const now = heapShares(heap);
  const today = course.at(-1)!;
  put("own burn-out, kg for each kg", burnOut.own, burntKgPerKg);
  put("live clay today, by the record", today.liveClayOfDryMixPercent, now.liveClayOfDryMixPercent);
  put("dead clay today, by the record", today.deadClayOfDryMixPercent, now.deadClayOfDryMixPercent);
  put("dry mass today, by the record", today.dryKg, now.dryKg);
  const mend = mendHeapUnchecked({
    heapKg: now.dampKg,
    moistureOfDampPercent: now.moistureOfDampPercent,
    liveClayOfDryMixPercent: now.liveClayOfDryMixPercent,
    deadClayOfDryMixPercent: now.deadClayOfDryMixPercent,
    gfn: Number.NaN,
    finesOfGrainPercent: Number.NaN,
    toMoistureOfDampPercent: 3.4,
    toLiveClayOfDryMixPercent: 8,
    toGfn: Number.NaN,
    toFinesOfGrainPercent: Number.NaN,
    clayMoisturePercent: bagMoisturePercent,
    clayLivePercent: 100,
    newSandMoisturePercent: 0.4,
    newSandGfn: Number.NaN,
    newSandFinesPercent: Number.NaN,
  });
  put("rebond: clay to put in", mending.clayKg, mend.clayKg, mending.atLeast);
  put("rebond: water to put in", mending.waterKg, mend.waterKg, mending.atLeast);
  put("rebond: damp heap after", mending.dampAfterKg, mend.dampAfterKg, mending.atLeast);
  const clayKg = heapSteadyState({
    dryKg: now.dryKg,
    liveClayKg: 0.08 * now.dryKg,
    burntPercent: (100 * metalKg * burntKgPerKg) / now.dryKg,
    lostPercent: (100 * lostKg) / now.dryKg,
  }).clayKg;
  const plan = season.whatIf[0]!;
  put(
    "clay for 1,000 kg of metal",
    plan.clayKg,
    (1000 / metalKg) * (clayKg / (1 - bagMoisturePercent / 100)),
  );
  // Ten more pours, nothing put in.
  const pour = (on: HeapContents): HeapContents =>
    heapAfter(pourOn(on, metalKg), { kind: "lost", dryKg: sweptKg });
  let later = heap;
  for (let k = 1; k <= 10; k++) later = pour(later);
  const forecast = season.alone.points[10]!;
  put(
    "live clay after ten pours more, nothing put in",
    forecast.liveClayOfDryMixPercent,
    heapShares(later).liveClayOfDryMixPercent,
  );
  put("pours until rebond", plan.toFloor, poursTo(season.floorPercent, heap, pour));
}

/** From a heap brought to 8 % of live clay, nothing put in. */
function poursTo(floorPercent: number, heap: HeapContents, pour: (on: HeapContents) => HeapContents): number {
  const others = heapShares(heap).dryKg - heap.liveClayKg;
  let on: HeapContents = { ...heap, liveClayKg: Math.max(heap.liveClayKg, (others * 8) / 92) };
  for (let count = 0; count <= 20; count++) {
    if (heapShares(on).liveClayOfDryMixPercent < floorPercent) return count;
    on = pour(on);
  }
  return Number.POSITIVE_INFINITY;
}
