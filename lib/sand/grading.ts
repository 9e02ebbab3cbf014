// What one sieving holds, coarse to fine: the form in which every grain model takes it.

import { invariant } from "../issue.ts";
import { sum } from "../numbers/sum.ts";
import type { Sieve } from "./sieve.ts";

export interface Fraction {
  /** As typed. */
  readonly label: string;
  /** Undefined for the pan. */
  readonly sieve?: Sieve;
  /** Opening of the sieve that held it; 0 for the pan. */
  readonly openingMm: number;
  /** Grams or percent: any one unit for the whole grading. */
  readonly mass: number;
}

export interface Grading {
  /** Strictly coarse to fine; the pan, if there is one, last. */
  readonly fractions: readonly Fraction[];
  /** Compensated sum of the masses; what every share is divided by. */
  readonly total: number;
  readonly hasPan: boolean;
}

/** What one sieve or the pan (sieve left out) held. */
export interface Held {
  readonly label: string;
  readonly sieve?: Sieve;
  readonly mass: number;
}

/**
 * Builds a grading from sieves that are read already, in any order. Masses: finite, 0 or above, not all 0, in
 * one unit; openings all different. Anything else throws: what a founder typed is checked by readGrading.
 * @example
 * gradingOf([{ label: "a", mass: 3, sieve: readSieveLabel("No. 50").value as Sieve }, { label: "pan", mass: 1 }]).total
 * // 4
 */
export function gradingOf(held: readonly Held[]): Grading {
  const fractions = held
    .map((one): Fraction => Object.freeze({ ...one, openingMm: one.sieve?.openingMm ?? 0 }))
    .sort((a, b) => b.openingMm - a.openingMm);
  fractions.forEach(({ label, mass, openingMm }, k) => {
    invariant(Number.isFinite(mass) && mass >= 0, `The mass on "${label}" must be 0 or above, not ${mass}.`);
    invariant(k === 0 || openingMm < fractions[k - 1]!.openingMm, `"${label}" stands twice in a grading.`);
  });
  const total = sum(fractions.map(({ mass }) => mass));
  invariant(
    total > 0 && Number.isFinite(total),
    "A grading must hold something, and not more than a number can be.",
  );
  return Object.freeze({
    fractions: Object.freeze(fractions),
    total,
    hasPan: fractions.at(-1)?.openingMm === 0,
  });
}
