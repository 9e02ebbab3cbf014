// The formula that is measured, and the loop that one would write by hand for it.

import { unitNamed } from "../../lib/quantity/read-unit.ts";
import { readFormula } from "../../lib/sheet/formula.ts";
import type { NameKind } from "../../lib/sheet/formula-type.ts";

export const text = "(wet - dry) / wet * 100";

/** Held in a list with another, so that it is called as a function of any columns is. */
export const byHand = [
  (wet: Float64Array, dry: Float64Array, out: Float64Array): void => {
    for (let i = 0; i < out.length; i++) out[i] = ((wet[i]! - dry[i]!) / wet[i]!) * 100;
  },
  (wet: Float64Array, dry: Float64Array, out: Float64Array): void => {
    for (let i = 0; i < out.length; i++) out[i] = wet[i]! - dry[i]!;
  },
];

/** Invented: g. */
export function columns(rows: number): { wet: Float64Array; dry: Float64Array; out: Float64Array } {
  const wet = Float64Array.from({ length: rows }, (_, i) => 150 + (i % 70) / 10);
  return { wet, dry: wet.map((mass, i) => mass - (i % 50) / 10), out: new Float64Array(rows) };
}

export function readBench() {
  const gram: NameKind = { kind: "number", unit: unitNamed("g")!, per: "row" };
  const names = new Map([
    ["wet", gram],
    ["dry", gram],
  ]);
  const { value } = readFormula(text, { names, in: "column" });
  if (!value) throw new Error("the formula was not read");
  return value;
}
