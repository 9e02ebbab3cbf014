// Events put in order of their days, and what looks like a slip in one of them.

import { daysBetween } from "../numbers/days.ts";
import { farAhead, longGap, outOfOrder } from "./complaints-season.ts";
import type { HeapEvent } from "./heap-events.ts";
import type { Report } from "./node.ts";

/** Longer than a winter without a pour. */
const longDays = 400;

export function inOrder(events: readonly HeapEvent[], report: Report): HeapEvent[] {
  const ahead = aheadOfRest(events);
  for (const { event, next } of ahead) report(farAhead(event.date, next.date), event.place);
  const rest = events.filter((event) => !ahead.some((one) => one.event === event));
  let latest: HeapEvent | undefined;
  for (const event of rest) {
    if (latest && event.date < latest.date) report(outOfOrder(event.date, latest.date), event.place);
    else latest = event;
  }
  const sorted = [...events].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  sorted.forEach((event, i) => {
    const before = sorted[i - 1];
    const days = before ? daysBetween(before.date, event.date) : 0;
    if (before && days > longDays && !ahead.some((one) => one.event === event))
      report(longGap(event.date, before.date, String(days)), event.place);
  });
  return sorted;
}

/** Lines of one day that are later than what stands below them, though that follows well on what stands above. */
function aheadOfRest(events: readonly HeapEvent[]): { event: HeapEvent; next: HeapEvent }[] {
  return events.flatMap((event, i) => {
    const before = events.slice(0, i).findLast(({ date }) => date !== event.date);
    const next = events.slice(i + 1).find(({ date }) => date !== event.date);
    if (!next || event.date <= next.date) return [];
    return before && before.date > next.date ? [] : [{ event, next }];
  });
}
