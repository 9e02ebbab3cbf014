// Water and settling against published water data and the table of the wash test.

import { expect, test } from "vitest";
import {
  settlingCutUm,
  settlingSeconds,
  stokesReynolds,
  stokesVelocityMmS,
} from "../../lib/sand/settling.ts";
import { waterDensityKgM3, waterViscosityMPaS } from "../../lib/sand/water.ts";

// [°C, mPa·s worked out by hand from Pátek et al. 2009, public water data, International Critical Tables 1928]
const viscosities = [
  [10, 1.3059, 1.307, 1.3097],
  [15, 1.1375, undefined, 1.1447],
  [20, 1.0016, 1.002, 1.0087],
  [25, 0.89, undefined, 0.8949],
  [30, 0.7972, 0.797, 0.8004],
] as const;

test.each(viscosities)("viscosity at %d °C", (celsius, patek, waterData, tables1928) => {
  const ours = waterViscosityMPaS(celsius);
  expect(Math.abs(ours - patek)).toBeLessThanOrEqual(0.00005);
  if (waterData !== undefined) expect(Math.abs(ours - waterData)).toBeLessThan(0.0012);
  // The tables of 1928 are 0.3 to 0.7 % high, and older Stokes tables with them.
  expect(tables1928 / ours).toBeGreaterThan(1.0025);
  expect(tables1928 / ours).toBeLessThan(1.0075);
});

test("viscosity at 20 °C is 1.0016 mPa·s", () => {
  // ISO/TR 3666 and CRC, from memory.
  expect(waterViscosityMPaS(20)).toBeCloseTo(1.0016, 4);
});

// [°C, Kell 1975 (from memory), International Critical Tables 1928 (read)]
test.each([
  [10, 999.7, 999.73],
  [15, 999.1, 999.13],
  [20, 998.21, 998.23],
  [25, 997.05, 997.07],
  [30, 995.65, 995.68],
] as const)("density at %d °C", (celsius, kell, tables1928) => {
  expect(Math.abs(waterDensityKgM3(celsius) - kell)).toBeLessThan(0.01);
  expect(Math.abs(waterDensityKgM3(celsius) - tables1928)).toBeLessThan(0.04);
});

// Worked out by hand by Stokes: [°C, mm/s and in/min of 20 µm quartz, s for 127 mm, µm cut in 5 min, in 10 min].
const settling = [
  [10, 0.275, 0.65, 461, 24.8, 17.5],
  [15, 0.316, 0.75, 402, 23.1, 16.4],
  [20, 0.359, 0.85, 353, 21.7, 15.4],
  [25, 0.405, 0.96, 314, 20.5, 14.5],
  [30, 0.452, 1.07, 281, 19.4, 13.7],
] as const;

test.each(settling)("the wash test at %d °C", (celsius, mmS, inMin, seconds, cut5, cut10) => {
  const speed = stokesVelocityMmS({ grainUm: 20, celsius });
  expect(speed.toFixed(3)).toBe(mmS.toFixed(3));
  expect(((speed * 60) / 25.4).toFixed(2)).toBe(inMin.toFixed(2));
  expect(settlingSeconds({ grainUm: 20, depthMm: 127, celsius }).toFixed(0)).toBe(seconds.toFixed(0));
  expect(settlingCutUm({ depthMm: 127, seconds: 300, celsius }).toFixed(1)).toBe(cut5.toFixed(1));
  // At 20 °C the table says 15.4, but its own 353 s give 20 √(353.4 / 600) = 15.35: half a last digit is not enough.
  expect(Math.abs(settlingCutUm({ depthMm: 127, seconds: 600, celsius }) - cut10)).toBeLessThan(0.055);
});

test("one inch a minute meets 20 µm near 27 °C", () => {
  const cut = (celsius: number) => settlingCutUm({ depthMm: 25.4, seconds: 60, celsius });
  expect(cut(26)).toBeGreaterThan(20);
  expect(cut(28)).toBeLessThan(20);
});

test("clay of 2350 kg/m³ takes 432 s at 20 °C, and the fall is far inside Stokes' range", () => {
  const clay = settlingSeconds({ grainUm: 20, depthMm: 127, celsius: 20, grainKgM3: 2350 });
  expect(clay.toFixed(0)).toBe("432");
  expect(stokesReynolds({ grainUm: 20, celsius: 20 }).toFixed(3)).toBe("0.007");
});
