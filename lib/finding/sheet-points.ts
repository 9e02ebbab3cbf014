// A column of a sheet as places on an axis: a figure with its ± for each row.

import type { Figure } from "../quantity/figure.ts";
import type { Sheet } from "../sheet/sheet.ts";

export interface SheetPoint {
  readonly value: number;
  /** Ends of the 95 % interval, always around the value. */
  readonly low: number;
  readonly high: number;
  /** Undefined where it is exact: a date, a plain number. */
  readonly figure?: Figure;
}

/** One for each row, undefined where there is no figure; dates count days from the first of the column. */
export function sheetPoints(sheet: Sheet, name: string): readonly (SheetPoint | undefined)[] {
  const rows = Array.from({ length: sheet.rowCount }, (_, row) => sheet.cell(row, name));
  const first = firstDay(sheet, name);
  return rows.map((cell): SheetPoint | undefined => {
    if (cell.kind === "date" && first !== undefined) {
      const days = (Date.parse(cell.text) - Date.parse(first)) / 86_400_000;
      return { value: days, low: days, high: days };
    }
    if (cell.kind !== "figure" || !Number.isFinite(cell.value)) return undefined;
    const { value, figure } = cell;
    if (figure.sources.length === 0) return { value, low: value, high: value };
    return { value, low: Math.min(figure.low, value), high: Math.max(figure.high, value), figure };
  });
}

/** The earliest day of a column of dates. */
export function firstDay(sheet: Sheet, name: string): string | undefined {
  const { kind, texts } = sheet.column(name);
  return kind === "date" ? texts.filter((text) => text !== "").sort()[0] : undefined;
}

/** "wet, g"; "tested, days after 2026-05-02". */
export function axisOf(sheet: Sheet, name: string): { readonly title: string; readonly unit?: string } {
  const { title = name, unit } = sheet.column(name);
  const first = firstDay(sheet, name);
  if (first !== undefined) return { title, unit: `days after ${first}` };
  return { title, ...(unit ? { unit: unit.text } : {}) };
}

/** What names a row: its texts and dates, else its number. */
export function rowName(sheet: Sheet, row: number): string {
  const [first] = sheet.columns.filter(({ kind }) => kind === "text");
  const text = first?.texts[row] ?? "";
  return text === "" ? `row ${row + 1}` : text;
}
