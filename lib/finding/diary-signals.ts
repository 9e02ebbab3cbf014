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

/** Of the rules beside the limits. */
export const signalSources =
  "Run of eight: Western Electric, Statistical Quality Control Handbook (1956); trend of six: L. S. Nelson, Journal of Quality Technology 16 (1984) 237–239; weighted mean: J. M. Lucas and M. S. Saccucci, Technometrics 32 (1990) 1–12; all from memory, their rates held by simulation";

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

/** How far to trust them all together: one sentence, where there is something to judge. */
export function falseAlarmSentences(one: Controlled): string[] {
  const { falseAlarms, baseline, values } = one;
  if (!falseAlarms) return [];
  const later = values.length - baseline;
  return [
    `Of 100 such charts of a heap that has not moved, about ${Math.round(falseAlarms.any)} (± 4) show a signal somewhere among ${later} ${later === 1 ? "value" : "values"}, and about ${Math.round(falseAlarms.standing)} (± 2) at the last one: limits from ${baseline} values are themselves in doubt.`,
  ];
}

/**
 * Of all charts of a page together. Tests of one heap go together, which makes such alarms fewer than if each chart
 * stood alone: so the number is the most.
 */
export function alarmsOfAll(controlled: readonly Controlled[]): string | undefined {
  const judged = controlled.flatMap(({ falseAlarms }) => falseAlarms ?? []);
  if (judged.length === 0) return undefined;
  const anyOf = (of: "any" | "standing"): number =>
    Math.round(100 * (1 - judged.reduce((all, one) => all * (1 - one[of] / 100), 1)));
  const charts = judged.length === 1 ? "this one chart" : `one of these ${judged.length} charts`;
  return `Of 100 heaps that never moved, up to about ${anyOf("any")} show some signal on ${charts} by now, and up to about ${anyOf("standing")} one that still stands: a signal asks for another test, not for clay or water.`;
}
