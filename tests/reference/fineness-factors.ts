// Two factor sets read (by OCR) on a Korean foundry textbook page; only to show that schemes don't mix.

import type { MultiplierScheme } from "../../lib/sand/multiplier-scheme.ts";
import { standardSieve } from "../../lib/sand/sieve-table.ts";

/** An older print of an opening (590 µm) stands for the sieve of today (600 µm). */
const scheme = (says: string, um: readonly number[], by: readonly number[]): MultiplierScheme => ({
  says,
  classes: um.map((x, k) => {
    const openingMm = standardSieve(x / 1000)?.sieve.openingMm ?? x / 1000;
    return { label: `${x} µm`, openingMm, multiplier: by[k]! };
  }),
});
export const ksUm = [3360, 2380, 1680, 1190, 840, 590, 420, 297, 210, 149, 105, 74, 53, 0];
export const ksFactors = [5, 8, 11, 16, 22, 32, 45, 63, 89, 126, 178, 253, 357, 620];
export const ks = scheme("KS/JIS set", ksUm, ksFactors);
// First factor unreadable on the page; 5 is a guess, for a class that holds nothing here.
export const din = scheme(
  "DIN set",
  [3000, 1400, 1000, 710, 500, 355, 250, 180, 125, 90, 63, 0],
  [5, 6, 9, 17, 31, 41, 52, 71, 103, 146, 186, 281],
);
