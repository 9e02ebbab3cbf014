// The ends of an interval as a page prints them: "69.1 ± 0.4", "69.1 ± at least 0.4 kPa", "62 to 75 or wider".

import { printFigure } from "../../lib/quantity/print.ts";

export interface PrintedEnds {
  readonly low: number;
  readonly high: number;
  readonly atLeast: boolean;
}

const number = "(-?\\d+(?:\\.\\d+)?)";
const plusMinus = new RegExp(`${number} ± (at least )?${number}`);
const range = new RegExp(`${number} to ${number}( or wider)?`);

/** Of the first figure with a ± or a range in the text; undefined where there is none. */
export function endsIn(text: string): PrintedEnds | undefined {
  const plain = text.replaceAll("−", "-");
  const one = plusMinus.exec(plain);
  if (one) {
    const [value, half] = [Number(one[1]), Number(one[3])];
    return { low: value - half, high: value + half, atLeast: one[2] !== undefined };
  }
  const two = range.exec(plain);
  if (!two) return undefined;
  return { low: Number(two[1]), high: Number(two[2]), atLeast: two[3] !== undefined };
}

/** The same after printing: rounded as on a page. An end that is open stays so. */
export function asPrinted(
  { value, low, high }: { readonly value: number; readonly low: number; readonly high: number },
  atLeast = false,
): PrintedEnds | undefined {
  if (!Number.isFinite(low) || !Number.isFinite(high)) return { low, high, atLeast };
  const [from, to] = [Math.min(low, value), Math.max(high, value)];
  return from < to ? endsIn(printFigure({ value, low: from, high: to, atLeast }).text) : undefined;
}
