// One sieving: from a node of the log, or from a CSV row in the same shape.

import { hasError, type Issue, type Place } from "../issue.ts";
import { unitNamed } from "../quantity/read-unit.ts";
import { sameDimension } from "../quantity/unit.ts";
import { checkComplete, checkFigures } from "./check-sieving.ts";
import { noRetained, unitOfSieving } from "./complaints-sieving.ts";
import { choiceOf, dateOf, fieldsOf, isRow, mapOf, textOf, yesNoOf } from "./fields.ts";
import { sievingKeys } from "./log-keys.ts";
import { measuredOf } from "./measured.ts";
import { type LogNode, type MapNode, plainName, type Report } from "./node.ts";
import { readRetained } from "./read-retained.ts";
import { declared } from "./read-rig.ts";
import type { Scale, SieveSet, Sieving } from "./types.ts";

export interface Rig {
  readonly scales: readonly Scale[];
  readonly sets: readonly SieveSet[];
  /** The sections as written: a name in them counts as declared even where its lines are at fault. */
  readonly scaleSection: LogNode | undefined;
  readonly setSection: LogNode | undefined;
}

const unitWords = { g: "g", gram: "g", grams: "g", "%": "percent", percent: "percent" } as const;

/** Another unit of mass is no slip of the pen: read as grams, its figures would be wrong. */
function unitOf(node: LogNode | undefined, report: Report): keyof typeof unitWords | undefined {
  if (node?.kind === "text" && !Object.hasOwn(unitWords, plainName(node.text))) {
    const unit = unitNamed(node.text);
    if (unit && sameDimension(unit, unitNamed("g")!)) {
      report(unitOfSieving(node.text.trim()), node.place);
      return undefined;
    }
  }
  return choiceOf(node, "unit", Object.keys(unitWords) as (keyof typeof unitWords)[], report);
}

/** `spoiled`: a line of it could not be read, so what seems to be missing may only be unread. */
export function readSieving(node: MapNode, sand: string, rig: Rig, spoiled: boolean, outer: Report): Sieving {
  const issues: Issue[] = [];
  const report: Report = (complaint: Issue, place: Place) => {
    issues.push(complaint);
    outer(complaint, place);
  };
  const fields = fieldsOf(node, sievingKeys, "of a sieving", report);
  const date = dateOf(fields.get("date"), report);
  const portion = textOf(fields.get("portion"), "portion", report);
  const repeatOf = choiceOf(fields.get("repeat of"), "repeat of", ["split", "grab"], report);
  const scale = declared(fields.get("scale"), "scale", rig.scales, rig.scaleSection, report);
  const set = declared(fields.get("sieve set"), "sieve set", rig.sets, rig.setSection, report);
  const minutes = measuredOf(
    fields.get("minutes"),
    { what: "minutes", unit: "min", most: 1440 },
    report,
  )?.value;
  const washed = yesNoOf(fields.get("washed"), "washed", report);
  const startG = measuredOf(
    fields.get("start"),
    { what: "start", unit: "g", most: 100_000, aboveZero: true },
    report,
  );
  const unitWord = unitOf(fields.get("unit"), report);
  const note = textOf(fields.get("note"), "note", report);

  const said = unitWord && unitWords[unitWord];
  const held = fields.get("retained");
  const map = held?.kind === "empty" ? undefined : mapOf(held, "retained", report);
  // What stands there in another shape has been told; so have rows that stand beside it.
  const told = (held !== undefined && held.kind !== "empty" && !map) || node.entries.some(isRow);
  const rows = map ? readRetained(map, said, report) : undefined;
  const { unit, entries } = rows ?? { unit: said ?? ("g" as const), entries: [] };
  const retainedPlace = fields.entry("retained")?.keyPlace ?? node.place;
  if (!rows || !map || map.entries.length === 0) {
    if (!spoiled && !told) report(noRetained(), retainedPlace);
  } else if (!spoiled) {
    const read = { unit, retained: entries, ...(startG ? { startG } : {}), ...(scale ? { scale } : {}) };
    const given = {
      retained: retainedPlace,
      sieving: node.place,
      mayHavePan: rows.mayHavePan,
      start: fields.get("start") !== undefined,
      scale: fields.get("scale") !== undefined,
      set: fields.get("sieve set") !== undefined,
    };
    const readable = !hasError(issues);
    checkComplete(read, given, report);
    if (readable) checkFigures(read, given, report);
  }
  return {
    id: [sand, date ?? "undated", portion ?? "one"].join(" / "),
    unit,
    retained: entries,
    place: node.place,
    usable: !spoiled && !hasError(issues),
    ...(date === undefined ? {} : { date }),
    ...(portion === undefined ? {} : { portion }),
    ...(repeatOf === undefined ? {} : { repeatOf }),
    ...(startG === undefined ? {} : { startG }),
    ...(scale === undefined ? {} : { scale }),
    ...(set === undefined ? {} : { set }),
    ...(minutes === undefined ? {} : { minutes }),
    ...(washed === undefined ? {} : { washed }),
    ...(note === undefined ? {} : { note }),
  };
}
