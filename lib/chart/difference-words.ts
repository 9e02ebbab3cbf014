// What a plot of a difference is drawn from, and its words.

import { type AxisName, decimalsOver, unitText, withInterval } from "./axis-words.ts";
import { figure } from "./text.ts";

export interface DifferenceGroup {
  readonly label: string;
  /** One figure for each batch; NaN: no figure. */
  readonly values: readonly number[];
}
export interface DifferencePlotInput {
  readonly name: string;
  readonly property: string;
  /** "kPa", "%"; empty for a bare number. */
  readonly unit: string;
  /** What a percentage is of. */
  readonly basis?: string;
  /** Two: the difference is the second less the first. */
  readonly groups: readonly DifferenceGroup[];
  /** In the same unit, with the ends of its 95 % interval. */
  readonly difference: { readonly value: number; readonly low: number; readonly high: number };
  readonly caption?: string;
}

export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
export function differenceName(first: DifferenceGroup, second: DifferenceGroup): string {
  return `Difference: ${second.label} less ${first.label}`;
}
export function groupRow({ label, values }: DifferenceGroup, decimals: number) {
  const count = values.length === 1 ? "one batch" : `${values.length} batches`;
  const under = values.length === 0 ? "no figures" : `mean ${figure(meanOf(values), decimals)}, ${count}`;
  return { label, under };
}
export function differenceRow(
  first: DifferenceGroup,
  second: DifferenceGroup,
  { difference }: DifferencePlotInput,
  axis: AxisName,
) {
  const { value, low, high } = difference;
  const told = `${withInterval(value, { low, high }, decimalsOver(Math.abs(value)))} ${Number.isNaN(value) ? "" : unitText(axis)}`;
  return { label: differenceName(first, second), under: told.trimEnd() };
}
