// How much of a figure's variance each of its sources brings.

import { heavyTailed, sdOf, summary } from "./draw-summary.ts";
import { drawing, drawsOf, sourceNames } from "./drawing.ts";
import { tenDigits } from "./print-number.ts";
import type { Source } from "./source.ts";
import type { Spread } from "./spread.ts";

/** How much of a figure's variance one source brings. */
export interface Share {
  /** The source's id; empty for a source without one. */
  readonly id: string;
  readonly source: Source;
  /** Names of the inputs of combine that it came in by; in a list their places, from "0". */
  readonly inputs?: readonly string[];
  /** Percent of the variance, with only this source drawn. */
  readonly percent: number;
}

/** Percent of the variance by the name of the source; moves: whether there is any. */
export interface Percents {
  readonly moves: boolean;
  readonly of: ReadonlyMap<string, number>;
}

export interface Shared {
  /** Largest first. */
  readonly shares: readonly Share[];
  /** True when the shares miss the whole by more than a tenth. */
  readonly actTogether: boolean;
}

/** Variance with one source drawn at a time; where there is no variance, the squared half-width stands in. */
export function percentsOf(
  spread: Spread,
  plan: { count?: number },
  { sd, low, high }: ReturnType<typeof summary>,
): Percents {
  const { sources } = spread;
  const of = new Map<string, number>();
  if (sources.length === 0) return { moves: false, of };
  const heavy = heavyTailed(sources);
  const whole = heavy ? ((high - low) / 2) ** 2 : sd ** 2;
  for (const name of new Set(sourceNames(sources).values())) {
    const share = whole === 0 ? 0 : (100 * sizeOf(spread, { ...plan, only: name }, heavy)) / whole;
    // Below this it is rounding, and not the same on every machine.
    of.set(name, share < 1e-6 ? 0 : tenDigits(share));
  }
  return { moves: whole > 0, of };
}

function sizeOf(spread: Spread, plan: { count?: number; only: string }, heavy: boolean): number {
  const draws = drawsOf(spread, drawing(spread.sources, plan));
  if (!heavy) return sdOf(draws) ** 2;
  const { low, high } = summary(draws, false);
  return ((high - low) / 2) ** 2;
}

/** inputsWith: names the inputs that a source came in by. */
export function sharesOf(
  { sources }: Spread,
  percents: Percents,
  inputsWith?: (source: Source) => readonly string[],
): Shared {
  const seen = new Map<string, Share>();
  for (const [source, name] of sourceNames(sources)) {
    if (seen.has(name)) continue;
    const by = inputsWith ? { inputs: inputsWith(source) } : {};
    seen.set(name, { id: source.id ?? "", source, ...by, percent: percents.of.get(name)! });
  }
  const shares = [...seen.values()].sort((a, b) => b.percent - a.percent);
  const total = shares.reduce((all, share) => all + share.percent, 0);
  return { shares, actTogether: percents.moves && Math.abs(total - 100) > 10 };
}
