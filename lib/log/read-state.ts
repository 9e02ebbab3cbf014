// The state of a heap: wanted, measured on a day, or tested between pours.

import { outOfOrder, stateOfNothing, undated } from "./complaints-season.ts";
import { dateOf, type Fields, fieldsOf, mapOf, textOf } from "./fields.ts";
import { given } from "./given.ts";
import { stateKeys } from "./heap-keys.ts";
import type { HeapState, MeasuredState } from "./heap-state.ts";
import type { Entry, LogNode, MapNode, Report } from "./node.ts";
import { basedShareOf } from "./read-based-share.ts";
import { compactabilityIn, mapsOf, moistureIn, numberIn, strengthIn } from "./read-season-fields.ts";

const figureKeys = stateKeys.filter((key) => key !== "note");

export function readWanted(entry: Entry | undefined, report: Report): HeapState | undefined {
  const map = mapOf(entry?.value, "wanted", report);
  return map && entry ? stateOf(map, stateKeys, "as wanted", report) : undefined;
}

/** Of an event; complains where nothing of the state is said. */
export function readTested(node: LogNode, report: Report): HeapState | undefined {
  const map = mapOf(node, "tested", report);
  return map && stateOf(map, stateKeys, "as tested", report);
}

function stateOf(
  map: MapNode,
  known: readonly string[],
  where: string,
  report: Report,
  fields: Fields = fieldsOf(map, known, where, report),
): HeapState {
  textOf(fields.get("note"), "note", report);
  if (!figureKeys.some((key) => fields.get(key)) && !fields.holed)
    report(stateOfNothing(figureKeys.join(", ")), map.place);
  const reader = { fields, report };
  return {
    ...given({
      moisturePercent: moistureIn(reader, "moisture"),
      liveClay: basedShareOf(fields.get("live clay"), "live clay", report),
      compactabilityPercent: compactabilityIn(reader),
      greenCompressionKPa: strengthIn(reader),
      gfn: numberIn(reader, "gfn", "", 1000),
      finesPercent: numberIn(reader, "fines", "%", 100, { aboveZero: false }),
    }),
    place: map.place,
  };
}

/** By date, the newest last. */
export function readMeasured(node: LogNode | undefined, report: Report): MeasuredState[] {
  const states = mapsOf(node, "measured", report).flatMap((map) => {
    const fields = fieldsOf(map, ["date", ...stateKeys], "as measured", report);
    const date = dateOf(fields.get("date"), report);
    const state = stateOf(map, stateKeys, "as measured", report, fields);
    if (date !== undefined) return [{ date, ...state }];
    report(undated("state"), map.place);
    return [];
  });
  states.forEach((state, i) => {
    const before = states[i - 1];
    if (before && before.date > state.date) report(outOfOrder(state.date, before.date), state.place);
  });
  return [...states].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}
