// A figure with its ± as a cell of a table.

import type { Figure } from "../quantity/figure.ts";
import { printFigure } from "../quantity/print.ts";
import type { TableCell } from "./blocks.ts";

/** A figure without a known ± keeps four digits: more would claim what nobody measured. */
export function figureCell({ value, low, high }: Pick<Figure, "value" | "low" | "high">): TableCell {
  if (low === high) return { text: String(Number(value.toPrecision(4))), number: value };
  return {
    text: printFigure({ value, low: Math.min(low, value), high: Math.max(high, value) }).text,
    number: value,
  };
}
