// A season of one heap: what truly becomes of it, pour by pour, and what its founder writes down.

import {
  dryHeapKg,
  type HeapContents,
  type HeapStep,
  heapAfter,
  heapShares,
} from "../../lib/sand/heap-balance.ts";
import { unevenPour } from "../../lib/sand/season.ts";
import type { Seeded } from "../seeded.ts";
import { head } from "./read.ts";

export interface TrueHeap {
  readonly text: string;
  /** As it is on the last day. */
  readonly heap: HeapContents;
  readonly burntKgPerKg: number;
  readonly bagMoisturePercent: number;
  /** Dry mix lost with each pour of the record, kg, written and unwritten together. */
  readonly lostKg: number;
  /** Of it, what was swept up. */
  readonly sweptKg: number;
  /** One more pour of that much metal, with its losses. */
  readonly pourOn: (heap: HeapContents, metalKg: number) => HeapContents;
}

/** The range taken before the record for aluminium and sodium bentonite: lognormal, 0.02 to 0.25 in 95 of 100. */
const [lowest, highest] = [0.02, 0.25];
const betweenPours = 0.2;

export function trueHeap(random: Seeded, pours: number): TrueHeap {
  const within = (half: number): number => random.uniform(-half, half);
  const burntKgPerKg =
    Math.sqrt(lowest * highest) * Math.exp((random.normal() * Math.log(highest / lowest)) / 2 / 1.96);
  const madeKg = random.integer(50, 90);
  const moisture = 3.4 + within(0.3);
  const dry = (madeKg + within(1)) * (1 - moisture / 100);
  const live = 8 * (1 + within(0.03));
  const bag = random.uniform(8, 10);
  let heap: HeapContents = {
    sandKg: dry * (1 - live / 100),
    finesKg: 0,
    liveClayKg: (dry * live) / 100,
    deadClayKg: 0,
    otherKg: 0,
    waterKg: (dry * moisture) / (100 - moisture),
  };
  // Lost and not written down, % of the heap at each pour; the same hand all year.
  const unwritten = random.uniform(0, 1);
  const newFines = random.uniform(0, 1.5);
  const bond = 0.1 * Math.exp(0.2 * random.normal());
  const lines: string[] = [];
  const day = (k: number, plus = 0): string =>
    new Date(Date.UTC(2026, 3, 4 + 7 * k + plus)).toISOString().slice(0, 10);
  const percent = (kg: number): number => (100 * kg) / dryHeapKg(heap);
  const add = (date: string, what: string): void => {
    lines.push(`  - { date: ${date}, ${what} }`);
  };
  const tested = (date: string): void => {
    const compactability = 45 + 2 * random.normal();
    const strength =
      bond * percent(heap.liveClayKg) * Math.exp(0.08 * random.normal()) * (132.1 - compactability);
    add(
      date,
      `tested: { green compression: ${strength.toFixed(0)} kPa, compactability: ${compactability.toFixed(0)} %, moisture: 3.4 % }`,
    );
  };
  const pourOn = (on: HeapContents, metalKg: number): HeapContents => {
    const burntKg = metalKg * burntKgPerKg * unevenPour(betweenPours, random.normal());
    const burnt = heapAfter(on, { kind: "pour", burntKg });
    return heapAfter(burnt, { kind: "lost", dryKg: (dryHeapKg(burnt) * unwritten) / 100 });
  };
  const work = (step: HeapStep): void => {
    heap = heapAfter(heap, step);
  };
  let [lost, sweptAll] = [0, 0];
  tested(day(0));
  for (let k = 1; k <= pours; k++) {
    const metalKg = Number(random.uniform(2, 4).toFixed(1));
    add(day(k), `pour: { metal: ${metalKg} kg, at: 720 °C, section: 8 mm }`);
    const before = dryHeapKg(heap);
    heap = pourOn(heap, metalKg);
    const swept = Number(random.uniform(0.4, 1.4).toFixed(1));
    add(day(k), `lost: ${swept} kg`);
    const really = swept * (1 + within(0.1));
    sweptAll += really;
    work({ kind: "lost", dryKg: really });
    lost += before - dryHeapKg(heap);
    // It dries from pour to pour, and he wets it to what he wants, by a kettle with marks.
    work({ kind: "water", kg: -random.uniform(0.4, 0.8) });
    const wanting = (dryHeapKg(heap) * 3.4) / 96.6 - heap.waterKg;
    const water = Math.max(0.1, Number((wanting + within(0.15)).toFixed(1)));
    add(day(k, 1), `water: ${water} kg`);
    work({ kind: "water", kg: water });
    if (k % 4 === 0) {
      add(day(k, 1), "new sand: 3.0 kg");
      work({ kind: "new sand", weighedKg: 3, moisturePercent: 0.4, finesPercent: newFines });
    }
    if (k % 6 === 0) {
      add(day(k, 1), "rebond: { clay: 0.25 kg, clay moisture: 9 % ± 1 % }");
      work({ kind: "clay", weighedKg: 0.25, moisturePercent: bag, livePercent: 100 });
    }
    if (k % 2 === 0) tested(day(k, 1));
  }
  const last = day(pours, 3);
  const shares = heapShares(heap);
  const clayToo = random.uniform() < 0.5;
  const liveNow = (shares.liveClayOfDryMixPercent + within(0.5)).toFixed(1);
  const text = `${head("Heap")}heap: { mass: ${(shares.dampKg + within(2)).toFixed(1)} kg ± 2 kg, clay kind: sodium bentonite, shape: bin, cover: sheet }
recipe:
  basis: of dry mix
  clay: 8
  moisture: 3.4 % of damp mass
  clay moisture: 9 % ± 1 %
  sand moisture: 0.4 %
  make: ${madeKg} kg ± 1 kg
wanted: { moisture: 3.4 % of damp mass, live clay: 8 % of dry mix }
measured:
  - { date: ${last}, moisture: ${(shares.moistureOfDampPercent + within(0.2)).toFixed(2)} % ± 0.2 %${clayToo ? `, live clay: ${liveNow} % of dry mix ± 0.5 %` : ""} }
planned: { pours: 20, metal: 3 kg, section: 8 mm, every: 7 days }
events:
${lines.join("\n")}
`;
  return {
    text,
    heap,
    burntKgPerKg,
    bagMoisturePercent: bag,
    lostKg: lost / pours,
    sweptKg: sweptAll / pours,
    pourOn,
  };
}
