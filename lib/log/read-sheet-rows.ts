// The rows of a founder's own sheet as they stand in the log.

import { nearest } from "../numbers/nearest.ts";
import { noCell, notARow, rowsNotListed, unknownColumn, workedOutCell } from "./complaints-sheet.ts";
import { uniqueEntries } from "./fields.ts";
import type { LoggedColumn, LoggedRow, Typed } from "./logged-sheet.ts";
import { isHoled, type LogNode, type MapNode, type Report } from "./node.ts";
import { isBlankCell, type SheetContext, sheetName, typedOf } from "./read-sheets-context.ts";

export interface ReadRows {
  readonly rows: readonly LoggedRow[];
  /** False where a row could not be read. */
  readonly whole: boolean;
}

export function listedRows(
  node: Exclude<LogNode, { kind: "text" }>,
  columns: readonly LoggedColumn[],
  context: SheetContext,
  report: Report,
): ReadRows {
  if (node.kind === "map") report(rowsNotListed(), node.place);
  if (node.kind !== "list") return { rows: [], whole: node.kind === "empty" && !isHoled(node) };
  const told = new Set<string>();
  const typed = new Map<LoggedColumn, Typed[]>();
  const rows = node.items.flatMap((item): LoggedRow[] => {
    if (item.kind !== "map") {
      report(notARow(), item.place);
      return [];
    }
    return [rowOf(item)];
  });
  for (const [column, cells] of typed) {
    report(workedOutCell(column.name, cellsText(cells.length)), cells[0]!.place);
  }
  const holed = node.items.some(isHoled);
  return { rows, whole: rows.length === node.items.length && !holed };

  function rowOf(map: MapNode): LoggedRow {
    const cells = emptyCells();
    for (const { key, keyPlace, value } of uniqueEntries(map, report)) {
      const column = columnNamed(columns, key);
      if (!column) {
        // One wrong name in fifty rows is told once.
        if (!told.has(sheetName(key))) report(...unknown(key, columns), keyPlace);
        told.add(sheetName(key));
      } else if (value.kind === "map" || value.kind === "list") report(noCell(column.name), value.place);
      else if (value.kind === "text" && !isBlankCell(value.text.trim())) {
        const cell = typedOf(value, context);
        if (column.formula) typed.set(column, [...(typed.get(column) ?? []), cell]);
        else cells[column.name] ??= cell;
      }
    }
    return { cells, place: map.place };
  }
}

/** Without a prototype: a column may be called “constructor”. */
export function emptyCells(): Record<string, Typed> {
  return Object.create(null) as Record<string, Typed>;
}

export function columnNamed(columns: readonly LoggedColumn[], name: string): LoggedColumn | undefined {
  return columns.find((column) => sheetName(column.name) === sheetName(name));
}

export function unknown(name: string, columns: readonly LoggedColumn[]) {
  const names = columns.map((column) => column.name);
  return [unknownColumn(name.trim(), nearest(name, names) ?? "", names.join(", "))] as const;
}

export function cellsText(count: number): string {
  return count === 1 ? "1 cell" : `${count} cells`;
}
