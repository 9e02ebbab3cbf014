// What an axis counts, in which unit, of what: the words of titles, texts and tables.

import { invariant } from "../issue.ts";
import { ends } from "./data.ts";
import { figure } from "./text.ts";

export interface AxisName {
  /** The quantity: "moisture", "green compression strength". */
  readonly title: string;
  /** "kPa", "%"; empty for a bare number. */
  readonly unit: string;
  /** What a percentage is of: "damp mass", "height". */
  readonly basis?: string;
}

/** "% of damp mass", "kPa", or nothing for a bare number; a percentage without its basis throws Misuse. */
export function unitText({ title, unit, basis }: AxisName): string {
  invariant(unit !== "%" || basis !== undefined, `"${title}" is a percentage and does not say of what`);
  return basis === undefined ? unit : `${unit} of ${basis}`;
}

/** "moisture, % of damp mass"; the title alone for a bare number. */
export function axisTitle(axis: AxisName): string {
  const unit = unitText(axis);
  return unit === "" ? axis.title : `${axis.title}, ${unit}`;
}

/** The unit as a table column takes it: none for a bare number. */
export function columnUnit(axis: AxisName): { readonly unit?: string } {
  const unit = unitText(axis);
  return unit === "" ? {} : { unit };
}

/** Decimals worth printing for values that run over this span: about a hundredth of it. */
export function decimalsOver(span: number): number {
  return span > 0 && Number.isFinite(span) ? Math.min(4, Math.max(0, 2 - Math.floor(Math.log10(span)))) : 2;
}

/** "40 to 70", "up to 70", "from 40 up"; for an end that is not a figure the range is open on that side. */
export function rangeText(low: number, high: number, decimals: number): string {
  if (Number.isFinite(low) && Number.isFinite(high))
    return `${figure(low, decimals)} to ${figure(high, decimals)}`;
  if (Number.isFinite(high)) return `up to ${figure(high, decimals)}`;
  return Number.isFinite(low) ? `from ${figure(low, decimals)} up` : "open on both sides";
}

/** "3.45 (95 %: 3.3 to 3.6)", with two figures of the half-width; "3.45" without an interval. */
export function withInterval(
  value: number,
  of: { readonly low?: number | undefined; readonly high?: number | undefined },
  decimals: number,
): string {
  const both = ends(of);
  if (!both || !(both.high > both.low)) return figure(value, decimals);
  const places = Math.min(4, Math.max(0, 1 - Math.floor(Math.log10((both.high - both.low) / 2))));
  return `${figure(value, places)} (95 %: ${rangeText(both.low, both.high, places)})`;
}

export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
