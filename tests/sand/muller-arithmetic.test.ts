import { expect, test } from "vitest";
import { sandHeat } from "../../lib/sand/hot-sand.ts";
import {
  carriedRoundRpm,
  mullerLoads,
  panRpm,
  reductionOf,
  rimSpeedMS,
  sandBedMm,
  trackSharePercent,
  wheelPasses,
} from "../../lib/sand/muller-arithmetic.ts";
import { mulledStrengthKPa, mullingMinutes } from "../../lib/sand/mulling-time.ts";

test("1,450 rpm through 60 : 1 turns the pan at about 24 rpm (common practice)", () => {
  expect(panRpm({ motorRpm: 1450, reduction: 60 })).toBeCloseTo(24.17, 2);
  // The same by a belt of 1 : 5 and a gearbox of 12 : 1.
  const reduction = reductionOf([
    { driver: 60, driven: 300 },
    { driver: 1, driven: 12 },
  ]);
  expect(reduction).toBeCloseTo(60, 12);
});

test("passes, speeds, track and bed, by hand", () => {
  expect(wheelPasses({ rpm: 24, wheels: 2, minutes: 12 })).toBe(576);
  // π × 0.5 m × 24 / 60.
  expect(rimSpeedMS({ diameterMm: 500, rpm: 24 })).toBeCloseTo(0.62832, 5);
  // The ring from 190 to 310 mm of diameter: (310² − 190²)/500².
  expect(trackSharePercent({ panDiameterMm: 500, wheelWidthMm: 60 })).toBeCloseTo(24, 12);
  expect(((310 ** 2 - 190 ** 2) / 500 ** 2) * 100).toBeCloseTo(24, 12);
  // 12 kg of 1.1 kg/L are 10.91 L on 19.63 dm².
  expect(sandBedMm({ loadKg: 12, panDiameterMm: 500 })).toBeCloseTo(55.56, 2);
});

// Ball mills turn at 42.3/√D a minute when their charge is carried round, D in m (from memory).
test("sand is carried round at 42.3/√D turns a minute", () => {
  for (const diameterMm of [200, 300, 600])
    expect(carriedRoundRpm({ diameterMm }) * Math.sqrt(diameterMm / 1000)).toBeCloseTo(42.3, 1);
});

test("loads: whole ones, equal, with the handling", () => {
  expect(mullerLoads({ heapKg: 120, loadKg: 12, minutes: 12 })).toMatchObject({ loads: 10, eachKg: 12 });
  expect(mullerLoads({ heapKg: 120, loadKg: 12, minutes: 12 }).hours).toBeCloseTo(170 / 60, 12);
  expect(mullerLoads({ heapKg: 100, loadKg: 12, minutes: 10, handlingMinutes: 0 })).toMatchObject({
    loads: 9,
    loadsPerHour: 6,
    hours: 1.5,
  });
  expect(mullerLoads({ heapKg: 0.1 + 0.2, loadKg: 0.3, minutes: 1 }).loads).toBe(1);
});

// 120 and 160 °F: Aklinski & Granlund, citing Schumacher (read in the reference notes).
test("hot sand: uneven from 120 °F, not to be mulled above 160 °F", () => {
  const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
  expect(sandHeat(celsius(100))).toBe("cool");
  expect(sandHeat(celsius(121))).toBe("hot");
  expect(sandHeat(celsius(159))).toBe("hot");
  expect(sandHeat(celsius(161))).toBe("too hot to mull");
});

test("95 % of a rise from nothing is three τ; strength and minutes undo each other", () => {
  const of = { startKPa: 0, fullKPa: 80, tauMin: 4 };
  expect(mullingMinutes({ ...of, sharePercent: 95 })).toBeCloseTo(11.98, 2);
  const from = { startKPa: 25, fullKPa: 80, tauMin: 4 };
  for (const sharePercent of [50, 90, 95, 99]) {
    const minutes = mullingMinutes({ ...from, sharePercent });
    expect(mulledStrengthKPa({ ...from, minutes })).toBeCloseTo((80 * sharePercent) / 100, 10);
  }
  expect(mullingMinutes({ ...from, startKPa: 79, sharePercent: 95 })).toBe(0);
  expect(mulledStrengthKPa({ ...from, minutes: Number.POSITIVE_INFINITY })).toBe(80);
});

test("misuse throws with the argument's name", () => {
  expect(() => panRpm({ motorRpm: 0, reduction: 60 })).toThrow(/motorRpm/);
  expect(() => trackSharePercent({ panDiameterMm: 100, wheelWidthMm: 60 })).toThrow(/track/);
  expect(() => mullerLoads({ heapKg: 1, loadKg: -1, minutes: 1 })).toThrow(/loadKg/);
  expect(() => mullingMinutes({ startKPa: 0, fullKPa: 1, tauMin: 1, sharePercent: 100 })).toThrow(/share/);
  expect(() => sandHeat(Number.NaN)).toThrow(/sandC/);
});
