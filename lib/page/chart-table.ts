// The data of a chart as a table of the page.

import type { ChartTable } from "../chart/chart.ts";
import type { TableCell, TableColumn } from "./blocks.ts";
import type { TableParts } from "./table-parts.ts";
import { english, type PageWords } from "./words.ts";

/** A text longer than this would make its column a word wide; it is told under the table instead. */
const LONGEST_TEXT = 30;

type Column = ChartTable["columns"][number];
type Value = string | number | null | undefined;

/** All that a chart's table holds, for a file: numbers whole, empty where there is no figure. */
export function chartTableData(table: ChartTable): Pick<TableParts, "columns" | "rows"> {
  const { columns, rows } = kept(table);
  return {
    columns: columns.map((column, c) => pageColumn(column, rows, c)),
    rows: rows.map((row) =>
      row.map((value): TableCell => {
        if (typeof value === "string") return { text: value };
        return isFigure(value) ? { text: String(value), number: value } : { text: "" };
      }),
    ),
  };
}

/**
 * The same for the eye: the numbers of all columns of one unit to one number of decimals (four figures of the
 * largest), so that they can be compared down and across, and long texts numbered and told once under the table.
 */
export function chartTableParts(
  table: ChartTable,
  words: PageWords = english,
): Pick<TableParts, "columns" | "rows" | "notes"> {
  const { columns, rows } = kept(table);
  const alike = (a: number, b: number) =>
    a === b || ((columns[a]!.unit ?? "") !== "" && columns[a]!.unit === columns[b]!.unit);
  const decimals = columns.map((_, c) =>
    decimalsOf(
      rows.flatMap((row) => row.filter((value, other) => alike(c, other) && isFigure(value)) as number[]),
    ),
  );
  const notes: string[] = [];
  const noted = columns.map(
    (_, c) => c > 0 && rows.some((row) => typeof row[c] === "string" && row[c].length > LONGEST_TEXT),
  );
  const numberOf = (text: string): number => {
    if (!notes.includes(text)) notes.push(text);
    return notes.indexOf(text) + 1;
  };
  return {
    columns: columns.map((column, c) => pageColumn(column, rows, c)),
    rows: rows.map((row) =>
      row.map((value, c): TableCell => {
        if (typeof value === "string")
          return {
            text: noted[c] && value.length > LONGEST_TEXT ? words.note(String(numberOf(value))) : value,
          };
        if (!isFigure(value)) return { text: "" };
        return { text: rounded(value, decimals[c]!, columns[c]!.unit ?? ""), number: value };
      }),
    ),
    ...(notes.length === 0 ? {} : { notes: notes.map((text, i) => words.noteText(String(i + 1), text)) }),
  };
}

/** A share that is nearly all or nearly none is not rounded to all or none: "> 99.9", "< 0.1". */
function rounded(value: number, decimals: number, unit: string): string {
  const text = value.toFixed(decimals);
  const least = 10 ** -decimals;
  if (!/^%/.test(unit)) return text;
  if (value < 100 && Number(text) >= 100) return `> ${(100 - least).toFixed(decimals)}`;
  return value > 0 && Number(text) === 0 ? `< ${least.toFixed(decimals)}` : text;
}

/** Numbers of the columns in which something stands: others tell nothing and are left out. */
export function toldColumns({ columns, rows }: ChartTable): number[] {
  return columns.map((_, c) => c).filter((c) => rows.some((row) => row[c] !== "" && isThere(row[c])));
}

function kept(table: ChartTable): { columns: readonly Column[]; rows: readonly Value[][] } {
  const told = toldColumns(table);
  return {
    columns: told.map((c) => table.columns[c]!),
    rows: table.rows.map((row) => told.map((c) => row[c])),
  };
}

function pageColumn({ name, unit }: Column, rows: readonly Value[][], c: number): TableColumn {
  const numbers = rows.every((row) => typeof row[c] !== "string");
  return { head: name, ...(unit === undefined ? {} : { unit }), align: numbers ? "number" : "text" };
}

function isFigure(value: Value): value is number {
  return typeof value === "number" && Number.isFinite(value);
}

function isThere(value: Value): boolean {
  return typeof value === "string" || isFigure(value);
}

/** Four figures of the largest, at least one of the smallest, none behind whole numbers; six at most. */
function decimalsOf(values: readonly number[]): number {
  const sizes = values.map(Math.abs).filter((size) => size > 0);
  if (values.every(Number.isInteger) || sizes.length === 0) return 0;
  const power = (size: number) => Math.floor(Math.log10(size));
  const wanted = Math.max(3 - power(Math.max(...sizes)), -power(Math.min(...sizes)));
  const most = Math.min(6, Math.max(0, wanted));
  // A chart's table may hold thousands of numbers, of which the first mostly needs them all.
  let needed = 0;
  for (const value of values) {
    if (needed >= most) return most;
    needed = Math.max(needed, decimalsIn(Number(value.toPrecision(10))));
  }
  return Math.min(most, needed);
}

function decimalsIn(value: number): number {
  const [digits, exponent] = value.toExponential().split("e");
  return Math.max(0, (digits!.split(".")[1]?.length ?? 0) - Number(exponent));
}
