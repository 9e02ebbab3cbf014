// The gaps of a home stack: fractions that hold grains of several classes of the fineness number.

import type { Fraction, Grading } from "./grading.ts";
import { afsClasses } from "./multipliers.ts";
import { sameSieve } from "./same-sieve.ts";

/** One fraction, between the sieve that held it and the one above. */
export interface Gap {
  readonly fraction: Fraction;
  /** Of the sum retained, 0 to 1. */
  readonly share: number;
  readonly place: "top" | "between" | "pan";
  /** Opening of the sieve above; infinite for the top one. */
  readonly upperMm: number;
  /** Opening of its own sieve; 0 for the pan. */
  readonly lowerMm: number;
  /** Openings of the missing sieves inside, coarse to fine. */
  readonly cutsMm: readonly number[];
  /** Multipliers of the classes that the missing sieves would part, coarse to fine: one more than cutsMm. */
  readonly multipliers: readonly number[];
}

/** Each fraction of a grading as a gap; one without missing sieves inside has a single multiplier. */
export function gapsOf(grading: Grading): readonly Gap[] {
  const { fractions, total } = grading;
  return fractions.map((fraction, k) => {
    const isPan = fraction.openingMm === 0;
    const upperMm = k === 0 ? Number.POSITIVE_INFINITY : fractions[k - 1]!.openingMm;
    const lowerMm = fraction.openingMm;
    const cutsMm = afsClasses
      .map(({ openingMm }) => openingMm)
      .filter((mm) => mm > lowerMm && mm < upperMm && !sameSieve(mm, lowerMm) && !sameSieve(mm, upperMm));
    return {
      fraction,
      share: fraction.mass / total,
      place: isPan ? "pan" : k === 0 ? "top" : "between",
      upperMm,
      lowerMm,
      cutsMm,
      multipliers: multipliersBetween([...cutsMm, lowerMm]),
    };
  });
}

/** The multiplier of each piece, by the finer end of the piece: that of the finest class that begins at or above it. */
function multipliersBetween(lowerEnds: readonly number[]): readonly number[] {
  return lowerEnds.map((lowerMm) => {
    const own = afsClasses.find(({ openingMm }) => openingMm <= lowerMm || sameSieve(openingMm, lowerMm));
    return (own ?? afsClasses.at(-1)!).multiplier;
  });
}
