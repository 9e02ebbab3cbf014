// Many batches from a CSV file: a row is a batch in the shape that it has in the log; rows of one name are its repeats.

import type { Place } from "../issue.ts";
import { noBatchColumn, rowsDisagree, rowWithoutBatch } from "./complaints-batch.ts";
import { cellCount, csvTotalRow } from "./complaints-csv.ts";
import type { CsvRow } from "./csv.ts";
import { checkColumnNames, columnName, csvTable, rowPlace, totalIn } from "./csv-table.ts";
import { batchKeys } from "./log-keys.ts";
import { type Entry, type LogNode, type MapNode, plainName, type Report, type TextNode } from "./node.ts";
import { placeIn, type Source } from "./source.ts";
import { testNames } from "./test-forms.ts";

export interface CsvBatch {
  readonly entry: Entry;
  readonly spoiled: boolean;
}

/**
 * Columns: batch, then what a batch has (date, order, mulled ...); "made of sand", "made of water" ...; a test's number
 * under its own name ("compactability"), its readings under test and field ("moisture damp", "moisture method").
 */
export function csvBatches(source: Source, report: Report): CsvBatch[] {
  const table = csvTable(source, report);
  if (!table) return [];
  const { head, rows } = table;
  const nameAt = head.findIndex(({ text }) => ["batch", "name"].includes(plainName(text)));
  if (nameAt < 0) {
    report(noBatchColumn(), head[0]?.place ?? placeIn(source, 0, 1));
    return [];
  }
  checkColumnNames(table, report);
  const columns = head.map((cell, column) => (column === nameAt ? undefined : columnOf(cell)));
  const groups = new Map<string, CsvRow[]>();
  for (const row of rows) {
    const name = plainName(row[nameAt]?.text ?? "");
    const total = totalIn(row);
    if (total) report(csvTotalRow(total.text), total.place);
    else if (name === "") report(rowWithoutBatch(), rowPlace(row));
    else groups.set(name, [...(groups.get(name) ?? []), row]);
  }
  return [...groups.values()].map((group) => {
    const torn = group.filter((row) => row.length !== head.length);
    for (const row of torn) report(cellCount(String(row.length), String(head.length)), rowPlace(row));
    const name = group[0]![nameAt]!;
    const value = batchNode(group, columns, report);
    return { entry: { key: name.text, keyPlace: name.place, value }, spoiled: torn.length > 0 };
  });
}

interface Column {
  /** Key in the batch: "date", "made of", "moisture". */
  readonly key: string;
  /** Key below it: "sand", "damp"; undefined for a value of its own. */
  readonly below?: string;
  /** Of its name, in the first row: what is wrong with a name is told there, and once. */
  readonly place: Place;
}

/** Undefined for a column without a name. */
function columnOf(cell: TextNode): Column | undefined {
  const name = columnName(cell);
  const { place } = cell;
  if (name === "") return undefined;
  const owner = ["made of", ...testNames].find((key) => name.startsWith(`${key} `));
  if (owner) return { key: owner, below: name.slice(owner.length + 1), place };
  return { key: name === "note" ? name : cell.text.trim(), place };
}

function batchNode(
  rows: readonly CsvRow[],
  columns: readonly (Column | undefined)[],
  report: Report,
): MapNode {
  const plain = new Map<string, Entry>();
  const tests = new Map<string, LogNode[]>();
  const recipe: Entry[] = [];
  for (const row of rows) {
    const raw = new Map<string, Entry[]>();
    columns.forEach((column, index) => {
      const cell = row[index];
      if (!column || !cell || isBlank(cell)) return;
      const { key, below } = column;
      const entry = { key: below ?? key, keyPlace: column.place, value: cell };
      if (below === undefined && isTest(key)) push(tests, plainName(key), cell);
      else if (below === undefined) once(plain, key, entry, report);
      else if (key !== "made of") raw.set(key, [...(raw.get(key) ?? []), entry]);
      else if (!recipe.some((other) => other.key === below)) recipe.push(entry);
    });
    // Only a method or a scale in a row is no reading of it.
    for (const [test, entries] of raw) {
      if (entries.some(({ key }) => !["method", "rig", "scale", "note"].includes(key))) {
        push(tests, test, { kind: "map", entries, place: rowPlace(row) });
      }
    }
  }
  const place = rowPlace(rows[0]!);
  const list = (key: string, items: readonly LogNode[]): Entry => ({
    key,
    keyPlace: items[0]!.place,
    value: { kind: "list", items, place: items[0]!.place },
  });
  const made: Entry[] =
    recipe.length === 0
      ? []
      : [
          {
            key: "made of",
            keyPlace: recipe[0]!.value.place,
            value: { kind: "map", entries: recipe, place },
          },
        ];
  const entries = [...plain.values(), ...made, ...[...tests].map(([key, items]) => list(key, items))];
  return { kind: "map", entries, place };
}

function once(plain: Map<string, Entry>, key: string, entry: Entry & { value: LogNode }, report: Report) {
  const first = plain.get(plainName(key));
  if (!first) plain.set(plainName(key), entry);
  else if (textOf(first.value) === textOf(entry.value)) return;
  else if (key === "note") {
    const text = `${textOf(first.value)}; ${textOf(entry.value)}`;
    plain.set(key, { ...first, value: { kind: "text", text, place: first.value.place } });
  } else if (batchKeys.some((known) => known === plainName(key))) {
    report(rowsDisagree(key, textOf(entry.value), textOf(first.value)), entry.value.place);
  }
}

function push(lists: Map<string, LogNode[]>, key: string, node: LogNode): void {
  lists.set(key, [...(lists.get(key) ?? []), node]);
}

const isTest = (key: string): boolean => testNames.some((test) => test === plainName(key));
const isBlank = (cell: TextNode): boolean => cell.text === "" || /^[-–—]$/.test(cell.text);
const textOf = (node: LogNode): string => (node.kind === "text" ? node.text : "");
