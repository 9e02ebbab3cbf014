// What the charts of a founder's own sheet are drawn from.

import type { CurvePoint, ResponsePoint } from "./response-input.ts";

/** "wet, g": the column's name and its unit as it is written. */
export interface SheetAxis {
  readonly title: string;
  readonly unit?: string;
}
export interface SheetPanel {
  readonly axis: SheetAxis;
  /** One for each row with a figure for both; the ends are those of 95 % intervals. */
  readonly points: readonly ResponsePoint[];
  readonly curve?: readonly CurvePoint[];
  /** What the curve is, or why there is none: a whole sentence. */
  readonly line?: string;
}
export interface SheetPlotInput {
  readonly name: string;
  readonly title?: string;
  readonly x: SheetAxis;
  readonly panels: readonly SheetPanel[];
  /** The founder's own, behind the first panel. */
  readonly band?: { readonly low: number; readonly high: number };
  /** Rows that have no figure for x or y. */
  readonly missing: number;
}
export interface SheetNamesInput {
  readonly name: string;
  readonly title?: string;
  /** What the names are: the text column. */
  readonly names: string;
  readonly y: SheetAxis;
  readonly points: readonly {
    readonly label: string;
    readonly value: number;
    readonly low?: number;
    readonly high?: number;
  }[];
  readonly band?: { readonly low: number; readonly high: number };
  readonly missing: number;
}

export function sheetAxisTitle({ title, unit }: SheetAxis): string {
  return unit === undefined || unit === "" ? title : `${title}, ${unit}`;
}
