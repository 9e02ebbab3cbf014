// The tables of a page as CSV files: RFC 4180, and nothing in them runs as a formula.

import type { Page, TableColumn, TableRow } from "./blocks.ts";
import { everyBlock, layOut } from "./lay-out.ts";
import { cellOf, chartTableParts, tenDigits } from "./table-parts.ts";
import { visible } from "./visible.ts";

/**
 * Each table of the page as a file, named for the table; the table of a chart is "<chart>-data.csv". Lines end in
 * CR LF (RFC 4180). The files begin with a byte order mark: without it common spreadsheet programs read ± and µ
 * as two letters each. A cell with a plain number carries that number, unrounded up to ten significant digits.
 * A cell that a spreadsheet could take for a formula is led by an apostrophe; a plain number such as -3.2 is not.
 * Faults stand in a last column of their own.
 */
export function writeCsv(page: Page): { [fileName: string]: string } {
  const files: { [fileName: string]: string } = {};
  for (const block of layOut(page).sections.flatMap((section) => everyBlock(section.blocks))) {
    if (block.kind === "table") {
      files[`${block.stem}.csv`] = csv(block.columns, [...block.rows, ...(block.foot ?? [])]);
    } else if (block.kind === "chart") {
      const { columns, rows } = chartTableParts(block.chart.table);
      files[`${block.stem}-data.csv`] = csv(columns, rows);
    }
  }
  return files;
}

function csv(columns: readonly TableColumn[], rows: readonly TableRow[]): string {
  const faults = rows.map((row) =>
    columns.flatMap(({ head }, c) => {
      const { fault } = cellOf(row[c]);
      return fault === undefined ? [] : [`${head}: ${fault}`];
    }),
  );
  const withFaults = faults.some((found) => found.length > 0);
  const heads = columns.map(({ head, unit }) => (unit === undefined ? head : `${head} (${unit})`));
  const lines = [withFaults ? [...heads, "Faults"] : heads].concat(
    rows.map((row, r) => {
      const cells = columns.map((_, c) => {
        const { text, number } = cellOf(row[c]);
        return number === undefined || !Number.isFinite(number) ? text : String(tenDigits(number));
      });
      return withFaults ? [...cells, faults[r]!.join("; ")] : cells;
    }),
  );
  return `\ufeff${lines.map((cells) => `${cells.map(csvCell).join(",")}\r\n`).join("")}`;
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
