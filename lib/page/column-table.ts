// The table of a founder's own script: its columns side by side.

import { columnFigures } from "../finding/column-figures.ts";
import { invariant } from "../issue.ts";
import type { FigureColumn } from "../quantity/figure-column.ts";
import type { TableBlock, TableCell } from "./blocks.ts";
import { figureCell } from "./figure-cell.ts";

export interface ColumnTableInput {
  /** For the CSV file: lower case, hyphens. */
  readonly name: string;
  readonly caption: string;
  readonly columns: readonly FigureColumn[];
}

/**
 * A table of columns: figures rounded to their ± (half of the 95 % interval) and aligned at the decimal mark, numbers
 * without a ± with four digits, texts as they are, nothing where nothing was measured. CSV and JSON keep the plain
 * numbers. Columns of unlike length, and one that is not there, throw Misuse.
 * @example
 * columnTable({
 *   name: "bags",
 *   caption: "What the bags weigh",
 *   columns: [
 *     { title: "bag", values: ["Alder", "Birch"] },
 *     { title: "mass", unit: "kg", values: [spread("24.8 ± 0.1 kg"), undefined] },
 *   ],
 * }).rows.length // 2
 */
export function columnTable({ name, caption, columns }: ColumnTableInput): TableBlock {
  columns.forEach((column, k) => {
    invariant(column, `column ${k + 1} of the table "${name}" is not there: look at the name it is taken by`);
  });
  const rows = columns[0]?.values.length ?? 0;
  for (const { title, values } of columns)
    invariant(values.length === rows, `"${title}" has ${values.length} rows, the first column ${rows}`);
  const cells = columns.map((column): readonly TableCell[] => {
    const figures = columnFigures(column);
    return column.values.map((one, row) => {
      if (typeof one === "string") return { text: one };
      const { value, low = value, high = value } = figures[row]!;
      return Number.isFinite(value) ? figureCell({ value, low, high }) : { text: "" };
    });
  });
  return {
    kind: "table",
    name,
    caption,
    columns: columns.map(({ title, unit, values }) => ({
      head: title,
      ...(unit === undefined ? {} : { unit }),
      align: values.some((one) => typeof one === "string") ? "text" : "number",
    })),
    rows: Array.from({ length: rows }, (_, row) => cells.map((column) => column[row]!)),
  };
}
