import { expect, test } from "vitest";
import { nearest, slipsBetween } from "../../lib/numbers/nearest.ts";

test("slips: one for a letter added, left out, changed or swapped with its neighbour", () => {
  expect(slipsBetween("grian", "grain")).toBe(1);
  expect(slipsBetween("mul", "mull")).toBe(1);
  expect(slipsBetween("", "pan")).toBe(3);
  // The example that textbooks use for the plain distance.
  expect(slipsBetween("kitten", "sitting")).toBe(3);
});

test("the nearest known word, or none", () => {
  expect(nearest("sievign", ["sand", "sieving"])).toBe("sieving");
  expect(nearest("KPA", ["mPa", "kPa"])).toBe("kPa");
  expect(nearest("g", ["kg", "mg"])).toBe("kg");
  expect(nearest("furlong", ["g", "kg"])).toBeUndefined();
  expect(nearest("x".repeat(5000), ["x".repeat(5000)])).toBeUndefined();
});
