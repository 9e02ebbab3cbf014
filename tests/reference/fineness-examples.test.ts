// The fineness number against published worked examples, misprints kept as misprints.

import { expect, test } from "vitest";
import { usFineness } from "../../lib/sand/grain-fineness.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";

const labels = ["No. 6", "No. 12", "No. 20", "No. 30", "No. 40", "No. 50", "No. 70", "No. 100", "No. 140", "No. 200", "No. 270", "pan"]; // biome-ignore format: one row reads as one stack
// Printed multipliers, Quevedo sheets 2019, so that a test can follow a source's own arithmetic.
const multipliers = [3, 5, 10, 20, 30, 40, 50, 70, 100, 140, 200, 300];

/** Masses on the eleven sieves and the pan; a sieve that the source does not list held nothing. */
function fineness(masses: readonly number[]): number {
  const { value, issues } = readGrading(Object.fromEntries(labels.map((label, k) => [label, masses[k]!])));
  expect(issues).toEqual([]);
  return usFineness(value!).gfn!;
}
const total = (x: readonly number[]) => x.reduce((a, b) => a + b, 0);
const products = (masses: readonly number[], by = multipliers) => masses.map((m, k) => m * by[k]!);

// Korean foundry textbook page (gallery image; book title not visible): grams, percent and products printed,
// sums 99.0 and 6843 printed, the quotient cut off.
const koreanG = [0, 0, 0, 0.05, 0.15, 0.65, 16.55, 25.05, 5.75, 0.85, 0.2, 0.25];
const koreanPercent = [0, 0, 0, 0.1, 0.3, 1.3, 33.1, 50.1, 11.5, 1.7, 0.4, 0.5];
test("Korean textbook page: 6843/99.0 = 69.12, in percent and in grams", () => {
  expect(total(koreanPercent)).toBeCloseTo(99.0, 10);
  expect(total(products(koreanPercent))).toBeCloseTo(6843, 9);
  expect(fineness(koreanPercent)).toBeCloseTo(6843 / 99, 7);
  expect(fineness(koreanPercent)).toBeCloseTo(69.12, 2);
  expect(fineness(koreanG)).toBeCloseTo(69.12, 2);
});

// American handbooks, natural bonded sand: rows from memory; 5.9 g clay, sum 88.2 % and 173 read in a
// machine-compiled Chinese foundry entry.
test("handbook natural bonded sand: 15 243/88.2 = 172.8, printed 173", () => {
  const percent = [0, 0, 0, 0, 0.4, 1.3, 2.4, 4.5, 17.1, 22.1, 21.8, 18.6];
  const grams = [0, 0, 0, 0, 0.2, 0.65, 1.2, 2.25, 8.55, 11.05, 10.9, 9.3];
  expect(total(percent)).toBeCloseTo(88.2, 10);
  expect(Math.round(fineness(percent))).toBe(173);
  expect(fineness(grams)).toBeCloseTo(172.82, 2);
});

// A. Pérez Oñate, task sheet, Universidad Técnica Estatal de Quevedo, about 2019: complete.
test("Quevedo sheet: 600 g holding 558 g of grain, printed 54.4", () => {
  const grams = [62, 43, 24, 33, 93, 83, 53, 28, 95, 13, 23, 8];
  expect(total(grams)).toBe(558);
  expect(fineness(grams)).toBeCloseTo(30341 / 558, 7);
  expect(fineness(grams).toFixed(1)).toBe("54.4");
  // Percent of the whole moulding sand, as the sheet prints them, gives the same: clay is in no sum.
  const ofWhole = [10.33, 7.17, 4, 5.5, 15.5, 13.83, 8.83, 4.67, 15.83, 2.17, 3.83, 1.33];
  expect(fineness(ofWhole)).toBeCloseTo(54.4, 1);
});

// ABIFA, Fundição & Matérias-Primas, Oct 2019, pp. 40–44, on CEMP-081. The three sieves are not named in the
// part read; 50/70/100 is inferred, since it gives every printed figure.
const third = 80 / 3;
test.each([
  ["No. 6", 0, 43.3],
  ["pan", 11, 102.7],
  ["No. 140", 8, 62.7],
])("ABIFA mix: 80 %% on three sieves and 20 %% on %s", (_, place, printed) => {
  const masses = [0, 0, 0, 0, 0, third, third, third, 0, 0, 0, 0];
  masses[place] = 20;
  expect(fineness(masses).toFixed(1)).toBe(printed.toFixed(1));
});

// Student sheet "Sand Testing 2011" (university not shown).
const student = [0, 0, 0.3, 1.81, 39.55, 18.18, 5.56, 11.88, 13.9, 6.53, 1.92, 0.37];
test("misprint: a student sheet's 58.94 needs 145 for No. 200; its masses give 58.62", () => {
  expect(total(student)).toBeCloseTo(100, 9);
  expect(fineness(student)).toBeCloseTo(58.62, 2);
  expect(Math.abs(fineness(student) - 58.9435)).toBeGreaterThan(0.3);
  const withMisprint = products(student, multipliers.with(9, 145));
  expect(total(withMisprint)).toBeCloseTo(5894.35, 6);
});

// Second-hand "GB/T 9442" example in a machine-compiled Chinese entry: rows and total disagree.
test("misprint: the rows printed with GFN 47 add to 5065 and give 51.2", () => {
  const percent = [0, 0, 0, 1.6, 8.1, 33.8, 32.1, 16.5, 6.78, 0, 0, 0];
  expect(total(percent)).toBeCloseTo(98.88, 10);
  expect(total(products(percent))).toBeCloseTo(5065, 9);
  expect(fineness(percent)).toBeCloseTo(51.22, 2);
  expect(Math.abs(fineness(percent) - 4663.4 / 98.88)).toBeGreaterThan(4);
});

// Fine-stack construction sand, table page of an open-access article (title not on the page): cumulative grams.
const fineStack: readonly (readonly [number, number])[] = [
  [4, 16],
  [5, 34],
  [6, 58],
  [8, 98],
  [10, 150],
  [12, 247],
  [16, 409],
  [18, 617],
  [20, 826],
  [30, 1086],
  [35, 1298],
  [40, 1466],
  [50, 1599],
  [60, 1737],
  [70, 1811],
  [100, 1867],
  [120, 1900],
  [140, 1921],
  [200, 1937],
];
function fineStackGrading(on270: number, inPan: number) {
  const retained = fineStack.map(([n, g], k) => [`No. ${n}`, g - (fineStack[k - 1]?.[1] ?? 0)] as const);
  return readGrading(Object.fromEntries([...retained, ["No. 270", on270], ["pan", inPan]])).value!;
}
test("sieves between those of the AFS stack add to the next finer class: 31.8 to 34.9 with 63 g below No. 200", () => {
  expect(usFineness(fineStackGrading(63, 0)).gfn!.toFixed(1)).toBe("31.8");
  expect(usFineness(fineStackGrading(0, 63)).gfn!.toFixed(1)).toBe("34.9");
});
