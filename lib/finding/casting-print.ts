// How numbers beside a fault are told: the page says in which unit, else the library's own.

import type { TestName } from "../log/batch.ts";
import { printFigure } from "../quantity/print.ts";
import { figureWords, plainNumber } from "./diary-print.ts";
import type { Ends } from "./ends.ts";

export interface CastingOf {
  /** "% of damp mass", "°C"; empty for a bare number. */
  readonly unit: string;
  readonly test?: TestName;
}

export interface CastingPrint {
  number(value: number, of: CastingOf): string;
  /** "3.4, 3.6, 4.1 %": the unit once. */
  numbers(values: readonly number[], of: CastingOf): string;
  /** A difference with its interval; a difference of temperatures is no temperature. */
  difference(at: Partial<Ends> & { readonly value: number }, of: CastingOf): string;
}

export const castingInOwnUnits: CastingPrint = {
  number: (value, { unit }) => `${plainNumber(value)} ${unit}`.trimEnd(),
  numbers: (values, { unit }) => `${values.map(plainNumber).join(", ")} ${unit}`.trimEnd(),
  difference: ({ value, low, high }, { unit }) => differenceWords({ value, low, high }, unit),
};

/** "0.8 ± 0.4 %", "0.7 % (95 %: 0.2 to 1.9)" where its halves are unlike; without an interval it says so. */
export function differenceWords(
  { value, low, high }: { value: number; low: number | undefined; high: number | undefined },
  unit: string,
): string {
  const size = figureWords({ value, low: value, high: value }, unit, false);
  if (low === undefined || high === undefined) return `${size} (so few give no 95 % interval)`;
  const printed = printFigure({ value, low, high, unit });
  return printed.form === "range"
    ? `${[printed.value, unit].join(" ").trimEnd()} (95 %: ${printed.low} to ${printed.high})`
    : printed.text;
}
