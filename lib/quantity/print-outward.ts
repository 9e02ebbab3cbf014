// Limits as text: they are rounded away from each other, so that what is printed still holds what was worked out.

import { printNumber, tenDigits } from "./print-number.ts";

/**
 * "48 to 66": limits rounded outwards, to whole numbers where they lie five or more apart, to one decimal from a half
 * on, else to two. Any finite numbers; low above high throws.
 * Source: none needed; rounding outwards is what interval arithmetic does (IEEE 1788-2015).
 * @example printOutward({ low: 6.68, high: 8.21 }) // "6.6 to 8.3"
 */
export function printOutward({ low, high }: { readonly low: number; readonly high: number }): string {
  if (low > high) throw new RangeError(`limits from ${low} to ${high} are the wrong way round`);
  const apart = high - low;
  const decimals = apart >= 5 ? 0 : apart >= 0.5 ? 1 : 2;
  const times = 10 ** decimals;
  const at = (value: number, round: (x: number) => number): string =>
    printNumber(round(tenDigits(value * times)) / times, decimals);
  return `${at(low, Math.floor)} to ${at(high, Math.ceil)}`;
}
