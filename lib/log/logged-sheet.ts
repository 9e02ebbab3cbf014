// A founder's own sheet as it stands in the log: names, typed texts and their places. It is worked out in lib/sheet.

import type { Place } from "../issue.ts";

/** A text as typed, trimmed, without its quotes; the place is that of its first character. */
export interface Typed {
  readonly text: string;
  readonly place: Place;
}

export interface NamedText extends Typed {
  readonly name: string;
}

export interface LoggedColumn {
  readonly name: string;
  readonly place: Place;
  readonly kind?: "quantity" | "number" | "text" | "date";
  readonly title?: string;
  readonly unit?: Typed;
  readonly formula?: Typed;
  readonly plusMinus?: Typed;
  /** Name of a scale that the log declares. */
  readonly scale?: Typed;
}

export interface LoggedRow {
  /** By the column's name; what is not there is empty. */
  readonly cells: { readonly [column: string]: Typed };
  readonly place: Place;
}

export interface LoggedFoot {
  readonly name: string;
  readonly place: Place;
  readonly formula: Typed;
  readonly unit?: Typed;
}

export interface LoggedChart {
  readonly x: string;
  readonly y: readonly string[];
  readonly line?: "straight" | "curve";
  /** Ends as typed, each with the unit that was written for both. */
  readonly band?: { readonly low: Typed; readonly high: Typed };
  readonly title?: string;
  readonly place: Place;
}

export interface LoggedSheet {
  readonly name: string;
  readonly title?: string;
  readonly note?: string;
  readonly columns: readonly LoggedColumn[];
  readonly rows: readonly LoggedRow[];
  readonly values: readonly NamedText[];
  readonly foot: readonly LoggedFoot[];
  readonly charts: readonly LoggedChart[];
  readonly place: Place;
  /** False where lines or rows of the sheet could not be read: its foot is then not the foot of all of it. */
  readonly whole: boolean;
}

/** The place of a character within a typed text, where it stands on one line; else of the text. */
export function placeWithin({ text, place }: Typed, offset: number, length = 1): Place {
  const { column, offset: start } = place;
  if (column === undefined || start === undefined || place.length !== text.length) return place;
  const at = Math.min(Math.max(0, Math.trunc(offset)), Math.max(0, text.length - 1));
  return { ...place, column: column + at, offset: start + at, length };
}
