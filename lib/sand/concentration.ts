// Concentration: the best share of the sand on a few consecutive sieves.

import { gradingCurve } from "./curve.ts";
import type { Grading } from "./grading.ts";

export interface Concentration {
  /** % of the sand on these sieves. */
  readonly sharePercent: number;
  /** The sieves, coarse to fine. */
  readonly labels: readonly string[];
}

/**
 * Greatest share of the sand, %, that any so many consecutive sieves of the stack hold; of equal ones the coarsest.
 * The pan is no sieve. Undefined if the stack has fewer sieves.
 * On sieves that are not the AFS ones the figure depends on the stack and must be quoted with it.
 *
 * sieves: whole, ≥ 1, else RangeError; three and four are quoted.
 * Source: ABIFA 2019, Fundição & Matérias-Primas, on recommendation CEMP-081 (three sieves); "bulk on four
 * consecutive sieves", abstract of a thesis on Osara and Jamata sands.
 * @example
 * concentration(readGrading({ "No. 30": 0.1, "No. 40": 0.3, "No. 50": 1.3, "No. 70": 33.1,
 *  "No. 100": 50.1, "No. 140": 11.5, "No. 200": 1.7, "No. 270": 0.4, pan: 0.5 }).value!, 3)?.sharePercent
 * // 95.7
 */
export function concentration(grading: Grading, sieves = 3): Concentration | undefined {
  if (!(Number.isInteger(sieves) && sieves >= 1))
    throw new RangeError(`concentration: sieves must be a whole number from 1, got ${sieves}`);
  const { points } = gradingCurve(grading);
  let best: Concentration | undefined;
  for (let start = 0; start + sieves <= points.length; start++) {
    const run = points.slice(start, start + sieves);
    const sharePercent = run.reduce((sum, point) => sum + point.retainedPercent, 0);
    if (!best || sharePercent > best.sharePercent)
      best = { sharePercent, labels: run.map(({ label }) => label) };
  }
  return best;
}
