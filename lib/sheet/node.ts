// What a sheet is made of inside: columns and single figures, each with its formula or what was typed.

import type { Spread } from "../quantity/spread.ts";
import type { Unit } from "../quantity/unit.ts";
import type { AggregateName, Formula } from "./formula-type.ts";
import type { CellFault } from "./sheet-types.ts";

export type NodeKind = "number" | "text" | "date" | "condition";

interface Common {
  /** As written; of an aggregate or a look-up, that of the formula that it stands in. */
  readonly name: string;
  readonly kind: NodeKind;
  readonly unit?: Unit | undefined;
  readonly formula?: Bound | undefined;
  /** True where anything that it hangs on has a ±. */
  readonly doubtful: boolean;
}

/** One value for each row. */
export interface RowNode extends Common {
  readonly per: "row";
  /** NaN where there is none; codes for texts, days for dates. */
  readonly values: Float64Array;
  readonly faults: ReadonlyMap<number, CellFault>;
  /** What was typed, with its ±; undefined where it has none. Not for worked-out columns. */
  readonly spreadAt?: ((row: number) => Spread | undefined) | undefined;
  /** True where it hangs on the ± of a figure over all rows. */
  readonly far: boolean;
  /** True where its formulas have no kinks and no steps. */
  readonly smooth: boolean;
  /** 1 for each row that hangs on a reading whose doubt is known in part only; undefined: none does. */
  readonly lacks?: Uint8Array | undefined;
}

/** One value for the sheet: a named value, a foot figure, an aggregate, a look-up with a fixed key. */
export interface OneNode extends Common {
  readonly per: "sheet";
  /** NaN where there is none. */
  readonly value: number;
  readonly fault?: CellFault | undefined;
  readonly spread?: Spread | undefined;
  readonly aggregate?: { readonly fn: AggregateName; readonly p: number; readonly of: RowNode } | undefined;
  readonly smooth: boolean;
  /** True where it hangs on a reading whose doubt is known in part only. */
  readonly lacks?: boolean | undefined;
}

export type SheetNode = RowNode | OneNode;

/** A formula with what its inputs stand for, in the order that it wants them. */
export interface Bound {
  readonly formula: Formula;
  readonly inputs: readonly SheetNode[];
}

/** A sheet worked out at many points at once. */
export interface Points {
  /** The values of a column in one row; a plain number where they are all the same. Read it before the next row. */
  row(node: RowNode, row: number): Float64Array | number;
  one(node: OneNode): Float64Array | number;
  /** The drawing has changed: nothing that was drawn holds. */
  forget(): void;
}
