// What a row is called: from what stands in it, never from where it stands.

import { nearest } from "../numbers/nearest.ts";
import type { Faults } from "./faults.ts";
import type { Column } from "./read-columns.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { CellSpec } from "./sheet-types.ts";

type Row = { readonly [column: string]: CellSpec };

/**
 * The first text and the first date of each row; rows that share them get all else that is typed in them as well. Rows
 * alike in everything are counted: which of them is which makes no difference.
 */
export function rowKeys(columns: readonly Column[], rows: readonly Row[]): string[] {
  const head = (["text", "date"] as const).flatMap(
    (kind) => columns.find((one) => one.kind === kind)?.name ?? [],
  );
  const short = rows.map((row) =>
    head
      .map((name) => textOf(row, name))
      .filter((text) => text !== "")
      .join(", "),
  );
  const typed = columns.filter(({ name, formula }) => formula === undefined && !head.includes(name));
  const counts = new Map<string, number>();
  for (const key of short) counts.set(key, (counts.get(key) ?? 0) + 1);
  const seen = new Map<string, number>();
  return rows.map((row, k) => {
    const key = short[k]!;
    if (counts.get(key) === 1 && key !== "") return key;
    const rest = typed.map(({ name }) => `${name} ${textOf(row, name)}`).join(", ");
    const long = key === "" ? rest : `${key}, ${rest}`;
    const before = seen.get(long) ?? 0;
    seen.set(long, before + 1);
    return before === 0 ? long : `${long}, alike ${before + 1}`;
  });
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
