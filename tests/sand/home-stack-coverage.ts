// How often the likely interval of a home stack holds the number that the full stack would have given.

import { gradingOf } from "../../lib/sand/grading.ts";
import { homeStack, likelyFineness } from "../../lib/sand/home-stack.ts";
import { afsClasses } from "../../lib/sand/multipliers.ts";
import { standardSieve } from "../../lib/sand/sieve-table.ts";
import { seeded } from "../seeded.ts";
import {
  asBought,
  elevenMm,
  homeStack as homeOpenings,
  type Passing,
  plausibleSand,
  sievedShares,
} from "./plausible-sands.ts";

export interface Trial {
  readonly kind: string;
  readonly sieves: number;
  readonly truth: number;
  readonly gfn: number;
  readonly low: number;
  readonly high: number;
  readonly possible: { readonly low: number; readonly high: number };
}

export function gradingOfShares(openingsMm: readonly number[], shares: readonly number[]) {
  return gradingOf(
    shares.map((mass, k) => {
      const mm = openingsMm[k];
      if (mm === undefined) return { label: "pan", mass };
      const sieve = standardSieve(mm)?.sieve ?? {
        label: `${mm} mm`,
        series: "cloth",
        openingMm: mm,
        toleranceMm: 0,
      };
      return { label: sieve.label, sieve, mass };
    }),
  );
}

/** Σ share × multiplier over the eleven sieves and the pan; shares in percent. */
export function trueFineness(passing: Passing): number {
  return sievedShares(passing, elevenMm).reduce(
    (all, p, k) => all + (p * afsClasses[k]!.multiplier) / 100,
    0,
  );
}

/** One sand on one stack; undefined where the library gives nothing likely. */
export function tryStack(
  kind: string,
  passing: Passing,
  openingsMm: readonly number[],
  truth: number,
  draws = 512,
): Trial | undefined {
  const shares = sievedShares(passing, openingsMm);
  const stack = homeStack(gradingOfShares(openingsMm, shares));
  const likely = likelyFineness(stack, draws);
  if (!likely) return undefined;
  const { gfn, possible } = stack;
  return { kind, sieves: openingsMm.length, truth, gfn, low: likely.low, high: likely.high, possible };
}

export function randomTrials(count: number, seed: number): { trials: Trial[]; refused: number } {
  const random = seeded(seed);
  const trials: Trial[] = [];
  let refused = 0;
  for (let n = 0; n < count; n++) {
    const { kind, passing: sand } = plausibleSand(random);
    const openings = homeOpenings(random);
    const passing = asBought(random, sand, openings);
    const trial = tryStack(kind, passing, openings, trueFineness(passing));
    if (trial) trials.push(trial);
    else refused++;
  }
  return { trials, refused };
}

/** Half of the last digit that a fineness number is ever printed with. */
const slack = 0.05;
const covers = ({ low, high, truth }: Trial): boolean => truth >= low - slack && truth <= high + slack;

export interface Summary {
  readonly count: number;
  readonly coverPercent: number;
  /** Median full width, % of the number. */
  readonly widthPercent: number;
  readonly possibleWidthPercent: number;
}

export function summarise(trials: readonly Trial[]): Summary {
  const median = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
  return {
    count: trials.length,
    coverPercent: (100 * trials.filter(covers).length) / trials.length,
    widthPercent: median(trials.map((t) => (100 * (t.high - t.low)) / t.truth)),
    possibleWidthPercent: median(trials.map((t) => (100 * (t.possible.high - t.possible.low)) / t.truth)),
  };
}
