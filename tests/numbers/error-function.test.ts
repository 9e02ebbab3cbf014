import { expect, test } from "vitest";
import { erf, erfc, inverseErfc } from "../../lib/numbers/error-function.ts";

test("erf and erfc as tabulated", () => {
  // Abramowitz & Stegun, Handbook of Mathematical Functions, tables 7.1 and 7.3; from memory.
  expect(erf(0.5)).toBeCloseTo(0.5204998778, 10);
  expect(erf(1)).toBeCloseTo(0.8427007929, 10);
  expect(erf(2)).toBeCloseTo(0.995322265, 9);
  expect(erfc(2) / 4.677734981e-3).toBeCloseTo(1, 9);
  expect(erfc(5) / 1.537459794e-12).toBeCloseTo(1, 8);
  expect(erf(-1)).toBeCloseTo(-erf(1), 14);
});

test("inverse of erfc: 0.476936 at a half, and back again from far out", () => {
  // 0.4769362762: the probable error's constant, Abramowitz & Stegun; from memory.
  expect(inverseErfc(0.5)).toBeCloseTo(0.4769362762, 10);
  for (const x of [-2, -0.3, 0, 0.4002, 1.7, 5, 8])
    expect(inverseErfc(erfc(x))).toBeCloseTo(x, x > 0 ? 10 : 8);
  expect(inverseErfc(0)).toBe(Number.POSITIVE_INFINITY);
  expect(inverseErfc(2.1)).toBeNaN();
});
