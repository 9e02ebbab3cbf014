// A sheet as it may be written, and a sheet as it is worked out: the rest may rely on the second.

import type { Issue, Place } from "../issue.ts";
import type { Figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import type { Unit } from "../quantity/unit.ts";

/** A column as written. In short, a text: "text", "date", "number", a unit such as "g", or "= formula". */
export type ColumnSpec =
  | {
      readonly kind?: "quantity" | "number" | "text" | "date";
      /** Of the values; a formula's result is turned into it. */
      readonly unit?: string;
      readonly formula?: string;
      /** ± of each cell that has none of its own: "0.1 g", "0.1 g (sd)". */
      readonly plusMinus?: string;
      /** Name of the scale that the cells were weighed on. */
      readonly scale?: string;
      readonly title?: string;
    }
  | string;

/** A cell as written: "12.4 ± 0.1 g", 12.4, a text, or a spread of a script. Undefined or "": empty. */
export type CellSpec = string | number | Spread | undefined;

export interface SheetChart {
  readonly x: string;
  readonly y: string | readonly string[];
  readonly line?: "straight" | "curve";
  readonly band?: { readonly low: number; readonly high: number };
  readonly title?: string;
}

export interface SheetSpec {
  readonly name?: string;
  readonly title?: string;
  readonly note?: string;
  readonly columns: { readonly [name: string]: ColumnSpec };
  readonly rows: readonly { readonly [column: string]: CellSpec }[];
  /** Named values that hold for the whole sheet. */
  readonly values?: { readonly [name: string]: CellSpec };
  readonly foot?: { readonly [name: string]: string | { readonly formula: string; readonly unit?: string } };
  readonly charts?: readonly SheetChart[];
}

/** A scale that columns may name; the log's own scales fit. */
export interface SheetScale {
  readonly name: string;
  /** Smallest step of the display, g. */
  readonly stepG: number;
  /** Surely right within this many g; undefined: never checked. */
  readonly withinG?: number;
}

/** Which part of the spec is meant; row from 0, offset in characters within the formula or cell. */
export interface SheetWhere {
  readonly row?: number;
  readonly column?: string;
  readonly foot?: string;
  readonly value?: string;
  readonly offset?: number;
}

export interface SheetContext {
  readonly scales?: readonly SheetScale[];
  /** Sheets that lookUp() may read. */
  readonly others?: readonly Sheet[];
  /** Where a part of the spec stands in the founder's files. */
  readonly place?: (where: SheetWhere) => Place | undefined;
}

export interface SheetColumn {
  readonly name: string;
  readonly title?: string;
  readonly kind: "quantity" | "number" | "text" | "date";
  readonly unit?: Unit;
  /** As written, where the column is worked out. */
  readonly formula?: string;
  /** One number a row, in the column's unit; NaN where there is none. Texts and dates: all NaN. */
  readonly values: Float64Array;
  /** One text a row for texts and dates; "" where there is none. Empty for numbers. */
  readonly texts: readonly string[];
}

export interface FootFigure {
  readonly name: string;
  readonly formula: string;
  readonly cell: Cell;
}

/** A figure that is missing, and why. A cell that needs a faulty one shows the same fault. */
export interface CellFault {
  readonly code: string;
  readonly message: string;
  readonly remedy?: string;
  /** The first cell with it; column is the name of a column, foot figure or named value. Row from 0. */
  readonly raisedIn: { readonly column: string; readonly row?: number };
  readonly place?: Place;
}

/** Draws in which a formula has no number: the root of a length that may be below 0. */
export interface LostDraws {
  /** Percent of the draws. */
  readonly percent: number;
  /** In the words of Formula.why: "the root of a negative number". */
  readonly why: string;
}

/**
 * lost: where some draws give no number. Up to 5 % of them (our own) low, high, mean and sd are those of the draws that
 * give one; beyond, they are NaN, for an interval of what is left would claim too much. Then, and where the draws are lost near the
 * middle, shares are empty.
 */
export interface SheetFigure extends Figure {
  readonly lost?: LostDraws | undefined;
}

export type Cell =
  /**
   * figure: worked out when first read; without sources it is exact. atLeast: a part of the doubt is not known, because
   * it hangs on a reading of a scale that was never checked.
   */
  | {
      readonly kind: "figure";
      readonly value: number;
      readonly unit?: Unit;
      readonly figure: SheetFigure;
      readonly atLeast?: boolean;
    }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "date"; readonly text: string }
  | { readonly kind: "empty" }
  | { readonly kind: "fault"; readonly fault: CellFault };

/** A sheet worked out. Cells are made, and their ± drawn, when they are read. */
export interface Sheet {
  readonly name: string;
  readonly title?: string;
  readonly note?: string;
  readonly columns: readonly SheetColumn[];
  readonly rowCount: number;
  /** Throws Misuse for a name that is none. */
  column(name: string): SheetColumn;
  /** row from 0; throws Misuse outside the sheet. */
  cell(row: number, name: string): Cell;
  readonly foot: readonly FootFigure[];
  readonly values: readonly { readonly name: string; readonly cell: Cell }[];
  readonly charts: readonly SheetChart[];
  readonly issues: readonly Issue[];
}
