import fc from "fast-check";
import { expect, test } from "vitest";
import {
  dryHeapKg,
  type HeapContents,
  type HeapStep,
  heapAfter,
  heapShares,
} from "../../lib/sand/heap-balance.ts";
import { heapCycle } from "../../lib/sand/heap-cycle.ts";
import { clayAfterCyclesKg, heapSteadyState } from "../../lib/sand/heap-steady-state.ts";
import { liveClayByBondPercent } from "../../lib/sand/live-clay-by-bond.ts";

const fresh: HeapContents = { sandKg: 92, finesKg: 0, liveClayKg: 8, deadClayKg: 0, otherKg: 0, waterKg: 0 };
const all = (heap: HeapContents): number => dryHeapKg(heap) + heap.waterKg;

const kg = fc.double({ min: 0, max: 50, noNaN: true });
const percent = fc.double({ min: 0, max: 99, noNaN: true });
const step: fc.Arbitrary<HeapStep> = fc.oneof(
  fc.record({ kind: fc.constant("pour" as const), burntKg: kg }),
  fc.record({ kind: fc.constant("lost" as const), dryKg: fc.double({ min: 0, max: 5, noNaN: true }) }),
  fc.record({
    kind: fc.constant("clay" as const),
    weighedKg: kg,
    moisturePercent: percent,
    livePercent: percent,
  }),
  fc.record({
    kind: fc.constant("new sand" as const),
    weighedKg: kg,
    moisturePercent: percent,
    finesPercent: percent,
  }),
  fc.record({ kind: fc.constant("water" as const), kg: fc.double({ min: -2, max: 5, noNaN: true }) }),
);

test("random seasons: what went in is in the heap or came out, for every part, to rounding", () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
      let heap: HeapContents = { ...fresh, finesKg: 1, waterKg: 4 };
      let [inKg, outKg, clayIn, clayOut] = [all(heap), 0, heap.liveClayKg + heap.deadClayKg, 0];
      for (const one of steps) {
        const before = heap;
        heap = heapAfter(heap, one);
        if (one.kind === "clay" || one.kind === "new sand") inKg += one.weighedKg;
        if (one.kind === "clay") clayIn += one.weighedKg * (1 - one.moisturePercent / 100);
        if (one.kind === "water" && one.kg > 0) inKg += one.kg;
        if (one.kind === "water" && one.kg < 0) outKg += Math.min(before.waterKg, -one.kg);
        if (one.kind === "lost") {
          // Counted by what was asked for, not by what the heap says of itself.
          const share = Math.min(1, one.dryKg / dryHeapKg(before));
          outKg += share * all(before);
          clayOut += share * (before.liveClayKg + before.deadClayKg);
        }
        for (const part of Object.values(heap)) expect(part).toBeGreaterThanOrEqual(0);
      }
      expect(all(heap)).toBeCloseTo(inKg - outKg, 7);
      expect(heap.liveClayKg + heap.deadClayKg).toBeCloseTo(clayIn - clayOut, 7);
    }),
    { numRuns: 150, seed: 4 },
  );
});

test("heapAfter refuses what no log may hold", () => {
  expect(() => heapAfter(fresh, { kind: "pour", burntKg: -1 })).toThrow(RangeError);
  expect(() => heapAfter(fresh, { kind: "water", kg: Number.NaN })).toThrow(RangeError);
  expect(() =>
    heapAfter(fresh, { kind: "new sand", weighedKg: 1, moisturePercent: 0, finesPercent: 101 }),
  ).toThrow(RangeError);
});

// A hand-made derivation, recomputed to four decimals: M 100, A 8, β 2 %, λ 5 %, π 1.
const table = { 1: 0.152, 2: 0.2964, 5: 0.6877, 10: 1.2198, 20: 1.9502, 50: 2.8061, 100: 3.022 };

test("steady state: 0.5520 kg of clay, 4.4480 of sand, dead clay to 3.0400, half way in 13.5 cycles", () => {
  const steady = heapSteadyState({ dryKg: 100, liveClayKg: 8, burntPercent: 2, lostPercent: 5 });
  expect(steady.clayKg).toBeCloseTo(0.552, 4);
  expect(steady.newSandKg).toBeCloseTo(4.448, 4);
  expect(steady.deadClayKg).toBeCloseTo(3.04, 4);
  expect(steady.sandKg).toBeCloseTo(88.96, 4);
  expect(steady.halfWayCycles).toBeCloseTo(13.51, 2);
  const open = heapSteadyState({ dryKg: 100, liveClayKg: 8, burntPercent: 2, lostPercent: 0 });
  expect(open.deadClayKg).toBeNull();
});

test("the steps of a hundred cycles are the table, and the closed form to 1e-12", () => {
  const cycle = { burntPercent: 2, lostPercent: 5, clayKg: 0.552, clayLivePercent: 100, newSandKg: 4.448 };
  let heap = fresh;
  for (let n = 1; n <= 100; n++) {
    heap = heapCycle(heap, cycle);
    const exact = clayAfterCyclesKg(fresh, cycle, n);
    expect(Math.abs(heap.deadClayKg - exact.deadClayKg)).toBeLessThan(1e-12);
    expect(heap.liveClayKg).toBeCloseTo(8, 10);
    const printed = table[n as keyof typeof table];
    if (printed !== undefined) expect(heap.deadClayKg).toBeCloseTo(printed, 4);
  }
});

test("no rebond: 8 kg to 6.537 in ten cycles, 7 after 6.61; an impure bag leaves its dead part", () => {
  const alone = { burntPercent: 2, lostPercent: 0, clayKg: 0, clayLivePercent: 100 };
  expect(clayAfterCyclesKg(fresh, alone, 10).liveClayKg).toBeCloseTo(6.537, 3);
  expect(clayAfterCyclesKg(fresh, alone, 6.61).liveClayKg).toBeCloseTo(7, 3);
  const heap = heapCycle(fresh, {
    burntPercent: 0,
    lostPercent: 0,
    clayKg: 1,
    clayLivePercent: 75,
    newSandKg: 0,
  });
  expect(heap.deadClayKg).toBeCloseTo(0.25, 12);
  expect(heapShares(heap).liveClayOfDryMixPercent).toBeCloseTo((100 * 8.75) / 101, 10);
});

test("live clay by bond lies between working and available: 20 psi, 3.5 %, 45 % (ICRI 610: 3.51, 6.71)", () => {
  const bench = { strengthKPa: 137.895, moistureOfDampPercent: 3.5, compactabilityPercent: 45 };
  const range = liveClayByBondPercent(bench)!;
  expect(range.low).toBeCloseTo(3.511, 3);
  expect(range.high).toBeCloseTo(6.706, 3);
  expect(liveClayByBondPercent({ ...bench, moistureOfDampPercent: 9 })).toBeNull();
});
