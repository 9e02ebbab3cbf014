// Other schemes of multipliers against their worked examples, and proof that they are not one figure.

import { expect, test } from "vitest";
import {
  averageGrainSize,
  averageGrainSizeUm,
  averageSizeScheme,
} from "../../lib/sand/average-grain-size.ts";
import { britishFineness } from "../../lib/sand/british-fineness.ts";
import { roughFineness, roughSizeUm } from "../../lib/sand/fineness-size.ts";
import { meanMultiplier } from "../../lib/sand/multiplier-scheme.ts";
import { afsClasses } from "../../lib/sand/multipliers.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";
import { din, ksFactors, ksUm } from "./fineness-factors.ts";
import { britishRetained, isoRetained, sizeTable } from "./fineness-sands.ts";

// Brown (ed.), Foseco Foundryman's Handbook, 10th ed. 1994 (from memory): British mesh example.
test("British mesh: 6744.2/100 = 67.4", () => {
  const { gfn, scheme } = britishFineness(readGrading(britishRetained).value!).value!;
  expect(gfn).toBeCloseTo(67.442, 9);
  expect(scheme).toBe("british mesh");
});

// Same handbook (from memory): ISO-sieve average grain size, products printed to the whole number, sum 20 335.
test("average grain size: 20 334.5/99.6 = 204.2 µm, printed 204", () => {
  const { averageUm, issues } = averageGrainSize({ retained: isoRetained });
  expect(averageGrainSizeUm({ retained: isoRetained })).toBe(averageUm);
  expect(issues).toEqual([]);
  expect(averageUm).toBeCloseTo(20334.5 / 99.6, 9);
  expect(Math.round(averageUm!)).toBe(204);
  const printedProducts = [0, 180, 808, 5160, 5364, 3540, 2880, 1590, 689, 105, 19];
  Object.values(isoRetained).forEach((percent, k) => {
    const product = percent * averageSizeScheme.classes[k]!.multiplier!;
    expect(Math.abs(product - printedProducts[k]!)).toBeLessThanOrEqual(0.5001);
  });
});

test.each(sizeTable)("fineness %i goes with about %i µm, within the scatter that is given", (gfn, um) => {
  const size = roughSizeUm(gfn).value!;
  expect(Math.abs(size.value / um - 1)).toBeLessThan(0.035);
  expect(um).toBeGreaterThanOrEqual(size.low - 1e-9);
  expect(um).toBeLessThanOrEqual(size.high + 1e-9);
  expect(Math.abs(roughFineness(um).value!.value / gfn - 1)).toBeLessThan(0.035);
});

// Ihom et al., Leonardo Electronic J. of Practices and Technologies 19 (2011) 85–96: Yola natural sand.
test("a wide sand breaks the rule: GFN 88.05 printed with 335.78 µm", () => {
  const { value, issues } = roughSizeUm(88.05);
  expect(value!.high).toBeLessThan(335.78 / 2);
  expect(issues.map(({ code }) => code)).toEqual(["sand/fineness-size-narrow"]);
});

test("the DIN set gives 84 on the sand that the handbook's table calls about 67", () => {
  const { value } = readGrading(isoRetained);
  expect(Math.round(meanMultiplier(value!, din).value!)).toBe(84);
  expect(Math.round(roughFineness(204).value!.value)).toBe(67);
});

test("KS/JIS factors go as one over the opening: 18.5 to 19.0 mm from 2.38 mm down", () => {
  ksUm.slice(1, -1).forEach((um, k) => {
    const productMm = (um * ksFactors[k + 1]!) / 1000;
    expect(productMm).toBeGreaterThan(18.4);
    expect(productMm).toBeLessThan(19.1);
  });
});

// Quevedo sheets 2019 (all twelve in one table); GB/T 9442 as cited in a Chinese entry (3 to 200).
test("the AFS multipliers, and that they are no rule", () => {
  expect(afsClasses.map(({ multiplier }) => multiplier)).toEqual([
    3, 5, 10, 20, 30, 40, 50, 70, 100, 140, 200, 300,
  ]);
  const nextCoarser = afsClasses.map((_, k) => afsClasses[k - 1]?.number);
  const byRule = afsClasses.filter(({ multiplier }, k) => multiplier === nextCoarser[k]);
  expect(byRule.map(({ number }) => number)).toEqual([30, 40, 50, 70, 100, 140, 200, 270]);
});
