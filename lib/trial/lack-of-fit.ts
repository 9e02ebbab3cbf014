// Whether batches at one level agree with each other better than with the curve.

import type { TestName } from "../log/batch.ts";
import { fCumulative } from "../numbers/f-distribution.ts";
import { fitLinear } from "../numbers/least-squares.ts";
import { sum } from "../numbers/sum.ts";

export interface LackOfFit {
  readonly test: TestName;
  /** Small where the curve's form does not follow the batches. */
  readonly p: number;
  readonly f: number;
  /** Degrees of freedom of the misfit and of the scatter within levels. */
  readonly df: readonly [number, number];
}

/** Fewer degrees of freedom between repeats say nothing. */
const leastPure = 2;

/**
 * F test of a fit's form against pure error: F = ((RSS − SS_pe)/(df − df_pe))/(SS_pe/df_pe), SS_pe the squares of
 * batches about the mean of their cell. design: rows of the fit; y; cells: batches of one cell stand at one level
 * (and in one block). Undefined with fewer than two degrees of freedom of pure error, none left for the misfit, or
 * repeats that do not scatter at all.
 * Where all y are above 0 the same is asked of log y, since home scatter often grows with the figure; the larger p is
 * given, with its F: a misfit is said only where both scales show it.
 * Source: NIST/SEMATECH e-Handbook 4.4.4.6; Draper & Smith, Applied Regression Analysis. The two scales are our own.
 * @example lackOfFit([[1, 0], [1, 0], [1, 1], [1, 1], [1, 2]], [1, 1.2, 3, 3.1, 2], ["a", "a", "b", "b", "c"])?.p // 0.01406...
 */
export function lackOfFit(
  design: readonly (readonly number[])[],
  y: readonly number[],
  cells: readonly string[],
): Omit<LackOfFit, "test"> | undefined {
  const plain = pureErrorTest(design, y, cells);
  if (!plain || y.some((value) => !(value > 0))) return plain;
  const logged = pureErrorTest(design, y.map(Math.log), cells);
  return logged && logged.p > plain.p ? logged : plain;
}

function pureErrorTest(
  design: readonly (readonly number[])[],
  y: readonly number[],
  cells: readonly string[],
): Omit<LackOfFit, "test"> | undefined {
  const groups = new Map<string, number[]>();
  cells.forEach((cell, i) => {
    groups.set(cell, [...(groups.get(cell) ?? []), y[i]!]);
  });
  const pure = sum(
    [...groups.values()].map((values) => {
      const middle = sum(values) / values.length;
      return sum(values.map((value) => (value - middle) ** 2));
    }),
  );
  const purely = y.length - groups.size;
  const fit = fitLinear(design, y);
  const misfit = fit.degreesOfFreedom - purely;
  if (purely < leastPure || misfit < 1 || !(pure > 0)) return undefined;
  const f = Math.max(0, fit.residualSumOfSquares - pure) / misfit / (pure / purely);
  return { f, p: 1 - fCumulative(f, misfit, purely), df: [misfit, purely] };
}
