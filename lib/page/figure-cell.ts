// A figure with its ± as a cell of a table.

import type { Figure } from "../quantity/figure.ts";
import { printFigure } from "../quantity/print.ts";
import type { TableCell } from "./blocks.ts";

export function figureCell({ value, low, high }: Pick<Figure, "value" | "low" | "high">): TableCell {
  return {
    text: printFigure({ value, low: Math.min(low, value), high: Math.max(high, value) }).text,
    number: value,
  };
}
