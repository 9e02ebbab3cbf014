// A row put into a CSV file or taken out of it.

import type { Issue } from "../issue.ts";
import { noSuchPath, noSuchRow, signInCsv, unknownColumns } from "./complaints-edit.ts";
import { csvCell, csvUnfit } from "./edit-csv-cell.ts";
import { type CsvReading, textsOf } from "./edit-csv-reading.ts";
import type { CsvTry } from "./edit-csv-try.ts";
import { cellWritten } from "./edit-csv-write.ts";
import { pathText } from "./edit-find.ts";
import { endOfLine } from "./edit-splice.ts";
import type { LogEdit, LogPath } from "./edit-types.ts";
import { plainName } from "./node.ts";

type CsvRefused = { readonly refused: Issue };

/** Cells in the order of the columns; a column that is not given is left empty. */
export function rowAdded(reading: CsvReading, edit: LogEdit & { kind: "add" }): CsvTry | CsvRefused {
  const { source, separator, rows } = reading;
  const [head, ...others] = textsOf(reading);
  if (!head) return { refused: noSuchRow("1", "no row of names") };
  const given = Object.entries(edit.entries).map(([name, text]) => ({
    name,
    text: text.trim(),
    column: columnOf(head, name),
  }));
  const unknown = given.filter(({ column }) => column < 0).map(({ name }) => `"${name}"`);
  if (unknown.length > 0) return { refused: unknownColumns(unknown.join(", "), head.join(", ")) };
  if (given.some(({ text }) => csvUnfit(text))) return { refused: signInCsv() };
  const cells = head.map((_, column) => given.findLast((one) => one.column === column)?.text ?? "");
  const line = cells.map((cell) => csvCell(cell, separator, false)).join(separator);
  const eol = endOfLine(source.text);
  const index = Math.min(Math.max(0, edit.at ?? others.length), others.length);
  // Behind the row before it, the head for the first, so that blank lines stay with what follows.
  const last = rows[index]!.at(-1)!.place;
  const at = last.offset! + last.length!;
  return {
    splice: { start: at, end: at, text: eol + line },
    wanted: [head, ...others.toSpliced(index, 0, cells)],
    shown: { from: eol.length, length: line.length },
    what: line,
  };
}

/** A row; of a cell, what stands in it. */
export function rowRemoved(reading: CsvReading, path: LogPath): CsvTry | CsvRefused {
  const [, row, column, ...more] = path;
  const { rows } = reading;
  const cells = typeof row === "number" && row >= 0 ? rows[row + 1] : undefined;
  if (!cells || more.length > 0) {
    if (typeof row !== "number") return { refused: noSuchPath(pathText(path)) };
    return { refused: noSuchRow(String(row + 1), String(rows.length - 1)) };
  }
  if (column !== undefined) {
    const head = rows[0]!.map(({ text }) => text);
    const cell = cells[columnOf(head, String(column))];
    if (!cell) return { refused: unknownColumns(`"${column}"`, head.join(", ")) };
    return cellWritten(reading, cell.place.offset, cell.place.length, "");
  }
  const before = rows[row as number]!.at(-1)!.place;
  const last = cells.at(-1)!.place;
  const [from, end] = [before.offset! + before.length!, last.offset! + last.length!];
  // The line end before the row goes with it; blank lines before it stay.
  const start = cells[0]!.place.offset!;
  const { text } = reading.source;
  const cut = text.slice(from, start).endsWith("\r\n") ? start - 2 : start - 1;
  return {
    splice: { start: Math.max(from, cut), end, text: "" },
    wanted: textsOf(reading).toSpliced((row as number) + 1, 1),
    what: cells.map((cell) => cell.text).join(", "),
  };
}

/** Index of the column; -1 where there is none. */
function columnOf(head: readonly string[], name: string): number {
  const exact = head.indexOf(name);
  return exact >= 0 ? exact : head.findIndex((one) => plainName(one) === plainName(name));
}
