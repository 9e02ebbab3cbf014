// Which test is due, counted to the last day of the log.

import type { DiaryProperty } from "../log/diary-properties.ts";
import type { Log } from "../log/types.ts";
import { dayOf } from "../numbers/days.ts";
import { median } from "../numbers/summary.ts";
import type { Diary } from "./control-series.ts";

export interface Due {
  readonly property: DiaryProperty;
  /** Undefined: never tested. */
  readonly lastDate?: string;
  /** From the last test to the last day of the log. */
  readonly days?: number;
  readonly everyDays: number;
  /** asked: by the founder's reminder. habit: the middle interval of the log itself. */
  readonly by: "asked" | "habit";
}

/** Without a reminder, this many times the usual interval is long. Our own. */
const longTimes = 2;
/** A habit shows in so many values. */
const leastHabit = 5;

/**
 * Tests that are due on the last day of the log: those that the founder wants to be reminded of, when more days than
 * asked have passed or none was made; of the others those that have waited more than twice as long as is usual in this log.
 */
export function dueTests(
  { remind = [] }: Log,
  { series, lastDate }: Diary,
): { readonly due: readonly Due[]; readonly inTime: readonly DiaryProperty[] } {
  if (lastDate === undefined) return { due: [], inTime: [] };
  const today = dayOf(lastDate);
  const daysOf = (property: DiaryProperty) =>
    series
      .filter((one) => one.property === property)
      .flatMap(({ values }) => values.map(({ day, date }) => ({ day, date })))
      .toSorted((a, b) => a.day - b.day);
  const asked = remind.map(({ property, everyDays }): Due => {
    const last = daysOf(property).at(-1);
    const past = last ? { lastDate: last.date, days: today - last.day } : {};
    return { property, ...past, everyDays: everyDays.value, by: "asked" };
  });
  const others = [...new Set(series.map(({ property }) => property))].filter(
    (property) => !remind.some((one) => one.property === property),
  );
  const habits = others.flatMap((property): Due[] => {
    const days = daysOf(property);
    const gaps = days.slice(1).map(({ day }, i) => day - days[i]!.day);
    if (days.length < leastHabit) return [];
    const usual = Math.max(1, median(gaps));
    const last = days.at(-1)!;
    const waited = today - last.day;
    return waited > longTimes * usual
      ? [{ property, lastDate: last.date, days: waited, everyDays: usual, by: "habit" }]
      : [];
  });
  const isDue = ({ days, everyDays }: Due): boolean => days === undefined || days > everyDays;
  return {
    due: [...asked.filter(isDue), ...habits],
    inTime: asked.filter((one) => !isDue(one)).map(({ property }) => property),
  };
}
