// The rows of a founder's own sheet from a CSV file beside the log: the first row names the columns, with units as "wet (g)".

import { unitNamed } from "../quantity/read-unit.ts";
import { sameDimension } from "../quantity/unit.ts";
import { cellCount } from "./complaints-csv.ts";
import { headTwice, headUnit, plusMinusAlone, workedOutCell } from "./complaints-sheet.ts";
import { checkColumnNames, columnName, csvTable, rowPlace } from "./csv-table.ts";
import type { LoggedColumn, LoggedRow } from "./logged-sheet.ts";
import type { Report, TextNode } from "./node.ts";
import { cellsText, columnNamed, emptyCells, type ReadRows, unknown } from "./read-sheet-rows.ts";
import { isBlankCell } from "./read-sheets-context.ts";
import type { Source } from "./source.ts";

interface HeadColumn {
  readonly column: LoggedColumn;
  /** True where the cells are the ± of the column's figures: "wet ± (g)". */
  readonly plusMinus: boolean;
  /** As it stands in the head, where it is not the column's own. */
  readonly unit?: string;
}

export interface CsvRows extends ReadRows {
  /** The columns, with units that only the file's head gives. */
  readonly columns: readonly LoggedColumn[];
}

export function csvRows(source: Source, declared: readonly LoggedColumn[], report: Report): CsvRows {
  const table = csvTable(source, report);
  if (!table) return { rows: [], whole: false, columns: declared };
  checkColumnNames(table, report);
  const heads = table.head.map((cell) => headOf(cell, declared, report));
  heads.forEach((head, k) => {
    const same = heads.slice(0, k).some((other) => other && head && isSame(other, head));
    if (same) {
      report(headTwice(table.head[k]!.text), table.head[k]!.place);
      heads[k] = undefined;
    }
  });
  heads.forEach((head, k) => {
    const used = table.rows.filter((row) => !isBlankCell(row[k]?.text ?? ""));
    if (head?.column.formula && used.length > 0)
      report(workedOutCell(head.column.name, cellsText(used.length)), table.head[k]!.place);
  });
  const columns = declared.map((column) => withHeadUnit(column, heads, table.head));
  let whole = true;
  const rows = table.rows.flatMap((row): LoggedRow[] => {
    if (row.length !== table.head.length) {
      report(cellCount(String(row.length), String(table.head.length)), rowPlace(row));
      whole = false;
      return [];
    }
    return [{ cells: cellsOf(row, heads, report), place: rowPlace(row) }];
  });
  return { rows, whole, columns };
}

const isSame = (a: HeadColumn, b: HeadColumn) => a.column === b.column && a.plusMinus === b.plusMinus;

/** Columns that a page's own CSV file adds, and remarks: no part of the sheet. */
const besides = /^(faults|invented|note|.*: its ± is)$/i;

function headOf(cell: TextNode, columns: readonly LoggedColumn[], report: Report): HeadColumn | undefined {
  const text = unquoted(cell.text);
  if (text === "") return undefined;
  const whole = columnNamed(columns, text);
  if (whole) return { column: whole, plusMinus: false };
  if (besides.test(columnName(cell))) return undefined;
  const [, before = text, unit] = /^(.*?)\s*[([]([^()[\]]*)[)\]]$/.exec(text) ?? [];
  const plusMinus = /\s*(?:,\s*)?(?:±|\+\/-)$/.test(before);
  const column = columnNamed(columns, plusMinus ? before.replace(/\s*(?:,\s*)?(?:±|\+\/-)$/, "") : before);
  if (!column) {
    report(...unknown(text, columns), cell.place);
    return undefined;
  }
  if (unit === undefined || !isQuantity(column)) return { column, plusMinus };
  const own = column.unit && unitNamed(column.unit.text);
  const given = unitNamed(unit);
  if (!given || (own && !sameDimension(own, given))) {
    report(headUnit(column.name, unit, column.unit?.text ?? "no unit"), cell.place);
    return undefined;
  }
  return { column, plusMinus, ...(own?.text === given.text ? {} : { unit: given.text }) };
}

const isQuantity = ({ kind, formula }: LoggedColumn): boolean =>
  formula === undefined && (kind === undefined || kind === "quantity");

/** A unit that stands in the head alone is the column's. */
function withHeadUnit(
  column: LoggedColumn,
  heads: readonly (HeadColumn | undefined)[],
  cells: readonly TextNode[],
): LoggedColumn {
  const at = heads.findIndex((head) => head?.column === column && !head.plusMinus && head.unit !== undefined);
  const unit = heads[at]?.unit;
  return column.unit || unit === undefined
    ? column
    : { ...column, unit: { text: unit, place: cells[at]!.place } };
}

function cellsOf(
  row: readonly TextNode[],
  heads: readonly (HeadColumn | undefined)[],
  report: Report,
): LoggedRow["cells"] {
  const cells = emptyCells();
  const place = (index: number) => row[index]!.place;
  heads.forEach((head, k) => {
    const text = unquoted(row[k]?.text ?? "");
    if (!head || head.plusMinus || head.column.formula || isBlankCell(text)) return;
    cells[head.column.name] = { text: withUnit(text, head.unit), place: place(k) };
  });
  heads.forEach((head, k) => {
    const text = unquoted(row[k]?.text ?? "");
    if (!head?.plusMinus || head.column.formula || isBlankCell(text)) return;
    const { name } = head.column;
    const figure = cells[name];
    if (figure && !/±|\+\/?-/.test(figure.text)) {
      cells[name] = { text: `${figure.text} ± ${withUnit(text, head.unit)}`, place: figure.place };
    } else if (!figure) report(plusMinusAlone(row[k]!.text), place(k));
  });
  return cells;
}

/** A bare number in a column whose head gives another unit than the log: "12" is "12 lb". */
function withUnit(text: string, unit: string | undefined): string {
  if (unit === undefined) return text;
  return text.replace(/^([-+−]?[\d.,/ ]*\d(?:e[-+]?\d+)?)(?=\s*(?:$|±|\+\/?-|\())/i, `$1 ${unit}`);
}

/** The apostrophe that keeps a spreadsheet from running a cell is no part of it. */
function unquoted(text: string): string {
  return text.replace(/^'(?=\s*[=+\-@\u2212\uff1d\uff0b\uff0d\uff20])/, "").trim();
}
