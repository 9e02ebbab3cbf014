// The fineness number by the old British mesh: its own stack, its own multipliers.

import type { Checked } from "../issue.ts";
import type { Grading } from "./grading.ts";
import { type MultiplierClass, type MultiplierScheme, meanMultiplier } from "./multiplier-scheme.ts";
import { britishSieves } from "./sieve-table-british.ts";

const numbers = [10, 16, 22, 30, 44, 60, 100, 150, 200] as const;

// Each multiplier is the number of the next coarser sieve of the stack; the coarsest has none.
const classes: readonly MultiplierClass[] = Object.freeze([
  ...numbers.map((number, k): MultiplierClass => {
    const { openingMm } = britishSieves.find((row) => row.number === number)!;
    const coarser = numbers[k - 1];
    const label = `BS ${number}`;
    return Object.freeze(
      coarser === undefined ? { label, openingMm } : { label, openingMm, multiplier: coarser },
    );
  }),
  Object.freeze({ label: "pan", openingMm: 0, multiplier: 200 }),
]);

const britishScheme: MultiplierScheme = Object.freeze({
  says: "fineness number by British mesh",
  classes,
});

/**
 * Grain fineness number by the British mesh sieves: Σ P·M / Σ P, M the number of the next coarser sieve of the
 * stack BS 10, 16, 22, 30, 44, 60, 100, 150, 200 and pan.
 *
 * P: grams or percent. 10 (all on BS 16) to 200 (all in the pan). A sieve of the same opening serves (No. 60
 * for BS 60). Refused with an issue where the stack is not the scheme's own, or where BS 10 holds grains.
 * Near the US number for common foundry sands, but another scheme: the two are never mixed.
 * Source: Brown (ed.), Foseco Foundryman's Handbook, 10th ed. 1994 (from memory).
 *
 *     BS 22 to 200 and pan with 0.2, 0.8, 6.7, 22.6, 48.3, 15.6, 1.8, 4.0 %   // 67.4, "british mesh"
 */
export function britishFineness(grading: Grading): Checked<{ gfn: number; scheme: "british mesh" }> {
  const { value, issues } = meanMultiplier(grading, britishScheme);
  return value === undefined ? { issues } : { value: { gfn: value, scheme: "british mesh" }, issues };
}
