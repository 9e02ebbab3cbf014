import { expect, test } from "vitest";
import { phiMoments } from "../../lib/sand/moments.ts";
import { byOpening } from "./curve-sands.ts";

test("two equal classes one phi apart: by hand, mean between, deviation a half, kurtosis 1", () => {
  const two = byOpening(
    [
      [1, 0],
      [0.5, 3],
      [0.25, 3],
    ],
    0,
  );
  const moments = phiMoments(two);
  expect(moments.meanPhi).toBeCloseTo(1, 12);
  expect(moments.sortingPhi).toBeCloseTo(0.5, 12);
  expect(moments.skewness).toBeCloseTo(0, 12);
  expect(moments.kurtosis).toBeCloseTo(1, 12);
  expect(moments.panMidPhi).toBeUndefined();
  expect(moments.issues).toEqual([]);
});

test("binomial masses have the moments of the binomial distribution", () => {
  // n = 6, p = 1/2: variance n/4, skewness 0, kurtosis 3 − 2/n (any textbook of probability).
  const masses = [1, 6, 15, 20, 15, 6, 1];
  const moments = phiMoments(byOpening([[2, 0], ...masses.map((mass, i) => [2 ** -i, mass] as const)], 0));
  expect(moments.meanPhi).toBeCloseTo(2.5, 12);
  expect(moments.sortingPhi).toBeCloseTo(Math.sqrt(1.5), 12);
  expect(moments.skewness).toBeCloseTo(0, 12);
  expect(moments.kurtosis).toBeCloseTo(3 - 2 / 6, 12);
});

test("the pan's middle is assumed under a No. 270, said, and doubted where the pan holds much", () => {
  const with2 = phiMoments(
    byOpening(
      [
        [0.106, 0],
        [0.075, 49],
        [0.053, 49],
      ],
      2,
    ),
  );
  // Middle in phi of 0.053 and 0.020 mm: 4.238 and 5.644.
  expect(with2.panMidPhi).toBeCloseTo(4.941, 3);
  expect(with2.panPercent).toBeCloseTo(2, 12);
  expect(with2.issues).toMatchObject([{ code: "sand/pan-middle-assumed", severity: "note" }]);
  const with20 = phiMoments(
    byOpening(
      [
        [0.106, 0],
        [0.075, 40],
        [0.053, 40],
      ],
      20,
    ),
  );
  expect(with20.issues).toMatchObject([{ code: "sand/pan-middle-assumed", severity: "warning" }]);
  expect(with20.issues[0]!.message).toContain("20 % of the sand");
});

test("under a coarse finest sieve sand in the pan needs its phi, an empty pan does not", () => {
  const held = [
    [0.6, 0],
    [0.3, 5],
    [0.15, 4],
  ] as const;
  const refused = phiMoments(byOpening(held, 1));
  expect(refused.meanPhi).toBeUndefined();
  expect(refused.issues).toMatchObject([{ code: "sand/pan-middle-needed" }]);
  expect(phiMoments(byOpening(held, 1), { panMidPhi: 4 }).meanPhi).toBeDefined();
  expect(phiMoments(byOpening(held, 0)).meanPhi).toBeDefined();
  expect(() => phiMoments(byOpening(held, 1), { panMidPhi: Number.NaN })).toThrow(RangeError);
});

test("sand on the coarsest sieve is said to have an assumed end", () => {
  const moments = phiMoments(
    byOpening(
      [
        [0.5, 5],
        [0.25, 5],
      ],
      0,
    ),
  );
  expect(moments.issues).toMatchObject([{ code: "sand/top-middle-assumed", severity: "warning" }]);
});

test("all in one class: a mean, no width, and no shape", () => {
  const one = phiMoments(
    byOpening(
      [
        [0.5, 0],
        [0.25, 5],
      ],
      0,
    ),
  );
  expect(one).toMatchObject({ meanPhi: 1.5, sortingPhi: 0, skewness: undefined, kurtosis: undefined });
  expect(one.issues).toMatchObject([{ code: "sand/one-size" }]);
});
