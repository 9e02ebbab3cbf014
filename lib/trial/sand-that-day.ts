// Which test of the sand stands for a pour: that of the day, or the nearest before it, and what happened between.

import type { DiaryProperty } from "../log/diary-properties.ts";
import type { HeapEvent } from "../log/heap-events.ts";
import { dayOf } from "../numbers/days.ts";
import type { Diary, DiarySeries, DiaryValue } from "./control-series.ts";

export interface SandThatDay {
  readonly series: DiarySeries;
  readonly reading: DiaryValue;
  /** From the test to the pour. */
  readonly ageDays: number;
  /** What was done to the heap between the two that changes the property: "water on 2026-05-03". */
  readonly changed: readonly string[];
  /** True: near enough to the pour, and nothing between, to stand for the sand that was poured on. */
  readonly fresh: boolean;
}

/**
 * For how many days a test stands for the sand of a pour, our own: a heap dries within a day or two, its strength and
 * openness go with its water, its clay and grain change over weeks.
 */
export const freshDays: { readonly [property in DiaryProperty]: number } = Object.freeze({
  moisture: 1,
  compactability: 1,
  "green compression": 2,
  "green shear": 2,
  splitting: 2,
  permeability: 2,
  "clay by wash": 60,
  "live clay": 60,
  fineness: 60,
  fines: 60,
});

const wet: readonly DiaryProperty[] = [
  "moisture",
  "compactability",
  "green compression",
  "green shear",
  "splitting",
  "permeability",
];
const clays: readonly DiaryProperty[] = ["clay by wash", "live clay", "fines"];
const changes: { readonly [kind: string]: readonly DiaryProperty[] } = {
  water: wet,
  rebond: [...wet, ...clays],
  "new sand": [...wet, ...clays, "fineness"],
};

/**
 * One for each test and method that has a value on the day or before it; of several values of a day the last. An event of
 * the test's own day counts as done before the test. before: the log's events that stand before the pour.
 * @example sandThatDay(diaryOf(log), "2026-05-30", [])
 */
export function sandThatDay(
  { series }: Pick<Diary, "series">,
  date: string,
  before: readonly HeapEvent[],
): SandThatDay[] {
  const day = dayOf(date);
  return series.flatMap((one): SandThatDay[] => {
    const reading = one.values.findLast((value) => value.day <= day);
    if (!reading) return [];
    const ageDays = day - reading.day;
    const changed = before
      .filter((event) => event.date > reading.date && changes[event.kind]?.includes(one.property))
      .map((event) => `${event.kind} on ${event.date}`);
    const fresh = ageDays <= freshDays[one.property] && changed.length === 0;
    return [{ series: one, reading, ageDays, changed, fresh }];
  });
}
