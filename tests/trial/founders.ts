// Simulated founders with known truth, as bad as real ones: batches and specimens that scatter, rigs with a bias, a
// kitchen scale's moisture, days that differ, and places that are badly spread.

import { type SimpleSpread, spread } from "../../lib/quantity/spread-of.ts";
import { type Seeded, seeded } from "../seeded.ts";
import { type Truth, type TruthKind, truthsFor } from "./founders-truths.ts";

export interface Ills {
  /** A rig that reads high or low by the same in every test, with the sd that the founder declares for it. */
  readonly bias?: boolean;
  /** Moisture by a kitchen scale: each batch's true place is off by 0.02 to 0.1 points (sd). */
  readonly scale?: boolean;
  /** One to three specimens a batch, each with a scatter of its own beside the batch's. */
  readonly specimens?: boolean;
  /** Two or three days, each with an offset of its own, named as blocks, from six batches on. */
  readonly days?: boolean;
  /** Crowded at the dry or the wet end, or with a gap in the middle. */
  readonly spacing?: boolean;
}
export const allIlls: Ills = { bias: true, scale: true, specimens: true, days: true, spacing: true };

export interface Founder {
  /** Where the founder says that the batches stand. */
  readonly x: readonly number[];
  readonly blocks: readonly string[];
  readonly truths: readonly Truth[];
  /** What each property's rig may be off by, as declared; none where it is not. */
  readonly biases: readonly (SimpleSpread | undefined)[];
  /** One row for each property, one figure for each batch. */
  readonly y: readonly (readonly number[])[];
  /** The true mean of a property at x over the founder's own days, without the rig's bias. */
  mean(property: number, x: number): number;
  /** The same as the founder's rig would read it. */
  read(property: number, x: number): number;
  /** A new batch meant for x, tested as the others were, by a rig without bias; day: like the mean of the founder's, or another. */
  fresh(x: number, day?: "like these" | "another"): readonly number[];
  /** Standard deviation of a moisture about the true one. */
  readonly scaleSd: number;
  readonly random: Seeded;
}

export interface FounderSpec {
  readonly kind?: TruthKind;
  readonly ills?: Ills;
  readonly places?: readonly number[];
}

const dryEnd = 2.6;
const wetEnd = 4.8;

/** The founder of a seed with n batches over 2.6 to 4.8 % moisture, with some jitter, or at the places given. */
export function founderOf(seed: number, n: number, spec: FounderSpec = {}): Founder {
  const { kind = "parabola", ills = {}, places } = spec;
  const random = seeded(seed);
  const truths = truthsFor(random, kind);
  const x = places ?? placesFor(random, n, ills.spacing === true && random.uniform() < 0.5);
  const scaleSd = ills.scale ? random.uniform(0.02, 0.1) : 0;
  const specimens = ills.specimens ? random.integer(1, 3) : 0;
  const biasSds = truths.map(({ batchSd }) => (ills.bias ? batchSd * random.uniform(0.4, 1) : 0));
  const offs = biasSds.map((sd) => sd * random.normal());
  const dayCount = ills.days && n >= 6 ? random.integer(2, n >= 9 ? 3 : 2) : 1;
  const daySds = truths.map(({ batchSd }) => (ills.days ? batchSd * random.uniform(0.3, 1) : 0));
  const days = truths.map((_, k) => Array.from({ length: dayCount }, () => daySds[k]! * random.normal()));
  const dayOf = random.shuffle(x.map((_, i) => i % dayCount));
  const usualDay = days.map((offsets) => dayOf.reduce((all, day) => all + offsets[day]!, 0) / x.length);
  const specimenSd = truths.map(({ batchSd }) =>
    specimens > 0 ? (batchSd * random.uniform(0.4, 1)) / Math.sqrt(specimens) : 0,
  );
  // All properties of one batch share its true place.
  const batch = (at: number): number[] => {
    const truly = at + scaleSd * random.normal();
    return truths.map(
      ({ batchSd, at: value }, k) => value(truly) + Math.hypot(batchSd, specimenSd[k]!) * random.normal(),
    );
  };
  const batches = x.map((at) => batch(at));
  return {
    x,
    blocks: dayOf.map((day) => `day ${day + 1}`),
    truths,
    biases: biasSds.map((sd, k) =>
      sd > 0 ? spread({ mean: 0, sd, source: `rig of ${truths[k]!.name}`, doubt: "rig" }) : undefined,
    ),
    y: truths.map((_, k) => batches.map((values, i) => values[k]! + days[k]![dayOf[i]!]! + offs[k]!)),
    mean: (k, at) => truths[k]!.at(at) + usualDay[k]!,
    read: (k, at) => truths[k]!.at(at) + usualDay[k]! + offs[k]!,
    fresh: (at, day = "like these") =>
      batch(at).map((value, k) => value + (day === "another" ? daySds[k]! * random.normal() : usualDay[k]!)),
    scaleSd,
    random,
  };
}

function placesFor(random: Seeded, n: number, bad: boolean): readonly number[] {
  const shape = bad ? random.pick([crowdedDry, crowdedWet, gap]) : (u: number): number => u;
  return Array.from(
    { length: n },
    (_, k) => dryEnd + (wetEnd - dryEnd) * shape(k / (n - 1)) + random.uniform(-0.08, 0.08),
  );
}

const crowdedDry = (u: number): number => u * u;
const crowdedWet = (u: number): number => Math.sqrt(u);
/** Nothing between a quarter and three quarters of the way. */
const gap = (u: number): number => (u <= 0.5 ? u / 2 : 0.5 + u / 2);
