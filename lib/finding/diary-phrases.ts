// What the verdicts of a diary rest on: plain strings in.

import { phraseMessage } from "../message.ts";
import { runLength, trendLength } from "../numbers/individuals-chart.ts";
import { listed } from "./batch-names.ts";

/** Dates by name where they are few; else the first and the last of so many. */
function days(dates: readonly string[]): string {
  return dates.length > 3
    ? `${dates.length} times, first on ${dates[0]} and last on ${dates.at(-1)}`
    : `on ${listed(dates)}`;
}

export const valuesOutside = phraseMessage(
  "diary/values-outside",
  (dates: readonly string[]) =>
    `A value outside the limits, ${days(dates)}. The rule of three standard deviations: values that only scatter give it once in 370.`,
);

export const leftOutValue = phraseMessage(
  "diary/left-out-value",
  (name: string, date: string, figure: string, why: string) =>
    `${name}, ${date}: ${figure}, left out (${why}).`,
);

export const runOnOneSide = phraseMessage(
  "diary/run",
  (count: string, from: string, to: string, side: "above" | "below") =>
    `${count} values in a row, ${from} to ${to}, lie ${side} the mean. The rule of ${runLength} on one side (Western Electric 1956): values that only scatter give it once in 255.`,
);

export const trendOneWay = phraseMessage(
  "diary/trend",
  (count: string, from: string, to: string, rises: boolean) =>
    `${count} values in a row, ${from} to ${to}, each ${rises ? "rise" : "fall"}. The rule of ${trendLength} that rise or fall (Nelson 1984): values that only scatter give it once in about 420.`,
);

export const stepAboveLimit = phraseMessage(
  "diary/step-above-limit",
  (dates: readonly string[]) =>
    `A step above its limit, ${days(dates)}. Values that only scatter give one in about 110 steps, so by itself it does not count here.`,
);

/** since: "" where the sum of departures does not tell. */
export const weightedMeanOut = phraseMessage(
  "diary/weighted-mean-out",
  (side: "above" | "below", on: string, since: string) =>
    `The weighted mean, in which the newest value counts a fifth, went ${side} its limit on ${on}${since === "" ? "" : `; the sum of departures began to climb on ${since}`}. Values that only scatter give that once in 500 (Lucas & Saccucci 1990).`,
);

export const falseAlarms = phraseMessage(
  "diary/false-alarms",
  (any: string, values: string, standing: string, baseline: string) =>
    `Of 100 such charts of a heap that has not moved, about ${any} (± 2) show a signal somewhere among ${values} ${values === "1" ? "value" : "values"}, and about ${standing} (± 1) at the last one: limits from ${baseline} values are themselves in doubt.`,
);

/** since, kind: the change of the heap that it begins after; "" where it begins with the log. */
export const baselineOf = phraseMessage(
  "diary/baseline",
  (count: string, from: string, to: string, since: string, kind: string, limit: string) =>
    `Baseline: ${count} values, ${from} to ${to}, ${since === "" ? "the first of the log" : `the first since the heap was changed on ${since} (${kind})`}; each limit is known to ± ${limit} (95 %).`,
);

/** share: of 100 shuffled rows; "" where fewer than 1 in 1000. */
export const shuffledRows = phraseMessage(
  "diary/shuffled-rows",
  (share: string, p: string, overAll: string) =>
    `Of shuffled rows of these values ${share === "" ? "fewer than 1 in 1000" : `about ${share} in 100`} split as clearly (p ${share === "" ? "at most" : "="} ${p}; ${overAll} over all charts of this page).`,
);

export const togetherMakesPSmall = phraseMessage(
  "diary/together-makes-p-small",
  () => "Neighbouring values go together here, which makes p too small.",
);

/** Something that the log marks on a day. */
export interface Marked {
  readonly kind: string;
  readonly date: string;
  readonly note: string | undefined;
}

const markedText = ({ kind, date, note }: Marked): string =>
  `${kind === "block" ? "another block" : kind === "note" ? "a remark" : kind} on ${date}${note === undefined ? "" : `, "${note}"`}`;

export const markedInThoseDays = phraseMessage(
  "diary/marked",
  (marks: readonly Marked[]) => `Marked in those days: ${listed(marks.map(markedText))}.`,
);

export const nothingMarked = phraseMessage(
  "diary/nothing-marked",
  (before: Marked | undefined) =>
    `Nothing is marked in those days${before ? `; the last mark before them is ${markedText(before)}` : ""}.`,
);

/** mean: with its unit and ±. */
export const lastValueIs = phraseMessage("diary/last-value", (value: string) => `its last value is ${value}`);
export const lastValuesMean = phraseMessage(
  "diary/last-values",
  (count: string, mean: string) => `its last ${count} values have a mean of ${mean}`,
);

/** low: "" where there is no lower limit. */
export const betweenLimits = phraseMessage("diary/limits", (low: string, high: string) =>
  low === "" ? `below ${high} (there is no lower limit above nothing)` : `between ${low} and ${high}`,
);

export const afterBaseline = phraseMessage(
  "diary/after-baseline",
  (count: string) =>
    `${count} ${count === "1" ? "value" : "values"} after its baseline ${count === "1" ? "lies" : "lie"}`,
);

export const oftenByNow = phraseMessage(
  "diary/often-by-now",
  (count: string) => `Of 100 heaps that have not moved, about ${count} show one by now.`,
);

export const changedBetween = phraseMessage("diary/changed-between", (low: string, high: string) =>
  low === high ? `on about ${high}` : `after ${low} and by ${high} (95 %)`,
);

const daysText = (count: string): string => (count === "1" ? "1 day" : `${count} days`);

export const neverTested = phraseMessage("diary/never-tested", () => "the log holds no such test");
export const lastTested = phraseMessage(
  "diary/last-tested",
  (date: string, ago: string) => `last tested on ${date}, ${daysText(ago)} before the log's last day`,
);
export const askedEvery = phraseMessage("diary/asked-every", (asked: boolean, every: string) =>
  asked ? `the log asks for it every ${daysText(every)}` : `usual in this log is every ${daysText(every)}`,
);
