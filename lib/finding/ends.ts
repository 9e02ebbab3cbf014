// The ends of a figure's 95 % interval, worked out once for each spread however often a page asks.

import { figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";

export interface Ends {
  readonly low: number;
  readonly high: number;
}

const known = new WeakMap<Spread, Ends>();

/** low and high of figure(spread); alike where the ± is not known. */
export function endsOf(spread: Spread): Ends {
  const before = known.get(spread);
  if (before) return before;
  const { low, high } = figure(spread);
  const ends = { low, high };
  known.set(spread, ends);
  return ends;
}
