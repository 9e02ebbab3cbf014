// Typical curves outside their ranges, and what they say of themselves. Published figures: tests/reference/typical.test.ts.

import { expect, test } from "vitest";
import { permeabilityModel } from "../../lib/sand/permeability-model.ts";
import { temperMoisture } from "../../lib/sand/temper-moisture.ts";
import { typicalPermeability } from "../../lib/sand/typical-permeability.ts";
import { publishedPoints } from "../../lib/sand/typical-points.ts";
import { typicalStrength } from "../../lib/sand/typical-strength.ts";
import { typicalCatalogue } from "../reference/typical-catalogue.ts";

const codes = ({ issues }: { issues: readonly { code: string }[] }) => issues.map(({ code }) => code);
const middle = { clayPercent: 6, moistureOfDampPercent: 3.5, compactabilityPercent: 45 };

test("strength: outside clay, water, compactability or mulling there is no figure, and it is said why", () => {
  const wrong = [
    { ...middle, clayPercent: 2.9 },
    { ...middle, clayPercent: 12.1 },
    { ...middle, moistureOfDampPercent: 8 },
    { ...middle, compactabilityPercent: 29 },
    { ...middle, mullingEfficiencyPercent: 5 },
    { ...middle, clayPercent: Number.NaN },
  ];
  for (const at of wrong) {
    const found = typicalStrength(at);
    expect([found.value, found.low, found.high]).toEqual([undefined, undefined, undefined]);
    expect(codes(found)).toEqual(["sand/typical-outside"]);
  }
  // 12 % fully mulled would be over 35 psi.
  expect(codes(typicalStrength({ ...middle, clayPercent: 12, mullingEfficiencyPercent: 100 }))).toEqual([
    "sand/typical-strength-beyond",
  ]);
});

test("strength: what is not stated widens the range, what is stated narrows it", () => {
  const width = (found: { low: number | undefined; high: number | undefined }) => found.high! / found.low!;
  const open = typicalStrength(middle);
  const stated = typicalStrength({ ...middle, mullingEfficiencyPercent: 40 });
  expect(stated.value).toBe(open.value);
  // By hand: 1.15 either way alone; with 20 to 70 over 40, √(ln² 1.15 + ln² 2) and √(ln² 1.15 + ln² 1.75).
  expect(width(stated)).toBeCloseTo(1.15 ** 2, 9);
  expect(Math.log(open.high! / open.value!)).toBeCloseTo(Math.hypot(Math.log(1.15), Math.log(1.75)), 9);
  expect(Math.log(open.value! / open.low!)).toBeCloseTo(Math.hypot(Math.log(1.15), Math.log(2)), 9);
});

test("strength: beyond 7 % clay the low end is held back and the reason given", () => {
  const ten = typicalStrength({
    ...middle,
    clayPercent: 10,
    mullingEfficiencyPercent: 40,
    moistureOfDampPercent: 5,
  });
  expect(codes(ten)).toContain("sand/typical-strength-levels");
  expect(ten.low! / ten.value!).toBeLessThan(0.7);
  expect(ten.high! / ten.value!).toBeCloseTo(1.15, 9);
  expect(codes(typicalStrength({ ...middle, clayPercent: 7 }))).not.toContain("sand/typical-strength-levels");
});

test("strength: a moisture that the other bond relation contradicts is told", () => {
  const dry = typicalStrength({
    ...middle,
    clayPercent: 11,
    moistureOfDampPercent: 2,
    mullingEfficiencyPercent: 30,
  });
  expect(codes(dry)).toContain("sand/typical-moisture-disagrees");
});

test("permeability by clay: no figure beyond 6 to 8 % bentonite and 3 to 6 % water", () => {
  for (const at of [
    { clayPercent: 5.9, moistureOfDampPercent: 4 },
    { clayPercent: 8.1, moistureOfDampPercent: 4 },
    { clayPercent: 7, moistureOfDampPercent: 2.9 },
    { clayPercent: 7, moistureOfDampPercent: 6.1 },
  ]) {
    expect(typicalPermeability(at).value).toBeUndefined();
    expect(codes(typicalPermeability(at))).toEqual(["sand/typical-outside"]);
  }
  expect(codes(typicalPermeability({ clayPercent: 6, moistureOfDampPercent: 3 }))).toEqual([
    "sand/typical-one-sand",
  ]);
});

test("model of permeability: clay beyond 12 % is refused, some clay is warned of, none is not", () => {
  expect(codes(permeabilityModel({ gfn: 60, clayPercent: 12.5 }))).toEqual(["sand/typical-clayey"]);
  expect(codes(permeabilityModel({ gfn: 60, clayPercent: 8 }))).toContain("sand/typical-clay-closes");
  expect(codes(permeabilityModel({ gfn: 60, clayPercent: 0, porosity: 0.4, angularity: 1.3 }))).toEqual([]);
  for (const at of [{ gfn: 30 }, { gfn: 160 }, { gfn: 60, porosity: 0.3 }, { gfn: 60, angularity: 2 }])
    expect(codes(permeabilityModel({ clayPercent: 0, ...at }))).toEqual(["sand/typical-outside"]);
});

test("model of permeability: unknown voids and shape are in the range", () => {
  const known = permeabilityModel({ gfn: 60, clayPercent: 0, porosity: 0.4, angularity: 1.3 });
  const open = permeabilityModel({ gfn: 60, clayPercent: 0 });
  expect(known.high! / known.value!).toBeCloseTo(2, 9);
  expect(open.value).toBe(known.value);
  expect(open.high!).toBeGreaterThan(known.high!);
  expect(open.low!).toBeLessThan(known.low!);
});

test("temper: a way outside its range is silent and says so, the others stand", () => {
  const lean = temperMoisture({ clayPercent: 5, clayKind: "sodium" });
  expect(lean.ways.map(({ value }) => value !== undefined)).toEqual([false, true, true, true]);
  expect(codes(lean)).toContain("sand/equilibrium-moisture-range");
  const rich = temperMoisture({ clayPercent: 10, clayKind: "sodium" });
  expect(rich.ways.map(({ value }) => value !== undefined)).toEqual([true, true, false, true]);
  expect(codes(rich)).toContain("sand/temper-outside");
  for (const { value, low, high } of rich.ways.filter((way) => way.value !== undefined)) {
    expect(low!).toBeLessThan(value!);
    expect(high!).toBeGreaterThan(value!);
  }
});

test("temper: calcium asks for less than sodium by the common rule, and an unknown clay spans both", () => {
  const rule = (clayKind: "sodium" | "calcium" | "not known") =>
    temperMoisture({ clayPercent: 8, clayKind }).ways.find(({ way }) => way === "common rule")!;
  const [sodium, calcium, unknown] = [rule("sodium"), rule("calcium"), rule("not known")];
  expect(calcium.value!).toBeLessThan(sodium.value!);
  expect([unknown.low, unknown.high]).toEqual([calcium.low, sodium.high]);
  // By hand: 0.5 + 0.25 × 8 = 2.5 parts on 100 dry, 2.439 % of damp mass.
  expect(calcium.low).toBeCloseTo(2.439, 3);
});

test("temper: misuse throws", () => {
  expect(() => temperMoisture({ clayPercent: 0, clayKind: "sodium" })).toThrow(RangeError);
  expect(() => temperMoisture({ clayPercent: 25, clayKind: "sodium" })).toThrow(RangeError);
  expect(() => temperMoisture({ clayPercent: 8, clayKind: "blue" as never })).toThrow("kind of clay");
  expect(() => temperMoisture({ clayPercent: 8, clayKind: "sodium", compactabilityPercent: 60 })).toThrow(
    RangeError,
  );
});

test("every curve says what its range holds, where it comes from, and for a percentage of what", () => {
  expect(typicalCatalogue).toHaveLength(7);
  for (const { unit, basis, holds, source, within } of typicalCatalogue) {
    expect(Math.min(holds.length, source.length, within.length)).toBeGreaterThan(15);
    if (unit === "%") expect(basis).toBe("damp mass");
  }
});

test("published points carry a source, and a clay figure says which clay", () => {
  for (const point of publishedPoints) {
    expect(point.source.length).toBeGreaterThan(20);
    expect(point.clayIs !== undefined).toBe(point.clayPercent !== undefined);
  }
});
