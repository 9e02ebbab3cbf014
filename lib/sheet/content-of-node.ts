// What all draws of a figure of a sheet hang on, as a text, so that what they say may be kept from run to run.

import { contentOfNumber, contentOfParts } from "../quantity/content.ts";
import { onceFor } from "../quantity/once-for.ts";
import type { Spread } from "../quantity/spread.ts";
import type { Bound, OneNode, RowNode, SheetNode } from "./node.ts";

/** Undefined where nobody can tell; row counts for a column only. Kept as long as the node, so that a long chain is walked once. */
export function contentOfNode(node: SheetNode, row: number): string | undefined {
  return node.per === "row" ? contentOfRow(node, row) : contentsOfOne(node).of;
}

const contentsOfRows = onceFor((_: RowNode): { [row: number]: { readonly of: string | undefined } } => ({}));

function contentOfRow(node: RowNode, row: number): string | undefined {
  const value = node.values[row]!;
  if (!node.doubtful || Number.isNaN(value)) return contentOfNumber(value);
  if (!node.formula) {
    const spread = node.spreadAt?.(row);
    return spread ? contentOfSpread(spread) : contentOfNumber(value);
  }
  const rows = contentsOfRows(node);
  rows[row] ??= { of: contentOfFormula(node, node.formula, row) };
  return rows[row].of;
}

const contentsOfOne = onceFor((node: OneNode): { readonly of: string | undefined } => {
  if (!node.doubtful || Number.isNaN(node.value)) return { of: contentOfNumber(node.value) };
  if (node.spread) return { of: contentOfSpread(node.spread) };
  if (node.formula) return { of: contentOfFormula(node, node.formula, 0) };
  if (!node.aggregate) return { of: undefined };
  const { fn, p, of } = node.aggregate;
  const rows = Array.from(of.values.keys()).filter((row) => !Number.isNaN(of.values[row]));
  return {
    of: contentOfParts(
      `${fn} ${p} of rows`,
      rows.map((row) => contentOfRow(of, row)),
    ),
  };
});

function contentOfFormula(node: SheetNode, bound: Bound, row: number): string | undefined {
  return contentOfParts(
    nameOfFormula(node),
    bound.inputs.map((input) => contentOfNode(input, row)),
  );
}

/** A formula is what was written, over what its names stand for and their units. */
const nameOfFormula = onceFor(({ formula, kind, unit }: SheetNode): string => {
  const { text, rows, sheet, lookUps, aggregates } = formula!.formula;
  const inputs = formula!.inputs.map((input) => [input.per, input.kind, input.unit ?? null]);
  const parts = aggregates.map(({ fn, p, of }) => [fn, p ?? null, of.text]);
  return JSON.stringify(["formula", text, kind, unit ?? null, rows, sheet, parts, lookUps, inputs]);
});

function contentOfSpread(spread: Spread): string | undefined {
  return spread.sources.length === 0 ? contentOfNumber(spread.value) : spread.content;
}
