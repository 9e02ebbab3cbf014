// Draws in which a formula has no number: how many, and why.

import type { OneNode, Points, RowNode, SheetNode } from "./node.ts";
import type { LostDraws } from "./sheet-types.ts";

/** Percent of the draws; with more of them the others do not stand for all (our own). */
export const mostLost = 5;

/** The draws that are numbers; the same array where all are. */
export function numbersAmong(draws: Float64Array): Float64Array {
  let kept = 0;
  for (let j = 0; j < draws.length; j++) if (Number.isFinite(draws[j])) kept += 1;
  return kept === draws.length ? draws : draws.filter(Number.isFinite);
}

/** Undefined where every draw is a number. points: what the draws come from, still as it was for them. */
export function lostDraws(
  node: RowNode | OneNode,
  row: number,
  draws: Float64Array,
  points: Points,
): LostDraws | undefined {
  const first = draws.findIndex((value) => !Number.isFinite(value));
  if (first < 0) return undefined;
  const lost = draws.length - numbersAmong(draws).length;
  const why = reasonAt(node, row, first, points) ?? "it cannot be worked out";
  return { percent: (100 * lost) / draws.length, why };
}

/** From the formula that first has no number, its inputs at that draw. */
function reasonAt(node: SheetNode, row: number, draw: number, points: Points): string | undefined {
  if (node.per === "sheet" && node.aggregate) {
    const { of } = node.aggregate;
    for (let k = 0; k < of.values.length; k++) {
      if (Number.isNaN(of.values[k]) || Number.isFinite(valueAt(of, k, draw, points))) continue;
      return reasonAt(of, k, draw, points);
    }
    return undefined;
  }
  if (!node.formula) return undefined;
  const { formula, inputs } = node.formula;
  const values = inputs.map((input) => valueAt(input, row, draw, points));
  const broken = inputs.find((_, k) => !Number.isFinite(values[k]));
  return broken ? reasonAt(broken, row, draw, points) : formula.why(values);
}

function valueAt(node: SheetNode, row: number, draw: number, points: Points): number {
  const drawn = node.per === "row" ? points.row(node, row) : points.one(node);
  return typeof drawn === "number" ? drawn : drawn[draw]!;
}
