// How many screens a sand stands on.

import type { Issue } from "../issue.ts";
import { gradingCurve } from "./curve.ts";
import type { Fraction, Grading } from "./grading.ts";
import { notWholeAfsStack } from "./grain-issues.ts";

export interface Screens {
  /** Length of the longest run of adjacent sieves that each hold the least share or more: 3 for a three-screen sand. */
  readonly count: number;
  /** The sieves of that run, coarse to fine. */
  readonly labels: readonly string[];
  /** % of the sand on that run. */
  readonly sharePercent: number;
  /** Sieves outside the run that also hold the least share or more. */
  readonly apart: readonly string[];
  /** True if the sieves from the first to the last main one are the AFS sieves, none left out, none between. */
  readonly afs: boolean;
  readonly issues: readonly Issue[];
}

/** Numbers of the AFS stack, coarse to fine. */
const AFS_NUMBERS = [6, 12, 20, 30, 40, 50, 70, 100, 140, 200, 270];

function afsPlace({ sieve }: Fraction): number {
  return sieve?.series === "astm" && sieve.number !== undefined ? AFS_NUMBERS.indexOf(sieve.number) : -1;
}

/**
 * Screen count: the longest run of adjacent AFS sieves that each hold at least 10 % of the sand.
 * Of two equal runs the one that holds more. The pan is no screen. Shares are % of the sand retained.
 * On other stacks the run is counted on the sieves that were used, afs is false, and an issue says so.
 *
 * leastPercent: above 0, up to 100, else RangeError.
 * Source: AFS usage, from memory.
 * @example
 * screens(readGrading({ "No. 30": 0.1, "No. 40": 0.3, "No. 50": 1.3, "No. 70": 33.1,
 *  "No. 100": 50.1, "No. 140": 11.5, "No. 200": 1.7, "No. 270": 0.4, pan: 0.5 }).value!)
 * // { count: 3, labels: ["No. 70", "No. 100", "No. 140"] }
 */
export function screens(grading: Grading, leastPercent = 10): Screens {
  if (!(leastPercent > 0 && leastPercent <= 100))
    throw new RangeError(`screens: leastPercent must be above 0 and up to 100, got ${leastPercent}`);
  const sieves = grading.fractions.filter((fraction) => fraction.openingMm > 0);
  const share = new Map(gradingCurve(grading).points.map((point) => [point.label, point.retainedPercent]));
  const percent = (run: readonly Fraction[]): number =>
    run.reduce((sum, { label }) => sum + share.get(label)!, 0);

  let best: Fraction[] = [];
  let run: Fraction[] = [];
  for (const sieve of sieves) {
    run = percent([sieve]) >= leastPercent - 1e-9 ? [...run, sieve] : [];
    if (run.length > best.length || (run.length === best.length && percent(run) > percent(best))) best = run;
  }
  const main = sieves.filter((sieve) => percent([sieve]) >= leastPercent - 1e-9);
  const stretch = sieves.slice(sieves.indexOf(main[0]!), sieves.indexOf(main.at(-1)!) + 1);
  const fault = main.length > 0 ? afsFault(stretch) : undefined;
  return {
    count: best.length,
    labels: best.map(({ label }) => label),
    sharePercent: percent(best),
    apart: main.filter((sieve) => !best.includes(sieve)).map(({ label }) => label),
    afs: fault === undefined,
    issues: fault === undefined ? [] : [notWholeAfsStack(fault)],
  };
}

function afsFault(stretch: readonly Fraction[]): string | undefined {
  const stranger = stretch.find((sieve) => afsPlace(sieve) < 0);
  if (stranger) return `${stranger.label} is not one of them`;
  const first = afsPlace(stretch[0]!);
  const missing = AFS_NUMBERS.slice(first, afsPlace(stretch.at(-1)!) + 1).filter(
    (number) => !stretch.some((sieve) => sieve.sieve?.number === number),
  );
  return missing.length > 0 ? `No. ${missing.join(", No. ")} is missing` : undefined;
}
