// What a simulated founder measures with: scales, rulers, sieves and tubes, each with an error of its own that stays.

import { standardSieve } from "../../lib/sand/sieve-table.ts";
import { standardToleranceMm } from "../../lib/sand/sieve-tolerance.ts";
import type { Seeded } from "../seeded.ts";

export interface FoundersScale {
  readonly name: string;
  /** Its line of the log. */
  readonly line: string;
  /** What is read of a net mass, g, as typed. */
  readonly weigh: (trueG: number) => string;
  /** What it is off by at a load, g: the same every time. */
  readonly errorG: (trueG: number) => number;
}

export interface ScaleKind {
  readonly stepG: number;
  readonly withinG: number;
  readonly capacityG: number;
  /** Off by the same at every load, as one whose pointer stands beside its zero. */
  readonly flat?: boolean;
}

/** A scale that was checked: off by no more than within up to its capacity, and in proportion: a vessel weighed first takes most of the rest away. */
export function foundersScale(
  random: Seeded,
  name: string,
  { stepG, withinG, capacityG, flat = false }: ScaleKind,
): FoundersScale {
  const off = withinG * random.uniform(-1, 1);
  const digits = Math.max(0, Math.ceil(-Math.log10(stepG) - 1e-9));
  const errorG = (trueG: number): number => (flat ? off : off * (0.1 + (0.9 * trueG) / capacityG));
  return {
    name,
    errorG,
    line: `  ${name}: { reads to: ${stepG} g, within: ${withinG} g }`,
    weigh: (trueG) => {
      // With a vessel first and then with its load: two roundings.
      const vessel = random.uniform(0, 1);
      const steps = Math.round(vessel + (trueG + errorG(trueG)) / stepG) - Math.round(vessel);
      return (steps * stepG).toFixed(digits);
    },
  };
}

/** A length between two ends, each read to the nearest step of a ruler, mm. */
export function readLengthMm(random: Seeded, trueMm: number, stepMm: number): number {
  const from = random.uniform(0, 1);
  return stepMm * (Math.round(from + trueMm / stepMm) - Math.round(from));
}

export interface FoundersSieves {
  readonly name: string;
  readonly line: string;
  readonly labels: readonly string[];
  readonly nominalMm: readonly number[];
  /** The average openings that they truly have. */
  readonly realMm: readonly number[];
}

/** Sieves of the standard's openings, each anywhere in its tolerance; in a third of it where the set was checked. */
export function foundersSieves(
  random: Seeded,
  name: string,
  openingsMm: readonly number[],
  checked = false,
): FoundersSieves {
  return {
    name,
    line: `  ${name}: { frame: 200 mm, checked: ${checked ? "yes" : "no"} }`,
    labels: openingsMm.map((mm) => standardSieve(mm)!.sieve.label),
    nominalMm: openingsMm,
    realMm: openingsMm.map(
      (mm) => mm + (random.uniform(-1, 1) * standardToleranceMm(mm)) / (checked ? 3 : 1),
    ),
  };
}

/** A bore that is written down to a whole half millimetre and is off by no more than 0.2 mm: a tube bought by its name. */
export function foundersBore(random: Seeded, nominalMm: number): number {
  return nominalMm + random.uniform(-0.2, 0.2);
}
