// What one sieving holds, coarse to fine: the form in which every grain model takes it.

import type { Sieve } from "./sieve.ts";

export interface Fraction {
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
