// Other schemes of multipliers against their worked examples, and proof that they are not one figure.

import { expect, test } from "vitest";
import { averageGrainSizeUm, averageSizeScheme } from "../../lib/sand/average-grain-size.ts";
import { britishFineness } from "../../lib/sand/british-fineness.ts";
import { roughFineness, roughSizeUm } from "../../lib/sand/fineness-size.ts";
import { usFineness } from "../../lib/sand/grain-fineness.ts";
import { type MultiplierScheme, meanMultiplier } from "../../lib/sand/multiplier-scheme.ts";
import { afsClasses } from "../../lib/sand/multipliers.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";
import { standardSieve } from "../../lib/sand/sieve-table.ts";

// Brown (ed.), Foseco Foundryman's Handbook, 10th ed. 1994 (from memory): British mesh example.
const britishRetained = {
  "BS 10": 0,
  "BS 16": 0,
  "BS 22": 0.2,
  "BS 30": 0.8,
  "BS 44": 6.7,
  "BS 60": 22.6,
  "BS 100": 48.3,
  "BS 150": 15.6,
  "BS 200": 1.8,
  pan: 4,
};
test("British mesh: 6744.2/100 = 67.4", () => {
  const { gfn, scheme } = britishFineness(readGrading(britishRetained).value!).value!;
  expect(gfn).toBeCloseTo(67.442, 9);
  expect(scheme).toBe("british mesh");
});

// Same handbook (from memory): ISO-sieve average grain size, products printed to the whole number, sum 20 335.
const isoRetained = {
  "710 µm": 0,
  "500 µm": 0.3,
  "355 µm": 1.9,
  "250 µm": 17.2,
  "212 µm": 25.3,
  "180 µm": 16.7,
  "150 µm": 19.2,
  "125 µm": 10.6,
  "90 µm": 6.5,
  "63 µm": 1.4,
  pan: 0.5,
};
test("average grain size: 20 334.5/99.6 = 204.2 µm, printed 204", () => {
  const { averageUm, issues } = averageGrainSizeUm({ retained: isoRetained });
  expect(issues).toEqual([]);
  expect(averageUm).toBeCloseTo(20334.5 / 99.6, 9);
  expect(Math.round(averageUm!)).toBe(204);
  const printedProducts = [0, 180, 808, 5160, 5364, 3540, 2880, 1590, 689, 105, 19];
  Object.values(isoRetained).forEach((percent, k) => {
    const product = percent * averageSizeScheme.classes[k]!.multiplier!;
    expect(Math.abs(product - printedProducts[k]!)).toBeLessThanOrEqual(0.5001);
  });
});

// Same handbook (from memory): table of fineness number against average grain size.
const table: readonly (readonly [number, number])[] = [
  [35, 390],
  [40, 340],
  [45, 300],
  [50, 280],
  [55, 240],
  [60, 220],
  [65, 210],
  [70, 195],
  [80, 170],
  [90, 150],
];
test.each(table)("fineness %i goes with about %i µm, within the scatter that is given", (gfn, um) => {
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

// Factor sets read (by OCR) on a Korean foundry textbook page; here only to show that schemes don't mix. An
// older print of an opening (590 µm) stands for the sieve of today (600 µm).
const scheme = (says: string, um: readonly number[], by: readonly number[]): MultiplierScheme => ({
  says,
  classes: um.map((x, k) => {
    const openingMm = standardSieve(x / 1000)?.sieve.openingMm ?? x / 1000;
    return { label: `${x} µm`, openingMm, multiplier: by[k]! };
  }),
});
const ksUm = [3360, 2380, 1680, 1190, 840, 590, 420, 297, 210, 149, 105, 74, 53, 0];
const ksFactors = [5, 8, 11, 16, 22, 32, 45, 63, 89, 126, 178, 253, 357, 620];
const ks = scheme("KS/JIS set", ksUm, ksFactors);
// First factor unreadable on the page; 5 is a guess, for a class that holds nothing here.
const din = scheme(
  "DIN set",
  [3000, 1400, 1000, 710, 500, 355, 250, 180, 125, 90, 63, 0],
  [5, 6, 9, 17, 31, 41, 52, 71, 103, 146, 186, 281],
);

test("one sand, two schemes: the KS/JIS set gives 124.1 where AFS gives 69.1", () => {
  const percent = [0, 0, 0, 0.1, 0.3, 1.3, 33.1, 50.1, 11.5, 1.7, 0.4, 0.5];
  const retained = Object.fromEntries(afsClasses.map(({ label }, k) => [label, percent[k]!]));
  const { value } = readGrading({ ...retained, "2.38 mm": 0, "1.19 mm": 0 });
  expect(usFineness(value!).gfn!.toFixed(1)).toBe("69.1");
  expect(meanMultiplier(value!, ks).value!.toFixed(1)).toBe("124.1");
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
