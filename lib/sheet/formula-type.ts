// What a formula may read, and what it is once read.

import type { Issue } from "../issue.ts";
import type { Unit } from "../quantity/unit.ts";

/**
 * What a name stands for when a formula is read. unit undefined: a plain number. per sheet: one for all rows, a named
 * value or a foot figure. A text's input is its code (textCode), a date's is its day (dayOf).
 */
export type NameKind =
  | { readonly kind: "number"; readonly unit?: Unit | undefined; readonly per: "row" | "sheet" }
  | { readonly kind: "text"; readonly per: "row" | "sheet" }
  | { readonly kind: "date"; readonly per: "row" };

export interface FormulaScope {
  /** By name as written. */
  readonly names: ReadonlyMap<string, NameKind>;
  /** The columns of the other sheets, for lookUp. Absent: there are no other sheets. */
  readonly otherSheets?: ReadonlyMap<string, ReadonlyMap<string, NameKind>> | undefined;
  readonly in: "column" | "foot";
  /** The unit that the column asks for. */
  readonly wants?: Unit | undefined;
}

/** From the first character to after the last, counted from 0 in the formula as written. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** What is wrong with a formula, and where in it. Its place in a file is for the caller to add. */
export interface FormulaFault extends Issue {
  readonly at: Span;
}

export type AggregateName = "sum" | "mean" | "sd" | "median" | "count" | "quantile" | "min" | "max";

/** One figure over all rows. */
export interface Aggregate {
  readonly fn: AggregateName;
  /** Only for a quantile: 0 to 1. */
  readonly p?: number;
  /** What is worked out for each row; it reads no aggregate itself. Its unit is the unit of the values. */
  readonly of: Formula;
}

/** The value in `column` of the row of `sheet` whose first text column is the key. */
export interface LookUp {
  readonly sheet: string;
  readonly column: string;
  readonly key: { readonly name: string } | { readonly text: string };
}

export interface Formula {
  /** As written. */
  readonly text: string;
  /** Of the result, undefined for a plain number; after `wants`, the wanted unit. */
  readonly unit?: Unit;
  /** A text is its code, a condition 1 or 0. */
  readonly result: "number" | "text" | "condition";
  /** The column asks for a percentage and the formula gives a plain number: its label was put on it as it is. */
  readonly percentPutOn?: boolean;
  /** Row names that the row part reads, as written in the scope. */
  readonly rows: readonly string[];
  /** Per-sheet names. */
  readonly sheet: readonly string[];
  readonly aggregates: readonly Aggregate[];
  readonly lookUps: readonly LookUp[];
  /**
   * Works the formula out for many rows at once, or for many draws of one row: the same loop. inputs in the order
   * rows, sheet, aggregates, lookUps, in the units of the names: each an array as long as out, or one number for all.
   * out may be one of the inputs. What cannot be worked out is NaN; NaN stays NaN.
   */
  run(inputs: readonly (Float64Array | number)[], out: Float64Array): void;
  /** Why a result that is NaN though no input is, is one: "division by zero"; undefined where it is none. */
  why(inputs: readonly number[]): string | undefined;
}
