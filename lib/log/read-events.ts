// The season: what happened to the heap, day by day.

import { nearest } from "../numbers/nearest.ts";
import { unknownChoice } from "./complaints-field.ts";
import { eventFaulty, eventOfNothing, moreThanHeap, pourWithoutMetal, undated } from "./complaints-season.ts";
import { dateOf, fieldsOf, mapOf, textOf, yesNoOf } from "./fields.ts";
import type { Measured } from "./figure-types.ts";
import { given } from "./given.ts";
import type { HeapKg } from "./heap.ts";
import type { HeapEvent, LoggedRemark } from "./heap-events.ts";
import { eventKinds, pourKeys } from "./heap-keys.ts";
import { measuredOf } from "./measured.ts";
import type { Entry, LogNode, MapNode, Report } from "./node.ts";
import { inOrder } from "./order-of-days.ts";
import { mapsOf, massIn, moistureIn, numberIn } from "./read-season-fields.ts";
import { readTested } from "./read-state.ts";

type Kind = (typeof eventKinds)[number];

export interface ReadEvents {
  readonly events: HeapEvent[];
  readonly remarks: LoggedRemark[];
}

/** In order of their days; those of one day as they stand. */
export function readEvents(
  node: LogNode | undefined,
  heapKg: HeapKg | undefined,
  report: Report,
): ReadEvents {
  const lines = mapsOf(node, "events", report).map((map) => lineOf(map, report));
  const events = lines.flatMap((line) => line.events);
  for (const event of events) checkSize(event, heapKg, report);
  return { events: inOrder(events, report), remarks: lines.flatMap(({ remarks }) => remarks) };
}

/** One line may hold several things of one day; they happen in the order in which they stand. */
function lineOf(map: MapNode, report: Report): ReadEvents {
  const fields = fieldsOf(map, ["date", ...eventKinds, "weather", "note"], "of an event", report);
  const weather = textOf(fields.get("weather"), "weather", report);
  const note = textOf(fields.get("note"), "note", report);
  const date = dateOf(fields.get("date"), report);
  if (date === undefined) {
    report(undated("event"), map.place);
    return { events: [], remarks: [] };
  }
  const entries = map.entries.flatMap(({ key }) => {
    const kind = eventKinds.find((one) => one === key.trim().replace(/\s+/g, " ").toLowerCase());
    const entry = kind && fields.entry(kind);
    return kind && entry ? [{ kind, entry }] : [];
  });
  // A note beside something that happened is that event's.
  const told = [weather, entries.length === 0 ? note : undefined].filter((one) => one !== undefined);
  if (entries.length === 0 && told.length === 0 && !fields.holed)
    report(eventOfNothing([...eventKinds, "weather", "note"].join(", ")), map.place);
  const events = entries.flatMap(({ kind, entry }) => {
    const common = { date, ...given({ note }), place: entry.keyPlace };
    const event = eventOf(kind, entry, common, report);
    if (!event) report(eventFaulty(date, kind), entry.keyPlace);
    return event ?? [];
  });
  return { events, remarks: told.length === 0 ? [] : [{ date, text: told.join("; "), place: map.place }] };
}

type Common = Pick<HeapEvent, "date" | "note" | "place">;

function eventOf(kind: Kind, entry: Entry, common: Common, report: Report): HeapEvent | undefined {
  const { value } = entry;
  switch (kind) {
    case "pour":
      return pourOf(entry, common, report);
    case "tested": {
      const state = readTested(value, report);
      return state && { ...common, kind, state };
    }
    case "water": {
      const field = { what: "water", unit: "kg", most: 1e6, aboveZero: true, alsoIn: ["l"] };
      const massKg = measuredOf(value, field, report);
      return massKg && { ...common, kind, massKg };
    }
    case "rebond": {
      if (value.kind === "text") {
        const clayKg = measuredOf(value, { what: "rebond", unit: "kg", most: 1e6, aboveZero: true }, report);
        return clayKg && { ...common, kind, clayKg };
      }
      const map = mapOf(value, "rebond", report);
      if (!map) return undefined;
      const fields = fieldsOf(map, ["clay", "bentonite", "clay moisture", "note"], "of a rebond", report);
      const reader = { fields, report };
      textOf(fields.get("note"), "note", report);
      const clayKg = massIn(reader, fields.get("bentonite") ? "bentonite" : "clay");
      const clayMoisturePercent = moistureIn(reader, "clay moisture");
      return clayKg && { ...common, kind, clayKg, ...given({ clayMoisturePercent }) };
    }
    case "lost": {
      const { mass, as } = amountOf(value, kind, report);
      return mass && { ...common, kind, massKg: mass, as };
    }
    case "new sand": {
      const { mass, moisturePercent } = amountOf(value, kind, report);
      return mass && { ...common, kind, massKg: mass, ...given({ moisturePercent }) };
    }
  }
}

/** `pour: 2.4 kg`, or a map with the rest of what is known. */
function pourOf({ value, keyPlace }: Entry, common: Common, report: Report): HeapEvent | undefined {
  if (value.kind === "text") {
    const metalKg = measuredOf(value, { what: "pour", unit: "kg", most: 1e6, aboveZero: true }, report);
    return metalKg && { ...common, kind: "pour", metalKg };
  }
  const map = mapOf(value, "pour", report);
  if (!map) return undefined;
  const fields = fieldsOf(map, pourKeys, "of a pour", report);
  textOf(fields.get("note"), "note", report);
  const reader = { fields, report };
  if (!fields.get("metal") && !fields.holed) report(pourWithoutMetal(), keyPlace);
  return {
    ...common,
    kind: "pour",
    ...given({
      metalKg: massIn(reader, "metal"),
      alloy: textOf(fields.get("alloy"), "alloy", report),
      atC: numberIn(reader, "at", "°C", 2000),
      sectionMm: numberIn(reader, "section", "mm", 2000),
      scrapSharePercent: numberIn(reader, "scrap share", "%", 100, { aboveZero: false }),
      degassed: yesNoOf(fields.get("degassed"), "degassed", report),
    }),
  };
}

interface Amount {
  readonly mass: Measured | undefined;
  readonly as: "dry" | "damp";
  readonly moisturePercent?: Measured | undefined;
}

/** `lost: 1.5 kg`, or { mass: 1.5 kg, as: damp }; new sand with its moisture. */
function amountOf(node: LogNode, what: "lost" | "new sand", report: Report): Amount {
  const mass = { what, unit: "kg", most: 1e6, aboveZero: true };
  if (node.kind !== "map") return { mass: measuredOf(node, mass, report), as: "dry" };
  const known = what === "lost" ? ["mass", "as", "note"] : ["mass", "moisture", "note"];
  const fields = fieldsOf(node, known, `of ${what}`, report);
  textOf(fields.get("note"), "note", report);
  const as = textOf(fields.get("as"), "as", report)?.toLowerCase() ?? "dry";
  const isState = as === "dry" || as === "damp";
  if (!isState)
    report(unknownChoice("as", as, nearest(as, ["dry", "damp"]) ?? "", "dry, damp"), fields.get("as")!.place);
  return {
    mass: massIn({ fields, report }, "mass"),
    as: isState ? as : "dry",
    moisturePercent: what === "new sand" ? moistureIn({ fields, report }, "moisture") : undefined,
  };
}

function checkSize(event: HeapEvent, heapKg: HeapKg | undefined, report: Report): void {
  if (!heapKg || event.kind === "pour" || event.kind === "tested") return;
  const mass = event.kind === "rebond" ? event.clayKg : event.massKg;
  if (mass.value <= heapKg.value) return;
  const heap = `${Number(heapKg.value.toPrecision(4))} kg`;
  report(moreThanHeap(event.kind, mass.text, heap), mass.place);
}
