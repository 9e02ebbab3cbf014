import { expect, test } from "vitest";
import { gradingCurve } from "../../lib/sand/curve.ts";
import { fines } from "../../lib/sand/fines.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";
import { byOpening, KOREAN_PAGE } from "./curve-sands.ts";

const of = (retained: Record<string, number>) => fines(gradingCurve(readGrading(retained).value!));

test("with a No. 140, fines are No. 200 + No. 270 + pan of the sum retained, and exact", () => {
  const { percent, low, high, interpolated } = of(KOREAN_PAGE);
  expect(percent).toBeCloseTo((100 * (0.85 + 0.2 + 0.25)) / 49.5, 12);
  expect([low, high, interpolated]).toEqual([percent, percent, false]);
});

test("without it, the next sieves bound the figure and the curve between them gives it", () => {
  const { "No. 140": at140, ...rest } = KOREAN_PAGE;
  const thinned = of({ ...rest, "No. 200": rest["No. 200"] + at140 });
  expect(thinned.interpolated).toBe(true);
  expect(thinned.low).toBeCloseTo((100 * 0.45) / 49.5, 10);
  expect(thinned.high).toBeCloseTo((100 * 7.05) / 49.5, 10);
  const share = Math.log(0.106 / 0.075) / Math.log(0.15 / 0.075);
  expect(thinned.percent).toBeCloseTo(thinned.low + share * (thinned.high - thinned.low), 10);
  expect(thinned.issues).toMatchObject([{ code: "sand/fines-between-sieves" }]);
});

test("a stack that ends above No. 140 bounds the fines and gives no figure", () => {
  const coarse = of({ "No. 50": 60, "No. 100": 35, pan: 5 });
  expect(coarse).toMatchObject({ percent: undefined, low: 0, interpolated: false });
  expect(coarse.high).toBeCloseTo(5, 12);
});

test("the older opening of No. 140 is that sieve; a missing pan is said", () => {
  const old = byOpening(
    [
      [0.149, 90],
      [0.105, 8],
    ],
    2,
  );
  expect(fines(gradingCurve(old))).toMatchObject({ percent: 2, interpolated: false, issues: [] });
  const open = byOpening([
    [0.106, 90],
    [0.075, 10],
  ]);
  expect(fines(gradingCurve(open)).issues).toMatchObject([{ code: "sand/no-pan" }]);
});
