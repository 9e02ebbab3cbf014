// D10, D30, D60, Cu, Cc against a solved soil-mechanics problem and a soil report.

import { expect, test } from "vitest";
import { gradingCurve } from "../../lib/sand/curve.ts";
import {
  coefficientOfCurvature,
  coefficientOfUniformity,
  gradingStatistics,
} from "../../lib/sand/grain-statistics.ts";
import { das } from "./grain-sands.ts";

test("sizes over ln d, against values worked out by hand", () => {
  const { d10Mm, d30Mm, d60Mm, uniformity, curvature } = gradingStatistics(das, { panMidPhi: 4.5 });
  expect(d10Mm).toBeCloseTo(0.087, 4);
  expect(d30Mm).toBeCloseTo(0.1891, 4);
  expect(d60Mm).toBeCloseTo(0.4049, 4);
  expect(uniformity).toBeCloseTo(4.66, 2);
  expect(curvature).toBeCloseTo(1.02, 2);
});

test("the sheet reads straight over d: its D60 of 0.4079798 mm is ours within 1 %", () => {
  const { points } = gradingCurve(das);
  const [coarse, fine] = [points[3]!, points[4]!];
  const straight = 0.25 + ((60 - fine.passingPercent) / (coarse.passingPercent - fine.passingPercent)) * 0.17;
  expect(straight).toBeCloseTo(0.4079798, 6);
  expect(Math.abs(gradingStatistics(das, { panMidPhi: 4.5 }).d60Mm! / straight - 1)).toBeLessThan(0.01);
});

test("the sheet's Cu 4.56 follows from its rounded sizes; its Cc 1.08 does not", () => {
  expect(coefficientOfUniformity(0.09, 0.41)!.toFixed(2)).toBe("4.56");
  expect(coefficientOfCurvature(0.09, 0.19, 0.41)!.toFixed(2)).toBe("0.98");
  // 1.08 needs 0.20 for D30.
  expect(coefficientOfCurvature(0.09, 0.2, 0.41)!.toFixed(2)).toBe("1.08");
});
