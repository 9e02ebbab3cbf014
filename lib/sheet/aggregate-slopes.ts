// How much an aggregate changes with the value of each row, at the values as they are.

import { quantilePosition } from "../numbers/quantile.ts";
import { mean, sampleStandardDeviation } from "../numbers/summary.ts";
import type { AggregateName } from "./formula-type.ts";

/** One slope a row; 0 for a row without a value. Of a least, largest or middle value: those rows alone that give it. */
export function aggregateSlopes(fn: AggregateName, p: number, values: Float64Array): Float64Array {
  const slopes = new Float64Array(values.length);
  const rows = [...values.keys()].filter((row) => !Number.isNaN(values[row]));
  const known = Float64Array.from(rows, (row) => values[row]!);
  const n = rows.length;
  if (n === 0 || fn === "count") return slopes;
  if (fn === "sum" || fn === "mean") {
    for (const row of rows) slopes[row] = fn === "sum" ? 1 : 1 / n;
    return slopes;
  }
  if (fn === "sd") {
    const [middle, sd] = [mean(known), sampleStandardDeviation(known)];
    // All alike: every change widens it, to the first order by nothing.
    if (sd > 0) for (const row of rows) slopes[row] = (values[row]! - middle) / ((n - 1) * sd);
    return slopes;
  }
  const place = fn === "min" ? 0 : fn === "max" ? 1 : fn === "median" ? 0.5 : p;
  const sorted = rows.sort((a, b) => values[a]! - values[b]!);
  const position = quantilePosition(n, place);
  const below = Math.floor(position);
  slopes[sorted[below]!] = 1 - (position - below);
  if (below + 1 < n) slopes[sorted[below + 1]!]! += position - below;
  return slopes;
}
