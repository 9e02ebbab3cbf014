// What went along with the axis and cannot be told apart from it.

import { spearman } from "../numbers/spearman.ts";
import { hashText } from "../quantity/permutation.ts";

export type Companion =
  | "trial order"
  | "minutes mulled"
  | "minutes stood"
  | "density"
  | "one heap wetted step by step";

export interface Confounded {
  readonly companion: Companion;
  /** Spearman's rank correlation with the axis; 1 or −1: they cannot be told apart at all. */
  readonly rho: number;
}

/** From this rank correlation on two things are said to have gone together. */
export const togetherFrom = 0.8;

/**
 * Companions whose ranks went along with the axis: |ρ| ≥ 0.8 with p ≤ 0.1, over four or more batches that say both.
 * sameHeap: true for a batch that is the batch before, wetted further; when all but the first are, order, mulling
 * and standing have all gone with the water, whatever their numbers.
 * Source: Spearman's ρ, Hollander & Wolfe 1973; the threshold our own.
 */
export function confounding(trial: {
  readonly x: readonly number[];
  readonly sameHeap?: readonly boolean[];
  readonly companions: {
    readonly [name in Exclude<Companion, "one heap wetted step by step">]?: readonly (number | undefined)[];
  };
}): readonly Confounded[] {
  const found: Confounded[] = [];
  const stepped = trial.sameHeap?.filter((same) => same).length ?? 0;
  if (trial.x.length > 1 && stepped >= trial.x.length - 1) {
    found.push({ companion: "one heap wetted step by step", rho: 1 });
  }
  for (const [companion, values] of Object.entries(trial.companions)) {
    const pairs = trial.x.flatMap((x, i) => {
      const value = values?.[i];
      return Number.isFinite(x) && value !== undefined && Number.isFinite(value) ? [[x, value] as const] : [];
    });
    const distinct = new Set(pairs.map(([, value]) => value)).size;
    if (pairs.length < 4 || distinct < 2) continue;
    const { rho, p } = spearman(
      pairs.map(([x]) => x),
      pairs.map(([, value]) => value),
    );
    if (Math.abs(rho) >= togetherFrom && p <= 0.1) found.push({ companion: companion as Companion, rho });
  }
  return found;
}

/**
 * A shuffled order for the next round, the same every time: the first of up to 200 shuffles by a hash of the names whose
 * rank correlation with the order given (that of the axis) is below one half.
 */
export function randomOrder(names: readonly string[], salt: string): readonly string[] {
  const places = names.map((_, i) => i);
  for (let round = 0; round < 200; round++) {
    const rank = (name: string): number => hashText(`${salt} ${round} ${name}`);
    const order = [...names].sort((a, b) => rank(a) - rank(b));
    const along =
      names.length < 4
        ? 0
        : Math.abs(
            spearman(
              places,
              names.map((name) => order.indexOf(name)),
            ).rho,
          );
    if (along < 0.5) return order;
  }
  return [...names].reverse();
}
