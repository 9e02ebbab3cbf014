// The castings of a log by their pours, each beside the sand of its day.

import type { LoggedCasting } from "../log/casting-record.ts";
import type { HeapEvent, PourEvent } from "../log/heap-events.ts";
import type { Log } from "../log/types.ts";
import type { CastingFault } from "../sand/casting-faults.ts";
import type { Diary } from "./control-series.ts";
import { type SandThatDay, sandThatDay } from "./sand-that-day.ts";

/** Castings of one pour share its metal and its sand, so a pour counts once. */
export interface CastPour {
  /** "2026-05-02", with the pour's number where the day has several. */
  readonly name: string;
  readonly date: string;
  /** Undefined: the log has none on that day, or does not say which. */
  readonly pour?: PourEvent;
  readonly castings: readonly LoggedCasting[];
  readonly sand: readonly SandThatDay[];
}

/** True, false, or undefined where a casting of the pour was not looked over or is not fully read. */
export function foundOn({ castings }: Pick<CastPour, "castings">, fault: CastingFault): boolean | undefined {
  if (castings.some(({ faults }) => faults?.includes(fault))) return true;
  return castings.some(({ faults, incomplete }) => !faults || incomplete) ? undefined : false;
}

/** By date; castings that share a pour together. */
export function castPours({ castings, events }: Log, diary: Diary): CastPour[] {
  const groups = new Map<string, LoggedCasting[]>();
  for (const casting of castings) {
    const key = `${casting.date} ${casting.ofPour ?? ""}`;
    groups.set(key, [...(groups.get(key) ?? []), casting]);
  }
  return [...groups.values()].map((own): CastPour => {
    const { date, ofPour } = own[0]!;
    const ofDay = events.filter((event): event is PourEvent => event.kind === "pour" && event.date === date);
    const pour = ofPour === undefined ? undefined : ofDay[ofPour - 1];
    const several = ofDay.length > 1;
    const name = several ? `${date}, ${ofPour === undefined ? "pour not said" : `pour ${ofPour}`}` : date;
    return {
      name,
      date,
      ...(pour ? { pour } : {}),
      castings: own,
      sand: sandThatDay(diary, date, eventsBefore(events, date, pour)),
    };
  });
}

function eventsBefore(
  events: readonly HeapEvent[],
  date: string,
  pour: PourEvent | undefined,
): readonly HeapEvent[] {
  return pour ? events.slice(0, events.indexOf(pour)) : events.filter((event) => event.date < date);
}
