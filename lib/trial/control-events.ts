// What happened to the heap beside its tests: what changes it, what is marked, when it was poured on.

import type { Measured } from "../log/figure-types.ts";
import { heapFigure } from "../log/heap.ts";
import type { HeapEvent } from "../log/heap-events.ts";
import type { Log } from "../log/types.ts";
import { dayOf } from "../numbers/days.ts";
import { lift } from "../quantity/combine.ts";
import type { Spread } from "../quantity/spread.ts";
import { spreadOfQuantity } from "../quantity/spread-of.ts";

/** From these shares of the heap on, what is added makes it another heap. Our own. */
export const changingSandPercent = 10;
export const changingClayPercent = 1;

export interface DiaryEvent {
  readonly date: string;
  readonly day: number;
  /** block: from this day on the batches name another block, such as a bag of clay. note: a remark, such as of the weather. */
  readonly kind: "rebond" | "new sand" | "lost" | "block" | "note";
  /** Of what was added or lost, kg as weighed; without a source where the log writes no ±. */
  readonly massKg?: Spread;
  /** Of the heap as the log has it, %; undefined where it has none. */
  readonly sharePercent?: Spread;
  /** The founder's own words. */
  readonly note?: string;
  /** True where limits are better taken anew after it. */
  readonly changes: boolean;
}

export interface DiaryEvents {
  readonly events: readonly DiaryEvent[];
  readonly pours: readonly { readonly date: string; readonly day: number }[];
  /** False: the log tells no mass of the heap, so every addition counts as a change. */
  readonly heapKnown: boolean;
}

export function diaryEvents(log: Log): DiaryEvents {
  const heapKg = heapFigure(log)?.figure;
  const pours = log.events.flatMap(({ kind, date }) => (kind === "pour" ? [{ date, day: dayOf(date) }] : []));
  const remarks = (log.remarks ?? []).map(
    ({ date, text }): DiaryEvent => ({ date, day: dayOf(date), kind: "note", note: text, changes: false }),
  );
  const events = [...log.events.flatMap((event) => ofHeap(event, heapKg)), ...remarks, ...ofBatches(log)];
  return {
    events: events.toSorted((a, b) => a.day - b.day),
    pours: pours.filter(({ day }, i) => pours.findIndex((one) => one.day === day) === i),
    heapKnown: heapKg !== undefined,
  };
}

function ofHeap(event: HeapEvent, heapKg: Spread | undefined): DiaryEvent[] {
  const { date, note } = event;
  const common = { date, day: dayOf(date), ...(note === undefined ? {} : { note }) };
  const amount = ({ value, plusMinus }: Measured, least: number) => {
    const massKg = spreadOfQuantity(
      { value, ...(plusMinus ? { plusMinus } : {}) },
      { source: `${event.kind} of ${date}, ${value} kg`, says: "the mass as weighed" },
    );
    if (!heapKg) return { massKg, changes: true };
    const sharePercent = lift((values) => (100 * values[0]!) / values[1]!, [massKg, heapKg]);
    return { massKg, sharePercent, changes: sharePercent.value >= least };
  };
  switch (event.kind) {
    case "rebond":
      return [{ ...common, kind: "rebond", ...amount(event.clayKg, changingClayPercent) }];
    case "new sand":
      return [{ ...common, kind: "new sand", ...amount(event.massKg, changingSandPercent) }];
    default:
      // Sand lost at every pour is no news; what the founder remarks is.
      return note === undefined
        ? []
        : [{ ...common, kind: event.kind === "lost" ? "lost" : "note", changes: false }];
  }
}

/** Remarks at batches, and the day on which the batches begin to name another block. */
function ofBatches({ batches }: Log): DiaryEvent[] {
  const dated = batches
    .flatMap(({ date, block, note, usable, recipe }) =>
      date !== undefined && usable && !recipe ? [{ date, day: dayOf(date), block, note }] : [],
    )
    .toSorted((a, b) => a.day - b.day);
  let last: string | undefined;
  return dated.flatMap(({ date, day, block, note }): DiaryEvent[] => {
    const another = block !== undefined && last !== undefined && block !== last;
    last = block ?? last;
    return [
      ...(another ? [{ date, day, kind: "block" as const, note: block, changes: false }] : []),
      ...(note === undefined ? [] : [{ date, day, kind: "note" as const, note, changes: false }]),
    ];
  });
}
