// Simulated founders: known truth, batches that scatter, rigs with a bias.

import { type Seeded, seeded } from "../seeded.ts";

export interface Truth {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly peaked: boolean;
  readonly batchSd: number;
  at(x: number): number;
}

export interface Founder {
  readonly x: readonly number[];
  readonly truths: readonly Truth[];
  /** One row for each property, one figure for each batch. */
  readonly y: readonly (readonly number[])[];
  /** A new batch at x, measured without the rig's bias. */
  fresh(x: number): readonly number[];
  readonly random: Seeded;
}

const curved = (top: number, at: number, fall: number) => (x: number) => top - fall * (x - at) ** 2;

/**
 * Strength that peaks, permeability that peaks at about 1.5 × that water, compactability that rises. The aims know
 * nothing of the sand: they come from usual ranges, and some sands cannot meet them.
 */
export function truthsFor(random: Seeded): readonly Truth[] {
  const peak = random.uniform(2.9, 3.6);
  const strength = curved(random.uniform(40, 95), peak, random.uniform(6, 16));
  const permeability = curved(random.uniform(30, 95), 1.5 * peak, random.uniform(3, 9));
  const slope = random.uniform(9, 13);
  const bend = random.uniform(-1.5, 0.5);
  const middle = random.uniform(44, 48);
  const compactability = (x: number): number => middle + slope * (x - 3.6) + bend * (x - 3.6) ** 2;
  return [
    {
      name: "compactability",
      low: 42,
      high: 50,
      peaked: false,
      batchSd: random.uniform(0.8, 2),
      at: compactability,
    },
    {
      name: "green compression",
      low: random.uniform(40, 60),
      high: 110,
      peaked: true,
      batchSd: random.uniform(1.5, 4),
      at: strength,
    },
    {
      name: "permeability",
      low: random.uniform(20, 45),
      high: 120,
      peaked: true,
      batchSd: random.uniform(2, 5),
      at: permeability,
    },
  ];
}

/** n batches evenly spread over 2.6 to 4.8 % moisture with some jitter, or at the places given. */
export function founderOf(seed: number, n: number, places?: readonly number[]): Founder {
  const random = seeded(seed);
  const truths = truthsFor(random);
  const x =
    places ?? Array.from({ length: n }, (_, k) => 2.6 + (2.2 * k) / (n - 1) + random.uniform(-0.08, 0.08));
  const scatter = (truth: Truth, at: number): number => truth.at(at) + truth.batchSd * random.normal();
  return {
    x,
    truths,
    y: truths.map((truth) => x.map((at) => scatter(truth, at))),
    fresh: (at) => truths.map((truth) => scatter(truth, at)),
    random,
  };
}
