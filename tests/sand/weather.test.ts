// Water that a heap loses: its limits, what covers do, what tempering ahead comes to.

import { expect, test } from "vitest";
import { spread } from "../../lib/quantity/spread-of.ts";
import { airingHours, dryingHours } from "../../lib/sand/airing.ts";
import { dryingFront, vapourDiffusivityM2S } from "../../lib/sand/drying-front.ts";
import { openWaterKgM2H, stillWaterKgM2H } from "../../lib/sand/evaporation.ts";
import { exposedSurface } from "../../lib/sand/heap-shape.ts";
import { vapourPressureByWetBulbPa, vapourPressurePa, wetBulbCelsius } from "../../lib/sand/humid-air.ts";
import { moistureAfter, moistureLeft, temperTonight } from "../../lib/sand/moisture-tomorrow.ts";
import { saturationPressurePa } from "../../lib/sand/saturation-pressure.ts";
import { type StandingHeap, waterLostKg } from "../../lib/sand/water-lost.ts";

const heap: StandingHeap = {
  heapKg: 100,
  moistureOfDampPercent: 4,
  hours: 24,
  airC: 20,
  relativeHumidityPercent: 50,
  airMS: 0.2,
  shape: "heap",
  cover: "none",
};
const kg = (change: Partial<StandingHeap> = {}) => waterLostKg({ ...heap, ...change }).figure;

test("the worked heap lies in the range, the range below open water at the air's temperature", () => {
  // 0.71 kg a day by the front with other constants; 0.46 and 3.49 by open water at wet bulb and air (by hand).
  const { figure, openWater, areaM2 } = waterLostKg(heap);
  expect(figure.low < 0.71 && figure.high > 0.71).toBe(true);
  expect(figure.high / figure.low).toBeGreaterThan(3.5);
  expect(figure.high).toBeLessThan(openWater.airKg);
  expect(openWater.wetBulbKg).toBeLessThan(openWater.airKg / 2);
  expect(areaM2).toBeCloseTo(0.954, 3);
});

test("four times the hours, twice the loss; more area, more; a drier or colder air, as its vapour goes", () => {
  expect(kg({ hours: 96 }).value / kg().value).toBeCloseTo(2, 6);
  expect(kg({ exposedM2: 1.9 }).value / kg({ exposedM2: 0.95 }).value).toBeCloseTo(2, 6);
  expect(kg({ relativeHumidityPercent: 90 }).value / kg().value).toBeCloseTo(Math.sqrt(0.2), 6);
  expect(kg({ airC: 5 }).value).toBeLessThan(kg().value);
  expect(kg({ shape: "bin" }).value).toBeLessThan(kg().value / 3);
});

test("in the first minutes open water is the limit, and a thin layer cannot lose more than it has", () => {
  const soon = waterLostKg({ ...heap, hours: 0.05 });
  expect(soon.figure.value).toBeCloseTo(soon.openWater.airKg, 10);
  const tray = kg({ heapKg: 1, exposedM2: 2, hours: 240 });
  expect(tray.value).toBeCloseTo(0.04, 10);
  expect(tray.high).toBeLessThanOrEqual(0.04 + 1e-9);
  expect(kg({ relativeHumidityPercent: 100 }).high).toBe(0);
  expect(kg({ hours: 0 }).high).toBe(0);
});

test("a cover leaves little: under a sheet a sixth at most, under a lid less still, never more than open", () => {
  const [open, sheet, lid] = [kg(), kg({ cover: "sheet" }), kg({ cover: "lid" })];
  expect(sheet.high).toBeLessThan(open.value / 6);
  expect(lid.high).toBeLessThan(sheet.high);
  // By hand: 0.954 m² × 0.02 m³/m² × √30 an hour × 24 h × 8.645e-3 kg/m³.
  expect(sheet.value / (0.9536 * 0.02 * Math.sqrt(30) * 24 * 8.645e-3)).toBeCloseTo(1, 3);
  const damp = { cover: "sheet", heapKg: 0.02 } as const;
  expect(kg(damp).high).toBeLessThanOrEqual(kg({ ...damp, cover: "none" }).high);
});

test("100 kg at 4 % that lose 0.5181 kg have 3.5 %; what is tempered up comes down to it", () => {
  expect(moistureLeft(100, 4, 0.518135)).toBeCloseTo(3.5, 6);
  const tonight = temperTonight({ ...heap, moistureOfDampPercent: 3.5 });
  const start = tonight.moistureOfDampPercent.value;
  expect(start).toBeGreaterThan(3.9);
  const heapKg = 100 + tonight.figure.value;
  const after = moistureAfter({ ...heap, heapKg, moistureOfDampPercent: start });
  expect(Math.abs(after.moistureOfDampPercent.value - 3.5)).toBeLessThan(0.01);
});

test("weather with a ± widens the range, and its sources are told", () => {
  const airC = spread({ mean: 20, halfWidth: 8, source: "air" });
  const wide = kg({ airC, relativeHumidityPercent: spread({ mean: 50, halfWidth: 30, source: "humidity" }) });
  expect(wide.high / wide.low).toBeGreaterThan(kg().high / kg().low);
  expect(wide.shares.map(({ id }) => id)).toContain("humidity");
  // Draws below freezing are held at 0 °C instead of failing.
  expect(Number.isFinite(kg({ airC: spread({ mean: 1, halfWidth: 4 }) }).low)).toBe(true);
});

test("nothing is made up outside the limits", () => {
  const bad: readonly Partial<StandingHeap>[] = [
    { heapKg: 0 },
    { moistureOfDampPercent: 0 },
    { moistureOfDampPercent: 100 },
    { hours: -1 },
    { hours: 241 },
    { exposedM2: 0 },
    { heapKg: Number.NaN },
    { airC: -1 },
    { airC: 61 },
    { relativeHumidityPercent: 101 },
    { airMS: 11 },
  ];
  for (const change of bad) expect(() => kg(change)).toThrow(RangeError);
  for (const celsius of [-0.1, 371, Number.NaN])
    expect(() => saturationPressurePa(celsius)).toThrow(RangeError);
  expect(() => vapourPressurePa({ airC: 20, relativeHumidityPercent: -1 })).toThrow(RangeError);
  expect(() => vapourPressureByWetBulbPa({ dryC: 30, wetC: 2 })).toThrow(/cannot be/);
  expect(() => vapourPressureByWetBulbPa({ dryC: 20, wetC: 21 })).toThrow(RangeError);
  expect(() => vapourDiffusivityM2S(0, 20)).toThrow(RangeError);
  expect(() => exposedSurface({ heapKg: 1, looseKgM3: 0, shape: "bin" })).toThrow(RangeError);
  const skin = { airC: 20, relativeHumidityPercent: 50, looseKgM3: 1100, porosity: 0.45 };
  expect(() => dryingFront({ ...skin, hours: 1, moistureOfDampPercent: 0 })).toThrow(RangeError);
});

test("no evaporation where vapour would condense; dry air brings the wet bulb down to 0 at the least", () => {
  const fog = { waterC: 5, airC: 25, relativeHumidityPercent: 90 };
  expect(openWaterKgM2H({ ...fog, airMS: 2 })).toBe(0);
  expect(stillWaterKgM2H(fog)).toBe(0);
  expect(wetBulbCelsius({ airC: 1, relativeHumidityPercent: 5 })).toBe(0);
});

test("airing: all steady above the critical moisture, all falling below it, one after the other between", () => {
  const layer = { dryKgM2: 30, rateKgM2H: 0.2, criticalOfDryPercent: 5 };
  const whole = dryingHours({ ...layer, fromOfDryPercent: 7, toOfDryPercent: 4 });
  const parts = [
    dryingHours({ ...layer, fromOfDryPercent: 7, toOfDryPercent: 5 }),
    dryingHours({ ...layer, fromOfDryPercent: 5, toOfDryPercent: 4 }),
  ];
  expect(parts[0]).toBeCloseTo((30 * 0.02) / 0.2, 10);
  expect(parts[0]! + parts[1]!).toBeCloseTo(whole, 10);
  const below = [4.5, 4.25, 4].map((p) => ({ fromOfDryPercent: p, toOfDryPercent: p - 0.25 }));
  const hours = below.map((at) => dryingHours({ ...layer, ...at }));
  expect(hours[2]! > hours[1]! && hours[1]! > hours[0]!).toBe(true);
  expect(() => dryingHours({ ...layer, fromOfDryPercent: 4, toOfDryPercent: 5 })).toThrow(RangeError);
});

test("an over-wet layer in hours: quick end by hand, longer in damp air, never in saturated air", () => {
  const layer = { layerMm: 50, fromOfDampPercent: 5, toOfDampPercent: 4, airC: 20, airMS: 0.5 };
  const dry = airingHours({ ...layer, relativeHumidityPercent: 50 });
  // 55 kg/m² × (5 − 4)/(100 − 4) = 0.573 kg/m² at 3600 × 0.1281 × 1.1696/2454 = 0.2198 kg/(m² h).
  expect(dry.low).toBeCloseTo(0.5729 / 0.2198, 2);
  expect(dry.high / dry.low).toBeGreaterThan(4);
  const damp = airingHours({ ...layer, relativeHumidityPercent: 85 });
  expect(damp.low).toBeGreaterThan(3 * dry.low);
  expect(airingHours({ ...layer, relativeHumidityPercent: 100 })).toEqual({
    low: Number.POSITIVE_INFINITY,
    high: Number.POSITIVE_INFINITY,
  });
  const bad = { ...layer, relativeHumidityPercent: 50, toOfDampPercent: 6 };
  expect(() => airingHours(bad)).toThrow(RangeError);
});
