// A figure: a spread, and what its draws say. Worked out when first read, then kept.

import { drawQuantiles, heavyTailed, sdOf, summary } from "./draw-summary.ts";
import { drawing, drawsOf, isWhole, sourceNames } from "./drawing.ts";
import { keptColumn } from "./kept-column.ts";
import { keptOr } from "./kept-said.ts";
import { tenDigits } from "./print-number.ts";
import { drawsUsual } from "./scores.ts";
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

export interface FigureOptions {
  readonly draws?: number;
  /** All draws of the spread, to be reordered; for one whose draws come with those of others. */
  readonly drawn?: () => Float64Array;
}

/**
 * The figure of a spread. draws: a power of two, 4,096 unless asked for.
 * A spread without sources is exact: sd 0, low and high its value.
 * @example figure(spread("12.4 ± 0.1 g")).high // 12.495
 */
export function figure(spread: Spread, options: FigureOptions = {}): Figure {
  const { value, sources } = spread;
  const count = options.draws;
  const plan = count === undefined ? {} : { count };
  const draw = () => {
    if (sources.length === 0) return Float64Array.of(value);
    if (held.column) return held.column.slice();
    return options.drawn ? options.drawn() : drawsOf(spread, drawing(sources, plan));
  };
  const held: Held = {};
  /** From run to run where the content is known. */
  const columnOf = (): Float64Array => {
    const { content } = spread;
    if (content !== undefined) return keptColumn(`${count ?? drawsUsual} draws of ${content}`, draw);
    held.column ??= hold(held, draw());
    return held.column;
  };
  const named = sources.length > 0 && sources.every(({ id }) => id !== undefined);
  const key = once(() => keyOf(spread, count));
  /** In another order than drawn; kept once a quantile was asked for, since more will be. */
  let drawn: Float64Array | undefined;
  const whole = once(() => keptOr(key(), "", () => summary(draw(), heavyTailed(sources))));
  const shares = once(() =>
    sharesOf(
      spread,
      keptOr(key(), "shares", () => percentsOf(spread, plan)),
    ),
  );
  return {
    value,
    sources,
    get content() {
      return spread.content;
    },
    fill(out, start, plan) {
      if (!named || plan.count !== (count ?? drawsUsual) || !isWhole(plan))
        return spread.fill(out, start, plan);
      out.set(columnOf().subarray(start, start + out.length));
    },
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
      return keptOr(key(), `quantile ${p}`, () => {
        drawn ??= draw();
        return tenDigits(drawQuantiles(drawn, [p])[0]!);
      });
    },
  };
}

/** The draws of a figure in their order, held once it is part of another, since it will be of more. */
interface Held {
  column?: Float64Array | undefined;
}

/** Few at a time: of thousands of figures each would be large. */
const holders: Held[] = [];
const mostHeld = 64;
let oldest = 0;

function hold(holder: Held, column: Float64Array): Float64Array {
  const before = holders[oldest];
  if (before) before.column = undefined;
  holders[oldest] = holder;
  oldest = (oldest + 1) % mostHeld;
  return column;
}

/** Undefined for an exact number, and where nobody can tell what the draws hang on. */
function keyOf({ sources, content }: Spread, count = drawsUsual): string | undefined {
  return sources.length === 0 || content === undefined ? undefined : `${count} ${content}`;
}

/** Percent of the variance by the name of the source; moves: whether there is any. */
interface Percents {
  readonly moves: boolean;
  readonly of: ReadonlyMap<string, number>;
}

/** Variance with one source drawn at a time; where there is no variance, the squared half-width stands in. */
function percentsOf(spread: Spread, plan: { count?: number }): Percents {
  const { sources } = spread;
  const of = new Map<string, number>();
  if (sources.length === 0) return { moves: false, of };
  const heavy = heavyTailed(sources);
  const size = (only?: string): number => {
    const draws = drawsOf(spread, drawing(sources, only === undefined ? plan : { ...plan, only }));
    if (!heavy) return sdOf(draws) ** 2;
    const { low, high } = summary(draws, false);
    return ((high - low) / 2) ** 2;
  };
  const whole = size();
  for (const name of new Set(sourceNames(sources).values())) {
    const share = whole === 0 ? 0 : (100 * size(name)) / whole;
    // Below this it is rounding, and not the same on every machine.
    of.set(name, share < 1e-6 ? 0 : tenDigits(share));
  }
  return { moves: whole > 0, of };
}

function sharesOf(
  { sources }: Spread,
  percents: Percents,
): { shares: readonly Share[]; actTogether: boolean } {
  const seen = new Map<string, Share>();
  for (const [source, name] of sourceNames(sources)) {
    if (!seen.has(name)) seen.set(name, { id: source.id ?? "", source, percent: percents.of.get(name)! });
  }
  const shares = [...seen.values()].sort((a, b) => b.percent - a.percent);
  const total = shares.reduce((all, share) => all + share.percent, 0);
  return { shares, actTogether: percents.moves && Math.abs(total - 100) > 10 };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
