// The fineness number of a sand with its budget of doubt, from one sieving or from repeats.

import { invariant } from "../issue.ts";
import { lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import { isSpread, type Spread } from "../quantity/spread.ts";
import { constant, linear, shifted, without } from "../quantity/spread-of.ts";
import { type Grading, gradingOf } from "./grading.ts";
import { type HomeStack, homeStack, multiplierSpread } from "./home-stack.ts";
import { openingShifts } from "./opening-shift.ts";
import { repeatScatter } from "./repeats.ts";
import type { Sieve } from "./sieve.ts";

/** One sieving: what each sieve and the pan held, in grams or percent. */
export interface SievedPortion {
  /** Unique and lasting: from the sand's name, the date and the portion. */
  readonly id: string;
  readonly held: readonly {
    readonly label: string;
    readonly sieve?: Sieve;
    /** A spread where the scale's doubt is known. */
    readonly mass: Spread | number;
  }[];
  /** Name of the sieve set: portions sieved on one set share the doubt of its openings. */
  readonly set?: string;
  /** The set was compared with a certified one: its openings are taken to a third of the tolerance, our own. */
  readonly setChecked?: boolean;
  /** The scale was never checked with known weights, so its bias is not in the masses' doubt. */
  readonly scaleUnchecked?: boolean;
  /** Start mass less the sum retained, in the unit of the masses; 0 or less: no loss. */
  readonly loss?: number;
}

export interface FinenessQuestion {
  /** Whose fineness: names the sources that belong to this sand alone. */
  readonly name: string;
  readonly portions: readonly SievedPortion[];
  /** What the portions are repeats of. */
  readonly repeatOf?: "split" | "grab";
  /** Scatter of one sieving as learnt from other sands' repeats; stands in where this sand has too few. */
  readonly pooled?: { readonly sd: number; readonly degreesOfFreedom: number; readonly of: "split" | "grab" };
}

/** What the ± does not hold, so that it is "at least". */
export type MissingDoubt = "weighing" | "scale" | "repeats" | "grabs";

export interface FinenessFigure {
  readonly figure: Figure;
  /** Parts that are not in the ±. Empty: the ± is whole. */
  readonly missing: readonly MissingDoubt[];
  /** One for each portion. */
  readonly stacks: readonly HomeStack[];
  /** The number of each portion by itself. */
  readonly each: readonly number[];
  readonly scatter?: { readonly sd: number; readonly degreesOfFreedom: number; readonly pooled: boolean };
}

/**
 * GFN = mean over the portions of Σ mass × multiplier / Σ mass, with
 * reading: each weighing (only where no scatter stands: it is in the scatter between sievings);
 * rig: the scale's bias, and the opening of each sieve within its tolerance, shared by all portions of one set;
 * model: how the grains lie between the sieves that a stack lacks;
 * method: a loss, which may have been dust for the pan;
 * repeat: the scatter between portions, Student's t, or the pooled one where there are two or fewer degrees of
 * freedom of its own.
 * No portion throws. A portion whose stack is too poor to estimate has the middle of what is possible and no
 * model source: ask stacks[i].canEstimate before printing.
 * Source: propagation of distributions, JCGM 101:2008; multipliers as grainFineness.
 * @example finenessFigure({ name: "Dune sand", portions: [sievedPortion(log.sands[0]!.sievings[0]!)] }).figure.value
 */
export function finenessFigure(
  question: FinenessQuestion,
  options: { readonly draws?: number } = {},
): FinenessFigure {
  const { name, portions } = question;
  invariant(portions.length > 0, "a fineness figure needs a sieving");
  const gradings = portions.map(gradingOfPortion);
  const stacks = gradings.map(homeStack);
  const each = stacks.map(({ gfn }) => gfn);
  const scatter = scatterOf(each, question.pooled);
  const withReadings = scatter === undefined;
  const worked = portions.map((portion, i) =>
    portionSpread(portion, gradings[i]!, stacks[i]!, { about: name, withReadings }),
  );
  const between = scatter
    ? shifted(0, scatter.sd / Math.sqrt(portions.length), {
        id: `scatter between sievings, ${name}`,
        kind: "repeat",
        shape: { kind: "t", df: scatter.degreesOfFreedom },
        says: "scatter between repeated sievings",
      })
    : constant(0);
  const count = portions.length;
  const whole = lift(
    (values) => {
      let all = 0;
      for (let i = 0; i < count; i++) all += values[i]!;
      return all / count + values[count]!;
    },
    [...worked, between],
    `mean of ${count} portions`,
  );
  return {
    figure: figure(whole, options),
    missing: missingDoubts(question, scatter),
    stacks,
    each,
    ...(scatter ? { scatter } : {}),
  };
}

function scatterOf(
  each: readonly number[],
  pooled: FinenessQuestion["pooled"],
): FinenessFigure["scatter"] | undefined {
  const own = repeatScatter(each);
  const usePooled = pooled !== undefined && pooled.degreesOfFreedom > (own?.degreesOfFreedom ?? 0);
  if (usePooled && (own === undefined || own.degreesOfFreedom <= 2)) {
    return { sd: pooled.sd, degreesOfFreedom: pooled.degreesOfFreedom, pooled: true };
  }
  return own ? { sd: own.sd, degreesOfFreedom: own.degreesOfFreedom, pooled: false } : undefined;
}

function missingDoubts(
  { portions, repeatOf, pooled }: FinenessQuestion,
  scatter: FinenessFigure["scatter"],
): readonly MissingDoubt[] {
  const weighed = portions.every(({ held }) =>
    held.some(({ mass }) => isSpread(mass) && mass.sources.length > 0),
  );
  const missing: MissingDoubt[] = [];
  if (!scatter && !weighed) missing.push("weighing");
  if (portions.some(({ scaleUnchecked }) => scaleUnchecked)) missing.push("scale");
  if (!scatter) missing.push("repeats");
  else if ((scatter.pooled ? pooled?.of : repeatOf) !== "grab") missing.push("grabs");
  return missing;
}

const massOf = (mass: Spread | number): number => (isSpread(mass) ? mass.value : mass);

/**
 * The grading of a portion at the middle of its weighings.
 * @example gradingOfPortion(sievedPortion(log.sands[0]!.sievings[0]!)).fractions.length
 */
export function gradingOfPortion({ held }: SievedPortion): Grading {
  return gradingOf(
    held.map(({ label, sieve, mass }) => ({ label, mass: massOf(mass), ...(sieve ? { sieve } : {}) })),
  );
}

function portionSpread(
  portion: SievedPortion,
  grading: Grading,
  stack: HomeStack,
  { about, withReadings }: { readonly about: string; readonly withReadings: boolean },
): Spread {
  const masses = new Map(portion.held.map(({ label, mass }) => [label, mass]));
  const inputs = [
    ...stack.gaps.map(({ fraction }): Spread | number => {
      const mass = masses.get(fraction.label)!;
      return withReadings || !isSpread(mass) ? mass : without(mass, "reading");
    }),
    ...stack.gaps.map((gap) => multiplierSpread(gap, about)),
    openingsSpread(grading, portion, about),
    lossSpread(portion, grading.total, stack),
  ];
  return lift(meanOfFractions(stack.gaps.length), inputs, "fineness of fractions");
}

/** Σ mass × multiplier / Σ mass + what the openings and a loss move it by. Masses below zero count as none. */
function meanOfFractions(count: number): (values: ArrayLike<number>) => number {
  return (values) => {
    let products = 0;
    let total = 0;
    for (let k = 0; k < count; k++) {
      const mass = Math.max(0, values[k]!);
      products += mass * values[count + k]!;
      total += mass;
    }
    return products / total + values[2 * count]! + values[2 * count + 1]!;
  };
}

/** Each sieve's average opening, anywhere within its tolerance. */
function openingsSpread(grading: Grading, portion: SievedPortion, about: string): Spread {
  const terms = openingShifts(grading).map(({ sieve, label, shift }) => ({
    scale: portion.setChecked ? shift / 3 : shift,
    source: {
      id: openingId(sieve, portion, about),
      kind: "rig",
      shape: { kind: "rectangular" },
      says: `the opening of ${label.startsWith("No.") ? label : `the ${label} sieve`}`,
    } as const,
  }));
  return linear(0, terms);
}

/** A set without a name is the sand's own: another sand's may be another set. */
export function openingId(sieve: Sieve, { set }: SievedPortion, about: string): string {
  return `opening of ${sieve.label}, ${set ?? `the set of ${about}`}`;
}

/** As the trade does, a loss counts as spread like the sand; it may as well have been dust, up to all of it. */
function lossSpread({ id, loss }: SievedPortion, total: number, stack: HomeStack): Spread {
  if (loss === undefined || loss <= 0) return constant(0);
  const finest = stack.gaps.at(-1)!.multipliers.at(-1)!;
  const most = (loss / (loss + total)) * Math.max(0, finest - stack.gfn);
  const score = shifted(0, 1, {
    id: `loss in sieving, ${id}`,
    kind: "method",
    shape: { kind: "rectangular" },
    says: "a loss that may have been dust",
  });
  return lift(({ part }) => most * Math.abs(part), { part: score }, `loss of ${most}`);
}
