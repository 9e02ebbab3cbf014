// Figures of a heap as they stand on its page.

import type { UnitSystem } from "../log/types.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { Band } from "../sand/season-bands.ts";
import type { TableCell } from "./blocks.ts";
import { inShownUnit } from "./shown-units.ts";

type Ends = Pick<Band, "value" | "low" | "high">;

/** "0.14 ± 0.05", "0.08 to 0.20"; nothing below zero. */
export function bandText({ value, low, high }: Ends): string {
  if (!Number.isFinite(value)) return "without end";
  return printFigure({ value, low: Math.min(low, value), high: Math.max(high, value), min: 0 }).text;
}

/** A table's cell with its number in the library's unit. */
export function bandCell(band: Ends): TableCell {
  return { text: bandText(band), number: band.value };
}

/** A mass in kg as the page's system prints it. */
export function kgCell({ value, low, high }: Ends, system: UnitSystem): TableCell {
  const to = (kg: number): number => inShownUnit(kg, "kg", system).value;
  return { text: bandText({ value: to(value), low: to(low), high: to(high) }), number: value };
}

/** "14", "9 to 22", "more than 30": pours until something comes about, within a plan of so many. */
export function poursText({ low, value, high }: Band, planned: number): string {
  if (!Number.isFinite(low)) return `more than ${planned}`;
  if (!Number.isFinite(value) || !Number.isFinite(high))
    return `${printNumber(low, 0)} to more than ${planned}`;
  return low === high ? printNumber(value, 0) : `${printNumber(low, 0)} to ${printNumber(high, 0)}`;
}
