// Gradings for the tests of the curve and its measures.

import { type Grading, gradingOf } from "../../lib/sand/grading.ts";

/** Builds a grading from openings and masses, coarse to fine; any opening, standard or not. */
export function byOpening(held: readonly (readonly [mm: number, mass: number])[], pan?: number): Grading {
  return gradingOf([
    ...held.map(([openingMm, mass]) => ({
      label: `${openingMm} mm`,
      sieve: { label: `${openingMm} mm`, series: "cloth" as const, openingMm, toleranceMm: 0 },
      mass,
    })),
    ...(pan === undefined ? [] : [{ label: "pan", mass: pan }]),
  ]);
}

/** A Korean foundry textbook page; book title not visible. Grams of 50; 0.50 g clay. */
export const KOREAN_PAGE = {
  "No. 30": 0.05,
  "No. 40": 0.15,
  "No. 50": 0.65,
  "No. 70": 16.55,
  "No. 100": 25.05,
  "No. 140": 5.75,
  "No. 200": 0.85,
  "No. 270": 0.2,
  pan: 0.25,
};

/** Natural bonded sand of American foundry handbooks (rows from memory). Grams of 50; 5.90 g clay. */
export const NATURAL_BONDED = {
  "No. 40": 0.2,
  "No. 50": 0.65,
  "No. 70": 1.2,
  "No. 100": 2.25,
  "No. 140": 8.55,
  "No. 200": 11.05,
  "No. 270": 10.9,
  pan: 9.3,
};
