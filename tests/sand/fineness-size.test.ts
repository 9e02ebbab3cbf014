import { expect, test } from "vitest";
import { roughFineness, roughSizeUm } from "../../lib/sand/fineness-size.ts";
import { sizeGrade } from "../../lib/sand/size-grades.ts";

test.each([34.9, 90.1, 0, -5, 173, Number.NaN])("a fineness of %f is outside the table: no size", (gfn) => {
  expect(roughSizeUm(gfn).value).toBeUndefined();
  expect(roughSizeUm(gfn).issues.map(({ code }) => code)).toEqual(["sand/fineness-size-range"]);
});

test.each([149, 391, 0, Number.NaN])("a size of %f µm is outside the table: no fineness", (um) => {
  expect(roughFineness(um).value).toBeUndefined();
  expect(roughFineness(um).issues.map(({ code }) => code)).toEqual(["sand/fineness-size-range"]);
});

test("there and back, low and high change sides", () => {
  const size = roughSizeUm(60).value!;
  expect(roughFineness(size.value).value!.value).toBeCloseTo(60, 10);
  expect(size.low).toBeLessThan(size.value);
  expect(size.high).toBeGreaterThan(size.value);
});

// Names by fineness: Univ. Técnica Estatal de Quevedo sheets 2019 (<18, 18–35, 35–60, 60–150, >150).
test.each([
  [3, "very coarse"],
  [17.9, "very coarse"],
  [18, "coarse"],
  [34.9, "coarse"],
  [35, "medium"],
  [54.4, "medium"],
  [60, "fine"],
  [69.1, "fine"],
  [150, "fine"],
  [150.1, "very fine"],
  [173, "very fine"],
  [300, "very fine"],
])("fineness %f is a %s sand", (gfn, name) => {
  expect(sizeGrade(gfn).name).toBe(name);
});

test.each([2.9, 300.1, Number.NaN])("%f is no fineness number", (gfn) => {
  expect(() => sizeGrade(gfn)).toThrow(RangeError);
});
