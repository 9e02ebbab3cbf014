// The published sievings of fineness-examples and fineness-schemes, for the rows and for the tests beside them.

import { usFineness } from "../../lib/sand/grain-fineness.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";

const labels = ["No. 6", "No. 12", "No. 20", "No. 30", "No. 40", "No. 50", "No. 70", "No. 100", "No. 140", "No. 200", "No. 270", "pan"]; // biome-ignore format: one row reads as one stack
/** Printed multipliers, Quevedo sheets 2019, so that a test can follow a source's own arithmetic. */
export const multipliers = [3, 5, 10, 20, 30, 40, 50, 70, 100, 140, 200, 300];

/** Masses on the eleven sieves and the pan; a sieve that the source does not list held nothing. */
export function fineness(masses: readonly number[]): number {
  const { value, issues } = readGrading(Object.fromEntries(labels.map((label, k) => [label, masses[k]!])));
  if (issues.length > 0) throw new Error(issues.map(({ message }) => message).join("; "));
  return usFineness(value!).gfn!;
}
export const total = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0);
export const products = (masses: readonly number[], by: readonly number[] = multipliers): number[] =>
  masses.map((m, k) => m * by[k]!);

/** Korean foundry textbook page (gallery image; book title not visible): grams, percent and products printed. */
export const koreanG = [0, 0, 0, 0.05, 0.15, 0.65, 16.55, 25.05, 5.75, 0.85, 0.2, 0.25];
export const koreanPercent = [0, 0, 0, 0.1, 0.3, 1.3, 33.1, 50.1, 11.5, 1.7, 0.4, 0.5];

/** A. Pérez Oñate, task sheet, Universidad Técnica Estatal de Quevedo, about 2019: complete. */
export const quevedoG = [62, 43, 24, 33, 93, 83, 53, 28, 95, 13, 23, 8];

/** Student sheet "Sand Testing 2011" (university not shown). */
export const student = [0, 0, 0.3, 1.81, 39.55, 18.18, 5.56, 11.88, 13.9, 6.53, 1.92, 0.37];

/** Fine-stack construction sand, table page of an open-access article (title not on the page): cumulative grams. */
const fineStack = [
  [4, 16], [5, 34], [6, 58], [8, 98], [10, 150], [12, 247], [16, 409], [18, 617], [20, 826], [30, 1086],
  [35, 1298], [40, 1466], [50, 1599], [60, 1737], [70, 1811], [100, 1867], [120, 1900], [140, 1921], [200, 1937],
] as const; // biome-ignore format: as the table runs
export function fineStackGrading(on270: number, inPan: number) {
  const retained = fineStack.map(([n, g], k) => [`No. ${n}`, g - (fineStack[k - 1]?.[1] ?? 0)] as const);
  return readGrading(Object.fromEntries([...retained, ["No. 270", on270], ["pan", inPan]])).value!;
}

/** Brown (ed.), Foseco Foundryman's Handbook, 10th ed. 1994 (from memory): British mesh, then ISO sieves. */
export const britishRetained = {
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
export const isoRetained = {
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
/** Same handbook (from memory): fineness number against average grain size, µm. */
export const sizeTable: readonly (readonly [number, number])[] = [
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
