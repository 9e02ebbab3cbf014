// Percent of what: published recipes on every basis.

import { expect, test } from "vitest";
import { clayOfDryMixToSandPercent, clayToWeighKg, mixShares } from "../../lib/sand/mix-shares.ts";
import { publishedWaterPerClay, ratioMoisturePercent, waterPerClay } from "../../lib/sand/water-per-clay.ts";

test("550 g of sand with 22, 33, 44 g of clay, called 4, 6, 8 %, and 28 mL, called 5 %", () => {
  // Student design, Scribd 109009337, masses read; percentages by hand.
  const rows = [22, 33, 44].map((clayKg) => mixShares({ sandKg: 550, clayKg, waterKg: 28 }));
  expect(rows.map((row) => row.moistureOfDampPercent.toFixed(2))).toEqual(["4.67", "4.58", "4.50"]);
  expect(rows.map((row) => row.clayOfDampPercent.toFixed(2))).toEqual(["3.67", "5.40", "7.07"]);
  expect(rows.map((row) => row.clayOfDryMixPercent.toFixed(2))).toEqual(["3.85", "5.66", "7.41"]);
  expect(rows.map((row) => row.clayOfSandPercent.toFixed(2))).toEqual(["4.00", "6.00", "8.00"]);
});

test("10 lb of sand, 1.2 lb of bentonite, 12 oz of water, by weight or by US fluid ounces", () => {
  // ourpastimes.com, masses read; percentages by hand. A US fluid ounce is 29.5735 mL, taken as grams.
  const byWeight = mixShares({ sandKg: 10, clayKg: 1.2, waterKg: 0.75 });
  const byVolume = mixShares({ sandKg: 10, clayKg: 1.2, waterKg: (12 * 29.5735) / 453.59237 });
  expect([byWeight, byVolume].map((row) => row.clayOfDampPercent.toFixed(2))).toEqual(["10.04", "10.01"]);
  expect(byWeight.clayOfDryMixPercent.toFixed(2)).toBe("10.71");
  expect(byWeight.moistureOfDampPercent.toFixed(2)).toBe("6.28");
  expect(byVolume.moistureOfDampPercent.toFixed(2)).toBe("6.53");
  expect(byWeight.waterPerClay!.toFixed(3)).toBe("0.625");
  expect(byVolume.waterPerClay!.toFixed(2)).toBe("0.65");
});

test("100 lb of sand, 9 lb of bentonite; with a pound of wood flour 8.18 % of the dry mix", () => {
  // Milwaukee Makerspace wiki, masses read: clay of sand and clay 8.26 %.
  expect(mixShares({ sandKg: 100, clayKg: 9, waterKg: 0 }).clayOfDryMixPercent.toFixed(2)).toBe("8.26");
  const floured = mixShares({ sandKg: 100, clayKg: 9, waterKg: 0, additiveKg: 1 });
  expect(floured.clayOfDryMixPercent).toBeCloseTo(900 / 110, 10);
  expect(floured.additiveOfDryMixPercent).toBeCloseTo(100 / 110, 10);
});

test("1 kg of sand and 120 g of bentonite: 10.71 %", () => {
  // Hobby supplier's page, New Zealand.
  expect(mixShares({ sandKg: 1, clayKg: 0.12, waterKg: 0 }).clayOfDryMixPercent.toFixed(2)).toBe("10.71");
});

test("4,400 g and 600 g, called 88 and 12 %, with 80 to 160 mL", () => {
  // Turkish thesis on bentonite, masses read.
  const [dry, wet] = [80, 160].map((waterKg) => mixShares({ sandKg: 4400, clayKg: 600, waterKg }));
  expect(dry!.clayOfDryMixPercent).toBeCloseTo(12, 10);
  expect(dry!.clayOfSandPercent.toFixed(2)).toBe("13.64");
  expect([dry, wet].map((row) => row!.moistureOfDampPercent.toFixed(2))).toEqual(["1.57", "3.10"]);
  expect([dry, wet].map((row) => row!.waterPerClay!.toFixed(3))).toEqual(["0.133", "0.267"]);
});

test("10 kg, 0.8 kg and 0.5 kg; 95 % sand and 5 % bentonite", () => {
  // Exam note; TS 5360 as that thesis quotes it.
  const row = mixShares({ sandKg: 10, clayKg: 0.8, waterKg: 0.5 });
  expect(row.clayOfDryMixPercent.toFixed(2)).toBe("7.41");
  expect(row.moistureOfDampPercent.toFixed(2)).toBe("4.42");
  expect(row.waterPerClay).toBeCloseTo(0.625, 12);
  expect(clayOfDryMixToSandPercent(5).toFixed(2)).toBe("5.26");
});

test("6, 8, 10 % of the dry mix are 6.383, 8.696, 11.111 per 100 of sand; 8 kg from a bag at 10 %: weigh 8.889", () => {
  const parts = [6, 8, 10].map((percent) => clayOfDryMixToSandPercent(percent).toFixed(3));
  expect(parts).toEqual(["6.383", "8.696", "11.111"]);
  const bag = clayToWeighKg({ dryClayKg: 8, clayMoisturePercent: 10 });
  expect(bag.weighKg.toFixed(3)).toBe("8.889");
  expect(bag.waterKg.toFixed(3)).toBe("0.889");
});

test("water per clay: 0.50 at 9 % and 4.5 %; both peaks of the published series stand 1.5 apart", () => {
  // UNS thesis (9 % bentonite, 4.5 % water); Subbarao & Rammohan, J. Indian Inst. Sci.
  expect(waterPerClay({ moistureOfDampPercent: 4.5, clayOfDampPercent: 9 })).toBeCloseTo(0.5, 12);
  const { strengthPeak, permeabilityPeak } = publishedWaterPerClay;
  expect(permeabilityPeak / strengthPeak).toBeCloseTo(1.5, 12);
  // Clay : water 10 : 4 at temper, monograph of 1966: 10 of dry clay in 100 of dry mix want 4 of water, 3.85 % of damp.
  expect(ratioMoisturePercent({ clayOfDryMixPercent: 10, waterPerClay: strengthPeak }).toFixed(2)).toBe(
    "3.85",
  );
});
