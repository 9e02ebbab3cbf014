// What went along with the axis and cannot be told apart from it, and what the log does not let us look at.

import { firstPlaces } from "../numbers/first-places.ts";
import { spearman } from "../numbers/spearman.ts";
import { hashText } from "../quantity/permutation.ts";

/** What stands as a number beside every batch. */
export type NumberCompanion =
  | "trial order"
  | "minutes mulled"
  | "minutes stood"
  | "density"
  | "moisture"
  | "clay"
  | "compactability";

export type Companion =
  | NumberCompanion
  | "day or block"
  | "one heap wetted step by step"
  | "some batches wetted from the one before";

export interface Confounded {
  readonly companion: Companion;
  /**
   * 1 or −1: they cannot be told apart at all. Spearman's rank correlation with the axis; of a day or block the share of
   * pairs, one batch in it and one outside, in which the one inside is further up, less the share in which it is
   * further down; of batches wetted from the one before, the share of the steps that are.
   */
  readonly rho: number;
  /** The day or block that lies at one end, or how many batches were wetted from the one before. */
  readonly block?: string;
  readonly batches?: number;
}

export interface Unchecked {
  readonly companion: Companion;
  /** "order not said", "density tested for fewer than four batches", "fewer than four batches in all". */
  readonly why: string;
}

export interface TrialToCheck {
  readonly x: readonly number[];
  readonly sameHeap?: readonly boolean[];
  /** Day, bag or block of each batch, by name. */
  readonly blocks?: readonly (string | undefined)[];
  /** Those that may confound this axis: never the axis itself. One number a batch; undefined where it is not known. */
  readonly companions: { readonly [name in NumberCompanion]?: readonly (number | undefined)[] };
}

/** From this rank correlation on two things are said to have gone together. */
const togetherFrom = 0.8;
/** Fewer batches that say both teach nothing. */
const leastBatches = 4;

/**
 * A companion whose figures span less than this is taken to be held alike, however its ranks fall: points of clay,
 * moisture, compactability. Our own.
 */
const alikeWithin: { readonly [name in NumberCompanion]?: number } = {
  clay: 0.5,
  moisture: 0.3,
  compactability: 3,
};

/**
 * Companions that went along with the axis, over four or more batches that say both: |ρ| ≥ 0.8 with p ≤ 0.1; a day or
 * block of two batches or more, with two or more outside it, that lies at one end (0.8 of the pairs or more, up less down).
 * sameHeap: true for a batch that is the batch before, wetted further; when all but the first are, order, mulling and
 * standing have all gone with the water, whatever their numbers; when some are, those have.
 * Source: Spearman's ρ, Hollander & Wolfe 1973; for blocks E. E. Cureton's rank-biserial correlation, Psychometrika 21
 * (1956) 287–290 (from memory; checked against SciPy's U); the thresholds our own.
 * @example
 * confounding({ x: [3, 3.4, 3.8, 4.2], blocks: ["a", "a", "b", "b"], companions: {} })[0]
 * // { companion: "day or block", rho: -1, block: "a" }
 */
export function confounding(trial: TrialToCheck): readonly Confounded[] {
  const numbers = Object.entries(trial.companions).flatMap(([name, values]): Confounded[] => {
    const companion = name as NumberCompanion;
    const pairs = pairsOf(trial.x, values);
    const own = pairs.map(([, value]) => value);
    const span = Math.max(...own) - Math.min(...own);
    if (pairs.length < leastBatches || !(span > (alikeWithin[companion] ?? 0))) return [];
    const { rho, p } = spearman(
      pairs.map(([x]) => x),
      own,
    );
    return Math.abs(rho) >= togetherFrom && p <= 0.1 ? [{ companion, rho }] : [];
  });
  return [...steppedHeap(trial), ...blockAtOneEnd(trial), ...numbers];
}

/**
 * What could not be looked at because the log does not say it, of fewer than four batches that is. Two or three batches
 * in all cannot show it of anything, said or not: of those the trial order alone is named. Days and blocks: where no
 * batch says one.
 * Example: four batches whose order is not said: [{ companion: "trial order", why: "order not said" }].
 */
export function uncheckedCompanions({ x, blocks, companions }: TrialToCheck): readonly Unchecked[] {
  const placed = x.filter(Number.isFinite).length;
  if (placed < leastBatches)
    return placed < 2 ? [] : [{ companion: "trial order", why: "fewer than four batches in all" }];
  const lacking = Object.entries(companions).flatMap(([name, values]): Unchecked[] => {
    const companion = name as NumberCompanion;
    const said = pairsOf(x, values).length;
    const [what, how] = sayings[companion];
    if (said >= leastBatches) return [];
    const why = said === 0 ? `${what} not ${how}` : `${what} ${how} for fewer than four batches`;
    return [{ companion, why }];
  });
  const noBlock = !blocks?.some((block) => block !== undefined);
  return noBlock ? [...lacking, { companion: "day or block", why: "day and block not said" }] : lacking;
}

const sayings: { readonly [name in NumberCompanion]: readonly [string, string] } = {
  "trial order": ["order", "said"],
  "minutes mulled": ["minutes mulled", "said"],
  "minutes stood": ["minutes stood", "said"],
  density: ["density", "tested"],
  moisture: ["moisture", "tested"],
  clay: ["clay", "weighed in"],
  compactability: ["compactability", "tested"],
};

function pairsOf(
  xs: readonly number[],
  values: readonly (number | undefined)[] | undefined,
): readonly (readonly [number, number])[] {
  return xs.flatMap((x, i) => {
    const value = values?.[i];
    return Number.isFinite(x) && value !== undefined && Number.isFinite(value) ? [[x, value] as const] : [];
  });
}

function steppedHeap({ x, sameHeap = [] }: TrialToCheck): Confounded[] {
  const batches = sameHeap.filter((same) => same).length;
  if (x.length < 2 || batches === 0) return [];
  if (batches >= x.length - 1) return [{ companion: "one heap wetted step by step", rho: 1 }];
  return [{ companion: "some batches wetted from the one before", rho: batches / (x.length - 1), batches }];
}

/** The day or block that lies furthest at one end; of two alike, the first named. */
function blockAtOneEnd({ x, blocks }: TrialToCheck): Confounded[] {
  const placed = x.flatMap((at, i) => (Number.isFinite(at) && blocks?.[i] !== undefined ? [i] : []));
  if (placed.length < leastBatches) return [];
  const places = placed.map((i) => x[i]!).sort((a, b) => a - b);
  const byBlock = new Map<string, number[]>();
  for (const i of placed) {
    const members = byBlock.get(blocks![i]!);
    if (members) members.push(i);
    else byBlock.set(blocks![i]!, [i]);
  }
  const found = [...byBlock].flatMap(([block, members]): Confounded[] => {
    const inside = members.map((i) => x[i]!).sort((a, b) => a - b);
    const outside = places.length - inside.length;
    if (inside.length < 2 || outside < 2) return [];
    // Pairs within the block stand in both counts, and go.
    const steps = inside.reduce((all, one) => all + stepsUp(places, one) - stepsUp(inside, one), 0);
    return [{ companion: "day or block", rho: steps / (inside.length * outside), block }];
  });
  const [furthest] = found.sort((a, b) => Math.abs(b.rho) - Math.abs(a.rho));
  return furthest && Math.abs(furthest.rho) >= togetherFrom ? [furthest] : [];
}

/** How many of the sorted places lie below one, less how many lie above it. */
function stepsUp(sorted: readonly number[], one: number): number {
  return placeOf(sorted, (at) => at >= one) - (sorted.length - placeOf(sorted, (at) => at > one));
}

/** The first place that passes; those that pass stand behind those that do not. */
function placeOf(sorted: readonly number[], passes: (at: number) => boolean): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (passes(sorted[middle]!)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * A shuffled order for the next round, the same every time: the first of up to 200 shuffles by a hash of the names whose
 * rank correlation with the order given (that of the axis) is below one half.
 * @example randomOrder(["W1", "W2", "W3"], "next round").length // 3
 */
export function randomOrder(names: readonly string[], salt: string): readonly string[] {
  const places = names.map((_, i) => i);
  for (let round = 0; round < 200; round++) {
    const rank = new Map(names.map((name) => [name, hashText(`${salt} ${round} ${name}`)]));
    const order = [...names].sort((a, b) => rank.get(a)! - rank.get(b)!);
    const placeIn = firstPlaces(order);
    const along =
      names.length < 4
        ? 0
        : Math.abs(
            spearman(
              places,
              names.map((name) => placeIn.get(name)!),
            ).rho,
          );
    if (along < 0.5) return order;
  }
  return [...names].reverse();
}
