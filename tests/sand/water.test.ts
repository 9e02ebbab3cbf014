import { expect, test } from "vitest";
import { waterDensityKgM3, waterViscosityMPaS } from "../../lib/sand/water.ts";

test("water is densest near 4 °C and thins as it warms", () => {
  // 3.98 °C, 999.97 kg/m³: from memory, any handbook.
  const densities = Array.from({ length: 201 }, (_, i) => waterDensityKgM3(i / 20));
  const top = densities.indexOf(Math.max(...densities)) / 20;
  expect(Math.abs(top - 3.98)).toBeLessThanOrEqual(0.05);
  expect(Math.max(...densities)).toBeCloseTo(999.97, 2);
  for (let t = 0; t < 100; t++) expect(waterViscosityMPaS(t + 1)).toBeLessThan(waterViscosityMPaS(t));
});

test("at the boil the density is 958.4 and the viscosity 0.282", () => {
  // 958.36 kg/m³, 0.2817 mPa·s: from memory, steam tables.
  expect(waterDensityKgM3(100)).toBeCloseTo(958.36, 1);
  expect(waterViscosityMPaS(100)).toBeCloseTo(0.282, 3);
});

test("outside the range of the correlations nothing is made up", () => {
  for (const bad of [-20.1, 110, Number.NaN]) expect(() => waterViscosityMPaS(bad)).toThrow(RangeError);
  for (const bad of [-0.1, 100.1, Number.NaN]) expect(() => waterDensityKgM3(bad)).toThrow(RangeError);
});
