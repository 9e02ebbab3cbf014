// Random sands of known grading, and the ways in which a home stack leaves sieves out.
// Ranges are our own, chosen to hold the gradings of the published tables and of the trade's usual words for them.

import { normalCumulative } from "../../lib/numbers/distributions.ts";
import { standardToleranceMm } from "../../lib/sand/sieve-tolerance.ts";
import type { Seeded } from "../seeded.ts";

export const sandKinds = [
  "one mode",
  "two modes",
  "gap-graded",
  "river",
  "crushed",
  "screened",
  "blend",
] as const;
export type SandKind = (typeof sandKinds)[number];

/** Share of the mass finer than an opening. */
export type Passing = (openingMm: number) => number;

export interface PlausibleSand {
  readonly kind: SandKind;
  readonly passing: Passing;
}

const phi = (mm: number): number => -Math.log2(mm);

/** Smooth mode in phi, with its coarse and its fine side of different width. */
function mode(middlePhi: number, coarseSd: number, fineSd: number): Passing {
  const fineShare = fineSd / (coarseSd + fineSd);
  return (mm) => {
    const z = phi(mm) - middlePhi;
    return z < 0
      ? 1 - 2 * (1 - fineShare) * normalCumulative(z / coarseSd)
      : 2 * fineShare * (1 - normalCumulative(z / fineSd));
  };
}

function mixed(parts: readonly (readonly [number, Passing])[]): Passing {
  const total = parts.reduce((all, [weight]) => all + weight, 0);
  return (mm) => parts.reduce((all, [weight, passing]) => all + weight * passing(mm), 0) / total;
}

/** Without the clay grade: nothing finer than 20 µm; nothing coarser than topMm. */
function cut(passing: Passing, topMm: number): Passing {
  const floor = passing(0.02);
  const roof = passing(topMm);
  return (mm) => (mm <= 0.02 ? 0 : mm >= topMm ? 1 : (passing(mm) - floor) / (roof - floor));
}

export function plausibleSand(random: Seeded, kind: SandKind = random.pick(sandKinds)): PlausibleSand {
  return { kind, passing: cut(makers[kind](random), random.pick([2, 3.35, 4.75])) };
}

const makers: { readonly [kind in SandKind]: (random: Seeded) => Passing } = {
  "one mode": (r) => oneMode(r),
  "two modes": (r) => {
    const first = r.uniform(0.9, 2.2);
    const share = r.uniform(0.2, 0.8);
    return mixed([
      [share, mode(first, r.uniform(0.25, 0.55), r.uniform(0.25, 0.55))],
      [1 - share, mode(first + r.uniform(0.7, 1.6), r.uniform(0.25, 0.6), r.uniform(0.25, 0.6))],
    ]);
  },
  "gap-graded": (r) => {
    const first = r.uniform(0.6, 1.5);
    const share = r.uniform(0.25, 0.75);
    return mixed([
      [share, mode(first, r.uniform(0.2, 0.35), r.uniform(0.2, 0.35))],
      [1 - share, mode(first + r.uniform(1.5, 2.3), r.uniform(0.2, 0.4), r.uniform(0.2, 0.4))],
    ]);
  },
  /** A main mode, a wider one about the same middle, and a little silt. */
  river: (r) => {
    const middle = r.uniform(1, 3);
    return mixed([
      [1, mode(middle, r.uniform(0.25, 0.5), r.uniform(0.25, 0.5))],
      [r.uniform(0.1, 0.7), mode(middle + r.uniform(-0.4, 0.4), r.uniform(0.7, 1.3), r.uniform(0.6, 1.2))],
      [r.uniform(0, 0.05), mode(4.4, 0.5, 0.5)],
    ]);
  },
  /** Rosin–Rammler–Sperling. */
  crushed: (r) => {
    const size = r.uniform(0.2, 0.9);
    const slope = r.uniform(0.9, 2.2);
    return (mm) => 1 - Math.exp(-((mm / size) ** slope));
  },
  /** A works sand cut between two screens that are not sharp. */
  screened: (r) => {
    const whole = oneMode(r, 0.5, 1.1);
    const coarse = r.uniform(0.35, 0.9);
    const fine = coarse / r.uniform(2.2, 5);
    const sharp = r.uniform(6, 25);
    return screened(whole, coarse, fine, sharp);
  },
  /** Three narrow sands tipped together. */
  blend: (r) => blend(r),
};

function blend(r: Seeded): Passing {
  return mixed(
    Array.from({ length: 3 }, () => {
      return [
        r.uniform(0.2, 1),
        mode(r.uniform(0.6, 3.4), r.uniform(0.15, 0.4), r.uniform(0.15, 0.4)),
      ] as const;
    }),
  );
}

function oneMode(r: Seeded, low = 0.3, high = 0.8): Passing {
  const width = r.uniform(low, high);
  const skew = r.uniform(-0.3, 0.4);
  return mode(r.uniform(1, 3.3), width * (1 - skew), width * (1 + skew));
}

function screened(whole: Passing, coarseMm: number, fineMm: number, sharp: number): Passing {
  const steps = 600;
  const from = Math.log(0.015);
  const step = (Math.log(6) - from) / steps;
  const kept = (mm: number): number =>
    1 / (1 + (mm / coarseMm) ** sharp) / (1 + (fineMm / mm) ** sharp) + 0.004;
  const cumulative = new Float64Array(steps + 1);
  for (let i = 1; i <= steps; i++) {
    const lower = Math.exp(from + (i - 1) * step);
    const upper = Math.exp(from + i * step);
    cumulative[i] = cumulative[i - 1]! + (whole(upper) - whole(lower)) * kept(Math.sqrt(lower * upper));
  }
  return (mm) => {
    const at = Math.min(Math.max((Math.log(mm) - from) / step, 0), steps - 1e-9);
    const i = Math.floor(at);
    const value = cumulative[i]! + (at - i) * (cumulative[i + 1]! - cumulative[i]!);
    return value / cumulative[steps]!;
  };
}

/** Openings of the eleven sieves that the fineness number is made for (ASTM E11). */
export const elevenMm = [3.35, 1.7, 0.85, 0.6, 0.425, 0.3, 0.212, 0.15, 0.106, 0.075, 0.053] as const;

const otherStacks: readonly (readonly number[])[] = [
  [1.4, 1, 0.71, 0.5, 0.355, 0.25, 0.18, 0.125, 0.09, 0.063],
  [1, 0.5, 0.25, 0.125, 0.063],
  [2, 0.85, 0.425, 0.25, 0.15, 0.075],
  [0.85, 0.425, 0.25, 0.15, 0.075],
  [0.6, 0.3, 0.15, 0.075],
  [0.85, 0.425, 0.212, 0.106, 0.053],
  [0.425, 0.212, 0.106],
  [0.5, 0.355, 0.25, 0.18, 0.125, 0.09],
];

/** A home stack: some of the eleven, or one of the stacks that shops sell, or cloth of odd openings. */
export function homeStack(random: Seeded): number[] {
  const way = random.uniform();
  if (way < 0.5) {
    const count = random.integer(3, 9);
    return random
      .shuffle(elevenMm)
      .slice(0, count)
      .sort((a, b) => b - a);
  }
  if (way < 0.8) return [...random.pick(otherStacks)];
  const count = random.integer(4, 7);
  const top = random.uniform(0.5, 1.2);
  const ratio = random.uniform(1.4, 2);
  return Array.from({ length: count }, (_, i) => top / ratio ** i).filter((mm) => mm > 0.045);
}

/**
 * The sand as a bought set of sieves sees it: each of the eleven anywhere within its tolerance, those that the founder
 * lacks as well; so is every published sieving that is thinned. Only for stacks that are some of the eleven, where the
 * sieves at hand are off in the full stack's number alike; on others that is in the ± of the openings, not in this one.
 */
export function asBought(random: Seeded, passing: Passing, openingsMm: readonly number[]): Passing {
  const own = new Map<number, number>(
    elevenMm.map((mm) => [mm, mm + random.uniform(-1, 1) * standardToleranceMm(mm)]),
  );
  return openingsMm.every((mm) => own.has(mm)) ? (mm) => passing(own.get(mm) ?? mm) : passing;
}

/** Grams per 100 held on each opening, coarse to fine, then the pan. */
export function sievedShares(passing: Passing, openingsMm: readonly number[]): number[] {
  const through = [1, ...openingsMm.map((mm) => passing(mm)), 0];
  return through.slice(1).map((value, i) => 100 * Math.max(0, through[i]! - value));
}
