// CSV (RFC 4180) to cells with places. Line ends may be CR LF, LF or CR.

import { afterQuote, openQuote } from "./complaints-csv.ts";
import type { Report, TextNode } from "./node.ts";
import { placeIn, type Source } from "./source.ts";

/** One row's cells; blank lines are no rows. */
export type CsvRow = readonly TextNode[];

export function readCsv(source: Source, separator: string, report: Report): CsvRow[] {
  const { text } = source;
  const rows: CsvRow[] = [];
  let row: TextNode[] = [];
  let at = separatorLine.exec(text)?.[0].length ?? (text.charCodeAt(0) === 0xfeff ? 1 : 0);

  while (at < text.length) {
    const start = at;
    let value = "";
    if (text[at] === '"') {
      const [inside, end] = quotedCell(text, at);
      if (end === undefined) {
        report(openQuote(), placeIn(source, start, 1));
        return rows;
      }
      value = inside;
      at = end;
      if (at < text.length && text[at] !== separator && !/[\r\n]/.test(text[at] ?? "")) {
        report(afterQuote(), placeIn(source, at, 1));
      }
    }
    const from = at;
    while (at < text.length && text[at] !== separator && text[at] !== "\n" && text[at] !== "\r") at += 1;
    value += text.slice(from, at);
    row.push({ kind: "text", text: value.trim(), place: placeIn(source, start, at - start) });
    if (text[at] === separator) {
      at += 1;
      if (at < text.length && text[at] !== "\n" && text[at] !== "\r") continue;
      row.push({ kind: "text", text: "", place: placeIn(source, at, 0) });
    }
    if (row.some((cell) => cell.text !== "")) rows.push(row);
    row = [];
    if (text[at] === "\r" && text[at + 1] === "\n") at += 1;
    at += 1;
  }
  return rows;
}

/** The cell's text without its quotes, and the offset after the closing one; undefined if there is none. */
function quotedCell(text: string, start: number): readonly [string, number | undefined] {
  let value = "";
  let from = start + 1;
  for (;;) {
    const quote = text.indexOf('"', from);
    if (quote < 0) return [value, undefined];
    value += text.slice(from, quote);
    if (text[quote + 1] !== '"') return [value, quote + 1];
    value += '"';
    from = quote + 2;
  }
}

/** "sep=;", which some spreadsheets write above the table, for themselves. */
const separatorLine = /^\uFEFF?sep=([;,\t|])[\r\n]+/i;

/** What parts the cells of the first row: a comma unless semicolons, tabs or bars stand there more often. */
export function csvSeparator(text: string): string {
  const said = separatorLine.exec(text)?.[1];
  if (said !== undefined) return said;
  const head = /^[\uFEFF\r\n]*([^\r\n]*)/.exec(text)?.[1]?.replace(/"[^"]*"/g, "") ?? "";
  const count = (sign: string) => head.split(sign).length - 1;
  if (count(";") > count(",") && count(";") >= count("\t")) return ";";
  if (count("|") > count(",") && count("|") > count("\t")) return "|";
  return count("\t") > count(",") ? "\t" : ",";
}
