// Grain statistics against Folk's worked moments and a published sieving.

import { expect, test } from "vitest";
import { gradingCurve } from "../../lib/sand/curve.ts";
import { folkWard, kurtosisClass, skewnessClass, sortingClass } from "../../lib/sand/folk-ward.ts";
import { gradingStatistics } from "../../lib/sand/grain-statistics.ts";
import { massBalance } from "../../lib/sand/mass-balance.ts";
import { phiMoments } from "../../lib/sand/moments.ts";
import { phiPercentiles } from "../../lib/sand/percentiles.ts";
import { eocene, folk } from "./grain-sands.ts";

test("Folk's moments: mean 2.68, deviation 1.06 phi as printed", () => {
  const { meanPhi, sortingPhi } = phiMoments(folk, { panMidPhi: 5 });
  expect(meanPhi!.toFixed(2)).toBe("2.68");
  expect(sortingPhi!.toFixed(2)).toBe("1.06");
  // His column of W(M − D)² adds to 78.9 with rounded deviations; 79.02 unrounded, worked out by hand.
  expect(sortingPhi! ** 2 * 70).toBeCloseTo(79.02, 2);
});

test("the divisor is N: N − 1 would print 1.07", () => {
  const { sortingPhi } = phiMoments(folk, { panMidPhi: 5 });
  expect((sortingPhi! * Math.sqrt(70 / 69)).toFixed(2)).toBe("1.07");
});

test("the higher moments of the same sand, worked out by hand from its figures", () => {
  // Not printed by Folk.
  const { skewness, kurtosis } = phiMoments(folk, { panMidPhi: 5 });
  expect(skewness).toBeCloseTo(0.064, 3);
  expect(kurtosis).toBeCloseTo(3.209, 3);
});

test("a lab manual's sieving: cumulative percentages and recovery as printed", () => {
  const printed = [8.83, 23.64, 63.61, 92.19, 98.56, 99.94];
  gradingCurve(eocene).points.forEach((point, i) => {
    // 98.564 and 92.190 round as printed; the third is 63.615, printed 63.61.
    expect(Math.abs(point.coarserPercent - printed[i]!)).toBeLessThan(0.0055);
  });
  const masses = eocene.fractions.map(({ mass }) => mass);
  const balance = massBalance({ startG: 33.52, retainedG: masses });
  expect((100 - balance.lossPercent).toFixed(2)).toBe("99.70");
  expect(balance.verdict).toBe("good");
});

test("its graphic measures need φ5 beyond the coarsest sieve: refused unless asked", () => {
  const refused = gradingStatistics(eocene);
  expect(refused.graphic.sortingPhi).toBeUndefined();
  expect(refused.graphic.kurtosis).toBeUndefined();
  expect(refused.graphic.meanPhi).toBeCloseTo(0.619, 3);
  const reach = refused.issues.find(({ code }) => code === "sand/beyond-coarsest-sieve");
  expect(reach!.message).toContain("φ5");
  expect(reach!.message).toContain("8.83 %");
});

test("its graphic measures with φ5 extended, against values worked out by hand", () => {
  // The source's own statistics were cut off; straight lines on phi, φ5 carried on below −1.
  const phi = phiPercentiles(gradingCurve(eocene), { extendEnds: true });
  const byHand = {
    phi5: -1.258,
    phi16: -0.516,
    phi25: 0.034,
    phi50: 0.659,
    phi75: 1.398,
    phi84: 1.713,
    phi95: 2.441,
  };
  for (const [name, value] of Object.entries(byHand))
    expect(Math.abs(phi[name as keyof typeof byHand]! - value)).toBeLessThan(0.001);
  const { meanPhi, sortingPhi, skewness, kurtosis } = folkWard(phi);
  expect(meanPhi).toBeCloseTo(0.619, 3);
  expect(sortingPhi).toBeCloseTo(1.118, 3);
  expect(skewness).toBeCloseTo(-0.046, 3);
  expect(kurtosis).toBeCloseTo(1.111, 3);
  // The words as Folk's limits give them; 1.111 stands just above 1.11.
  expect([sortingClass(sortingPhi!), skewnessClass(skewness!), kurtosisClass(kurtosis!)]).toEqual([
    "poorly sorted",
    "near-symmetrical",
    "leptokurtic",
  ]);
});
