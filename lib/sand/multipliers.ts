// The AFS multipliers.

import type { MultiplierClass } from "./multiplier-scheme.ts";
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
