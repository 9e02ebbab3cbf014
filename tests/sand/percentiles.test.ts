import { expect, test } from "vitest";
import { gradingCurve } from "../../lib/sand/curve.ts";
import { phiAtCoarser, phiOfMm, phiPercentiles } from "../../lib/sand/percentiles.ts";
import { byOpening } from "./curve-sands.ts";

test("phi of the sizes of Krumbein's scale", () => {
  // Krumbein 1934: 0 = 1 mm, 1 = 0.5, 2 = 0.25, 3 = 0.125, 4 = 0.0625 mm.
  for (const [mm, phi] of [
    [1, 0],
    [0.5, 1],
    [0.25, 2],
    [0.125, 3],
    [0.0625, 4],
    [2, -1],
  ] as const) {
    expect(phiOfMm(mm)).toBeCloseTo(phi, 14);
  }
  expect(() => phiOfMm(0)).toThrow(RangeError);
});

test("phi percentiles count from the coarse end: φ5 is coarser than φ95", () => {
  // Even over phi from 0 to 4: φp = 4p/100.
  const even = byOpening(
    [
      [1, 0],
      [0.5, 25],
      [0.25, 25],
      [0.125, 25],
      [0.0625, 25],
    ],
    0,
  );
  const phi = phiPercentiles(gradingCurve(even));
  expect(phi.phi5).toBeCloseTo(0.2, 12);
  expect(phi.phi16).toBeCloseTo(0.64, 12);
  expect(phi.phi25).toBeCloseTo(1, 12);
  expect(phi.phi50).toBeCloseTo(2, 12);
  expect(phi.phi75).toBeCloseTo(3, 12);
  expect(phi.phi84).toBeCloseTo(3.36, 12);
  expect(phi.phi95).toBeCloseTo(3.8, 12);
  expect(phiAtCoarser(gradingCurve(even), 0).value).toBeCloseTo(0, 12);
});

test("a percentile beyond the stack is undefined and says why", () => {
  const curve = gradingCurve(
    byOpening(
      [
        [0.5, 10],
        [0.25, 80],
      ],
      10,
    ),
  );
  const phi = phiPercentiles(curve);
  expect(phi.phi5).toBeUndefined();
  expect(phi.phi95).toBeUndefined();
  expect(phi.phi50).toBeCloseTo(1.5, 12);
  expect(phiAtCoarser(curve, 5).issues[0]?.code).toBe("sand/beyond-coarsest-sieve");
});
