import { expect, test } from "vitest";
import { angularityClass, angularityCoefficient } from "../../lib/sand/angularity.ts";

test("classes of the coefficient", () => {
  // Giesserei-Lexikon, "Eckigkeitsgrad": 1.0 ideally round, 1.1–1.3, 1.3–1.7, above 1.7.
  expect([1, 1.2, 1.5, 1.8].map(angularityClass)).toEqual(["round", "rounded edges", "angular", "splintery"]);
  expect(angularityClass(0.9)).toBe("less than a sphere");
});

test("coefficient is a ratio; misuse throws", () => {
  expect(angularityCoefficient(150, 100)).toBe(1.5);
  expect(() => angularityCoefficient(0, 100)).toThrow(RangeError);
  expect(() => angularityClass(Number.NaN)).toThrow(RangeError);
});
