// A single batch that lies further off its curve than chance puts one.

import type { TestName } from "../log/batch.ts";
import { studentTCumulative } from "../numbers/distributions.ts";
import type { LinearFit } from "../numbers/linear-fit.ts";

export interface WildBatch {
  readonly test: TestName;
  readonly batch: string;
  /** Residual over its standard error with that batch left out: Student's t. */
  readonly t: number;
  readonly df: number;
  /** Two-sided, times the number of batches (Bonferroni), at most 1. */
  readonly p: number;
  /** How far the figure lies above the curve through the others, in the property's unit. */
  readonly off: number;
}

/** Of so few batches any one decides too much of the curve to be called wild. */
const leastRows = 6;

export interface OutlyingRow {
  readonly row: number;
  readonly t: number;
  readonly df: number;
  readonly p: number;
  readonly off: number;
}

/**
 * The row of a fit that lies furthest off what the others say, by the externally studentised residual
 * t = e√((df − 1)/(RSS(1 − h) − e²)), Student's t with df − 1 degrees of freedom; p is two-sided and multiplied by the
 * number of rows. Undefined with fewer than six rows or fewer than two degrees of freedom, or where nothing scatters. A row
 * that no other holds (h = 1) is passed over; one whose absence leaves no scatter at all has t infinite.
 * Source: R. D. Cook and S. Weisberg, Residuals and Influence in Regression (1982) 2.2.2 (from memory).
 * @example
 * outlyingRow(fitLinear([[1, 0], [1, 1], [1, 2], [1, 3], [1, 4], [1, 5]], [0, 1.1, 1.9, 9, 4.1, 4.9]))?.row
 * // 3
 */
export function outlyingRow(fit: LinearFit): OutlyingRow | undefined {
  const { residuals, leverages, degreesOfFreedom, residualSumOfSquares: rss } = fit;
  const count = residuals.length;
  const df = degreesOfFreedom - 1;
  if (count < leastRows || !(df >= 1) || !(rss > 0)) return undefined;
  const held = residuals.flatMap((e, row) => {
    const free = 1 - leverages[row]!;
    if (free < 1e-9) return [];
    const left = rss * free - e * e;
    const t = left > 1e-12 * rss ? e * Math.sqrt(df / left) : Math.sign(e) * Number.POSITIVE_INFINITY;
    return [{ row, t, off: e / free }];
  });
  const furthest = held.reduce((a, b) => (Math.abs(b.t) > Math.abs(a.t) ? b : a), held[0]!);
  if (!furthest) return undefined;
  const p = Math.min(1, 2 * count * studentTCumulative(-Math.abs(furthest.t), df));
  return { ...furthest, df, p };
}
