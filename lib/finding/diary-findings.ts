// What the diary of a heap says: what is steady, what has moved, what is due, and how far to trust it.

import type { Phrase } from "../phrase.ts";
import { changingClayPercent, changingSandPercent, type DiaryEvent } from "../trial/control-events.ts";
import { type Controlled, type ControlReport, leastValues } from "../trial/control-report.ts";
import { listed } from "./batch-names.ts";
import * as say from "./diary-messages.ts";
import type { Marked } from "./diary-phrases.ts";
import * as phrase from "./diary-phrases.ts";
import { capitalName, type DiaryPrint, diaryInOwnUnits, plainNumber } from "./diary-print.ts";
import { falseAlarmSentences, signalSentences } from "./diary-signals.ts";
import { endsOf } from "./ends.ts";
import type { Finding } from "./finding.ts";

/** Of the variance between neighbours, %: from here on measuring is worth a word, and from there on it leads. */
const worthAWord = 25;
const leads = 50;

/**
 * What the control charts of a diary say, most urgent first.
 * @example diaryFindings(controlReport(log)).map(({ text }) => text)
 */
export function diaryFindings(
  report: ControlReport,
  print: DiaryPrint = diaryInOwnUnits,
): readonly Finding[] {
  const { controlled, few, diary } = report;
  const verdicts = controlled.map((one) => verdict(one, print));
  const first = (tone: Finding["tone"]) => verdicts.filter((finding) => finding.tone === tone);
  return [
    ...first("doubt"),
    ...controlled.flatMap((one) => suggestion(one, report.events, print)),
    ...dueFindings(report),
    ...controlled.flatMap(restless),
    ...controlled.flatMap(trust),
    ...first("good"),
    ...first("note"),
    ...controlled.flatMap(later),
    ...[...controlled.map(({ series }) => series), ...few].flatMap(rigs),
    ...few.map((series) => say.fewValues(nameOf(series), countOf(series.values.length), String(leastValues))),
    ...diary.onlyKeptOut.map((series) => onlyKeptOut(series, print)),
    ...(diary.undated.length > 0 ? [say.undatedBatches(listed(diary.undated))] : []),
    ...(diary.madeUp.length > 0
      ? [say.madeUpBatches(diary.madeUp.length === 1 ? "1 batch was" : `${diary.madeUp.length} batches were`)]
      : []),
  ];
}

/** With its method where it says one. */
export function nameOf({ property, method }: Controlled["series"]): string {
  const told =
    method === undefined || (property === "compactability" && method === "rammed") ? "" : ` (${method})`;
  return `${capitalName(property)}${told}`;
}

function onlyKeptOut(series: Controlled["series"], print: DiaryPrint): Finding {
  const lines = series.keptOut.map(({ name, date, value, keptOut = "" }) =>
    phrase.leftOutValue(name, date, print.number(value, series), keptOut),
  );
  return say.onlyLeftOut(nameOf(series), countOf(lines.length), lines);
}

const countOf = (count: number): string => (count === 1 ? "1 value" : `${count} values`);

function verdict(one: Controlled, print: DiaryPrint): Finding {
  const { series, chart, doubt, values, baseline, after, within, drift } = one;
  const name = nameOf(series);
  const mean = print.figure(series, {
    value: chart.mean,
    low: chart.mean - doubt.mean,
    high: chart.mean + doubt.mean,
  });
  const because = [...signalSentences(one, after), ...falseAlarmSentences(one), baselineSentence(one, print)];
  switch (one.verdict) {
    case "steady":
      return say.steady(
        name,
        mean,
        limitsText(one, print),
        phrase.afterBaseline(String(values.length - baseline)),
        because,
      );
    case "moved":
    case "perhaps moved": {
      const side = drift?.still
        ? drift.side
        : (after.findLast(({ rule }) => rule !== "range")?.side ?? "above");
      const told = one.verdict === "moved" ? say.moved : say.perhapsMoved;
      return told(name, recentText(one, print), side, mean, because);
    }
    case "signal passed": {
      const often = phrase.oftenByNow(String(Math.round(one.falseAlarms?.any ?? 0)));
      return say.signalPassed(name, mean, often, because);
    }
    case "unsteady":
      return say.unsteady(name, String(values.length), mean, [
        ...signalSentences(one, within),
        baselineSentence(one, print),
      ]);
    case "baseline only":
      return say.baselineOnly(name, String(values.length), mean, limitsText(one, print));
  }
}

/** Between the limits; a limit that no such quantity can pass is told as none. */
function limitsText({ series, chart }: Controlled, print: DiaryPrint): Phrase {
  const lower = chart.lower > 0 ? print.bare(chart.lower, series) : "";
  return phrase.betweenLimits(lower, print.number(chart.upper, series));
}

/** The mean of the last values, up to eight of them since the baseline, with what their scatter leaves in doubt. */
function recentText({ series, values, baseline, chart }: Controlled, print: DiaryPrint): Phrase {
  const last = values.slice(Math.max(baseline, values.length - leastValues));
  const value = last.reduce((all, each) => all + each.value, 0) / last.length;
  if (last.length === 1) {
    const { low, high } = endsOf(last[0]!.spread);
    return phrase.lastValueIs(print.figure(series, { value, low, high }, last[0]!.missing.length > 0));
  }
  const half = (1.96 * chart.meanMovingRange) / 1.128 / Math.sqrt(last.length);
  const mean = print.figure(series, { value, low: value - half, high: value + half });
  return phrase.lastValuesMean(String(last.length), mean);
}

function baselineSentence({ baseline, values, since, doubt, series }: Controlled, print: DiaryPrint): Phrase {
  const [from, to] = [values[0]!.date, values[baseline - 1]!.date];
  return phrase.baselineOf(
    String(baseline),
    from,
    to,
    since?.date ?? "",
    since?.kind ?? "",
    print.about(doubt.limit, series),
  );
}

function suggestion(
  { series, change, values, together }: Controlled,
  events: readonly DiaryEvent[],
  print: DiaryPrint,
): Finding[] {
  if (!change?.suggested) return [];
  const [low, high] = changeDays({ values, change });
  const { shift, before, after, p, pOverAll } = change;
  const share = p <= 0.001 ? "" : plainNumber(100 * p);
  return [
    say.changeSuggested(
      nameOf(series),
      phrase.changedBetween(low, high),
      print.bare(before, series),
      print.number(after, series),
      print.figure(series, shift),
      [
        phrase.shuffledRows(share, plainNumber(p), plainNumber(pOverAll)),
        ...marksOf([low, high], events),
        ...(together ? [phrase.togetherMakesPSmall()] : []),
      ],
    ),
  ];
}

/** What the log marks in those days, and the last mark before them: to be looked at, not to be believed. */
function marksOf([low, high]: readonly [string, string], events: readonly DiaryEvent[]): Phrase[] {
  const marked = ({ date, kind, note }: DiaryEvent): Marked => ({ date, kind, note });
  const inside = events.filter(({ date }) => date >= low && date <= high);
  const before = events.findLast(({ date }) => date < low);
  return [
    inside.length > 0
      ? phrase.markedInThoseDays(inside.map(marked))
      : phrase.nothingMarked(before && marked(before)),
  ];
}

/** Dates between which the change fell: the last value before it at the earliest, the first after it at the latest. */
export function changeDays({
  values,
  change,
}: Required<Pick<Controlled, "values" | "change">>): readonly [string, string] {
  return [values[change.earliest - 1]!.date, values[change.latest]!.date];
}

/** Of charts with values after the baseline; without any the verdict says so itself. */
function restless(one: Controlled): Finding[] {
  if (!one.restless || !one.falseAlarms) return [];
  const counting = one.within.filter(({ rule }) => rule !== "range");
  return [say.restless(nameOf(one.series), countOf(one.baseline), signalSentences(one, counting))];
}

/** What stands in the way of reading the chart as the heap's. */
function trust({ series, measuring, together }: Controlled): Finding[] {
  const name = nameOf(series);
  const percent = measuring?.percent ?? 0;
  const least = measuring?.atLeast ? "at least " : "";
  const told = percent >= 95 ? "all" : `${least}${Math.round(percent)} %`;
  return [
    ...(percent >= worthAWord ? [say.rigShare(name, told, percent >= leads)] : []),
    ...(together
      ? [say.together(name, plainNumber(together.r), plainNumber(Number(together.widerBy.toPrecision(2))))]
      : []),
  ];
}

function later({ series, changedSince }: Controlled): Finding[] {
  if (!changedSince) return [];
  const { event, values } = changedSince;
  const what = `the ${event.kind} of ${event.date}`;
  return [say.changedSince(nameOf(series), what, countOf(values), String(leastValues))];
}

function rigs(series: Controlled["series"]): Finding[] {
  const named = new Map<string, string>();
  for (const { rig, date } of series.values) if (rig !== undefined && !named.has(rig)) named.set(rig, date);
  if (named.size < 2) return [];
  return [say.severalRigs(nameOf(series), listed([...named].map(([rig, date]) => `${rig} from ${date}`)))];
}

function dueFindings({ due }: ControlReport): Finding[] {
  return due.map(({ property, lastDate, days, everyDays, by }) => {
    const waited =
      lastDate === undefined || days === undefined
        ? phrase.neverTested()
        : phrase.lastTested(lastDate, plainNumber(days));
    const rule = phrase.askedEvery(by === "asked", plainNumber(everyDays));
    return say.due(capitalName(property), waited, rule);
  });
}

/** Told once on a page: what counts as a change of the heap. */
export function changeRule({ heapKnown }: ControlReport): string {
  return heapKnown
    ? `Limits are taken anew after new sand of ${changingSandPercent} % of the heap or more, and after clay of ${changingClayPercent} % or more (our own), once ${leastValues} values stand after it.`
    : `The log does not say what the heap weighs, so limits are taken anew after every new sand and rebond, once ${leastValues} values stand after it.`;
}
