import { expect, test } from "vitest";
import { gradingCurve } from "../../lib/sand/curve.ts";
import { uniformity } from "../../lib/sand/uniformity.ts";
import { byOpening } from "./curve-sands.ts";

test("a curve straight over ln d from b to a has MK √(ab) and GG 100 ln 2 / ln(b/a)", () => {
  // From 1 to 1/8 mm in three equal steps of ln d: the share between 4/3 and 2/3 MK is ln 2 / ln 8.
  const straight = byOpening(
    [
      [1, 0],
      [0.5, 1],
      [0.25, 1],
      [0.125, 1],
    ],
    0,
  );
  const { mkMm, ggPercent } = uniformity(gradingCurve(straight));
  expect(mkMm).toBeCloseTo(Math.sqrt(1 / 8), 12);
  expect(ggPercent).toBeCloseTo(100 / 3, 10);
});

test("all from 2/3 to 4/3 of MK is 100 %", () => {
  const narrow = byOpening(
    [
      [0.3, 0],
      [0.24, 5],
      [0.2, 5],
    ],
    0,
  );
  expect(uniformity(gradingCurve(narrow)).ggPercent).toBe(100);
});

test("MK stands where GG is out of the stack's reach, and neither where half passes no sieve", () => {
  const short = byOpening(
    [
      [0.3, 30],
      [0.212, 60],
    ],
    10,
  );
  const part = uniformity(gradingCurve(short));
  expect(part.mkMm).toBeDefined();
  expect(part.ggPercent).toBeUndefined();
  expect(part.issues.map(({ code }) => code)).toEqual(["sand/outside-stack", "sand/outside-stack"]);
  const coarse = uniformity(gradingCurve(byOpening([[0.3, 80]], 20)));
  expect(coarse).toMatchObject({ mkMm: undefined, ggPercent: undefined });
  expect(coarse.issues[0]!.code).toBe("sand/beyond-coarsest-sieve");
});
