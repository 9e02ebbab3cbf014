// What happened to the heap beside its tests: what changes it, what is marked, when it was poured on.

import { heapFigure } from "../log/heap.ts";
import type { HeapEvent } from "../log/heap-record.ts";
import type { Log } from "../log/types.ts";
import { dayOf } from "./control-days.ts";

/** From these shares of the heap on, what is added makes it another heap. Our own. */
export const changingSandPercent = 10;
export const changingClayPercent = 1;

export interface DiaryEvent {
  readonly date: string;
  readonly day: number;
  /** block: from this day on the batches name another block, such as a bag of clay. note: a remark, such as of the weather. */
  readonly kind: "rebond" | "new sand" | "lost" | "block" | "note";
  /** Of what was added or lost, kg as weighed. */
  readonly massKg?: number;
  /** Of the heap as the log has it, %; undefined where it has none. */
  readonly sharePercent?: number;
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
  const heapKg = heapFigure(log)?.figure.value;
  const pours = log.events.flatMap(({ kind, date }) => (kind === "pour" ? [{ date, day: dayOf(date) }] : []));
  const events = [...log.events.flatMap((event) => ofHeap(event, heapKg)), ...ofBatches(log)];
  return {
    events: events.toSorted((a, b) => a.day - b.day),
    pours: pours.filter(({ day }, i) => pours.findIndex((one) => one.day === day) === i),
    heapKnown: heapKg !== undefined,
  };
}

function ofHeap(event: HeapEvent, heapKg: number | undefined): DiaryEvent[] {
  const { date, note } = event;
  const common = { date, day: dayOf(date), ...(note === undefined ? {} : { note }) };
  const share = (massKg: number) => (heapKg ? { sharePercent: (100 * massKg) / heapKg } : {});
  switch (event.kind) {
    case "rebond": {
      const massKg = event.clayKg.value;
      const changes = !heapKg || (100 * massKg) / heapKg >= changingClayPercent;
      return [{ ...common, kind: "rebond", massKg, ...share(massKg), changes }];
    }
    case "new sand": {
      const massKg = event.massKg.value;
      const changes = !heapKg || (100 * massKg) / heapKg >= changingSandPercent;
      return [{ ...common, kind: "new sand", massKg, ...share(massKg), changes }];
    }
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
