// The AFS multipliers, and the fineness number of a full stack.

import type { Checked } from "../issue.ts";
import type { Grading } from "./grading.ts";
import { type MultiplierClass, type MultiplierScheme, meanMultiplier } from "./multiplier-scheme.ts";
import { astmSieves } from "./sieve-table-astm.ts";

// A table and no rule: from No. 40 down a multiplier is the number of the next coarser sieve, but not at
// No. 6, 12, 20 and the pan. Read in one table, Univ. Técnica Estatal de Quevedo sheets 2019; 3 to 200 also
// in a Chinese foundry entry that cites GB/T 9442.
const rows = [
  [6, 3],
  [12, 5],
  [20, 10],
  [30, 20],
  [40, 30],
  [50, 40],
  [70, 50],
  [100, 70],
  [140, 100],
  [200, 140],
  [270, 200],
] as const;

export interface AfsClass extends MultiplierClass {
  readonly multiplier: number;
  /** US sieve number; undefined for the pan. */
  readonly number?: number;
  /** What older tables print for the opening, mm. */
  readonly olderMm: readonly number[];
}

const pan: AfsClass = Object.freeze({ label: "pan", openingMm: 0, multiplier: 300, olderMm: [] });

/** The eleven sieves and the pan, coarse to fine. */
export const afsClasses: readonly AfsClass[] = Object.freeze([
  ...rows.map(([number, multiplier]): AfsClass => {
    const { openingMm, olderMm } = astmSieves.find((row) => row.number === number)!;
    return Object.freeze({ label: `No. ${number}`, number, openingMm, multiplier, olderMm });
  }),
  pan,
]);

export const afsScheme: MultiplierScheme = Object.freeze({
  says: "US grain fineness number",
  classes: afsClasses,
});

/**
 * AFS grain fineness number of a sieving on the full stack: GFN = Σ P·M / Σ P.
 *
 * P: mass held by each sieve and the pan, grams or percent; M: its multiplier. 3 (all on No. 6) to 300 (all in
 * the pan). Refused with an issue where a sieve of the stack is missing and grains lie there; grainFineness
 * takes such a stack and gives the figure with its doubt.
 * Source: AFS grain fineness number, as in the Univ. of the Punjab lab report 2019 and the Giesserei-Lexikon.
 *
 *     Nos. 30 to 270 and pan with 0.1, 0.3, 1.3, 33.1, 50.1, 11.5, 1.7, 0.4, 0.5 %   // 69.12, "us"
 */
export function finenessByMultipliers(grading: Grading): Checked<{ gfn: number; scheme: "us" }> {
  const { value, issues } = meanMultiplier(grading, afsScheme);
  return value === undefined ? { issues } : { value: { gfn: value, scheme: "us" }, issues };
}
