// Simulated founders with few batches of compactability over water, whose true slope lies anywhere in what is published.

import { publishedWaterSensitivity } from "../../lib/sand/published-water-sensitivity.ts";
import { seeded } from "../seeded.ts";

export interface FewFounders {
  readonly seed: number;
  readonly founders: number;
  readonly batches: number;
  /** % of water from the driest to the wettest. */
  readonly span: number;
  /** Each founder's own scatter of batches lies evenly in here, points. */
  readonly scatter: readonly [number, number];
  /** Readings are written to so many points; 0: not rounded. */
  readonly roundTo: number;
}

export interface FewBatches {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** A place among the batches, the truth there, and a batch made there. */
  readonly at: number;
  readonly truth: number;
  readonly newBatch: number;
  readonly slope: number;
}

export function fewFounders(asked: FewFounders): FewBatches[] {
  const { seed, founders, batches, span, scatter, roundTo } = asked;
  const random = seeded(seed);
  const written = (value: number): number => (roundTo === 0 ? value : Math.round(value / roundTo) * roundTo);
  return Array.from({ length: founders }, () => {
    const x = Array.from(
      { length: batches },
      (_, i) => 3 + span * (i / (batches - 1) + random.uniform(-0.05, 0.05)),
    );
    const slope = random.uniform(10 / publishedWaterSensitivity.high, 10 / publishedWaterSensitivity.low);
    const sd = random.uniform(scatter[0], scatter[1]);
    const middle = random.uniform(44, 46);
    const truth = (where: number): number => middle + slope * (where - 3 - span / 2);
    const y = x.map((where) => written(truth(where) + sd * random.normal()));
    const at = random.uniform(x[0]!, x.at(-1)!);
    return { x, y, at, truth: truth(at), newBatch: truth(at) + sd * random.normal(), slope };
  });
}
