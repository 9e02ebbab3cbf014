// The average grain size by ISO sieves: a mean by mass of one size for each class.

import type { Issue } from "../issue.ts";
import { type MultiplierClass, type MultiplierScheme, meanMultiplier } from "./multiplier-scheme.ts";
import { readGrading } from "./read-grading.ts";

// Opening and size of the class, both µm.
const rows = [
  [710, 1180],
  [500, 600],
  [355, 425],
  [250, 300],
  [212, 212],
  [180, 212],
  [150, 150],
  [125, 150],
  [90, 106],
  [63, 75],
  [0, 38],
] as const;

const classes: readonly MultiplierClass[] = rows.map(([um, multiplier]) =>
  Object.freeze({ label: um === 0 ? "pan" : `${um} µm`, openingMm: um / 1000, multiplier }),
);

export const averageSizeScheme: MultiplierScheme = Object.freeze({
  says: "average grain size by ISO sieves",
  classes: Object.freeze(classes),
});

export interface SievedBySize {
  readonly retained: Readonly<Record<string, number>>;
}

export interface AverageGrainSize {
  /** Null where the stack is not the scheme's own; the issues say which sieves are missing. */
  readonly averageUm: number | null;
  readonly scheme: "iso average size";
  readonly issues: readonly Issue[];
}

/**
 * Average grain size of a sand by ISO sieves, with what is wrong: AGS = Σ P·M / Σ P, a plain mean by mass.
 *
 * retained: mass by sieve label, grams or percent, on the ISO stack 710, 500, 355, 250, 212, 180, 150, 125, 90,
 * 63 µm and the pan; coarser sieves add to 710 µm and finer ones to the pan. M: the scheme's own size for each
 * class, so the figure lies between 38 and 1180 µm. On any other stack no figure is given.
 * It weighs coarse grains most, as the fineness number weighs fines; neither follows from the other.
 * Source: Brown (ed.), Foseco Foundryman's Handbook, 10th ed. 1994 and its successors (from memory).
 *
 *     averageGrainSize({ retained: { "500 µm": 1, "250 µm": 9, pan: 0 } }).issues[0]?.about   // "710 µm, 355 µm"
 */
export function averageGrainSize({ retained }: SievedBySize): AverageGrainSize {
  const read = readGrading(retained);
  const figure = read.value && meanMultiplier(read.value, averageSizeScheme);
  const issues = Object.freeze([...read.issues, ...(figure?.issues ?? [])]);
  return Object.freeze({ averageUm: figure?.value ?? null, scheme: "iso average size", issues });
}

/**
 * Average grain size of a sand by ISO sieves, µm: the number of averageGrainSize, whose equation and stack it has.
 * Undefined where that gives none; its issues say why. Source: that of averageGrainSize.
 *
 *     averageGrainSizeUm({ retained: { "710 µm": 0, "500 µm": 0.3, "355 µm": 1.9, "250 µm": 17.2, "212 µm": 25.3,
 *       "180 µm": 16.7, "150 µm": 19.2, "125 µm": 10.6, "90 µm": 6.5, "63 µm": 1.4, pan: 0.5 } })   // 204.2
 */
export function averageGrainSizeUm(sand: SievedBySize): number | undefined {
  return averageGrainSize(sand).averageUm ?? undefined;
}
