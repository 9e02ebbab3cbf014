import fc from "fast-check";
import { expect, test } from "vitest";
import { type Curve, gradingCurve, passingAtPercent, sizeAtPassing } from "../../lib/sand/curve.ts";
import { byOpening } from "./curve-sands.ts";

const middle = gradingCurve(
  byOpening(
    [
      [0.3, 1],
      [0.212, 2],
    ],
    1,
  ),
);

test("the curve counts from both ends", () => {
  expect(middle.points.map((point) => point.passingPercent)).toEqual([75, 25]);
  expect(middle.points.map((point) => point.coarserPercent)).toEqual([25, 75]);
  expect(middle.points.map((point) => point.retainedPercent)).toEqual([25, 50]);
  expect(middle.panPercent).toBe(25);
});

test("an empty pan and an empty coarsest sieve give 0 and 100 exactly", () => {
  const masses = [0, 0.1, 0.2, 0.3, 0.7].map((mass, i) => [1 / 2 ** i, mass] as const);
  const { points } = gradingCurve(byOpening(masses, 0));
  expect(points[0]!.passingPercent).toBe(100);
  expect(points.at(-1)!.passingPercent).toBe(0);
});

test("between sieves the curve is straight over ln d: the geometric middle passes the middle share", () => {
  expect(sizeAtPassing(middle, 50).value).toBeCloseTo(Math.sqrt(0.3 * 0.212), 12);
  expect(passingAtPercent(middle, Math.sqrt(0.3 * 0.212)).value).toBeCloseTo(50, 12);
  expect(passingAtPercent(middle, 0.212).value).toBe(25);
  expect(passingAtPercent(middle, 0.3).value).toBe(75);
});

test("beyond the stack there is no size, and the issue names the sieve and the share", () => {
  const coarse = sizeAtPassing(middle, 90);
  expect(coarse.value).toBeUndefined();
  expect(coarse.issues[0]).toMatchObject({ code: "sand/beyond-coarsest-sieve", severity: "warning" });
  expect(coarse.issues[0]!.message).toContain("25 % of the sand stays on the coarsest sieve (0.3 mm");
  const fine = sizeAtPassing(middle, 10);
  expect(fine.value).toBeUndefined();
  expect(fine.issues[0]).toMatchObject({ code: "sand/beyond-finest-sieve" });
  expect(fine.issues[0]!.message).toContain("25 % of the sand passes the finest sieve (0.212 mm");
});

test("ends are carried on only when asked, with an issue", () => {
  // 50 % a step of ln(0.3/0.212): 12.5 % above is a quarter of a step on.
  const step = 0.3 / 0.212;
  const coarse = sizeAtPassing(middle, 87.5, { extendEnds: true });
  expect(coarse.value).toBeCloseTo(0.3 * step ** 0.25, 12);
  expect(coarse.issues.map(({ code }) => code)).toEqual(["sand/curve-extended"]);
  expect(sizeAtPassing(middle, 0, { extendEnds: true }).value).toBeCloseTo(0.212 / step ** 0.5, 12);
  // A level end piece leads nowhere.
  const level = gradingCurve(
    byOpening(
      [
        [0.3, 1],
        [0.212, 0],
      ],
      1,
    ),
  );
  expect(sizeAtPassing(level, 90, { extendEnds: true }).value).toBeUndefined();
});

test("where the curve is level the middle in ln d stands for it, and the inner end at 0 and 100", () => {
  const gap = gradingCurve(
    byOpening(
      [
        [2, 0],
        [1, 0],
        [0.5, 1],
        [0.25, 0],
        [0.125, 1],
        [0.0625, 0],
      ],
      0,
    ),
  );
  expect(sizeAtPassing(gap, 50).value).toBeCloseTo(Math.sqrt(0.5 * 0.25), 12);
  expect(sizeAtPassing(gap, 100).value).toBe(1);
  expect(sizeAtPassing(gap, 0).value).toBe(0.125);
});

test("a share that passes an opening beyond the stack is known only where an empty end proves it", () => {
  expect(passingAtPercent(middle, 0.4).issues[0]?.code).toBe("sand/outside-stack");
  expect(passingAtPercent(middle, 0.1).value).toBeUndefined();
  const closed = gradingCurve(
    byOpening(
      [
        [0.3, 0],
        [0.212, 1],
      ],
      0,
    ),
  );
  expect(passingAtPercent(closed, 5).value).toBe(100);
  expect(passingAtPercent(closed, 0.01).value).toBe(0);
  // Not weighed is not empty.
  const open = gradingCurve(
    byOpening([
      [0.3, 0],
      [0.212, 1],
    ]),
  );
  expect(passingAtPercent(open, 0.01).value).toBeUndefined();
});

test("misuse throws", () => {
  expect(() => passingAtPercent(middle, 0)).toThrow(RangeError);
  expect(() => passingAtPercent(middle, Number.NaN)).toThrow(RangeError);
  expect(() => sizeAtPassing(middle, 101)).toThrow(RangeError);
  expect(() => sizeAtPassing(middle, Number.NaN)).toThrow(RangeError);
});

const anyCurve: fc.Arbitrary<Curve> = fc
  .array(fc.double({ min: 0.01, max: 50, noNaN: true }), { minLength: 3, maxLength: 12 })
  .map((masses) =>
    gradingCurve(
      byOpening(
        masses.map((mass, i) => [2 * 0.75 ** i, mass] as const),
        1,
      ),
    ),
  );

test("size and share are each other's inverse, and size grows with share", () => {
  fc.assert(
    fc.property(anyCurve, fc.double({ min: 0, max: 1, noNaN: true }), (curve, place) => {
      const low = curve.points.at(-1)!.passingPercent;
      const percent = low + place * (curve.points[0]!.passingPercent - low);
      const size = sizeAtPassing(curve, percent).value!;
      expect(passingAtPercent(curve, size).value).toBeCloseTo(percent, 6);
      const less = sizeAtPassing(curve, low + (percent - low) / 2).value!;
      expect(less).toBeLessThanOrEqual(size * (1 + 1e-12));
    }),
  );
});
