// The figures of a script's column with the ends of their 95 % intervals.

import { invariant } from "../issue.ts";
import type { FigureColumn } from "../quantity/figure-column.ts";
import { isSpread } from "../quantity/spread.ts";
import { endsOf } from "./ends.ts";

/** No ends where there is no ±, NaN where there is no figure. */
export interface ColumnFigure {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

export function columnFigures({ values }: FigureColumn): readonly ColumnFigure[] {
  return values.map((one) => {
    if (!isSpread(one)) return { value: typeof one === "number" ? one : Number.NaN };
    if (one.sources.length === 0) return { value: one.value };
    const { low, high } = endsOf(one);
    return { value: one.value, low: Math.min(low, one.value), high: Math.max(high, one.value) };
  });
}

/** The same where only figures will do: a text throws Misuse. */
export function onlyFigures(column: FigureColumn): readonly ColumnFigure[] {
  const text = column.values.find((one) => typeof one === "string");
  invariant(text === undefined, `"${text}" in the column "${column.title}" is a text, not a figure`);
  return columnFigures(column);
}
