import fc from "fast-check";
import { expect, test } from "vitest";
import { combine } from "../../lib/quantity/combine.ts";
import { spread } from "../../lib/quantity/spread-of.ts";
import { dampToDryPercent, dryToDampPercent, moistureOfDampPercent } from "../../lib/sand/moisture.ts";
import { moistureIssues } from "../../lib/sand/moisture-issues.ts";

const codes = (dampG: number, dryG: number, stepG?: number) =>
  moistureIssues({ dampG, dryG, ...(stepG === undefined ? {} : { stepG }) }).map(({ code }) => code);

test("there and back between the bases", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (percent) => {
      expect(dryToDampPercent(dampToDryPercent(percent))).toBeCloseTo(percent, 10);
    }),
  );
});

test("a nearly dry sample can be drawn about, below zero too", () => {
  const figure = combine(moistureOfDampPercent, {
    dampG: spread("50.0 ± 0.1 g"),
    dryG: spread("49.98 ± 0.1 g"),
  });
  expect(figure.low).toBeLessThan(0);
  expect(figure.high).toBeGreaterThan(0);
});

test("readings that cannot be are told, with what to do", () => {
  expect(codes(50, 52)).toEqual(["sand/dry-above-damp"]);
  // Three figures would print both alike.
  expect(moistureIssues({ dampG: 148.5, dryG: 148.6 })[0]!.message).toMatch(/148\.6 g.*148\.5 g/);
  expect(codes(50, 48)).toEqual([]);
  expect(codes(50, 40)).toEqual(["sand/moisture-not-of-a-moulding-sand"]);
  expect(moistureIssues({ dampG: 50, dryG: 52 })[0]!.remedy).toContain("swapped");
});

test("a scale too coarse for its sample is told, and how much sand would do", () => {
  expect(codes(50, 48, 0.1)).toEqual([]);
  expect(codes(40, 38, 0.1)).toEqual(["sand/scale-coarse-for-moisture"]);
  expect(moistureIssues({ dampG: 200, dryG: 190, stepG: 1 })[0]!.remedy).toContain("500 g");
});

test("misuse throws", () => {
  expect(() => moistureOfDampPercent({ dampG: 0, dryG: 1 })).toThrow(RangeError);
  expect(() => moistureOfDampPercent({ dampG: 10, dryG: -1 })).toThrow(/dryG/);
  expect(() => moistureOfDampPercent({ dampG: Number.NaN, dryG: 1 })).toThrow(RangeError);
  expect(() => dampToDryPercent(100)).toThrow(RangeError);
  expect(() => dryToDampPercent(Number.POSITIVE_INFINITY)).toThrow(RangeError);
});
