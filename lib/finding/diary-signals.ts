// The signals of a control chart in words, each with its rule and how often a steady heap gives it.

import type { ControlSignal } from "../numbers/individuals-chart.ts";
import type { Phrase } from "../phrase.ts";
import type { Controlled } from "../trial/control-report.ts";
import * as say from "./diary-phrases.ts";

/** A sentence for each rule that spoke, the clearest first. signals: those in question. */
export function signalSentences(one: Controlled, signals: readonly ControlSignal[]): Phrase[] {
  const date = (at: number): string => one.values[at]!.date;
  const by = (rule: ControlSignal["rule"]) => signals.filter((signal) => signal.rule === rule);
  const dates = (rule: ControlSignal["rule"]): string[] => by(rule).map(({ to }) => date(to));
  const [outside, steps] = [dates("outside"), dates("range")];
  return [
    ...(outside.length > 0 ? [say.valuesOutside(outside)] : []),
    ...by("run").map(({ from, to, side }) =>
      say.runOnOneSide(String(to - from + 1), date(from), date(to), side),
    ),
    ...by("trend").map(({ from, to, side }) =>
      say.trendOneWay(String(to - from + 1), date(from), date(to), side === "above"),
    ),
    ...driftSentence(one, signals),
    ...(steps.length > 0 ? [say.stepAboveLimit(steps)] : []),
  ];
}

/** Of the rules beside the limits. */
export const signalSources =
  "Run of eight: Western Electric, Statistical Quality Control Handbook (1956); trend of six: L. S. Nelson, Journal of Quality Technology 16 (1984) 237–239; weighted mean: J. M. Lucas and M. S. Saccucci, Technometrics 32 (1990) 1–12; all from memory, their rates held by simulation";

function driftSentence(
  { drift, values, baseline, after }: Controlled,
  signals: readonly ControlSignal[],
): Phrase[] {
  if (!drift || signals !== after) return [];
  const date = (at: number): string => values[baseline + at]!.date;
  const since = drift.since === undefined ? "" : date(drift.since);
  return [say.weightedMeanOut(drift.side, date(drift.at), since)];
}

/** How far to trust them all together: one sentence, where there is something to judge. */
export function falseAlarmSentences(one: Controlled): Phrase[] {
  const { falseAlarms, baseline, values } = one;
  if (!falseAlarms) return [];
  const { any, standing } = falseAlarms;
  return [
    say.falseAlarms(
      String(Math.round(any)),
      String(values.length - baseline),
      String(Math.round(standing)),
      String(baseline),
    ),
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
