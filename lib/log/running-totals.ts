// Rows that were written as running totals, or as what passed, in the place of what each sieve held.

import type { RetainedEntry } from "./types.ts";

type Row = Pick<RetainedEntry, "label" | "sieve"> & { readonly mass: { readonly value: number } };

/** Beside the whole, as a share of it: sand that was lost, and rounding. */
const slack = 0.02;

/**
 * What each row held by itself, if the rows rise from the coarsest to the whole, whether the pan carries the sum on or
 * holds its own; undefined otherwise. Needs three rows that differ: two may rise by chance.
 * rows: coarse to fine; whole: start mass, or 100 where the rows are percent.
 *
 *     totals 9.5, 52.4, 89.7, 99.5, 100 of 100   // 9.5, 42.9, 37.3, 9.8, 0.5
 */
export function withoutRunningTotals(rows: readonly Row[], whole: number): readonly number[] | undefined {
  const values = rows.map(({ mass }) => mass.value);
  const near = (sum: number) => Math.abs(sum - whole) <= slack * whole;
  const last = rows.at(-1);
  const ownPan = last && !last.sieve && !rises(values) ? last.mass.value : undefined;
  const sums = ownPan === undefined ? values : values.slice(0, -1);
  // Shares that rise to the whole by chance add up to little more than it.
  if (values.reduce((all, value) => all + value, 0) < 1.25 * whole) return undefined;
  if (!rises(sums) || !near((sums.at(-1) ?? 0) + (ownPan ?? 0))) return undefined;
  return [...sums.map((sum, k) => tidy(sum - (sums[k - 1] ?? 0))), ...(ownPan === undefined ? [] : [ownPan])];
}

/** What each row held, if the percentages fall from at most 100 and are too many for shares; undefined otherwise. */
export function withoutPassing(rows: readonly Row[]): readonly number[] | undefined {
  const values = rows.map(({ mass }) => mass.value);
  const down = values.toReversed();
  const total = values.reduce((sum, value) => sum + value, 0);
  if (!rises(down) || total < 110 || (values[0] ?? 0) > 100) return undefined;
  const held = values.map((passed, k) => tidy((values[k - 1] ?? 100) - passed));
  const pan = rows.at(-1);
  // What passed the finest sieve lies in the pan.
  if (pan && !pan.sieve) held[held.length - 1] = tidy(values.at(-2) ?? 0);
  return held;
}

function rises(values: readonly number[]): boolean {
  const steps = values.slice(1).map((value, k) => value - values[k]!);
  return steps.every((step) => step >= 0) && steps.filter((step) => step > 0).length >= 2;
}

function tidy(value: number): number {
  return Number(value.toFixed(6));
}
