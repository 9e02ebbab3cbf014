// A column of a sheet as places on an axis: a figure with its ± for each row.

import { daysBetween } from "../numbers/days.ts";
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
      const days = daysBetween(first, cell.text);
      return { value: days, low: days, high: days };
    }
    if (cell.kind !== "figure" || !Number.isFinite(cell.value)) return undefined;
    const { value, figure } = cell;
    if (figure.low === figure.high) return { value, low: value, high: value };
    return { value, low: Math.min(figure.low, value), high: Math.max(figure.high, value), figure };
  });
}

/** The earliest day of a column of dates. */
function firstDay(sheet: Sheet, name: string): string | undefined {
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

const namesOf = new WeakMap<Sheet, readonly string[]>();

/** What names a row: its first text, with the texts and dates after it where rows share that, else its number. */
export function rowName(sheet: Sheet, row: number): string {
  let names = namesOf.get(sheet);
  if (!names) {
    names = rowNames(sheet);
    namesOf.set(sheet, names);
  }
  return names[row] ?? `row ${row + 1}`;
}

function rowNames({ columns, rowCount }: Sheet): readonly string[] {
  const typed = columns.filter(({ formula }) => formula === undefined);
  const texts = typed.filter(({ kind }) => kind === "text");
  const all = [...texts, ...typed.filter(({ kind }) => kind === "date")];
  let names: readonly string[] = Array.from({ length: rowCount }, () => "");
  for (const column of all) {
    const times = timesOf(names);
    if (names.every((name) => name !== "" && times.get(name) === 1)) break;
    names = names.map((name, row) => {
      const text = column.texts[row] ?? "";
      if (text === "" || (name !== "" && times.get(name) === 1)) return name;
      return name === "" ? text : `${name}, ${text}`;
    });
  }
  const times = timesOf(names);
  return names.map((name, row) => {
    if (name === "") return `row ${row + 1}`;
    return times.get(name) === 1 ? name : `${name}, row ${row + 1}`;
  });
}

function timesOf(names: readonly string[]): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const name of names) times.set(name, (times.get(name) ?? 0) + 1);
  return times;
}
