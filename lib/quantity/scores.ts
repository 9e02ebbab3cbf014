// The stratified scores of a distribution: one table serves every source that has its shape.

import { invariant } from "../issue.ts";
import {
  arcsineQuantile,
  curvilinearTrapezoidQuantile,
  normalQuantile,
  rectangularQuantile,
  studentTQuantile,
  triangularQuantile,
} from "../numbers/distributions.ts";
import type { Shape } from "./source.ts";

/** Draws in every figure of every page, unless a caller asks for another power of two. */
export const drawsUsual = 4096;

const tables = new Map<string, Float64Array>();

/**
 * The quantiles of a shape at (i + ½)/count, i = 0 … count − 1, ascending. The table is symmetric to the last
 * digit, so its mean is 0. Normal scores are scaled to a standard deviation of exactly 1 (midpoints alone
 * give 0.9998 at 4,096). count: a power of two from 16 to 2^20; else throws.
 */
export function scores(shape: Shape, count: number): Float64Array {
  invariant(
    Number.isInteger(Math.log2(count)) && count >= 16 && count <= 1 << 20,
    "draws come in powers of two, 16 to 1,048,576",
  );
  const name = `${count} ${JSON.stringify(shape)}`;
  const known = tables.get(name);
  if (known) return known;
  const table = new Float64Array(count);
  const quantile = quantileOf(shape);
  for (let i = 0; i < count / 2; i++) {
    const score = quantile((i + 0.5) / count);
    table[i] = score;
    table[count - 1 - i] = -score;
  }
  if (shape.kind === "normal") {
    let squares = 0;
    for (const score of table) squares += score * score;
    const scale = 1 / Math.sqrt(squares / count);
    for (let i = 0; i < count; i++) table[i]! *= scale;
  }
  tables.set(name, table);
  return table;
}

/** Standard deviation of a shape's score; infinite for t with two or fewer degrees of freedom. */
export function scoreSd(shape: Shape): number {
  switch (shape.kind) {
    case "normal":
      return 1;
    case "t":
      return shape.df > 2 ? Math.sqrt(shape.df / (shape.df - 2)) : Number.POSITIVE_INFINITY;
    case "rectangular":
      return 1 / Math.sqrt(3);
    case "triangular":
      return 1 / Math.sqrt(6);
    case "arcsine":
      return Math.SQRT1_2;
    case "curvilinear trapezoid":
      return Math.sqrt((1 + shape.edge ** 2 / 3) / 3);
  }
}

function quantileOf(shape: Shape): (p: number) => number {
  switch (shape.kind) {
    case "normal":
      return normalQuantile;
    case "t":
      return (p) => studentTQuantile(p, shape.df);
    case "rectangular":
      return (p) => rectangularQuantile(p, -1, 1);
    case "triangular":
      return (p) => triangularQuantile(p, -1, 1);
    case "arcsine":
      return (p) => arcsineQuantile(p, -1, 1);
    case "curvilinear trapezoid":
      return (p) => curvilinearTrapezoidQuantile(p, shape.edge);
  }
}
