// How much of what the values of a diary move is the rig's, and how often a steady heap would look moved.

import { cusum } from "../numbers/cusum.ts";
import { normalQuantile } from "../numbers/distributions.ts";
import { ewma } from "../numbers/ewma.ts";
import { type ControlSignal, d2OfTwo, individualsChart } from "../numbers/individuals-chart.ts";
import { mixedWords } from "../numbers/mixing.ts";
import { lift } from "../quantity/combine.ts";
import { figure } from "../quantity/figure.ts";
import { firstOrderVariance } from "../quantity/first-order.ts";
import type { DiaryValue } from "./control-series.ts";

export interface MeasuringShare {
  /** Of the variance between neighbouring values, %; may pass 100 by chance or where a ± was set wide. */
  readonly percent: number;
  /** True where a part of the doubt is not known. */
  readonly atLeast: boolean;
}

/**
 * Share of measuring in the scatter between neighbours: the mean variance of xᵢ − xᵢ₋₁ by the values' own doubt, over
 * 2·(MR̄/d2)². What both readings share (a scale's bias, a bore) cancels in the difference, as it does on the chart.
 * The variance is that of the first order in each source (GUM 5.1.2), by one step up and one down.
 * Undefined for fewer than two values, where no doubt is known at all, or where the values do not move.
 */
export function measuringShare(
  values: readonly DiaryValue[],
  meanMovingRange: number,
): MeasuringShare | undefined {
  if (values.length < 2 || !(meanMovingRange > 0)) return undefined;
  const variances = values.slice(1).map(({ spread }, i) => {
    const before = values[i]!.spread;
    const step = lift((values) => values[1]! - values[0]!, [before, spread]);
    const variance = firstOrderVariance(step);
    if (Number.isFinite(variance)) return variance;
    // A source with two or fewer degrees of freedom has an interval and no standard deviation.
    const { low, high } = figure(step, { draws: 1024 });
    return ((high - low) / (2 * normalQuantile(0.975))) ** 2;
  });
  const mean = variances.reduce((all, one) => all + one, 0) / variances.length;
  if (mean === 0) return undefined;
  return {
    percent: (100 * mean) / (2 * (meanMovingRange / d2OfTwo) ** 2),
    atLeast: values.some(({ missing }) => missing.length > 0),
  };
}

/** Slack and limit of the sum of departures, in standard deviations. */
const cusumSlack = 0.5;
const cusumLimit = 5;

export interface Drift {
  /** Places from 0 among the later values. */
  readonly at: number;
  readonly side: "above" | "below";
  /** By the sum of departures: where it began to climb; undefined where that gave no signal. */
  readonly since?: number;
  /** The weighted mean lies outside its limits at the last value too. */
  readonly still: boolean;
}

/** The first signal of the weighted mean of the values after a baseline, by that baseline's mean and scatter. */
export function driftOf(later: readonly number[], target: number, sd: number): Drift | undefined {
  if (later.length === 0 || !(sd > 0)) return undefined;
  const { signals } = ewma(later, { target, sd });
  const first = signals[0];
  if (!first) return undefined;
  const sums = cusum(later, { target, slack: cusumSlack * sd, limit: cusumLimit * sd });
  const since = sums.signals.find(({ side }) => side === first.side)?.since;
  return {
    at: first.at,
    side: first.side,
    ...(since === undefined ? {} : { since }),
    still: signals.at(-1)!.at === later.length - 1,
  };
}

const rows = 2000;
const known = new Map<string, FalseAlarms>();

/** Of 100 charts of a heap that has not moved. */
export interface FalseAlarms {
  /** Charts with a signal somewhere after the baseline. */
  readonly any: number;
  /** Charts with a signal that still stands at the last value. */
  readonly standing: number;
}

/**
 * Charts of independent normal values that have not moved, with limits from `baseline` of them: how many of 100 give a
 * signal at one of `later` further values, by a limit, a run, a trend or the weighted mean, and how many at the last of
 * them. By simulation of 2,000 rows, always the same ones: ± 2 and ± 1 in 100.
 */
export function falseAlarmsIn100(baseline: number, later: number): FalseAlarms {
  const key = `${baseline}/${later}`;
  const before = known.get(key);
  if (before) return before;
  const next = steadyNormal();
  let [any, standing] = [0, 0];
  for (let row = 0; row < rows; row++) {
    const values = Array.from({ length: baseline + later }, next);
    const { mean, meanMovingRange, signals } = individualsChart(values, { baseline });
    const drift = driftOf(values.slice(baseline), mean, meanMovingRange / d2OfTwo);
    const counting = signals.filter(({ rule, to }) => rule !== "range" && to >= baseline);
    if (drift || counting.length > 0) any++;
    if (standsAtTheLast(values.length, counting, drift)) standing++;
  }
  const found = { any: (100 * any) / rows, standing: (100 * standing) / rows };
  known.set(key, found);
  return found;
}

/** counting: signals after the baseline, without those of a range. */
export function standsAtTheLast(
  count: number,
  counting: readonly ControlSignal[],
  drift: Drift | undefined,
): boolean {
  return drift?.still === true || counting.some(({ to }) => to === count - 1);
}

/** The same row of normal numbers each time, by the quantiles of a Weyl sequence that is mixed in 32 bits. */
function steadyNormal(): () => number {
  const word = mixedWords(0x1f123bb5);
  return () => normalQuantile((word() + 0.5) / 2 ** 32);
}
