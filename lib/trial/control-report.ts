// The diary of a heap worked through: limits from a stated baseline, signals, drifts, a change point, tests that are due.

import type { DiaryProperty } from "../log/diary-properties.ts";
import type { Log } from "../log/types.ts";
import { lagOneAutocorrelation } from "../numbers/autocorrelation.ts";
import { type ChangePoint, changePoint } from "../numbers/change-point.ts";
import {
  type ControlSignal,
  d2OfTwo,
  type IndividualsChart,
  individualsChart,
} from "../numbers/individuals-chart.ts";
import { limitDoubt } from "../numbers/limit-doubt.ts";
import {
  type Drift,
  driftOf,
  type FalseAlarms,
  falseAlarmsIn100,
  type MeasuringShare,
  measuringShare,
  standsAtTheLast,
} from "./control-doubt.ts";
import { type Due, dueTests } from "./control-due.ts";
import { type DiaryEvent, type DiaryEvents, diaryEvents } from "./control-events.ts";
import { type Diary, type DiarySeries, type DiaryValue, diaryOf } from "./control-series.ts";

/** Fewer values by one method have no limits. */
export const leastValues = 8;
/** Limits are from so many values at most, so that what comes later is judged by them. Common practice: 20 to 25. */
const mostBaseline = 20;

export interface Controlled {
  readonly series: DiarySeries;
  /** The values that are judged: all, or those since the heap was changed last. */
  readonly values: readonly DiaryValue[];
  /** Of them the first so many are the baseline. */
  readonly baseline: number;
  /** The change that the baseline begins after; undefined: the values are judged from the first one on. */
  readonly since?: DiaryEvent;
  /** A later change, after which too few values stand for limits of their own. */
  readonly changedSince?: { readonly event: DiaryEvent; readonly values: number };
  readonly chart: IndividualsChart;
  /** Half-widths of 95 % intervals. */
  readonly doubt: { readonly mean: number; readonly limit: number };
  /** Of the baseline; limits are too narrow by a factor √(1 − r). Undefined: not told apart from none. */
  readonly together?: { readonly r: number; readonly widerBy: number };
  readonly measuring?: MeasuringShare;
  readonly drift?: Drift;
  /** Signals that end in the baseline, and those after it. */
  readonly within: readonly ControlSignal[];
  readonly after: readonly ControlSignal[];
  /**
   * steady: no signal after the baseline but of a range. moved, perhaps moved: one that stands at the last value; moved
   * where a change is suggested too, or a value lies outside by more than the limit itself is in doubt. signal passed:
   * none at the last value. Without values after the baseline: unsteady, where it has a signal of its own, else baseline only.
   */
  readonly verdict: "steady" | "moved" | "perhaps moved" | "signal passed" | "unsteady" | "baseline only";
  /** The baseline has signals of its own, so that its limits may be too wide, or about the wrong mean. */
  readonly restless: boolean;
  /** Undefined: no value stands after the baseline. */
  readonly falseAlarms?: FalseAlarms;
  readonly change?: ChangePoint & {
    /** p times the number of charts: what stands in the way of one suggestion too many. */
    readonly pOverAll: number;
    readonly suggested: boolean;
  };
}

export interface ControlReport extends DiaryEvents {
  readonly diary: Diary;
  readonly controlled: readonly Controlled[];
  /** Fewer than leastValues: points only. */
  readonly few: readonly DiarySeries[];
  readonly due: readonly Due[];
  /** Tests that the founder wants to be reminded of and that are not due. */
  readonly inTime: readonly DiaryProperty[];
}

/**
 * The diary of a log. baseline "since change" (default): values since the last event that changes the heap, if at least
 * 8 by one method come after its day, else since the one before, else all; limits are from the first 20 of them at most.
 * "first": from the first values of the log, whatever happened later. A value of the event's own day counts as before it.
 * baselineValues: how many values at most, 8 and up. A series of fewer than 8 values has no limits.
 * Change point: one at a time over the judged values; suggested where its p times the number of charts is 0.05 or less.
 * The last day is the log's own: no clock is read.
 * @example controlReport(log).controlled[0]?.verdict // "steady"
 */
export function controlReport(
  log: Log,
  options: { readonly baseline?: "since change" | "first"; readonly baselineValues?: number } = {},
): ControlReport {
  const diary = diaryOf(log);
  const found = diaryEvents(log);
  const long = diary.series.filter(({ values }) => values.length >= leastValues);
  const changes = options.baseline === "first" ? [] : found.events.filter(({ changes }) => changes);
  const most = Math.max(leastValues, options.baselineValues ?? mostBaseline);
  return {
    ...found,
    diary,
    controlled: long.map((series) => controlledOf(series, changes, most, long.length)),
    few: diary.series.filter(({ values }) => values.length < leastValues),
    ...dueTests(log, diary),
  };
}

function controlledOf(
  series: DiarySeries,
  changes: readonly DiaryEvent[],
  most: number,
  charts: number,
): Controlled {
  const after = (event: DiaryEvent) => series.values.filter(({ day }) => day > event.day);
  const since = changes.findLast((event) => after(event).length >= leastValues);
  const values = since ? after(since) : series.values;
  const newest = changes.at(-1);
  const changedSince =
    newest && newest !== since && newest.day > values[0]!.day
      ? { event: newest, values: after(newest).length }
      : undefined;
  const numbers = values.map(({ value }) => value);
  const baseline = Math.min(most, values.length);
  const chart = individualsChart(numbers, { baseline });
  const later = numbers.slice(baseline);
  const drift = driftOf(later, chart.mean, chart.meanMovingRange / d2OfTwo);
  const measuring = measuringShare(values.slice(0, baseline), chart.meanMovingRange);
  const together = togetherness(numbers.slice(0, baseline));
  const within = chart.signals.filter(({ to }) => to < baseline);
  const signals = chart.signals.filter(({ to }) => to >= baseline);
  const change = changePoint(numbers);
  const pOverAll = Math.min(1, (change?.p ?? 1) * charts);
  const doubt = limitDoubt(chart.meanMovingRange, baseline);
  const suggested = pOverAll <= 0.05;
  const firm = suggested || later.some((value) => Math.abs(value - chart.mean) > reach(chart) + doubt.limit);
  return {
    series,
    values,
    baseline,
    ...(since ? { since } : {}),
    ...(changedSince ? { changedSince } : {}),
    chart,
    doubt,
    ...(together ? { together } : {}),
    ...(measuring ? { measuring } : {}),
    ...(drift ? { drift } : {}),
    within,
    after: signals,
    verdict:
      later.length > 0
        ? verdictOf(numbers.length, counting(signals), drift, firm)
        : counting(within).length > 0
          ? "unsteady"
          : "baseline only",
    restless: counting(within).length > 0,
    ...(later.length === 0 ? {} : { falseAlarms: falseAlarmsIn100(baseline, later.length) }),
    ...(change ? { change: { ...change, pOverAll, suggested } } : {}),
  };
}

/** A step above its limit alone decides nothing. */
const counting = (signals: readonly ControlSignal[]): ControlSignal[] =>
  signals.filter(({ rule }) => rule !== "range");

const reach = ({ upper, mean }: IndividualsChart): number => upper - mean;

function verdictOf(
  count: number,
  signals: readonly ControlSignal[],
  drift: Drift | undefined,
  firm: boolean,
): Controlled["verdict"] {
  if (signals.length === 0 && !drift) return "steady";
  if (!standsAtTheLast(count, signals, drift)) return "signal passed";
  return firm ? "moved" : "perhaps moved";
}

/** One-sided at 5 %: independent values have r about −1/n ± 1/√n. */
function togetherness(values: readonly number[]): Controlled["together"] {
  const n = values.length;
  const raw = lagOneAutocorrelation([values]);
  if (!(raw > -1 / n + 1.645 / Math.sqrt(n))) return undefined;
  const r = Math.min(0.9, raw + (1 + 3 * raw) / n);
  return { r, widerBy: 1 / Math.sqrt(1 - r) };
}
