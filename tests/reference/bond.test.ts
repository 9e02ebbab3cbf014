// Bond state, equilibrium moisture, mulling efficiency: against the two pages that print the relations.

import { expect, test } from "vitest";
import { bondState, KPA_PER_PSI } from "../../lib/sand/bond-state.ts";
import {
  equilibriumCompactabilityPercent,
  equilibriumMoisturePercent,
} from "../../lib/sand/equilibrium-moisture.ts";
import {
  compactedGreenStrengthPercent,
  moistureGreenStrengthPercent,
} from "../../lib/sand/green-strength-bond.ts";
import { waterSensitivity } from "../../lib/sand/water-sensitivity.ts";

const state = (psi: number, moistureOfDampPercent: number, compactabilityPercent: number) => ({
  strengthKPa: psi * KPA_PER_PSI,
  moistureOfDampPercent,
  compactabilityPercent,
});

test("the form 3.65 s / (120 − c) is not that relation: a quarter of it", () => {
  // It goes round without a source; 25 psi at 40 % gives 1.14 against 4.15.
  const passedOn = (3.65 * 25) / (120 - 40);
  expect(passedOn.toFixed(2)).toBe("1.14");
  expect(bondState(state(25, 3.5, 40)).workingBondPercent!).toBeGreaterThan(3.5 * passedOn);
});

test("compacted green strength without its × 100: 3.73 % beside a working bond of 3.51", () => {
  // ICRI Report 610 prints × 100, a misprint: 373 % clay.
  const percent = compactedGreenStrengthPercent({ ...state(20, 3.5, 45), liveClayPercent: 8 })!;
  expect(percent.toFixed(2)).toBe("3.73");
  expect(Math.abs(percent / bondState(state(20, 3.5, 45)).workingBondPercent! - 1)).toBeLessThan(0.1);
});

test("moisture green strength comes out near available bond", () => {
  // ICRI Report 610: "equivalent to available clay". By hand: 10^(1/1.2272) × 4.52 …
  const percent = moistureGreenStrengthPercent({ ...state(20, 3.5, 45), liveClayPercent: 8 })!;
  expect(percent.toFixed(1)).toBe("5.7");
  expect(Math.abs(percent / bondState(state(20, 3.5, 45)).availableBondPercent! - 1)).toBeLessThan(0.2);
});

test("turned round: equilibrium compactability", () => {
  for (const compactabilityPercent of [32, 40, 47, 48, 54]) {
    const moistureOfDampPercent = equilibriumMoisturePercent({ liveClayPercent: 8, compactabilityPercent })!;
    const back = equilibriumCompactabilityPercent({ liveClayPercent: 8, moistureOfDampPercent });
    expect(back).toBeCloseTo(compactabilityPercent, 9);
  }
});

test("it implies a water sensitivity of 0.21 % for 10 points at 8 % live clay", () => {
  const [dry, wet] = [35, 45].map(
    (compactabilityPercent) => equilibriumMoisturePercent({ liveClayPercent: 8, compactabilityPercent })!,
  );
  const sensitivity = waterSensitivity({
    moistureA: dry!,
    compactabilityA: 35,
    moistureB: wet!,
    compactabilityB: 45,
  });
  expect(sensitivity.toFixed(2)).toBe("0.21");
});
