import { expect, test } from "vitest";
import { bondState, KPA_PER_PSI } from "../../lib/sand/bond-state.ts";
import {
  equilibriumCompactabilityPercent,
  equilibriumMoistureIssues,
  equilibriumMoisturePercent,
} from "../../lib/sand/equilibrium-moisture.ts";
import {
  compactedGreenStrengthPercent,
  moistureGreenStrengthPercent,
} from "../../lib/sand/green-strength-bond.ts";
import { mullingEfficiencyPercent, mullingReferenceIssues } from "../../lib/sand/mulling-efficiency.ts";

const good = { strengthKPa: 138, moistureOfDampPercent: 3.5, compactabilityPercent: 45 };

test("outside its range there is no bond state, and each reason is told", () => {
  const natural = bondState({ ...good, moistureOfDampPercent: 12 });
  expect(natural).toMatchObject({ availableBondPercent: null, workingBondPercent: null, inRange: false });
  expect(natural.mullerEfficiencyPercent).toBeNull();
  expect(natural.issues).toMatchObject([{ code: "sand/bond-state-range", severity: "note" }]);
  expect(natural.issues[0]!.message).toContain("12 % of damp mass");
  const all = bondState({ strengthKPa: 20, moistureOfDampPercent: 1.5, compactabilityPercent: 60 });
  expect(all.issues).toHaveLength(3);
});

test("the ends of the range are inside it", () => {
  const low = { strengthKPa: 5 * KPA_PER_PSI, moistureOfDampPercent: 2, compactabilityPercent: 30 };
  const high = { strengthKPa: 35 * KPA_PER_PSI, moistureOfDampPercent: 5, compactabilityPercent: 55 };
  expect([low, high].map((state) => bondState(state).inRange)).toEqual([true, true]);
});

test("equilibrium moisture only for 7 to 11 % live clay and 30 to 55 % compactability", () => {
  const of = (liveClayPercent: number, compactabilityPercent: number) =>
    equilibriumMoisturePercent({ liveClayPercent, compactabilityPercent });
  expect([of(7, 30), of(11, 55)].every((value) => value !== null)).toBe(true);
  expect([of(6.5, 45), of(12, 45), of(8, 25), of(8, 60)]).toEqual([null, null, null, null]);
  const issues = equilibriumMoistureIssues({ liveClayPercent: 5, compactabilityPercent: 60 });
  expect(issues.map(({ code }) => code)).toEqual([
    "sand/equilibrium-moisture-range",
    "sand/equilibrium-moisture-range",
  ]);
  const turned = (moistureOfDampPercent: number) =>
    equilibriumCompactabilityPercent({ liveClayPercent: 8, moistureOfDampPercent });
  expect([turned(3), turned(5)]).toEqual([null, null]);
  // Between the two branches, 8/2.0201 = 3.960 to 8/2.0136 = 3.973 %.
  expect(turned(3.966)).toBe(47.5);
});

test("the two further relations keep to 7 to 11 % live clay", () => {
  const sand = { ...good, liveClayPercent: 5 };
  expect(moistureGreenStrengthPercent(sand)).toBeNull();
  expect(compactedGreenStrengthPercent(sand)).toBeNull();
  // Stronger and wetter means more clay, as in the relation for available bond.
  const at = (strengthKPa: number, moistureOfDampPercent: number) =>
    moistureGreenStrengthPercent({ strengthKPa, moistureOfDampPercent, liveClayPercent: 8 })!;
  expect(at(150, 3.5)).toBeGreaterThan(at(130, 3.5));
  expect(at(138, 3.7)).toBeGreaterThan(at(138, 3.4));
});

test("mulling efficiency against itself is 100, and what is no reference is told", () => {
  expect(mullingEfficiencyPercent({ batch: good, reference: good })).toBeCloseTo(100, 12);
  const codes = (reference: Parameters<typeof mullingReferenceIssues>[0]) =>
    mullingReferenceIssues(reference).map(({ code }) => code);
  expect(
    codes({ mulledMin: 12, compactabilityChangePercent: 3, minutesSinceWater: 6, newMix: false }),
  ).toEqual([]);
  expect(codes({ mulledMin: 10, newMix: false })).toEqual(["sand/reference-not-mulled"]);
  expect(
    codes({ mulledMin: 12, compactabilityChangePercent: 5, minutesSinceWater: 2, newMix: true }),
  ).toEqual(["sand/reference-still-changed", "sand/reference-just-wetted", "sand/reference-new-mix"]);
});

test("misuse throws", () => {
  expect(() => bondState({ ...good, strengthKPa: 0 })).toThrow(RangeError);
  expect(() => equilibriumMoisturePercent({ liveClayPercent: -8, compactabilityPercent: 45 })).toThrow(
    RangeError,
  );
  expect(() =>
    mullingEfficiencyPercent({ batch: good, reference: { ...good, moistureOfDampPercent: 0 } }),
  ).toThrow(RangeError);
});
