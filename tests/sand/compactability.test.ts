import { expect, test } from "vitest";
import {
  compactabilityByWeighingPercent,
  compactabilityIssues,
  compactabilityPercent,
  pressedCompactabilityPercent,
} from "../../lib/sand/compactability.ts";
import { squeezeSteps, squeezeTable } from "../../lib/sand/squeeze.ts";
import { waterSensitivity, waterSensitivityIssues } from "../../lib/sand/water-sensitivity.ts";

test("heights and weighings agree: the mass stays while the height goes down", () => {
  // 118 g fill 120 mm loose; the same 118 g stand 70 mm high when rammed, so 120 mm of it rammed are 118 × 120/70 g.
  const byHeight = compactabilityPercent({ filledMm: 120, rammedMm: 70 });
  expect(compactabilityByWeighingPercent({ looseG: 118, rammedG: (118 * 120) / 70 })).toBeCloseTo(
    byHeight,
    10,
  );
});

test("what cannot be a compactability is an error, what hardly can a warning", () => {
  const of = (percent: number) => compactabilityIssues(percent).map(({ severity }) => severity);
  expect([15, 45, 75].flatMap(of)).toEqual([]);
  expect([104, 100, -3].flatMap(of)).toEqual(["error", "error", "error"]);
  expect([8, 80].flatMap(of)).toEqual(["warning", "warning"]);
});

test("water sensitivity does not mind which mix comes first", () => {
  const ab = { moistureA: 3, compactabilityA: 38, moistureB: 4, compactabilityB: 58 };
  const ba = { moistureA: 4, compactabilityA: 58, moistureB: 3, compactabilityB: 38 };
  expect(waterSensitivity(ab)).toBeCloseTo(0.5, 12);
  expect(waterSensitivity(ba)).toBeCloseTo(0.5, 12);
  expect(waterSensitivityIssues(ab)).toEqual([]);
});

test("two mixes that show nothing, the wrong way round, or too little", () => {
  const codes = (mA: number, cA: number, mB: number, cB: number) =>
    waterSensitivityIssues({ moistureA: mA, compactabilityA: cA, moistureB: mB, compactabilityB: cB }).map(
      ({ code }) => code,
    );
  expect(codes(3, 40, 4, 40)).toEqual(["sand/sensitivity-no-figure"]);
  expect(codes(3, 40, 3, 50)).toEqual(["sand/sensitivity-no-figure"]);
  expect(codes(3, 50, 4, 40)).toEqual(["sand/sensitivity-backwards"]);
  expect(codes(3, 40, 3.2, 44)).toEqual(["sand/sensitivity-small-step"]);
});

test("squeeze: five steps in order; the hand is held against compactability", () => {
  expect(squeezeSteps.map(({ step }) => step)).toEqual([1, 2, 3, 4, 5]);
  const { rows, inOrder } = squeezeTable([
    { step: 2, compactabilityPercent: 36 },
    { step: 3, compactabilityPercent: 45 },
    { step: 3, compactabilityPercent: 43 },
    { step: 4, compactabilityPercent: 53 },
  ]);
  expect(inOrder).toBe(true);
  expect(rows[2]).toMatchObject({ count: 2, middlePercent: 44, lowPercent: 43, highPercent: 45 });
  expect(rows[0]).toMatchObject({ count: 0, middlePercent: null, lowPercent: null });
});

test("a hand that feels a wetter sand drier is not calibrated", () => {
  const readings = [
    { step: 2, compactabilityPercent: 48 },
    { step: 4, compactabilityPercent: 41 },
  ] as const;
  expect(squeezeTable(readings).inOrder).toBe(false);
});

test("misuse throws", () => {
  expect(() => compactabilityPercent({ filledMm: 0, rammedMm: 50 })).toThrow(RangeError);
  expect(() => pressedCompactabilityPercent({ pressedMm: 0 })).toThrow(RangeError);
  expect(() =>
    waterSensitivity({ moistureA: 3, compactabilityA: 40, moistureB: 4, compactabilityB: 40 }),
  ).toThrow(RangeError);
  expect(() => squeezeTable([{ step: 6 as 5, compactabilityPercent: 40 }])).toThrow(RangeError);
});
