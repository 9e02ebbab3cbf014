// Which missing sieve would narrow the fineness number most.

import { gapsOf } from "./gap.ts";
import { type Grading, gradingOf } from "./grading.ts";
import { homeStack, likelyFineness } from "./home-stack.ts";
import { afsClasses } from "./multipliers.ts";
import { type PassingPoint, probitCurve } from "./probit-curve.ts";
import { astmSieve } from "./sieve-table.ts";

export interface NextSieve {
  /** "No. 70" */
  readonly label: string;
  /** Full width of the likely range with this sieve added, as far as the present curve can tell. */
  readonly width: number;
  /** Full width now. */
  readonly widthNow: number;
}

/**
 * The sieves of the fineness number that the stack lacks, best first: each is put in with the mass that the
 * present curve expects on it, and the likely range is worked out again. Empty where no sand lies in a gap, or
 * where nothing likely can be said of the stack.
 * draws: 1,024 are enough to rank them.
 * Source: our own, by the likely range of grainFineness.
 * @example nextSieves(readGrading({ "No. 40": 10, "No. 100": 80, pan: 10 }).value!).length > 0 // true
 */
export function nextSieves(grading: Grading, draws = 1024): readonly NextSieve[] {
  const now = homeStack(grading);
  const curve = probitCurve(pointsOfGrading(grading));
  const likely = likelyFineness(now, draws);
  if (!curve || !likely || !now.estimated) return [];
  const widthNow = likely.high - likely.low;
  const found = gapsOf(grading).flatMap(({ share, cutsMm }) => (share > 0 ? cutsMm : []));
  return found
    .flatMap((openingMm): NextSieve[] => {
      const then = likelyFineness(homeStack(withSieve(grading, openingMm, curve(openingMm))), draws);
      const label = afsClasses.find((one) => one.openingMm === openingMm)!.label;
      return then ? [{ label, width: then.high - then.low, widthNow }] : [];
    })
    .sort((a, b) => a.width - b.width);
}

function pointsOfGrading({ fractions, total }: Grading): readonly PassingPoint[] {
  let held = 0;
  return fractions.flatMap(({ openingMm, mass }) => {
    held += mass;
    return openingMm > 0 ? [{ openingMm, passing: Math.max(0, 1 - held / total) }] : [];
  });
}

/** The grading with one more sieve, which takes its part of the fraction that it divides. */
function withSieve(grading: Grading, openingMm: number, passing: number): Grading {
  const { fractions, total } = grading;
  const label = afsClasses.find((one) => one.openingMm === openingMm)!;
  const sieve = astmSieve(label.number!)!;
  const k = fractions.findIndex((fraction) => fraction.openingMm < openingMm);
  const coarser = fractions.slice(0, k).reduce((all, { mass }) => all + mass, 0);
  const own = fractions[k]!;
  const taken = Math.min(own.mass, Math.max(0, (1 - passing) * total - coarser));
  return gradingOf([
    ...fractions.slice(0, k),
    { label: label.label, sieve, mass: taken },
    { ...own, mass: own.mass - taken },
    ...fractions.slice(k + 1),
  ]);
}
