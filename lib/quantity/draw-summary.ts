// What the draws of a figure say.

import { quantilesInPlace } from "../numbers/quantile.ts";
import { sum } from "../numbers/sum.ts";
import { tenDigits } from "./print-number.ts";
import type { Source } from "./source.ts";

/** What draws say: mean, sd (NaN where heavy), 95 % interval. Reorders the draws. */
export function summary(
  draws: Float64Array,
  heavy: boolean,
): { mean: number; sd: number; low: number; high: number } {
  const mean = sum(draws) / draws.length;
  let squares = 0;
  for (let i = 0; i < draws.length; i++) squares += (draws[i]! - mean) ** 2;
  const [low, high] = drawQuantiles(draws, [0.025, 0.975]);
  return {
    mean: tenDigits(mean),
    sd: heavy ? Number.NaN : tenDigits(Math.sqrt(squares / draws.length)),
    low: tenDigits(low!),
    high: tenDigits(high!),
  };
}

/** The standard deviation of summary alone. */
export function sdOf(draws: Float64Array): number {
  const mean = sum(draws) / draws.length;
  let squares = 0;
  for (let i = 0; i < draws.length; i++) squares += (draws[i]! - mean) ** 2;
  return tenDigits(Math.sqrt(squares / draws.length));
}

/**
 * Quantiles of draws, which stand at the middles of their strata: place p·n + ½ (Hyndman & Fan 1996, definition 5),
 * so that a single source gets back its own quantiles. Reorders the draws.
 */
export function drawQuantiles(draws: Float64Array, ps: readonly number[]): number[] {
  const n = draws.length;
  const places = n === 1 ? ps : ps.map((p) => Math.min(1, Math.max(0, (p * n - 0.5) / (n - 1))));
  return quantilesInPlace(draws, places);
}

/** True where a source has no standard deviation. */
export function heavyTailed(sources: readonly Source[]): boolean {
  return sources.some(({ shape }) => shape.kind === "t" && shape.df <= 2);
}
