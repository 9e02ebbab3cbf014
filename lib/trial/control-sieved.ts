// Fineness of the heap's own sand, day by day, from washed sievings.

import { sievedPortion } from "../log/sieved-portion.ts";
import type { Sand, Sieving } from "../log/types.ts";
import { dayOf } from "../numbers/days.ts";
import type { Spread } from "../quantity/spread.ts";
import { finenessFigure } from "../sand/fineness-figure.ts";

export interface SievedValue {
  readonly date: string;
  readonly day: number;
  readonly name: string;
  /** The sand and the stack: another stack reads another number. */
  readonly method: string;
  readonly value: number;
  readonly spread: Spread;
  readonly missing: readonly string[];
}

/** A value for each day on which a used sand was washed and sieved, from portions whose stack lets a number be estimated. */
export function sievedValues(sands: readonly Sand[]): SievedValue[] {
  return sands
    .filter(({ state }) => state === "used")
    .flatMap((sand) => [...byDay(sand).values()].flatMap((sievings) => valueOfDay(sand, sievings)));
}

function byDay(sand: Sand): Map<string, Sieving[]> {
  const days = new Map<string, Sieving[]>();
  for (const sieving of sand.sievings) {
    if (!sieving.usable || sieving.date === undefined || sieving.washed !== true) continue;
    const key = `${sieving.date} / ${sieving.set?.name ?? ""}`;
    days.set(key, [...(days.get(key) ?? []), sieving]);
  }
  return days;
}

function valueOfDay(sand: Sand, sievings: readonly Sieving[]): SievedValue[] {
  const { date, set } = sievings[0]!;
  if (date === undefined) return [];
  const { figure, missing, stacks } = finenessFigure({
    name: `${sand.name}, ${date}`,
    portions: sievings.map(sievedPortion),
  });
  if (!stacks.every(({ canEstimate }) => canEstimate)) return [];
  return [
    {
      date,
      day: dayOf(date),
      name: sand.name,
      method: `${sand.name}${set ? ` on ${set.name}` : ""}`,
      value: figure.value,
      spread: figure,
      missing,
    },
  ];
}
