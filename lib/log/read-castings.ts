// Castings as they were looked over: a day, a name, what was found.

import { invariant } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import {
  type CastingFault,
  castingFaultNamed,
  castingFaults,
  castingFaultWords,
} from "../sand/casting-faults.ts";
import type { LoggedCasting } from "./casting-record.ts";
import { faultsNotSaid, noneAndFaults, noPourThatDay, noSuchPour, whichPour } from "./complaints-casting.ts";
import { emptyValue, notAValue, unknownChoice } from "./complaints-field.ts";
import { undated } from "./complaints-season.ts";
import { dateOf, type Fields, fieldsOf, textNodeOf, textOf } from "./fields.ts";
import { given } from "./given.ts";
import type { HeapEvent } from "./heap-events.ts";
import { castingKeys } from "./heap-keys.ts";
import { isHoled, type LogNode, type MapNode, plainName, type Report, type TextNode } from "./node.ts";
import { mapsOf } from "./read-season-fields.ts";

/** By date, those of one day as they stand. events: as read, for the pours. */
export function readCastings(
  node: LogNode | undefined,
  events: readonly HeapEvent[],
  report: Report,
): LoggedCasting[] {
  const castings = mapsOf(node, "castings", report).flatMap((map) => castingOf(map, events, report) ?? []);
  return castings.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

function castingOf(map: MapNode, events: readonly HeapEvent[], report: Report): LoggedCasting | undefined {
  const fields = fieldsOf(map, castingKeys, "of a casting", report);
  const note = textOf(fields.get("note"), "note", report);
  const name = textOf(fields.get("name"), "name", report);
  const date = dateOf(fields.get("date"), report);
  if (date === undefined) return void report(undated("casting"), map.place);
  const called = name ?? `casting of ${date}`;
  const found = faultsOf(fields, report);
  if (!fields.get("faults") && !fields.holed && !map.holed) report(faultsNotSaid(called), map.place);
  return {
    date,
    name: called,
    ...given({ ofPour: pourOf(fields, date, events, map, report), note, faults: found.faults }),
    incomplete: found.incomplete || fields.holed,
    place: map.place,
  };
}

interface Found {
  readonly faults: readonly CastingFault[] | undefined;
  readonly incomplete: boolean;
}

/** A list, one fault, several with commas, or "none". */
function faultsOf(fields: Fields, report: Report): Found {
  const node = fields.get("faults");
  const typed = node ? textsOf(node, report) : [];
  const isNone = (text: string) => ["none", "no faults", "nothing", "sound"].includes(plainName(text));
  const words = typed.filter(({ text }) => !isNone(text));
  const none = words.length < typed.length;
  const read = words.map((word) => faultOf(word, report));
  const faults = [...new Set(read.flatMap((fault) => fault ?? []))];
  if (none && words[0]) report(noneAndFaults(words.map(({ text }) => text).join(", ")), words[0].place);
  const incomplete = read.includes(undefined);
  return { faults: none || faults.length > 0 || incomplete ? faults : undefined, incomplete };
}

function textsOf(node: LogNode, report: Report): TextNode[] {
  if (node.kind === "text") {
    let from = 0;
    return node.text.split(",").flatMap((part) => {
      const before = from + part.length - part.trimStart().length;
      from += part.length + 1;
      const text = part.trim();
      return text === "" ? [] : [{ ...node, text, place: shifted(node, before, text.length) }];
    });
  }
  if (node.kind === "list") return node.items.flatMap((item) => textNodeOf(item, "faults", report) ?? []);
  if (!isHoled(node)) report(node.kind === "empty" ? emptyValue("faults") : notAValue("faults"), node.place);
  return [];
}

/** Where a part of a line's text stands; within quotes it is one further. */
function shifted({ place, text }: TextNode, by: number, length: number): TextNode["place"] {
  if (by === 0 && length === text.trim().length) return place;
  const quote = (place.length ?? text.length) > text.length ? 1 : 0;
  const at = by + quote;
  return {
    ...place,
    ...(place.column === undefined ? {} : { column: place.column + at }),
    ...(place.offset === undefined ? {} : { offset: place.offset + at }),
    length,
  };
}

/** Also by another usual name; a misspelt one is reported with the nearest. */
export function faultOf({ text, place }: TextNode, report: Report): CastingFault | undefined {
  const fault = castingFaultNamed(text);
  if (fault) return fault;
  const word = nearest(plainName(text), castingFaultWords);
  const near = word === undefined ? "" : castingFaultNamed(word);
  invariant(near !== undefined, "a fault's word names it");
  report(unknownChoice("a fault", text, near, `${castingFaults.join(", ")}, none`), place);
  return undefined;
}

/** Which pour of the day; where the day has one, that one. */
function pourOf(
  fields: Fields,
  date: string,
  events: readonly HeapEvent[],
  map: MapNode,
  report: Report,
): number | undefined {
  const pours = events.filter((event) => event.kind === "pour");
  const count = pours.filter((pour) => pour.date === date).length;
  const place = fields.entry("date")?.value.place ?? map.place;
  if (count === 0) report(noPourThatDay(date, nearestDay(date, pours)), place);
  const typed = textNodeOf(fields.get("of pour"), "of pour", report);
  const number = Number(typed?.text);
  if (typed && Number.isInteger(number) && number >= 1 && number <= count) return number;
  if (typed && count > 0) report(noSuchPour(typed.text, date, String(count)), typed.place);
  else if (count > 1) report(whichPour(date, String(count)), place);
  return count === 1 ? 1 : undefined;
}

function nearestDay(date: string, pours: readonly HeapEvent[]): string {
  const away = (other: string) => Math.abs(Date.parse(other) - Date.parse(date));
  return pours.map((pour) => pour.date).sort((a, b) => away(a) - away(b))[0] ?? "";
}
