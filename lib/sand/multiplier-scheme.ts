// A scheme that turns a sieving into one figure: a multiplier for each of its own classes, and a mean by mass.

import type { Checked } from "../issue.ts";
import { sum } from "../numbers/sum.ts";
import type { Fraction, Grading } from "./grading.ts";
import { noMultiplier, schemeSievesMissing } from "./grading-issues.ts";
import { sameSieve } from "./same-sieve.ts";

export interface MultiplierClass {
  /** The sieve that holds the class, or "pan". */
  readonly label: string;
  /** 0 for the pan. */
  readonly openingMm: number;
  /** Undefined: the scheme has none, since nothing is meant to lie there. */
  readonly multiplier?: number;
}

export interface MultiplierScheme {
  /** In words, for messages: "US grain fineness number". */
  readonly says: string;
  /** Coarse to fine, the pan last. */
  readonly classes: readonly MultiplierClass[];
}

const isOwn = (fraction: Fraction, { openingMm }: MultiplierClass) =>
  fraction.sieve?.series !== "cloth" && sameSieve(fraction.openingMm, openingMm);

/** The class that grains held at this opening belong to: the next one of the scheme at or below it. */
function classOf(openingMm: number, classes: readonly MultiplierClass[]): number {
  return classes.findIndex((c) => c.openingMm <= openingMm || sameSieve(c.openingMm, openingMm));
}

/**
 * Masses in the scheme's classes, and the sieves whose lack leaves a class unknown.
 *
 * Nothing is assumed. A sieve between two of the scheme's adds to the next finer one, which would have held its
 * grains. A sieve of the scheme that was not used does not matter where the next finer one held nothing, since
 * grains of its class would lie there; everywhere else it is missing.
 */
function classMasses(
  grading: Grading,
  scheme: MultiplierScheme,
): { masses: readonly number[]; missing: readonly string[] } {
  const { classes } = scheme;
  const missing = classes.filter((own) => {
    if (grading.fractions.some((fraction) => isOwn(fraction, own))) return false;
    const nextFiner = grading.fractions.find(({ openingMm }) => openingMm < own.openingMm);
    return nextFiner === undefined || nextFiner.mass > 0;
  });
  const masses = classes.map((_, k) =>
    sum(
      grading.fractions.filter(({ openingMm }) => classOf(openingMm, classes) === k).map(({ mass }) => mass),
    ),
  );
  return { masses, missing: missing.map(({ label }) => label) };
}

/**
 * Mean multiplier by mass, Σ P·M / Σ P: P the mass retained in a class, in grams or percent, M its multiplier.
 *
 * Refused, with an issue and no figure, where a sieve of the scheme is missing (see classMasses) or where a
 * class without a multiplier holds grains. Divides by the sum retained, never by 100: washed-out clay is not
 * in it.
 */
export function meanMultiplier(grading: Grading, scheme: MultiplierScheme): Checked<number> {
  const { masses, missing } = classMasses(grading, scheme);
  if (missing.length > 0) return { issues: [schemeSievesMissing(scheme.says, missing)] };
  const without = scheme.classes.find((c, k) => c.multiplier === undefined && masses[k]! > 0);
  if (without) return { issues: [noMultiplier(scheme.says, without.label)] };
  const products = scheme.classes.map(({ multiplier }, k) => masses[k]! * (multiplier ?? 0));
  return { value: sum(products) / grading.total, issues: [] };
}
