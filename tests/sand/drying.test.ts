import { expect, test } from "vitest";
import { dryingShiftPercent, methodBoundsPercent } from "../../lib/sand/drying-method.ts";
import { dryEnough } from "../../lib/sand/drying-stop.ts";

test("dry from the first weighing that stands still and stays", () => {
  expect(dryEnough({ dampG: 100, weighingsG: [96.5, 96.31, 96.29] })).toMatchObject({ dry: true, at: 2 });
  expect(dryEnough({ dampG: 100, weighingsG: [96.5, 96.29, 96.28, 96.28, 96.27] }).at).toBe(2);
  // A pause in the middle is not the end.
  expect(dryEnough({ dampG: 100, weighingsG: [97, 97, 96.5, 96.3] })).toMatchObject({
    dry: false,
    at: undefined,
  });
  expect(dryEnough({ dampG: 100, weighingsG: [96.5] })).toMatchObject({
    dry: false,
    lastLossPercent: undefined,
  });
});

test("a sample that grows heavier, and a scale that cannot see the end, are told", () => {
  const codes = (weighingsG: number[], stepG: number) =>
    dryEnough({ dampG: 100, weighingsG, stepG }).issues.map(({ code }) => code);
  expect(codes([96.5, 96.6], 0.01)).toEqual(["sand/gained-while-drying"]);
  expect(codes([96.5, 96.5], 0.1)).toEqual(["sand/scale-coarse-for-drying"]);
  expect(codes([96.5, 96.5], 0.05)).toEqual([]);
});

test("hotter reads higher, and the same temperature does not", () => {
  expect(dryingShiftPercent({ clayPercent: 8, fromCelsius: 105, toCelsius: 105 })).toBe(0);
  expect(dryingShiftPercent({ clayPercent: 8, fromCelsius: 105, toCelsius: 200 })).toBeNull();
  const { low, high } = methodBoundsPercent("oven", 8)!;
  expect(low).toBeLessThan(0);
  expect(high).toBeGreaterThan(0);
  expect(high).toBeLessThan(0.03);
  expect(methodBoundsPercent("microwave", 8)).toBeNull();
});

test("misuse throws", () => {
  expect(() => dryEnough({ dampG: 100, weighingsG: [] })).toThrow(RangeError);
  expect(() => dryEnough({ dampG: 0, weighingsG: [1] })).toThrow(RangeError);
  expect(() => methodBoundsPercent("oven", -1)).toThrow(RangeError);
});
