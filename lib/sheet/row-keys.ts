// What a row is called: from what stands in it, never from where it stands.

import { nearest } from "../numbers/nearest.ts";
import type { Faults } from "./faults.ts";
import type { Column } from "./read-columns.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { CellSpec } from "./sheet-types.ts";

type Row = { readonly [column: string]: CellSpec };

/** What the ids of a row's sources are made of, and what it is called in words. */
export interface RowKey {
  readonly key: string;
  readonly name: string;
}

/**
 * The first text and the first date of each row; rows that share them get their other texts and dates, then all else that
 * is typed in them. Rows alike in everything are counted: which of them is which makes no difference. In words a row that
 * its texts and dates do not tell apart is called by its number instead: figures would read as if they were the result.
 */
export function rowKeys(columns: readonly Column[], rows: readonly Row[]): RowKey[] {
  const typed = columns.filter(({ formula }) => formula === undefined);
  const words = typed.filter(({ kind }) => kind === "text" || kind === "date").map(({ name }) => name);
  const head = (["text", "date"] as const).flatMap(
    (kind) => typed.find((one) => one.kind === kind)?.name ?? [],
  );
  const short = told(rows, head);
  const full = told(rows, [...head, ...words.filter((name) => !head.includes(name))]);
  const seen = new Map<string, number>();
  return rows.map((row, k) => {
    const own = [short, full].find(({ texts, times }) => texts[k] !== "" && times.get(texts[k]!) === 1);
    if (own) return { key: own.texts[k]!, name: own.texts[k]! };
    const figures = typed
      .filter(({ name }) => !words.includes(name))
      .map(({ name }) => `${name} ${textOf(row, name)}`);
    const long = listed([full.texts[k]!, ...figures]);
    const before = seen.get(long) ?? 0;
    seen.set(long, before + 1);
    return {
      key: before === 0 ? long : `${long}, alike ${before + 1}`,
      name: listed([full.texts[k]!, `row ${k + 1}`]),
    };
  });
}

const listed = (parts: readonly string[]): string => parts.filter((part) => part !== "").join(", ");

/** The texts of these columns in each row, and how many rows have the same. */
function told(rows: readonly Row[], names: readonly string[]) {
  const texts = rows.map((row) => listed(names.map((name) => textOf(row, name))));
  const times = new Map<string, number>();
  for (const text of texts) times.set(text, (times.get(text) ?? 0) + 1);
  return { texts, times };
}

/** Tells of what stands in a row under no column, once for each name, and of what is typed where a formula stands. */
export function checkRows(columns: readonly Column[], rows: readonly Row[], faults: Faults): void {
  const formulas = new Map(columns.map(({ name, formula }) => [name, formula !== undefined]));
  const told = new Set<string>();
  rows.forEach((row, k) => {
    for (const name of Object.keys(row)) {
      const isFormula = formulas.get(name);
      if (isFormula === false || told.has(name) || (isFormula && cellOf(row, name) === undefined)) continue;
      told.add(name);
      const known = [...formulas.keys()];
      const issue = isFormula
        ? sheetIssue.typedOver(name)
        : sheetIssue.noSuchColumn(name, nearest(name, known), known.join(", "));
      faults.report(issue, { row: k, column: name });
    }
  });
}

export function cellOf(row: Row, name: string): CellSpec {
  const cell = Object.hasOwn(row, name) ? row[name] : undefined;
  return typeof cell === "string" && cell.trim() === "" ? undefined : cell;
}

function textOf(row: Row, name: string): string {
  const cell = cellOf(row, name);
  if (cell === undefined) return "";
  return typeof cell === "object" ? `${cell.value}` : `${cell}`.trim();
}
