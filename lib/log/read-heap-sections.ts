// The sections of a heap and its season, one after the other.

import type { Fields } from "./fields.ts";
import { given } from "./given.ts";
import type { HeapKg } from "./heap.ts";
import type { HeapSections } from "./heap-record.ts";
import type { Report } from "./node.ts";
import { readBlend } from "./read-blend.ts";
import { readCastingQuestions } from "./read-casting-questions.ts";
import { readCastings } from "./read-castings.ts";
import { readReminders } from "./read-diary.ts";
import { readEvents } from "./read-events.ts";
import { readHeapRecord } from "./read-heap-record.ts";
import { readMuller, readMulling } from "./read-mulling.ts";
import { readPrices } from "./read-prices.ts";
import { additiveNames, readRecipeWanted } from "./read-recipe-wanted.ts";
import { readFlask, readPlan, readWeather } from "./read-season.ts";
import { readMeasured, readWanted } from "./read-state.ts";

/** sands: names that the log declares; heapKg: as readHeap has read it. */
export function readHeapSections(
  fields: Fields,
  { sands, heapKg }: { readonly sands: readonly string[]; readonly heapKg: HeapKg | undefined },
  report: Report,
): HeapSections {
  const recipe = readRecipeWanted(fields.entry("recipe"), report);
  const bought = [...sands, ...additiveNames(fields.get("recipe"))];
  const { events, remarks } = readEvents(fields.get("events"), heapKg, report);
  const castings = readCastings(fields.get("castings"), events, report);
  return {
    ...given({
      heap: readHeapRecord(fields.entry("heap"), heapKg, report),
      recipe,
      prices: readPrices(fields.entry("prices"), bought, report),
      wanted: readWanted(fields.entry("wanted"), report),
      weather: readWeather(fields.entry("weather"), report),
      flask: readFlask(fields.entry("flask"), report),
      planned: readPlan(fields.entry("planned"), report),
      muller: readMuller(fields.entry("muller"), report),
      blend: readBlend(fields.entry("blend"), sands, report),
    }),
    measured: readMeasured(fields.get("measured"), report),
    events,
    remarks,
    castings,
    questions: readCastingQuestions(fields.entry("questions"), castings.length > 0, report),
    mulling: readMulling(fields.entry("mulling"), report),
    remind: readReminders(fields.entry("remind"), report),
  };
}
