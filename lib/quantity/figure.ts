// A figure: a spread, and what its draws say. Worked out when first read, then kept.

import { drawQuantiles, heavyTailed, summary } from "./draw-summary.ts";
import { drawing, drawsOf, sourceNames } from "./drawing.ts";
import { tenDigits } from "./print-number.ts";
import type { Source } from "./source.ts";
import type { Spread } from "./spread.ts";

/** How much of a figure's variance one source brings. */
export interface Share {
  /** The source's id; empty for a source without one. */
  readonly id: string;
  readonly source: Source;
  /** Percent of the variance, with only this source drawn. */
  readonly percent: number;
}

export interface Figure extends Spread {
  readonly mean: number;
  /** Standard deviation of the draws; NaN where a source has two or fewer degrees of freedom. */
  readonly sd: number;
  /** Ends of the 95 % interval: the 2.5 % and 97.5 % quantiles of the draws. */
  readonly low: number;
  readonly high: number;
  /** Largest first. They need not add to 100: see actTogether. */
  readonly shares: readonly Share[];
  /** True when the shares miss the whole by more than a tenth: the sources act together. */
  readonly actTogether: boolean;
  /** Any quantile of the draws, p from 0 to 1. */
  quantile(p: number): number;
}

/**
 * The figure of a spread. draws: a power of two, 4,096 unless asked for.
 * A spread without sources is exact: sd 0, low and high its value.
 * @example figure(spread("12.4 ± 0.1 g")).high // 12.495
 */
export function figure(spread: Spread, options: { readonly draws?: number } = {}): Figure {
  const { value, sources } = spread;
  const count = options.draws;
  const plan = count === undefined ? {} : { count };
  const whole = once(() => {
    const draws = sources.length === 0 ? Float64Array.of(value) : drawsOf(spread, drawing(sources, plan));
    return summary(draws, heavyTailed(sources));
  });
  const shares = once(() => sharesOf(spread, plan));
  return {
    value,
    sources,
    fill: (out, start, drawn) => spread.fill(out, start, drawn),
    get mean() {
      return whole().mean;
    },
    get sd() {
      return whole().sd;
    },
    get low() {
      return whole().low;
    },
    get high() {
      return whole().high;
    },
    get shares() {
      return shares().shares;
    },
    get actTogether() {
      return shares().actTogether;
    },
    quantile(p) {
      if (!(p >= 0 && p <= 1)) throw new RangeError(`quantile: p is 0 to 1, not ${p}`);
      const draws = sources.length === 0 ? Float64Array.of(value) : drawsOf(spread, drawing(sources, plan));
      return tenDigits(drawQuantiles(draws, [p])[0]!);
    },
  };
}

/** Variance with one source drawn at a time; where there is no variance, the squared half-width stands in. */
function sharesOf(
  spread: Spread,
  plan: { count?: number },
): { shares: readonly Share[]; actTogether: boolean } {
  const { sources } = spread;
  const heavy = heavyTailed(sources);
  const size = (only?: string): number => {
    const draws = drawsOf(spread, drawing(sources, only === undefined ? plan : { ...plan, only }));
    const { sd, low, high } = summary(draws, false);
    return heavy ? ((high - low) / 2) ** 2 : sd ** 2;
  };
  if (sources.length === 0) return { shares: [], actTogether: false };
  const whole = size();
  const names = sourceNames(sources);
  const seen = new Map<string, Share>();
  for (const [source, name] of names) {
    if (seen.has(name)) continue;
    const share = whole === 0 ? 0 : (100 * size(name)) / whole;
    // Below this it is rounding, and not the same on every machine.
    const percent = share < 1e-6 ? 0 : tenDigits(share);
    seen.set(name, { id: source.id ?? "", source, percent });
  }
  const shares = [...seen.values()].sort((a, b) => b.percent - a.percent);
  const total = shares.reduce((all, share) => all + share.percent, 0);
  return { shares, actTogether: whole > 0 && Math.abs(total - 100) > 10 };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
