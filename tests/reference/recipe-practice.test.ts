// A mix of the yard, held against the library's own figures: what two amounts of water come to, and why they differ.

import { expect, test } from "vitest";
import { mixShares } from "../../lib/sand/mix-shares.ts";
import { recipeMassesKg } from "../../lib/sand/recipe-masses.ts";
import { temperMoisture } from "../../lib/sand/temper-moisture.ts";

/** 25 kg sand, 1.5 kg bentonite, 0.5 kg additive; 500 mL on a cool day, 800 mL on a warm one: common practice, no source. */
const mix = { sandKg: 25, clayKg: 1.5, additiveKg: 0.5 };

test("500 and 800 mL on all dry: 1.8 and 2.9 % moisture, a third and half of the clay", () => {
  // By hand: 0.5/27.5 and 0.8/27.8; 0.5/1.5 and 0.8/1.5; clay 1.5/27.
  const [cool, warm] = [0.5, 0.8].map((waterKg) => mixShares({ ...mix, waterKg }));
  expect(cool!.moistureOfDampPercent).toBeCloseTo(50 / 27.5, 10);
  expect(warm!.moistureOfDampPercent).toBeCloseTo(80 / 27.8, 10);
  expect([cool, warm].map((one) => one!.waterPerClay!.toFixed(2))).toEqual(["0.33", "0.53"]);
  expect(cool!.clayOfDryMixPercent).toBeCloseTo(150 / 27, 10);
  expect(cool!.clayOfSandPercent).toBeCloseTo(6, 10);
});

test("the ways in print agree with the warm day; the cool one lies below all but the common rule's dry end", () => {
  const { ways, between } = temperMoisture({ clayPercent: 150 / 27, clayKind: "sodium" });
  // Between the peaks of strength and permeability, 0.4 and 0.6 of the clay: 2.17 and 3.23 %.
  const perClay = ways.find(({ way }) => way === "water per clay")!;
  expect([perClay.strengthPeak!.toFixed(2), perClay.permeabilityPeak!.toFixed(2)]).toEqual(["2.17", "3.23"]);
  const [cool, warm] = [50 / 27.5, 80 / 27.8];
  expect(warm).toBeGreaterThan(perClay.strengthPeak!);
  expect(warm).toBeLessThan(perClay.permeabilityPeak!);
  expect(warm).toBeGreaterThan(between!.low);
  expect(cool).toBeLessThan(between!.low);
});

test("the water that sand and bag hold already closes the gap on the cool day", () => {
  // Bag at 9 %, sand at 0.5 % (both usual): 0.135 and 0.125 kg more; then 0.56 to one of dry clay, in the window.
  const held = mixShares({ ...mix, waterKg: 0.5, sandMoisturePercent: 0.5, clayMoisturePercent: 9 });
  expect(held.allWaterKg).toBeCloseTo(0.76, 10);
  expect(held.moistureOfDampPercent).toBeCloseTo(76 / 27.5, 10);
  expect(held.waterPerClay!).toBeCloseTo(0.76 / 1.365, 10);
  expect(held.waterPerClay!).toBeGreaterThan(0.4);
  expect(held.waterPerClay!).toBeLessThan(0.6);
});

test("turned round: the recipe gives the yard's weights back", () => {
  const masses = recipeMassesKg(
    {
      basis: "sand",
      clayPercent: 6,
      additivePercents: [2],
      moistureOfDampPercent: 50 / 27.5,
    },
    { sandKg: 25 },
  );
  expect(masses.clayKg).toBeCloseTo(1.5, 10);
  expect(masses.additivesKg[0]).toBeCloseTo(0.5, 10);
  expect(masses.waterKg).toBeCloseTo(0.5, 10);
});

test("published conversions: 6, 8, 10 % of dry mix; heap of 100 kg", () => {
  // Check table computed from the definitions: p = 6.383, 8.696, 11.111 per 100 of sand.
  const clay = (percent: number) =>
    recipeMassesKg({ basis: "dry mix", clayPercent: percent, moistureOfDampPercent: 0 }, { makeKg: 100 });
  expect([6, 8, 10].map((p) => ((100 * clay(p).dryClayKg) / clay(p).drySandKg).toFixed(3))).toEqual([
    "6.383",
    "8.696",
    "11.111",
  ]);
});
