// The fineness number against published worked examples, misprints kept as misprints.

import { expect, test } from "vitest";
import {
  fineness,
  koreanG,
  koreanPercent,
  multipliers,
  products,
  quevedoG,
  student,
  total,
} from "./fineness-sands.ts";

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

test("Quevedo sheet: 600 g holding 558 g of grain, printed 54.4", () => {
  expect(total(quevedoG)).toBe(558);
  expect(fineness(quevedoG)).toBeCloseTo(30341 / 558, 7);
  // Percent of the whole moulding sand, as the sheet prints them, gives the same: clay is in no sum.
  const ofWhole = [10.33, 7.17, 4, 5.5, 15.5, 13.83, 8.83, 4.67, 15.83, 2.17, 3.83, 1.33];
  expect(fineness(ofWhole)).toBeCloseTo(54.4, 1);
});

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
