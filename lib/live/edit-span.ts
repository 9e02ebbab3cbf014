// What a figure may be tried as: a span about it, a step, and how a tried number is written.

import { readQuantity } from "../quantity/read-quantity.ts";

export interface TrySpan {
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** The figure as typed with another number in it: unit and ± stay. */
  readonly say: (value: number) => string;
}

/** Share of a figure's size to either side that is tried, and how many of its own ±; our own. */
const SHARE = 0.3;
const HALF_WIDTHS = 4;
const FEWEST_STEPS = 5;

/**
 * The span of one plain figure: 30 % of its size to either side, or four of its own ± where those are more; not below
 * zero for a figure that is not, not above 100 for a percentage that is not. The step is that of its last digit, a tenth
 * of it where the span would be fewer than five. Undefined for what is no single decimal number: words, dates, ranges,
 * fractions of an inch, pounds with ounces.
 * @example trySpan("0.107 kg")?.say(0.12) // "0.120 kg"
 */
export function trySpan(text: string): TrySpan | undefined {
  const typed = /^(\s*)([-+\u2212]?\d+(?:\.(\d+))?)(?![\d.,/:-]|\s+\d)/.exec(text);
  const read = typed ? readQuantity(text).value : undefined;
  if (!typed || !read || !Number.isFinite(read.value)) return undefined;
  const [head, lead, number, fraction = ""] = typed as unknown as [string, string, string, string?];
  const value = Number(number.replace("\u2212", "-"));
  if (value !== read.value) return undefined;
  let decimals = fraction.length;
  let half = Math.max(SHARE * Math.abs(value), HALF_WIDTHS * (read.plusMinus?.size ?? 0));
  if (half === 0) half = 10 * 10 ** -decimals;
  if (2 * half < FEWEST_STEPS * 10 ** -decimals) decimals += 1;
  const round = (x: number): number => Number(x.toFixed(decimals));
  const least = value >= 0 ? Math.max(0, value - half) : value - half;
  const percent = /^\s*%/.test(text.slice(head.length)) && value <= 100;
  const most = percent ? Math.min(100, value + half) : value + half;
  return {
    value,
    least: round(least),
    most: round(most),
    step: round(10 ** -decimals),
    say: (tried) => `${lead}${tried.toFixed(decimals)}${text.slice(head.length)}`,
  };
}
