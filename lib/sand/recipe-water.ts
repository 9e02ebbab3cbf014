// The water of a recipe in two goes: most of it first, the rest as trim after a test.

import type { Figure } from "../quantity/figure.ts";

/** Of the need that goes in first at most: our own, so that a tenth is always left to trim with. */
const FIRST_SHARE = 0.9;

export interface WaterSplit {
  readonly firstKg: number;
  /** Kept back: to the middle of the need, kg. */
  readonly trimKg: number;
  /** What the trim may come to, to the wet end of the need, kg. */
  readonly trimAtMostKg: number;
}

/**
 * First dose and trim of a recipe's water, kg. First: the 10 % quantile of the need, so that nine mixes in ten still
 * want more, and never more than nine tenths of the middle; trim: what is left to the middle, and to the 97.5 % end.
 * needKg: water to pour, with its ±. Where its middle is zero or less nothing is poured: all are zero.
 * Source: our own rule, that of the first dose of a heap; water goes in easily and comes out slowly.
 * @example waterSplit(figure(spread("2 kg"))) // { firstKg: 1.8, trimKg: 0.2 }
 */
export function waterSplit(needKg: Pick<Figure, "value" | "high" | "quantile">): WaterSplit {
  if (!(needKg.value > 0)) return { firstKg: 0, trimKg: 0, trimAtMostKg: 0 };
  const firstKg = Math.max(0, Math.min(FIRST_SHARE * needKg.value, needKg.quantile(0.1)));
  return {
    firstKg,
    trimKg: needKg.value - firstKg,
    trimAtMostKg: Math.max(needKg.value, needKg.high) - firstKg,
  };
}
