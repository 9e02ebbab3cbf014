// A recipe on any basis, into weights and back: by algebra, by the published check table, and over random recipes.

import fc from "fast-check";
import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { figure } from "../../lib/quantity/figure.ts";
import { constant, spread } from "../../lib/quantity/spread-of.ts";
import { mixShares } from "../../lib/sand/mix-shares.ts";
import { purchaseOf } from "../../lib/sand/recipe-cost.ts";
import { inBuckets, recipeLoads } from "../../lib/sand/recipe-loads.ts";
import { type RecipeBasis, recipeBases, recipeMassesKg } from "../../lib/sand/recipe-masses.ts";
import { waterSplit } from "../../lib/sand/recipe-water.ts";

test("100 kg at 8 % of dry mix and 3.5 %, clay from a bag at 10 %: by hand", () => {
  const masses = recipeMassesKg(
    { basis: "dry mix", clayPercent: 8, moistureOfDampPercent: 3.5, clayMoisturePercent: 10 },
    { makeKg: 100 },
  );
  // 96.5 dry, of it 7.72 clay, 88.78 sand; the bag: 7.72/0.9 = 8.5778, bringing 0.8578 of the 3.5 of water.
  expect(masses.sandKg).toBeCloseTo(88.78, 10);
  expect(masses.clayKg).toBeCloseTo(7.72 / 0.9, 10);
  expect(masses.waterKg).toBeCloseTo(3.5 - 7.72 / 9, 10);
  expect(masses.dampKg).toBeCloseTo(100, 10);
});

test("one clay on three bases is one recipe", () => {
  // 8.6957 per 100 of sand is 8 % of dry mix (algebra) and 7.72 % of damp mass at 3.5 %.
  const [ofSand, ofMix, ofDamp] = (
    [
      ["sand", 800 / 92],
      ["dry mix", 8],
      ["damp mass", 7.72],
    ] as const
  ).map(([basis, clayPercent]) =>
    recipeMassesKg({ basis, clayPercent, moistureOfDampPercent: 3.5 }, { makeKg: 100 }),
  );
  expect(ofSand!.dryClayKg).toBeCloseTo(7.72, 10);
  expect(ofMix!.dryClayKg).toBeCloseTo(7.72, 10);
  expect(ofDamp!.dryClayKg).toBeCloseTo(7.72, 10);
  expect(ofDamp!.sandKg).toBeCloseTo(ofMix!.sandKg, 10);
});

test("what is weighed is what was wanted, on every basis, over random recipes; nothing is lost", () => {
  const percent = (max: number) => fc.double({ min: 0, max, noNaN: true });
  const recipes = fc.record({
    basis: fc.constantFrom<RecipeBasis>(...recipeBases),
    clayPercent: percent(25),
    additivePercents: fc.array(percent(4), { maxLength: 2 }),
    moistureOfDampPercent: percent(12),
    sandMoisturePercent: percent(10),
    clayMoisturePercent: percent(15),
  });
  fc.assert(
    fc.property(
      recipes,
      fc.double({ min: 0.1, max: 1000, noNaN: true }),
      fc.boolean(),
      (shares, kg, bySand) => {
        const masses = recipeMassesKg(shares, bySand ? { sandKg: kg } : { makeKg: kg });
        const additiveKg = masses.additivesKg.reduce((sum, one) => sum + one, 0);
        if (bySand) expect(masses.sandKg).toBeCloseTo(kg, 8);
        else expect(masses.dampKg).toBeCloseTo(kg, 8);
        const weighed = masses.sandKg + masses.clayKg + additiveKg + masses.waterKg;
        expect(Math.abs(weighed - masses.dampKg)).toBeLessThan(1e-9 * masses.dampKg);
        // Too damp already: mixShares takes no negative water, the balance above holds all the same.
        if (masses.waterKg < 0) return;
        const mix = mixShares({ ...masses, ...shares, additiveKg });
        expect(mix.moistureOfDampPercent).toBeCloseTo(shares.moistureOfDampPercent, 8);
        const clay = {
          sand: mix.clayOfSandPercent,
          "dry mix": mix.clayOfDryMixPercent,
          "damp mass": mix.clayOfDampPercent,
        };
        expect(clay[shares.basis]).toBeCloseTo(shares.clayPercent, 8);
      },
    ),
    { numRuns: 300, seed: 41 },
  );
});

test("what leaves no sand, or says no amount, is misuse", () => {
  const shares = { basis: "dry mix", clayPercent: 8, moistureOfDampPercent: 3 } as const;
  expect(() => recipeMassesKg({ ...shares, clayPercent: 100 }, { makeKg: 10 })).toThrow(/shareOfSand/);
  expect(() => recipeMassesKg({ ...shares, clayPercent: -1 }, { makeKg: 10 })).toThrow(/clayPercent/);
  expect(() => recipeMassesKg({ ...shares, moistureOfDampPercent: 100 }, { makeKg: 10 })).toThrow(/100/);
  expect(() => recipeMassesKg(shares, {})).toThrow(Misuse);
  expect(() => recipeMassesKg(shares, { makeKg: 10, sandKg: 10 })).toThrow(Misuse);
});

test("loads: the fewest that fit, all alike", () => {
  expect(recipeLoads({ heapKg: 120, panKg: 13 })).toEqual({ loads: 10, loadKg: 12 });
  expect(recipeLoads({ heapKg: 3 * 0.1, panKg: 0.1 }).loads).toBe(3);
  expect(recipeLoads({ heapKg: 5, panKg: 12 })).toEqual({ loads: 1, loadKg: 5 });
  expect(() => recipeLoads({ heapKg: 5, panKg: 0 })).toThrow(RangeError);
});

test("buckets: full ones and the rest", () => {
  const { full, restKg, buckets } = inBuckets({ massKg: 46, bucketKg: 13.5 });
  expect([full, restKg, buckets.toFixed(3)]).toEqual([3, 5.5, "3.407"]);
  expect(inBuckets({ massKg: 0.3, bucketKg: 0.1 })).toMatchObject({ full: 3, restKg: 0 });
});

test("bags: whole ones to buy, and what is used of them", () => {
  const bought = purchaseOf({ needKg: 30, bagKg: 25, bagCost: 14 });
  expect(bought).toMatchObject({ bags: 2, costOfBags: 28, leftKg: 20 });
  expect(bought.costOfUse).toBeCloseTo(16.8, 12);
  expect(purchaseOf({ needKg: 75, bagKg: 25, bagCost: 14 }).bags).toBe(3);
  expect(purchaseOf({ needKg: 0, bagKg: 25, bagCost: 14 }).bags).toBe(0);
});

test("first water and trim: nine tenths of a sure need, the 10 % quantile of an unsure one", () => {
  expect(waterSplit(figure(constant(2)))).toEqual({
    firstKg: 1.8,
    trimKg: expect.closeTo(0.2, 12),
    trimAtMostKg: expect.closeTo(0.2, 12),
  });
  // Normal, 2 ± 0.5 (sd): the 10 % quantile is 2 − 1.2816 · 0.5 = 1.359, the 97.5 % end 2.980.
  const unsure = waterSplit(figure(spread({ mean: 2, sd: 0.5, source: "need" })));
  expect(unsure.firstKg).toBeCloseTo(1.359, 2);
  expect(unsure.trimAtMostKg).toBeCloseTo(2.98 - 1.359, 1);
  expect(waterSplit(figure(constant(-1)))).toEqual({ firstKg: 0, trimKg: 0, trimAtMostKg: 0 });
});
