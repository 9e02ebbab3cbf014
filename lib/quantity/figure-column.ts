// A column of a script: a title, a unit, and one figure or text for each row. Curves, charts and tables take it as it is.

import type { Spread } from "./spread.ts";

export type ColumnValue = Spread | number | string | undefined;

export interface FigureColumn<Value extends ColumnValue = ColumnValue> {
  /** What it holds: "moisture". */
  readonly title: string;
  /** Unit and basis: "% of damp mass"; left out for texts and bare numbers. */
  readonly unit?: string;
  /** A spread has its ±, a number has none, a text stands as it is; undefined: nothing was measured. */
  readonly values: readonly Value[];
}
