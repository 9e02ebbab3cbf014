// The variance of a spread to the first order, without draws.

import { sourceNames } from "./drawing.ts";
import { scoreSd } from "./scores.ts";
import type { Drawing, Spread } from "./spread.ts";

/**
 * Σ ((f(+sₖ) − f(−sₖ))/2)², each source k moved by its standard deviation sₖ while the others stay at their middle. Sources of
 * one id move together, so that what two inputs share cancels or adds. For functions that are nearly straight over ± sₖ;
 * in the unit of the spread, squared. A source without a standard deviation (t of two or fewer degrees of freedom): NaN.
 * Source: GUM (JCGM 100:2008) 5.1.2 with the sensitivities of its note 2 to 5.1.3.
 * @example firstOrderVariance(spread({ mean: 3, sd: 0.1 })) // 0.01
 */
export function firstOrderVariance(spread: Spread): number {
  const names = sourceNames(spread.sources);
  const places = new Map([...new Set(names.values())].map((name, k) => [name, 2 * k]));
  const out = new Float64Array(2 * places.size);
  const pairs: Drawing = {
    count: out.length,
    add(source, scale, into, start) {
      const at = places.get(names.get(source)!)! - start;
      const step = scale * scoreSd(source.shape);
      for (const [place, way] of [
        [at, step],
        [at + 1, -step],
      ] as const)
        if (place >= 0 && place < into.length) into[place]! += way;
    },
  };
  if (out.length === 0) return 0;
  spread.fill(out, 0, pairs);
  let variance = 0;
  for (let k = 0; k < out.length; k += 2) variance += ((out[k]! - out[k + 1]!) / 2) ** 2;
  return variance;
}
