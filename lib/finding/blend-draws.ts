// A blend, worked out again in every draw of its sievings: how surely each share is known.

import { contentOf } from "../quantity/content.ts";
import { drawQuantiles } from "../quantity/draw-summary.ts";
import { drawing, drawsOf } from "../quantity/drawing.ts";
import { kept } from "../quantity/kept.ts";
import type { Spread } from "../quantity/spread.ts";
import { blended, blendShares } from "../sand/blend.ts";

/** Each is a blend worked out anew; the ends of a 95 % interval need no more. */
const draws = 1024;
/** A share below this in a draw is none. */
const nought = 1e-6;

export interface DrawnShare {
  /** 0 to 1. */
  readonly low: number;
  readonly high: number;
  /** True where it is 0 in more than 2.5 % of the draws. */
  readonly mayBeNought: boolean;
}

export interface BlendDraws {
  readonly shares: readonly DrawnShare[];
  /** Of a kilogram, where every sand has a cost. */
  readonly cost?: { readonly low: number; readonly high: number };
}

/**
 * Ends of the 95 % interval of each share, with the figures of the sands and of the target drawn from their doubts together, so
 * that what two sievings share (the openings of one set of sieves, the bias of one scale) cancels as it should.
 * of: for each sand its figures; to: the wanted ones, as many; free: places of the sands that may be in the blend.
 */
export function blendDraws(
  of: readonly (readonly (Spread | number)[])[],
  to: readonly (Spread | number)[],
  free: readonly number[],
  costs: readonly number[] | undefined,
): BlendDraws {
  const key = contentOf([of, to, free, costs]);
  const before = key === undefined ? undefined : known.get(key);
  if (before) return before;
  const made = drawnAnew(of, to, free, costs);
  if (key !== undefined) known.set(key, made);
  return made;
}

const known = kept<BlendDraws>(500_000);

function drawnAnew(
  of: readonly (readonly (Spread | number)[])[],
  to: readonly (Spread | number)[],
  free: readonly number[],
  costs: readonly number[] | undefined,
): BlendDraws {
  const all = [...of.flat(), ...to];
  const sources = all.flatMap((one) => (typeof one === "number" ? [] : one.sources));
  const plan = drawing(sources, { count: draws });
  const drawn = (one: Spread | number): Float64Array =>
    typeof one === "number" ? new Float64Array(draws).fill(one) : drawsOf(one, plan);
  const columns = of.map((figures) => figures.map(drawn));
  const wanted = to.map(drawn);
  const shares = of.map(() => new Float64Array(draws));
  const cost = new Float64Array(draws);
  for (let i = 0; i < draws; i++) {
    const part = blendShares({
      of: free.map((j) => columns[j]!.map((column) => column[i]!)),
      to: wanted.map((column) => column[i]!),
    });
    free.forEach((j, k) => {
      shares[j]![i] = part[k]! < nought ? 0 : part[k]!;
    });
    if (costs) {
      cost[i] = blended(
        part,
        free.map((j) => costs[j]!),
      );
    }
  }
  const ends = (column: Float64Array): { low: number; high: number } => {
    const [low, high] = drawQuantiles(column, [0.025, 0.975]);
    return { low: low!, high: high! };
  };
  return {
    shares: shares.map((column) => {
      const zeros = column.filter((share) => share === 0).length;
      return { ...ends(column), mayBeNought: zeros > 0.025 * draws };
    }),
    ...(costs ? { cost: ends(cost) } : {}),
  };
}
