// Invented founders and their heaps, with a truth that is known: what they write down, and what it really was.

import { constant, spread } from "../../lib/quantity/spread-of.ts";
import { dryHeapKg, type HeapContents, type HeapStep, heapAfter } from "../../lib/sand/heap-balance.ts";
import type { SeasonPlan } from "../../lib/sand/season.ts";
import type { HeapHistory, HistoryEvent } from "../../lib/trial/heap-history.ts";
import { seeded } from "../seeded.ts";

export interface SimulatedHeap {
  readonly history: HeapHistory;
  /** kg of burnt sand for each kg of metal. */
  readonly burntKgPerKg: number;
  /** Live clay after so many more pours like the last, nothing put in, % of dry mix. */
  readonly laterPercent: number;
  readonly laterDeadPercent: number;
  readonly laterDryKg: number;
}

export interface FounderHabits {
  readonly heapKg: number;
  readonly metalKg: number;
  readonly pours: number;
  /** A strength test after every so many pours. */
  readonly testEvery: number;
  /** sd of ln(strength) from test to test: what is assumed is 0.08. */
  readonly scatter: number;
  /** Undefined: drawn from the range that is assumed. */
  readonly burntKgPerKg?: number;
  readonly later: number;
}

/** The range that is assumed before the record, as burntSandPerKgMetal has it for aluminium and sodium bentonite. */
const low = 0.02;
const high = 0.25;
const betweenPours = 0.2;

export function simulatedHeap(seed: number, habits: FounderHabits): SimulatedHeap {
  const dice = seeded(seed);
  const uniform = (): number => dice.uniform(0, 1);
  const normal = (): number => dice.normal();
  const { heapKg, metalKg, pours, testEvery, scatter, later } = habits;
  const burntKgPerKg =
    habits.burntKgPerKg ??
    Math.sqrt(low * high) * Math.exp((normal() * Math.log(high / low)) / 2 / 1.959963985);
  const live = 8 + 0.4 * normal();
  const dry = heapKg * (1 + 0.04 * (2 * uniform() - 1));
  let heap: HeapContents = {
    sandKg: dry * (1 - live / 100),
    finesKg: 0,
    liveClayKg: (dry * live) / 100,
    deadClayKg: 0,
    otherKg: 0,
    waterKg: 0,
  };
  const work = (step: HeapStep): void => {
    heap = heapAfter(heap, step);
  };
  const unwritten = uniform();
  const bond = 0.7 * Math.exp(0.2 * normal());
  const events: HistoryEvent[] = [];
  const pour = (): void => {
    const factor = Math.exp(betweenPours * normal() - betweenPours ** 2 / 2);
    work({ kind: "pour", burntKg: metalKg * burntKgPerKg * factor });
    work({ kind: "lost", dryKg: (dryHeapKg(heap) * unwritten) / 100 });
  };
  const share = (kg: number): number => (100 * kg) / dryHeapKg(heap);
  const tested = (date: string): void => {
    const compactabilityPercent = 45 + 2 * normal();
    const strength = bond * share(heap.liveClayKg) * Math.exp(scatter * normal());
    const strengthKPa = strength * (132.1 - compactabilityPercent);
    events.push({ kind: "tested", date, strengthKPa, compactabilityPercent });
  };
  tested("2026-01-01");
  for (let k = 1; k <= pours; k++) {
    const date = `pour ${k}`;
    pour();
    events.push({ kind: "pour", id: date, date, metalKg: constant(metalKg) });
    if (k % 3 === 0) {
      // Swept up: written to within 10 %.
      const lostKg = heapKg * 0.02;
      work({ kind: "lost", dryKg: lostKg * (1 + 0.1 * (2 * uniform() - 1)) });
      const written = spread({ mean: lostKg, halfWidth: lostKg * 0.1, source: `swept up, ${date}` });
      events.push({ kind: "lost", date, dryKg: written });
    }
    if (k % 5 === 0) {
      const weighedKg = heapKg * 0.004;
      const moisture = 10 + 2 * (2 * uniform() - 1);
      work({ kind: "clay", weighedKg, moisturePercent: moisture, livePercent: 100 });
      const moisturePercent = spread({ mean: 10, halfWidth: 2, source: `water of the clay, ${date}` });
      events.push({ kind: "clay", date, weighedKg: constant(weighedKg), moisturePercent });
    }
    if (k % testEvery === 0) tested(date);
  }
  if (uniform() < 0.5)
    events.push({
      kind: "live clay",
      date: "end",
      percent: share(heap.liveClayKg) + 0.4 * normal(),
      sd: 0.4,
    });
  const history: HeapHistory = {
    start: {
      dryKg: spread({ mean: heapKg, halfWidth: heapKg * 0.04, source: "the heap" }),
      moistureOfDampPercent: constant(0),
      liveClayOfDryMixPercent: spread({ mean: 8, sd: 0.4, source: "clay at the start" }),
      deadClayOfDryMixPercent: constant(0),
      finesOfGrainPercent: constant(0),
      otherOfDryMixPercent: constant(0),
    },
    events,
    burntKgPerKg: { low, high },
    unwrittenLossPercent: spread({ mean: 0.5, halfWidth: 0.5, source: "not written down" }),
    newSandFinesPercent: constant(0),
    betweenPours,
  };
  const lostEach = (heapKg * 0.02 * Math.floor(pours / 3)) / pours;
  for (let k = 1; k <= later; k++) {
    pour();
    work({ kind: "lost", dryKg: lostEach });
  }
  return {
    history,
    burntKgPerKg,
    laterPercent: share(heap.liveClayKg),
    laterDeadPercent: share(heap.deadClayKg),
    laterDryKg: dryHeapKg(heap),
  };
}

/** The later pours of a founder, nothing put in. */
export const leftAlone = ({ later, metalKg }: FounderHabits): SeasonPlan => ({
  pours: later,
  metalKg,
  mend: "none",
  toLiveClayOfDryMixPercent: 8,
  toMoistureOfDampPercent: 3.5,
  clayMoisturePercent: 10,
  clayLivePercent: 100,
  newSandMoisturePercent: 0,
  betweenPours: 0.2,
});
