// What a control chart is drawn from, and what it says in words.

import { dateOfDay } from "../numbers/days.ts";
import { type AxisName, axisTitle, capital } from "./axis-words.ts";
import { figure } from "./text.ts";

export interface DayPoint {
  /** Since 1970-01-01. */
  readonly day: number;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** By the limits that are drawn; false: from before the change that they begin after. */
  readonly judged?: boolean;
  readonly signal?: boolean;
  /** The step to this value is above its limit. */
  readonly stepSignal?: boolean;
}

export interface ControlLimits {
  readonly mean: number;
  readonly upper: number;
  readonly lower: number;
  readonly rangeMean: number;
  readonly rangeUpper: number;
  /** Days: of the first value, of the last of the baseline, of the last. */
  readonly from: number;
  readonly baselineTo: number;
  readonly to: number;
  /** Values of the baseline. */
  readonly count: number;
}

export interface ControlInput extends Omit<AxisName, "title"> {
  readonly name: string;
  readonly property: string;
  /** By day. */
  readonly points: readonly DayPoint[];
  /** Shown crossed, and in no figure that the chart tells. */
  readonly leftOut?: readonly DayPoint[];
  readonly limits?: ControlLimits;
  readonly events?: readonly { readonly day: number; readonly letter: string }[];
  /** Days. */
  readonly pours?: readonly number[];
  /** Days between which a suggested change may have fallen. */
  readonly change?: { readonly low: number; readonly high: number };
  readonly caption?: string;
}

/**
 * Limits are told to the place that their own doubt begins at: to tenths of a standard deviation, which is a sixth of the
 * way from one to the other. Trailing zeros stay, so that the three read alike.
 */
export function limitText({ upper, lower }: Pick<ControlLimits, "upper" | "lower">, value: number): string {
  const sd = (upper - lower) / 6;
  const places = sd > 0 && Number.isFinite(sd) ? Math.min(4, Math.max(0, 1 - Math.floor(Math.log10(sd)))) : 2;
  const text = value.toFixed(places);
  return (Number(text) === 0 ? text.replace("-", "") : text).replace("-", "−");
}

export function controlCaption({ limits, points }: ControlInput, axis: AxisName): string {
  const what = capital(axis.title);
  if (!limits)
    return `${what} by day, ${points.length} values: too few for limits, so the points stand alone.`;
  const { mean, upper, lower, count } = limits;
  const text = (value: number): string => limitText(limits, value);
  return `${what} by day, with mean ${text(mean)} and limits ${text(lower)} and ${text(upper)} from ${count} values: mean ± 2.66 × the mean step (3/d2, d2 = 1.128); the step's own limit is 3.267 × its mean.`;
}

export function controlAlt(
  { points, limits, events = [], change, leftOut = [] }: ControlInput,
  axis: AxisName,
  decimals: number,
  missing: number,
): string {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last) return `${capital(axisTitle(axis))}: no figures to draw.`;
  const values = points.map(({ value }) => value);
  const text = (value: number): string => figure(value, decimals);
  const signals = points.filter(({ signal }) => signal).length;
  return [
    `${capital(axisTitle(axis))}, ${points.length} values from ${dateOfDay(first.day)} to ${dateOfDay(last.day)}, from ${text(Math.min(...values))} to ${text(Math.max(...values))}, the last ${text(last.value)}.`,
    ...(limits
      ? [
          `Mean ${limitText(limits, limits.mean)}, limits ${limitText(limits, limits.lower)} and ${limitText(limits, limits.upper)}; ${signals === 1 ? "1 value stands" : `${signals} values stand`} in a signal.`,
        ]
      : []),
    ...(events.length > 0 ? [`${events.length} days are marked with letters.`] : []),
    ...(change
      ? [`A change is suggested between ${dateOfDay(change.low)} and ${dateOfDay(change.high)}.`]
      : []),
    ...(leftOut.length > 0 ? [`${leftOut.length} left out by the log, crossed.`] : []),
    ...(missing > 0 ? [`${missing} without a figure are left out.`] : []),
  ].join(" ");
}
