// Many sievings from a CSV file: one row each, in the shape that a sieving has in the log.

import type { Issue } from "../issue.ts";
import { readSieveLabel } from "../sand/sieve-label.ts";
import {
  cellCount,
  csvNoHead,
  csvTotalRow,
  csvTurned,
  csvUnitRow,
  csvUnknownColumn,
  noSieveColumns,
} from "./complaints-csv.ts";
import type { CsvRow } from "./csv.ts";
import { checkColumnNames, columnName, csvTable, rowPlace, totalIn } from "./csv-table.ts";
import { nearKey } from "./fields.ts";
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
  const shape = shapeOf(head, rows);
  if (shape) {
    report(shape, head[0]?.place ?? placeIn(source, 0, 1));
    return [];
  }
  if (!head.some((cell) => cell.text !== "" && !isField(cell))) {
    report(noSieveColumns(), head[0]?.place ?? placeIn(source, 0, 1));
    return [];
  }
  checkColumnNames(table, report);
  const units = rows.find(isUnits);
  const unit = units?.map(({ text }) => text).find((text) => text !== "" && !/^(g|grams?|min)$/i.test(text));
  if (units && unit !== undefined) {
    report(csvUnitRow(unit), rowPlace(units));
    return [];
  }
  const known = head.map((cell) => knownColumn(cell, report));
  return rows.flatMap((row) => {
    const total = totalIn(row);
    if (total) report(csvTotalRow(total.text), total.place);
    return total || row === units ? [] : [sievingOf(row, known, report)];
  });
}

/** A table that is none of sievings, in one complaint: it would be one for every cell. */
function shapeOf(head: CsvRow, rows: readonly CsvRow[]): Issue | undefined {
  const isSieve = (cell: TextNode | undefined) =>
    cell !== undefined && readSieveLabel(cell.text).value !== undefined;
  const columns = head.filter((cell) => isField(cell) || isSieve(cell) || nearColumn(cell) !== undefined);
  const [first] = head;
  if (columns.length > 0 || !first) return undefined;
  const labels = rows.flatMap(([cell]) => (isSieve(cell) ? [cell!.text] : []));
  if (labels.length > 1) return csvTurned(labels[0]!);
  // A first row of names that are all unreadable is told name by name.
  const noNames =
    head.length < (rows[0]?.length ?? 0) || head.some(({ text }) => /^\d{4}-\d|^\d+\.\d+$/.test(text));
  return noNames ? csvNoHead(first.text) : undefined;
}

/**
 * The column that a name was most likely meant for, a unit in brackets behind it or not; never a sieve's, which no
 * sieving is whole without.
 */
function nearColumn(cell: TextNode): string | undefined {
  if (cell.text === "" || isField(cell) || readSieveLabel(cell.text).value !== undefined) return undefined;
  const bare = cell.text.replace(/\s*[([].*[)\]]\s*$/, "").trim();
  const near = /\d/.test(bare) ? undefined : nearKey(bare, sievingKeys);
  return near === "retained" || near === "note" ? undefined : near;
}

/** The cell itself, or one without a name where it is told that another was meant. */
function knownColumn(cell: TextNode, report: Report): TextNode {
  const near = nearColumn(cell);
  if (near === undefined) return cell;
  report(csvUnknownColumn(cell.text, near), cell.place);
  return { ...cell, text: "" };
}

/** "g,g,g": a spreadsheet's units below its names. */
function isUnits(row: CsvRow): boolean {
  const said = row.filter(({ text }) => text !== "");
  return (
    said.length > 1 && said.every(({ text }) => /^[([]?(g|grams?|kg|oz|lb|%|percent|min)[)\]]?$/i.test(text))
  );
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
