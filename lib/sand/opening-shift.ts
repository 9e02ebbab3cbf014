// What the tolerance of a sieve's opening does to the fineness number.

import { type Grading, gradingOf, type Held } from "./grading.ts";
import { stackNumber } from "./home-stack.ts";
import type { Sieve } from "./sieve.ts";

export interface OpeningShift {
  readonly sieve: Sieve;
  /** As the founder knows it: "0.25 mm" is No. 60. */
  readonly label: string;
  /** By how much the number moves when the sieve's true opening is a whole tolerance wider than its label says. */
  readonly shift: number;
}

/**
 * For each sieve of a grading, half of GFN(opening + tolerance) − GFN(opening − tolerance): the masses stay, the
 * sieve that held them is taken as slightly wider or finer, and the number is worked out anew along the curve.
 * 0 where the stack is too poor for a curve. Tolerances wider than half of the way to the neighbour are cut.
 * Tolerance: of the average opening, ASTM E11; of cloth, from its count and wire.
 */
export function openingShifts(grading: Grading): readonly OpeningShift[] {
  return grading.fractions.flatMap(({ sieve, label }, k) => {
    if (!sieve) return [];
    const wider = numberWith(grading, k, 1);
    const finer = numberWith(grading, k, -1);
    return [{ sieve, label, shift: wider === undefined || finer === undefined ? 0 : (wider - finer) / 2 }];
  });
}

function numberWith({ fractions }: Grading, k: number, sign: 1 | -1): number | undefined {
  const here = fractions[k]!.openingMm;
  const beside = fractions[k - sign]?.openingMm;
  const room = beside === undefined || beside === 0 ? here / 2 : Math.abs(beside - here) / 2;
  const openingMm = here + sign * Math.min(room, fractions[k]!.sieve!.toleranceMm);
  const held = fractions.map(({ label, sieve, mass }, i): Held => {
    if (!sieve) return { label, mass };
    return { label, mass, sieve: i === k ? { ...sieve, openingMm } : sieve };
  });
  return stackNumber(gradingOf(held));
}
