import fc from "fast-check";
import { expect, test } from "vitest";
import { type HeapToMend, mendHeap } from "../../lib/sand/mend-heap.ts";

const heap: HeapToMend = {
  heapKg: 100,
  moistureOfDampPercent: 2.5,
  liveClayOfDryMixPercent: 6.8,
  deadClayOfDryMixPercent: 1,
  gfn: Number.NaN,
  finesOfGrainPercent: Number.NaN,
  toMoistureOfDampPercent: 3.5,
  toLiveClayOfDryMixPercent: 8,
  toGfn: Number.NaN,
  toFinesOfGrainPercent: Number.NaN,
  clayMoisturePercent: 10,
  clayLivePercent: 100,
  newSandMoisturePercent: 0.5,
  newSandGfn: Number.NaN,
  newSandFinesPercent: 0.5,
};

/** What is there after the mending, counted from the masses alone. */
function after(one: HeapToMend, put: { clayKg: number; newSandKg: number; waterKg: number }, outDryKg = 0) {
  const dry = one.heapKg * (1 - one.moistureOfDampPercent / 100);
  const kept = 1 - outDryKg / dry;
  const clay = put.clayKg * (1 - one.clayMoisturePercent / 100);
  const sand = put.newSandKg * (1 - one.newSandMoisturePercent / 100);
  const grain = kept * dry * (1 - (one.liveClayOfDryMixPercent + one.deadClayOfDryMixPercent) / 100);
  const live = kept * dry * (one.liveClayOfDryMixPercent / 100) + clay;
  const water = kept * (one.heapKg - dry) + put.waterKg + (put.clayKg - clay) + (put.newSandKg - sand);
  const allDry = kept * dry + clay + sand;
  return {
    dryKg: allDry,
    live: (100 * live) / allDry,
    moisture: (100 * water) / (water + allDry),
    gfn: (grain * one.gfn + sand * one.newSandGfn) / (grain + sand),
    fines: (grain * one.finesOfGrainPercent + sand * one.newSandFinesPercent) / (grain + sand),
  };
}

test("only water and clay: x = W (ct − c1)/(q − ct), the published rebond balance", () => {
  const mend = mendHeap({ ...heap, deadClayOfDryMixPercent: 0 });
  expect(mend.clayKg * 0.9).toBeCloseTo((97.5 * (0.08 - 0.068)) / (1 - 0.08), 10);
  // 2.5 to 3.5 % alone takes 1.036 kg (mass balance); the bag's own water and its dry clay shift it.
  expect(mend.waterKg).toBeCloseTo(0.941, 3);
});

test("random heaps: what was worked out brings them to what is wanted, with and without throwing out", () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      between(20, 500),
      between(1, 4),
      between(3, 7.9),
      between(0, 4),
      between(61, 90),
      between(30, 59),
      (heapKg, moisture, live, dead, gfn, newSandGfn) => {
        const one = {
          ...heap,
          heapKg,
          moistureOfDampPercent: moisture,
          liveClayOfDryMixPercent: live,
          deadClayOfDryMixPercent: dead,
          gfn,
          toGfn: 60,
          newSandGfn,
        };
        const mend = mendHeap(one);
        for (const [found, kept] of [
          [after(one, mend), false],
          [after(one, mend.keepingMass, mend.keepingMass.throwOutDryKg), true],
        ] as const) {
          expect(found.live).toBeCloseTo(8, 8);
          expect(found.moisture).toBeCloseTo(3.5, 8);
          expect(found.gfn).toBeCloseTo(60, 7);
          if (kept) expect(found.dryKg).toBeCloseTo(heapKg * (1 - moisture / 100), 7);
        }
      },
    ),
    { numRuns: 150, seed: 9 },
  );
});

test("fines ask for sand of their own, and the larger need wins", () => {
  const one = { ...heap, finesOfGrainPercent: 6, toFinesOfGrainPercent: 4 };
  expect(after(one, mendHeap(one)).fines).toBeCloseTo(4, 8);
  expect(mendHeap({ ...one, finesOfGrainPercent: 3 }).newSandKg).toBe(0);
});

test("too wet: water below zero, and the dry mix that would take it up instead", () => {
  const mend = mendHeap({
    ...heap,
    moistureOfDampPercent: 5,
    liveClayOfDryMixPercent: 8,
    toMoistureOfDampPercent: 4,
  });
  expect(mend.waterKg).toBeLessThan(0);
  // 100 kg at 5 % down to 4 %: 25 kg (as dryMixToAddKg has it).
  expect(mend.dryMixInsteadKg).toBeCloseTo(25, 8);
});

test("sand on the heap's side of the aim is no help, and more clay than wanted gets none", () => {
  const mend = mendHeap({ ...heap, gfn: 63, toGfn: 60, newSandGfn: 61 });
  expect(mend).toMatchObject({ sandHelps: false, newSandKg: 0 });
  expect(mendHeap({ ...heap, liveClayOfDryMixPercent: 9 }).clayKg).toBe(0);
  expect(() => mendHeap({ ...heap, clayLivePercent: 7 })).toThrow(RangeError);
});

test("a cap on new sand: number, clay and water are those of the sand that goes in", () => {
  const one = { ...heap, gfn: 63, toGfn: 60, newSandGfn: 55 };
  const [all, most] = [mendHeap(one), mendHeap({ ...one, mostNewSandOfHeapPercent: 10 })];
  expect(all.gfnAfter).toBeCloseTo(60, 10);
  // A tenth of 97.5 kg of dry heap, as weighed at 0.5 % of water.
  expect(most.newSandKg).toBeCloseTo(9.75 / 0.995, 10);
  const found = after(one, most);
  expect(found.gfn).toBeCloseTo(most.gfnAfter, 10);
  // By hand: 89.895 kg of grain at 63 and 9.75 kg at 55.
  expect(most.gfnAfter).toBeCloseTo((89.895 * 63 + 9.75 * 55) / 99.645, 10);
  expect(found.live).toBeCloseTo(8, 8);
  expect(found.moisture).toBeCloseTo(3.5, 8);
  expect(mendHeap({ ...one, mostNewSandOfHeapPercent: 90 })).toEqual(all);
  expect(() => mendHeap({ ...one, mostNewSandOfHeapPercent: -1 })).toThrow(RangeError);
});
