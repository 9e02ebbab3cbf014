// A curve through two columns of a script, which keeps to where there are points.

import { invariant } from "../issue.ts";
import type { FigureColumn } from "../quantity/figure-column.ts";
import { isSpread } from "../quantity/spread.ts";
import { type CurveForm, type CurveValue, responseCurve } from "./response-curve.ts";

export interface ColumnCurve {
  readonly form: CurveForm;
  /** How many rows it rests on. */
  readonly rows: number;
  /** The least and the greatest x of those; Infinity and −Infinity where there are none. */
  readonly from: number;
  readonly to: number;
  /** Mean at x, its 95 % interval, and that of one new row; undefined outside from and to, and where there is no curve. */
  at(x: number): CurveValue | undefined;
}

/**
 * Least squares through the rows that have both figures: y = b₀ + b₁x from three rows at two places on,
 * y = b₀ + b₁x + b₂x² from five at three on, else the points alone. peaked: the property rises and falls, so that a
 * straight line says nothing. The intervals are Student's t on how the rows scatter about the curve; an error that all
 * rows share, such as the bias of one scale, is not in them. Columns of unlike length, or a text in one, throw Misuse.
 * Method: that of responseCurve.
 * @example
 * const x = { title: "water", unit: "% of damp mass", values: [2, 3, 4, 5] };
 * const y = { title: "compactability", unit: "% of height", values: [30, 40, 52, 58] };
 * curveThrough(x, y).at(3.5)?.mean // 45
 */
export function curveThrough(
  x: FigureColumn,
  y: FigureColumn,
  options: { readonly peaked?: boolean } = {},
): ColumnCurve {
  invariant(x.values.length === y.values.length, `"${y.title}" has a row for each of "${x.title}"`);
  const curve = responseCurve({ x: numbersOf(x), y: numbersOf(y) }, { peaked: options.peaked ?? false });
  const { form, used, from, to } = curve;
  return {
    form,
    rows: used.length,
    from,
    to,
    at: (place) => (place >= from && place <= to ? curve.at(place) : undefined),
  };
}

function numbersOf({ title, values }: FigureColumn): number[] {
  return values.map((one) => {
    invariant(typeof one !== "string", `"${one}" in the column "${title}" is a text, not a figure`);
    return isSpread(one) ? one.value : (one ?? Number.NaN);
  });
}
