// Blends against published least squares, and against what mass says.

import fc from "fast-check";
import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { nonNegativeLeastSquares } from "../../lib/numbers/non-negative.ts";
import { blended, blendPairs, blendShares } from "../../lib/sand/blend.ts";
import { grainFineness } from "../../lib/sand/grain-fineness.ts";

// Lawson & Hanson (1974), chapter 23 (from memory): f = x₁t + x₂ with both ≥ 0 and a sum of at most 1. With the room that is left as a
// third "sand" of nothing it is a blend: 0.621, 0.379, 0.
test("Lawson and Hanson's line as a blend: 0.621, 0.379, norm 0.338", () => {
  const t = [0.25, 0.5, 0.5, 0.8];
  const to = [0.5, 0.6, 0.7, 1.2];
  const shares = blendShares({ of: [t, [1, 1, 1, 1], [0, 0, 0, 0]], to });
  expect(shares[0]).toBeCloseTo(0.62131521, 6);
  expect(shares[1]).toBeCloseTo(0.37868479, 6);
  expect(shares[2]).toBe(0);
  const misses = to.map((b, i) => b - (shares[0]! * t[i]! + shares[1]!));
  expect(Math.hypot(...misses)).toBeCloseTo(0.33822935, 6);
});

// Where the best answer without a sum adds to 1 by itself, the blend must be the example of SciPy's documentation of nnls, scaled:
// A = [[1, 0], [1, 0], [0, 1]], b = (2, 1, 1)/2.5 has x = (1.5, 1)/2.5 and norm 0.70710678/2.5.
test("SciPy's example of nnls, scaled to a sum of 1", () => {
  const b = [2, 1, 1].map((v) => v / 2.5);
  const shares = blendShares({
    of: [
      [1, 1, 0],
      [0, 0, 1],
    ],
    to: b,
  });
  expect(shares[0]).toBeCloseTo(0.6, 6);
  expect(shares[1]).toBeCloseTo(0.4, 6);
  const plain = nonNegativeLeastSquares(
    [
      [1, 0],
      [1, 0],
      [0, 1],
    ],
    b,
  );
  expect(plain.residualNorm).toBeCloseTo(0.7071067811865475 / 2.5, 12);
});

test("two sands to a number: the lever rule; what is beyond reach ends at the nearest", () => {
  expect(blendShares({ of: [[45], [70]], to: [60] })[1]).toBeCloseTo(15 / 25, 9);
  expect(blendShares({ of: [[45], [70]], to: [90] })).toEqual([0, 1]);
  expect(blendShares({ of: [[45], [70]], to: [30] })).toEqual([1, 0]);
  expect(blendShares({ of: [[45]], to: [30] })).toEqual([1]);
});

test("a blend that was made is found again, whatever its sands", () => {
  const grading = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 7, maxLength: 7 });
  fc.assert(
    fc.property(grading, grading, grading, fc.nat(100), fc.nat(100), (a, b, c, one, two) => {
      const of = [a, b, c].map((masses) => {
        const total = masses.reduce((sum, mass) => sum + mass, 0);
        return masses.map((mass) => (100 * mass) / total);
      });
      const made = [one, Math.max(1, two), 50].map((part) => part / (one + Math.max(1, two) + 50));
      const to = of[0]!.map((_, i) =>
        blended(
          made,
          of.map((row) => row[i]!),
        ),
      );
      const found = blendShares({ of, to });
      expect(found.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      // Sands that are nearly alike leave the shares open, never the curve.
      to.forEach((wanted, i) => {
        expect(
          blended(
            found,
            of.map((row) => row[i]!),
          ),
        ).toBeCloseTo(wanted, 4);
      });
    }),
    { seed: 7, numRuns: 200 },
  );
});

test("the number of a blend is the number of the sand that the blend is", () => {
  // On every sieve that the scheme has classes for, so that nothing has to be estimated between sieves.
  const coarse = {
    "No. 30": 1,
    "No. 40": 8,
    "No. 50": 22,
    "No. 70": 36,
    "No. 100": 25,
    "No. 140": 7,
    "No. 200": 1,
  };
  const fine = {
    "No. 30": 0,
    "No. 40": 0,
    "No. 50": 1,
    "No. 70": 9,
    "No. 100": 35,
    "No. 140": 38,
    "No. 200": 13,
  };
  const whole = (part: Record<string, number>, finest: number) => ({
    ...{ "No. 6": 0, "No. 12": 0, "No. 20": 0 },
    ...part,
    ...{ "No. 270": finest, pan: finest },
  });
  const [a, b] = [whole(coarse, 0), whole(fine, 2)] as [Record<string, number>, Record<string, number>];
  const of = (retained: Record<string, number>): number => grainFineness({ retained }).gfn!;
  // Both add to 100, so that shares of mass are shares of the masses.
  const mixed = Object.fromEntries(Object.keys(a).map((label) => [label, 0.3 * a[label]! + 0.7 * b[label]!]));
  expect(of(mixed)).toBeCloseTo(blended([0.3, 0.7], [of(a), of(b)]), 9);
});

test("three sands to a number: every pair that brackets it, the closest first, the cheapest first where priced", () => {
  const numbers = [45, 70, 58];
  expect(blendPairs({ numbers, wanted: 60 }).map(({ of }) => of)).toEqual([
    [2, 1],
    [0, 1],
  ]);
  const priced = blendPairs({ numbers, wanted: 60, costs: [0.1, 0.3, 0.9] });
  expect(priced.map(({ of }) => of)).toEqual([
    [0, 1],
    [2, 1],
  ]);
  expect(priced[0]!.cost).toBeCloseTo(0.4 * 0.1 + 0.6 * 0.3, 12);
  for (const { shares } of priced) expect(blended(shares, numbers)).toBeCloseTo(60, 12);
  expect(blendPairs({ numbers, wanted: 80 })).toEqual([]);
});

test("misuse throws", () => {
  expect(() => blendShares({ of: [], to: [1] })).toThrow(Misuse);
  expect(() => blendShares({ of: [[1], [1, 2]], to: [1] })).toThrow(Misuse);
  expect(() => blended([1], [1, 2])).toThrow(Misuse);
  expect(() => blendPairs({ numbers: [1, Number.NaN], wanted: 1 })).toThrow(Misuse);
});
