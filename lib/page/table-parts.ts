// A table as the writers take it: a block's own, or the data of a chart.

import type { ChartTable } from "../chart/chart.ts";
import type { TableCell, TableColumn, TableRow } from "./blocks.ts";

export interface TableParts {
  /** "Table 2": what the caption begins with. */
  readonly label: string;
  /** Left out where the label says all. */
  readonly caption?: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  readonly foot?: readonly TableRow[];
}

/** The table of a chart in the shape of a page's table; a column of numbers only is set as numbers. */
export function chartTableParts(table: ChartTable): Pick<TableParts, "columns" | "rows"> {
  // A column in which nothing stands tells nothing.
  const kept = table.columns.map((_, c) => c).filter((c) => table.rows.some((row) => isThere(row[c])));
  const columns = kept.map((c): TableColumn => {
    const { name, unit } = table.columns[c]!;
    const numbers = table.rows.every((row) => typeof row[c] !== "string");
    return { head: name, ...(unit === undefined ? {} : { unit }), align: numbers ? "number" : "text" };
  });
  const rows = table.rows.map((row) =>
    kept.map((c): TableCell => {
      const value = row[c];
      if (typeof value === "string") return { text: value };
      if (typeof value !== "number" || !Number.isFinite(value)) return { text: "–" };
      return { text: String(Number(value.toPrecision(4))), number: value };
    }),
  );
  return { columns, rows };
}

const isThere = (value: unknown): boolean => typeof value === "string" || Number.isFinite(value);

export function cellOf(cell: string | TableCell | undefined): TableCell {
  return typeof cell === "object" ? cell : { text: cell ?? "" };
}

/** Ten significant digits: the same on every machine. */
export function tenDigits(x: number): number {
  return Number(x.toPrecision(10)) + 0;
}
