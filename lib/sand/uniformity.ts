// German measures of a foundry sand: mean grain size MK and degree of uniformity GG.

import type { Issue } from "../issue.ts";
import { type Curve, passingAtPercent, sizeAtPassing } from "./curve.ts";

export interface Uniformity {
  /** Mean grain size MK: the opening that half of the clay-free sand passes, mm. */
  readonly mkMm: number | undefined;
  /** Degree of uniformity GG: % of the sand from 2/3 to 4/3 of MK. */
  readonly ggPercent: number | undefined;
  readonly issues: readonly Issue[];
}

/**
 * MK = size at 50 % passing; GG = % passing 4/3·MK − % passing 2/3·MK.
 * The curve is straight over ln d between the sieves. Where the stack does not reach, undefined and an issue;
 * GG needs sieves at or beyond both limits (or an empty coarsest sieve, an empty pan).
 * Source: Giesserei-Lexikon, "Gleichmäßigkeitsgrad" and "Siebanalyse".
 * @example
 * uniformity(gradingCurve(readGrading({ "0.425 mm": 0, "0.300 mm": 25, "0.212 mm": 50, "0.150 mm": 25, pan: 0 }).value!))
 * // { mkMm: 0.252, ggPercent: 74.9 }
 */
export function uniformity(curve: Curve): Uniformity {
  const mk = sizeAtPassing(curve, 50);
  if (mk.value === undefined) return { mkMm: undefined, ggPercent: undefined, issues: mk.issues };
  const coarse = passingAtPercent(curve, (4 / 3) * mk.value);
  const fine = passingAtPercent(curve, (2 / 3) * mk.value);
  return {
    mkMm: mk.value,
    ggPercent: coarse.value === undefined || fine.value === undefined ? undefined : coarse.value - fine.value,
    issues: [...coarse.issues, ...fine.issues],
  };
}
