// Which logs follow one heap over weeks instead of trying mixes beside each other.

import { dayOf } from "../numbers/days.ts";
import type { Batch, TrialAxis } from "./batch.ts";

/** Three dates over a fortnight: a trial is over sooner. Our own. */
const leastDates = 3;
const leastDays = 14;

/**
 * True for batches taken from a heap day by day: no trial is named, none was made up by weight, and they span three
 * dates or more over a fortnight or more. What a trial asks of its batches, another water each time and every test on
 * each, is then no fault of theirs.
 */
export function followsAHeap(batches: readonly Batch[], axis: TrialAxis | undefined): boolean {
  if (axis !== undefined || batches.some(({ recipe }) => recipe)) return false;
  const days = batches.flatMap(({ date }) => (date === undefined ? [] : [dayOf(date)]));
  if (new Set(days).size < leastDates) return false;
  const ends = days.reduce(([low, high], day) => [Math.min(low, day), Math.max(high, day)] as const, [
    days[0]!,
    days[0]!,
  ] as const);
  return ends[1] - ends[0] >= leastDays;
}
