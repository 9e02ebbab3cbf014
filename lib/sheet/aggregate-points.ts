// An aggregate at many points at once: each draw of all rows gives one draw of the figure.

import { quantilesInPlace } from "../numbers/quantile.ts";
import type { OneNode, Points, RowNode } from "./node.ts";

type AggregateOfRows = NonNullable<OneNode["aggregate"]>;

/** A median needs all rows side by side: so many numbers are held at once, at most. */
const heldAtOnce = 1 << 20;

/** Fills out; points(from, length) gives those points of the same drawing. */
export function aggregateAtPoints(
  aggregate: AggregateOfRows,
  out: Float64Array,
  points: (from: number, length: number) => Points,
): void {
  const rows = rowsWithValue(aggregate.of);
  if (aggregate.fn === "median" || aggregate.fn === "quantile") {
    const p = aggregate.fn === "median" ? 0.5 : aggregate.p;
    byPlace(aggregate.of, rows, p, out, points);
  } else running(aggregate, rows, out, points(0, out.length));
}

function rowsWithValue({ values }: RowNode): number[] {
  const rows: number[] = [];
  for (let row = 0; row < values.length; row++) if (!Number.isNaN(values[row])) rows.push(row);
  return rows;
}

function running(
  { fn, of }: AggregateOfRows,
  rows: readonly number[],
  out: Float64Array,
  points: Points,
): void {
  const n = rows.length;
  if (fn === "min" || fn === "max") {
    out.fill(fn === "min" ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY);
    const pick = fn === "min" ? Math.min : Math.max;
    for (const row of rows) {
      const drawn = points.row(of, row);
      for (let j = 0; j < out.length; j++) out[j] = pick(out[j]!, at(drawn, j));
    }
    return;
  }
  // Sums about the middle of the column: a large mean must not eat the digits of a small scatter.
  const middle = rows.reduce((all, row) => all + of.values[row]! / n, 0);
  const squares = new Float64Array(fn === "sd" ? out.length : 0);
  out.fill(0);
  for (const row of rows) {
    const drawn = points.row(of, row);
    if (typeof drawn === "number") {
      addToEach(out, drawn - middle);
      if (fn === "sd") addToEach(squares, (drawn - middle) * (drawn - middle));
      continue;
    }
    for (let j = 0; j < out.length; j++) {
      const off = drawn[j]! - middle;
      out[j]! += off;
      if (fn === "sd") squares[j]! += off * off;
    }
  }
  for (let j = 0; j < out.length; j++) {
    const total = out[j]!;
    if (fn === "sum") out[j] = total + n * middle;
    else if (fn === "mean") out[j] = total / n + middle;
    else out[j] = Math.sqrt(Math.max(0, squares[j]! - (total * total) / n) / (n - 1));
  }
}

function addToEach(out: Float64Array, more: number): void {
  for (let j = 0; j < out.length; j++) out[j]! += more;
}

function byPlace(
  of: RowNode,
  rows: readonly number[],
  p: number,
  out: Float64Array,
  points: (from: number, length: number) => Points,
): void {
  const n = rows.length;
  const block = Math.min(out.length, Math.max(16, 2 ** Math.floor(Math.log2(heldAtOnce / n))));
  const side = new Float64Array(block * n);
  for (let from = 0; from < out.length; from += block) {
    const length = Math.min(block, out.length - from);
    const here = points(from, length);
    rows.forEach((row, k) => {
      const drawn = here.row(of, row);
      for (let j = 0; j < length; j++) side[j * n + k] = at(drawn, j);
    });
    for (let j = 0; j < length; j++) {
      const drawn = side.subarray(j * n, (j + 1) * n);
      // What is no number has no place among the others.
      out[from + j] = drawn.some(Number.isNaN) ? Number.NaN : quantilesInPlace(drawn, [p])[0]!;
    }
  }
}

function at(drawn: Float64Array | number, j: number): number {
  return typeof drawn === "number" ? drawn : drawn[j]!;
}
