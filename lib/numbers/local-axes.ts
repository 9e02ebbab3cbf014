// Columns of a design moved to their middle and brought to length 1, so that few digits are lost in a fit.

import { sum } from "./sum.ts";

export interface LocalAxes {
  /** Which column is the intercept, all ones; undefined: there is none, and nothing is centred. */
  readonly constant: number | undefined;
  readonly centres: readonly number[];
  /** Infinite for a column that does not vary beyond rounding: it then stands as zeros. */
  readonly scales: readonly number[];
  /** (x − centre)/scale */
  row(row: readonly number[]): number[];
  /** Coefficients for the columns as given, from those on these axes. */
  rawCoefficients(local: readonly number[]): number[];
  /** The same for every column of a table with a row for each coefficient. */
  rawColumns(table: readonly (readonly number[])[]): number[][];
}

/** A column that varies about its mean by less than this share of its length does not vary. */
const leastVariation = 1e-12;

/** Axes for a design with the given weights; rows of one length. */
export function localAxes(design: readonly (readonly number[])[], weights: readonly number[]): LocalAxes {
  const size = design[0]!.length;
  const columns = Array.from({ length: size }, (_, j) => design.map((row) => row[j]!));
  const found = columns.findIndex((column) => column.every((x) => x === 1));
  const constant = found < 0 ? undefined : found;
  const total = sum(weights);
  const centres = columns.map((column, j) =>
    constant === undefined || j === constant ? 0 : sum(column.map((x, i) => x * weights[i]!)) / total,
  );
  const scales = columns.map((column, j) => {
    const length = weightedLength(column, 0, weights);
    const about = weightedLength(column, centres[j]!, weights);
    return about > leastVariation * length ? about : Number.POSITIVE_INFINITY;
  });
  const rawColumns = (table: readonly (readonly number[])[]): number[][] => {
    const raw = table.map((row, j) => row.map((x) => x / scales[j]!));
    if (constant === undefined) return raw;
    const shifts = raw[constant]!.map((x, k) =>
      raw.reduce((rest, row, j) => rest - row[k]! * centres[j]!, x),
    );
    return raw.map((row, j) => (j === constant ? shifts : row));
  };
  return {
    constant,
    centres,
    scales,
    row: (row) => row.map((x, j) => (x - centres[j]!) / scales[j]!),
    rawCoefficients: (local) => rawColumns(local.map((x) => [x])).map((row) => row[0]!),
    rawColumns,
  };
}

function weightedLength(column: readonly number[], centre: number, weights: readonly number[]): number {
  let squares = 0;
  for (let i = 0; i < column.length; i++) squares += weights[i]! * (column[i]! - centre) ** 2;
  return Math.sqrt(squares);
}
