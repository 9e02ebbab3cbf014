// Scales of a plain drawing, and which of their labels are shown.

import type { Scale } from "./frame.ts";
import type { PlainScale } from "./plain-spec.ts";

/** From a value to a place between the ends, by the steps that d3 takes, so that no digit differs. */
export function scaleOf(
  { type, domain: [from, to] }: PlainScale,
  [first, last]: readonly [number, number],
): Scale {
  const along = type === "log" ? Math.log : (value: number) => value;
  const [low, high] = [along(Math.min(from, to)), along(Math.max(from, to))];
  const [start, end] = from > to ? [last, first] : [first, last];
  return (value) => {
    const part = (along(value) - low) / (high - low);
    return start * (1 - part) + end * part;
  };
}

/**
 * Which labels are shown: every other one is left out until none touches the next, and of two that still do the first
 * (Vega's parity).
 * @param middles  px along the axis.
 * @param lengths  px along the axis.
 */
export function shownLabels(middles: readonly number[], lengths: readonly number[]): readonly boolean[] {
  const shown = middles.map(() => true);
  const touch = (a: number, b: number): boolean =>
    Math.max(middles[a]! - lengths[a]! / 2, middles[b]! - lengths[b]! / 2) <
    Math.min(middles[a]! + lengths[a]! / 2, middles[b]! + lengths[b]! / 2);
  const touching = (some: readonly number[]) => some.some((one, i) => i > 0 && touch(some[i - 1]!, one));
  let some = middles.map((_, i) => i);
  if (some.length < 3 || !touching(some)) return shown;
  do {
    for (const [i, one] of some.entries()) if (i % 2 === 1) shown[one] = false;
    some = some.filter((_, i) => i % 2 === 0);
  } while (some.length >= 3 && touching(some));
  if (some.length < 3 && !shown.at(-1)) {
    if (some.length > 1) shown[some.at(-1)!] = false;
    shown[shown.length - 1] = true;
  }
  return shown;
}
