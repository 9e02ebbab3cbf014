import { expect, test } from "vitest";
import {
  compressionIssues,
  compressionKPa,
  heightToDiameterIssues,
  loadForKPa,
} from "../../lib/sand/compression.ts";
import { dropForMm, rammerEnergyJ, rammingJKg } from "../../lib/sand/rammer.ts";
import { shearIssues, shearKPa } from "../../lib/sand/shear.ts";
import {
  airPorosityPercent,
  densityIssues,
  porosityPercent,
  specimenDensityGCm3,
} from "../../lib/sand/specimen.ts";
import { splittingKPa } from "../../lib/sand/splitting.ts";

test("load and strength are each other's inverse", () => {
  for (const diameterMm of [35, 50, 50.8, 76]) {
    const loadKg = loadForKPa({ strengthKPa: 64, diameterMm });
    expect(compressionKPa({ loadKg, diameterMm })).toBeCloseTo(64, 10);
  }
});

test("two planes share the shear load; a line load splits with half the strength of its area", () => {
  const load = { loadKg: 6, diameterMm: 50 };
  expect(shearKPa({ ...load, planes: 2 })).toBeCloseTo(shearKPa(load) / 2, 12);
  expect(splittingKPa({ ...load, heightMm: 50 })).toBeCloseTo(compressionKPa(load) / 2, 12);
  expect(() => shearKPa({ ...load, planes: 3 as 2 })).toThrow(RangeError);
});

test("height to diameter: the standard's sixteenth is allowed, a squat one warned of, a stub refused", () => {
  const of = (heightMm: number, diameterMm = 50.8) =>
    heightToDiameterIssues({ heightMm, diameterMm }).map(({ severity }) => severity);
  // ± 1/16 in of 2 in: 49.21 to 52.39 mm.
  expect([49.22, 50.8, 52.38].flatMap((mm) => of(mm))).toEqual([]);
  expect(of(49.1)).toEqual(["warning"]);
  expect(of(52.5)).toEqual(["warning"]);
  expect(of(36)).toEqual(["error"]);
  expect(heightToDiameterIssues({ heightMm: 40, diameterMm: 50 })[0]!.message).toContain("squat");
  expect(heightToDiameterIssues({ heightMm: 60, diameterMm: 50 })[0]!.message).toContain("tall");
});

test("psi typed as kPa is doubted, and the right figure offered", () => {
  expect(compressionIssues(52)).toEqual([]);
  expect(compressionIssues(7.5)[0]!.message).toContain("7.5 psi would be 52 kPa");
  expect(compressionIssues(900)[0]!.code).toBe("sand/compression-unlikely");
});

test("shear outside what five sands showed is a note, above compression an error", () => {
  const of = (shear: number) =>
    shearIssues({ shearKPa: shear, compressionKPa: 100 }).map(({ severity }) => severity);
  expect([38, 55, 69].flatMap(of)).toEqual([]);
  expect(of(30)).toEqual(["note"]);
  expect(of(75)).toEqual(["note"]);
  expect(of(104)).toEqual(["error"]);
});

test("drop and energy are each other's inverse; energy for a kilogram grows with blows", () => {
  const dropMm = dropForMm({ weightKg: 3.2, energyJ: 2.5 });
  expect(rammerEnergyJ({ weightKg: 3.2, dropMm })).toBeCloseTo(2.5, 12);
  const blow = { weightKg: 2, dropMm: 160, sandG: 150 };
  expect(rammingJKg({ ...blow, blows: 3 })).toBeCloseTo(3 * rammingJKg({ ...blow, blows: 1 }), 12);
});

test("pores: solid, water and air fill the volume", () => {
  const sand = { densityGCm3: 1.55, moistureOfDampPercent: 4 };
  const solidPercent = (100 * 1.55 * 0.96) / 2.65;
  const waterPercent = 1.55 * 4;
  expect(porosityPercent(sand) + solidPercent).toBeCloseTo(100, 10);
  expect(airPorosityPercent(sand) + solidPercent + waterPercent).toBeCloseTo(100, 10);
});

test("densities that differ, and one that cannot be", () => {
  const codes = (...densities: number[]) => densityIssues(densities).map(({ code }) => code);
  expect(codes(1.5, 1.53, 1.48)).toEqual([]);
  expect(codes(1.5, 1.7)).toEqual(["sand/densities-disagree"]);
  expect(codes(0.95)).toEqual(["sand/density-unlikely"]);
});

test("misuse throws", () => {
  expect(() => compressionKPa({ loadKg: 0, diameterMm: 50 })).toThrow(/loadKg/);
  expect(() => splittingKPa({ loadKg: 1, heightMm: -1, diameterMm: 50 })).toThrow(RangeError);
  expect(() => specimenDensityGCm3({ massG: 150, heightMm: 50, diameterMm: 0 })).toThrow(RangeError);
  expect(() => dropForMm({ weightKg: 0 })).toThrow(RangeError);
  expect(() => densityIssues([])).toThrow(RangeError);
});
