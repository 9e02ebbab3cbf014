// The signals of a control chart in words, each with its rule and how often a steady heap gives it.

import { type ControlSignal, runLength, trendLength } from "../numbers/individuals-chart.ts";
import type { Controlled } from "../trial/control-report.ts";
import { listed } from "./batch-names.ts";

/** A sentence for each rule that spoke, the clearest first. signals: those in question. */
export function signalSentences(one: Controlled, signals: readonly ControlSignal[]): string[] {
  const date = (at: number): string => one.values[at]!.date;
  const by = (rule: ControlSignal["rule"]) => signals.filter((signal) => signal.rule === rule);
  const days = (all: readonly ControlSignal[]): string => {
    const dates = all.map(({ to }) => date(to));
    return dates.length > 3
      ? `${dates.length} times, first on ${dates[0]} and last on ${dates.at(-1)}`
      : `on ${listed(dates)}`;
  };
  const outside = by("outside");
  const runs = by("run").map(
    ({ from, to, side }) =>
      `${to - from + 1} values in a row, ${date(from)} to ${date(to)}, lie ${side} the mean.`,
  );
  const trends = by("trend").map(
    ({ from, to, side }) =>
      `${to - from + 1} values in a row, ${date(from)} to ${date(to)}, each ${side === "above" ? "rise" : "fall"}.`,
  );
  return [
    ...(outside.length > 0
      ? [
          `A value outside the limits, ${days(outside)}. The rule of three standard deviations: values that only scatter give it once in 370.`,
        ]
      : []),
    ...runs.map((text) => `${text} ${runRule}`),
    ...trends.map((text) => `${text} ${trendRule}`),
    ...driftSentence(one, signals),
    ...(by("range").length > 0
      ? [
          `A step above its limit, ${days(by("range"))}. Values that only scatter give one in about 110 steps, so by itself it does not count here.`,
        ]
      : []),
  ];
}

const runRule = `The rule of ${runLength} on one side (Western Electric 1956): values that only scatter give it once in 255.`;
const trendRule = `The rule of ${trendLength} that rise or fall (Nelson 1984): values that only scatter give it once in about 420.`;

function driftSentence(
  { drift, values, baseline, after }: Controlled,
  signals: readonly ControlSignal[],
): string[] {
  if (!drift || signals !== after) return [];
  const date = (at: number): string => values[baseline + at]!.date;
  const since =
    drift.since === undefined ? "" : `; the sum of departures began to climb on ${date(drift.since)}`;
  return [
    `The weighted mean, in which the newest value counts a fifth, went ${drift.side} its limit on ${date(drift.at)}${since}. Values that only scatter give that once in 500 (Lucas & Saccucci 1990).`,
  ];
}

/** How far to trust them all together. */
export function falseAlarmSentence({ falseAlarmsIn100, baseline, values }: Controlled): string {
  const later = values.length - baseline;
  return `Of 100 such charts of a heap that has not moved, about ${Math.round(falseAlarmsIn100)} (± 4) would show a signal somewhere among ${later} ${later === 1 ? "value" : "values"}: limits from ${baseline} values are themselves in doubt.`;
}
