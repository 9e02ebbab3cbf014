// Many sievings from a CSV file: one row each, in the shape that a sieving has in the log.

import { cellCount, noSieveColumns } from "./complaints-csv.ts";
import type { CsvRow } from "./csv.ts";
import { checkColumnNames, columnName, csvTable, rowPlace } from "./csv-table.ts";
import { sievingKeys } from "./log-keys.ts";
import type { Entry, LogNode, MapNode, Report, TextNode } from "./node.ts";
import { placeIn, type Source } from "./source.ts";

/** A row as a sieving; spoiled when a cell of it is missing, so that it can be shown but not used. */
export interface CsvSieving {
  readonly node: MapNode;
  readonly spoiled: boolean;
}

export function csvSievings(source: Source, report: Report): CsvSieving[] {
  const table = csvTable(source, report);
  if (!table) return [];
  const { head, rows } = table;
  if (!head.some((cell) => cell.text !== "" && !isField(cell))) {
    report(noSieveColumns(), head[0]?.place ?? placeIn(source, 0, 1));
    return [];
  }
  checkColumnNames(table, report);
  return rows.map((row) => sievingOf(row, head, report));
}

/** Column names that are not sieves. */
function isField(cell: TextNode): boolean {
  const name = columnName(cell);
  return sievingKeys.some((key) => key === name) && name !== "retained";
}

function sievingOf(row: CsvRow, head: CsvRow, report: Report): CsvSieving {
  const place = rowPlace(row);
  const spoiled = row.length !== head.length;
  if (spoiled) report(cellCount(String(row.length), String(head.length)), place);
  const fields: Entry[] = [];
  const retained: Entry[] = [];
  head.forEach((name, column) => {
    const cell = row[column];
    if (!cell || name.text === "") return;
    // A name stands in the first row, so what is wrong with it is told there, and once.
    const key = isField(name) ? columnName(name) : name.text;
    const entry = { key, keyPlace: name.place, value: cell };
    if (isField(name)) {
      if (cell.text !== "") fields.push(entry);
    } else if (!/^[-–—]$/.test(cell.text)) {
      const value: LogNode = cell.text === "" ? { kind: "empty", place: cell.place } : cell;
      retained.push({ ...entry, value });
    }
  });
  const rows: MapNode = { kind: "map", entries: retained, place };
  return {
    node: { kind: "map", entries: [...fields, { key: "retained", keyPlace: place, value: rows }], place },
    spoiled,
  };
}
