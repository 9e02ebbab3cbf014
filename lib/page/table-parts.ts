// A table as the writers take it.

import type { TableCell, TableColumn, TableRow } from "./blocks.ts";
import type { PageWords } from "./words.ts";

export interface TableParts {
  /** "Table 2": what the caption begins with. */
  readonly label: string;
  /** Left out where the label says all. */
  readonly caption?: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  readonly foot?: readonly TableRow[];
  /** Told under the table, a line each. */
  readonly notes?: readonly string[];
  /** For a page in which figures can be changed: a cell says where in the log its reading stands. */
  readonly live?: boolean;
  /** The page's own words; English unless given. */
  readonly words?: PageWords;
}

export function cellOf(cell: string | TableCell | undefined): TableCell {
  return typeof cell === "object" ? cell : { text: cell ?? "" };
}

/** Ten significant digits: the same on every machine. */
export function tenDigits(x: number): number {
  return Number(x.toPrecision(10)) + 0;
}

/** Without the spare columns that no row has anything in. */
export function withoutSpare<Table extends Pick<TableParts, "columns" | "rows" | "foot">>(
  table: Table,
): Table {
  const { columns, rows, foot = [] } = table;
  const kept = columns.flatMap(({ spare }, c) =>
    spare && [...rows, ...foot].every((row) => cellOf(row[c]).text === "") ? [] : [c],
  );
  if (kept.length === columns.length) return table;
  const taken = (row: TableRow): TableRow => kept.map((c) => row[c] ?? "");
  return {
    ...table,
    columns: kept.map((c) => columns[c]!),
    rows: rows.map(taken),
    ...(table.foot ? { foot: foot.map(taken) } : {}),
  };
}
