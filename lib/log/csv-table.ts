// A CSV file as a head and rows of cells, with what is wrong with its writing.

import type { Place } from "../issue.ts";
import { checkText } from "./check-text.ts";
import { commaFigures, noColumnName, noRows, otherSeparator } from "./complaints-csv.ts";
import { type CsvRow, csvSeparator, readCsv } from "./csv.ts";
import { plainName, type Report } from "./node.ts";
import { placeIn, type Source } from "./source.ts";

export interface CsvTable {
  readonly head: CsvRow;
  readonly rows: readonly CsvRow[];
}

/** Undefined where nothing can be read from it; the complaints say why. */
export function csvTable(source: Source, report: Report): CsvTable | undefined {
  if (!checkText(source, report, true)) return undefined;
  const separator = csvSeparator(source.text);
  let faults = 0;
  const [head, ...rows] = readCsv(source, separator, (complaint, place) => {
    faults += 1;
    report(complaint, place);
  });
  if (!head || rows.length === 0) {
    // Where a quote that is never closed swallowed them, that is what is wrong.
    if (faults === 0) report(noRows(), placeIn(source, 0, 1));
    return undefined;
  }
  if (separator !== ",") {
    const commas = rows.flat().filter((cell) => /^-?\d+,\d+$/.test(cell.text));
    const [first] = commas;
    if (first) {
      report(commaFigures(first.text, first.text.replace(",", "."), String(commas.length)), first.place);
      return undefined;
    }
    report(
      otherSeparator({ ";": "semicolons", "|": "bars", "\t": "tabs" }[separator] ?? separator),
      placeIn(source, 0, 1),
    );
  }
  return { head, rows };
}

/** The name of a column as a log calls it: remarks have many names. */
export function columnName(cell: CsvRow[number]): string {
  const name = plainName(cell.text);
  return /^(notes?|remarks?|comments?)$/.test(name) ? "note" : name;
}

/** A column with figures and no name. */
export function checkColumnNames({ head, rows }: CsvTable, report: Report): void {
  head.forEach((cell, column) => {
    const used = rows.some((row) => (row[column]?.text ?? "") !== "");
    if (cell.text === "" && used) report(noColumnName(), { ...cell.place, length: 1 });
  });
}

/** "total" or "mean" in the first cell that says something. */
export function totalIn(row: CsvRow): CsvRow[number] | undefined {
  const first = row.find(({ text }) => text !== "");
  return first && /^(sub)?(totals?|sums?|mean|average|avg\.?)\b/i.test(first.text) ? first : undefined;
}

export function rowPlace(row: CsvRow): Place {
  const [first, last] = [row[0]!.place, row.at(-1)!.place];
  return { ...first, length: (last.offset ?? 0) + (last.length ?? 0) - (first.offset ?? 0) };
}
