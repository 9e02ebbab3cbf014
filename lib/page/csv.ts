// The tables of a page as CSV files: RFC 4180, and nothing in them runs as a formula.

import type { Page, TableColumn, TableRow } from "./blocks.ts";
import { chartTableData } from "./chart-table.ts";
import { everyBlock, layOut } from "./lay-out.ts";
import { cellOf } from "./table-parts.ts";
import { visible } from "./visible.ts";

/**
 * Each table of the page as a file, named for the table; the table of a chart is "<chart>-data.csv". Lines end in
 * CR LF (RFC 4180). The files begin with a byte order mark: without it common spreadsheet programs read ± and µ
 * as two letters each. A cell with a plain number carries that number to six significant digits; a column of numbers
 * is empty where there is none; a reading keeps ten digits, and the ± that was typed with it stands in a column of its
 * own. Where the ± of a figure is a lower bound, a column after it says "at least". A table's foot is a file of its own,
 * "<table>-foot.csv". Beside a column of ranges stand their ends as plain numbers, "from" and "to". A cell that a spreadsheet could take for a formula is led by an apostrophe; a plain number such as -3.2 is not. Faults
 * stand in a last column of their own; so does it that the data are invented.
 * @example Object.keys(writeCsv(fineness.run(log))) // file names
 */
export function writeCsv(page: Page): { [fileName: string]: string } {
  const files: { [fileName: string]: string } = {};
  const laid = layOut(page);
  for (const block of laid.sections.flatMap((section) => everyBlock(section.blocks))) {
    if (block.kind === "table") {
      // The foot apart, so that the rows can be read again as rows.
      const { columns, rows, foot = [] } = block;
      if (rows.length > 0) files[`${block.stem}.csv`] = csv(columns, rows, laid.invented);
      if (foot.length > 0) files[`${block.stem}-foot.csv`] = csv(columns, foot, laid.invented);
    } else if (block.kind === "chart") {
      const { columns, rows } = chartTableData(block.chart.data ?? block.chart.table);
      files[`${block.stem}-data.csv`] = csv(columns, rows, laid.invented);
    }
  }
  return files;
}

interface FileColumn {
  readonly head: string;
  readonly cell: (row: TableRow) => string;
}

function csv(columns: readonly TableColumn[], rows: readonly TableRow[], invented: boolean): string {
  const written = columns.flatMap((column, c): FileColumn[] => {
    const unit = column.dataUnit ?? column.unit;
    const head = unit === undefined ? column.head : `${column.head} (${unit})`;
    const own = { head, cell: (row: TableRow) => cellText(row, c, column.align === "number") };
    const bound = (row: TableRow) => (isLowerBound(cellOf(row[c]).text) ? "at least" : "");
    const typed = (row: TableRow) => cellOf(row[c]).plusMinus ?? "";
    const end = (which: "low" | "high") => (row: TableRow) => {
      const number = cellOf(row[c]).ends?.[which];
      return number === undefined ? "" : String(Number(number.toPrecision(6)));
    };
    const inUnit = unit === undefined ? "" : ` (${unit})`;
    const beside: FileColumn[] = [
      { head: `${column.head}: from${inUnit}`, cell: end("low") },
      { head: `${column.head}: to${inUnit}`, cell: end("high") },
      { head: `${column.head} ±${inUnit}`, cell: typed },
      { head: `${column.head}: its ± is`, cell: bound },
    ];
    return [own, ...beside.filter(({ cell }) => rows.some((row) => cell(row) !== ""))];
  });
  const faults = (row: TableRow): string =>
    columns
      .flatMap(({ head }, c) => {
        const { fault } = cellOf(row[c]);
        return fault === undefined ? [] : [`${head}: ${fault}`];
      })
      .join("; ");
  if (rows.some((row) => faults(row) !== "")) written.push({ head: "Faults", cell: faults });
  if (invented) written.push({ head: "Invented", cell: () => "yes" });
  const lines = [written.map(({ head }) => head), ...rows.map((row) => written.map(({ cell }) => cell(row)))];
  return `\ufeff${lines.map((cells) => `${cells.map(csvCell).join(",")}\r\n`).join("")}`;
}

function cellText(row: TableRow, c: number, numbers: boolean): string {
  const { text, number, whole } = cellOf(row[c]);
  if (number !== undefined && Number.isFinite(number))
    return String(Number(number.toPrecision(whole ? 10 : 6)) + 0);
  return numbers && /^[–—-]$/.test(text) ? "" : text;
}

/** As figures are printed whose doubt is not known in every part: "± at least 0.4", "62 to 75 or wider". */
function isLowerBound(text: string): boolean {
  return /± at least |± not known\)|\d.* or wider$/.test(text);
}

const PLAIN_NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
/** What programs begin a formula with, plain and full-width, and the minus sign; white space before it is skipped. */
const FORMULA = /^\s*[=+\-@\u2212\uff1d\uff0b\uff0d\uff20]/;

/** One cell: defused where it could run, quoted where it must be. */
export function csvCell(text: string): string {
  const shown = visible(text);
  // A true minus sign is for the eye; a spreadsheet reads the hyphen.
  const ascii = shown.replace(/^\u2212(?=[\d.])/, "-");
  const cell = PLAIN_NUMBER.test(ascii)
    ? ascii
    : /^[\t\r]/.test(shown) || FORMULA.test(shown)
      ? `'${shown}`
      : shown;
  return /[",\r\n]|^\s|\s$/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell;
}
