import { expect, test } from "vitest";
import { concentration } from "../../lib/sand/concentration.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";

const sand = readGrading({ "No. 40": 5, "No. 50": 20, "No. 70": 30, "No. 100": 25, "No. 140": 12, pan: 8 })
  .value!;

test("best three and best four consecutive sieves, with their names", () => {
  expect(concentration(sand)).toEqual({ sharePercent: 75, labels: ["No. 50", "No. 70", "No. 100"] });
  expect(concentration(sand, 4)).toEqual({
    sharePercent: 87,
    labels: ["No. 50", "No. 70", "No. 100", "No. 140"],
  });
});

test("the pan is no sieve, and too short a stack has no figure", () => {
  const panful = readGrading({ "No. 70": 1, "No. 100": 1, "No. 140": 1, pan: 97 }).value!;
  expect(concentration(panful)!.sharePercent).toBeCloseTo(3, 12);
  expect(concentration(panful, 4)).toBeUndefined();
  expect(() => concentration(panful, 2.5)).toThrow(RangeError);
});
