// One sand with its sievings, from the log and from a CSV file.

import type { Place } from "../issue.ts";
import { noPortion, noSievings, noState, sameTwice } from "./complaints-sieving.ts";
import { csvFile, type Files } from "./csv-file.ts";
import { choiceOf, type Fields, fieldsOf, mapOf, textNodeOf, textOf } from "./fields.ts";
import { fingerprint } from "./fingerprint.ts";
import { sandKeys } from "./log-keys.ts";
import type { Entry, LogNode, Report } from "./node.ts";
import { csvSievings } from "./read-csv-sievings.ts";
import { type Rig, readSieving } from "./read-sieving.ts";
import type { Sand, Sieving } from "./types.ts";

export interface SandContext {
  readonly rig: Rig;
  readonly files: Files;
  /** True when a line within the place, or below it and before `until`, could not be read. */
  readonly spoiled: (place: Place, until?: number) => boolean;
  /** True when any line of the sand that stands there could not be read. */
  readonly sandSpoiled: (place: Place) => boolean;
}

export function readSand(entry: Entry, context: SandContext, report: Report): Sand | undefined {
  const name = entry.key.trim();
  const map = mapOf(entry.value, name, report);
  if (!map) return undefined;
  const spoiled = context.sandSpoiled(entry.keyPlace);
  const fields = fieldsOf(map, sandKeys, "of a sand", report);
  const state = choiceOf(fields.get("state"), "state", ["new", "used"], report);
  if (!fields.get("state") && !spoiled) report(noState(), entry.keyPlace);
  const note = textOf(fields.get("note"), "note", report);
  const sievings = [
    ...listed(fields, name, context, spoiled, report),
    ...fromFile(fields, name, context, report),
  ];
  if (!fields.get("sievings") && !fields.get("sievings file") && !spoiled) {
    report(noSievings(), entry.keyPlace);
  }
  return {
    name,
    // The cautious reading: sand that may hold clay gets no number until it is washed.
    state: state ?? "used",
    stateSaid: state !== undefined,
    ...(note === undefined ? {} : { note }),
    sievings: toldApart(sievings, report),
    place: entry.keyPlace,
  };
}

function listed(
  fields: Fields,
  sand: string,
  context: SandContext,
  spoiled: boolean,
  report: Report,
): Sieving[] {
  const node = fields.get("sievings");
  if (!node || (node.kind === "empty" && spoiled)) return [];
  // One sieving needs no dash.
  const items: readonly LogNode[] = node.kind === "list" ? node.items : [node];
  return items.flatMap((item, index) => {
    const map = mapOf(item, "sievings", report);
    const spoiled = context.spoiled(item.place, items[index + 1]?.place.offset);
    return map ? [readSieving(map, sand, context.rig, spoiled, report)] : [];
  });
}

function fromFile(fields: Fields, sand: string, context: SandContext, report: Report): Sieving[] {
  const node = textNodeOf(fields.get("sievings file"), "sievings file", report);
  const source = node && csvFile(node, context.files, report);
  if (!source) return [];
  return csvSievings(source, report).map((row) =>
    readSieving(row.node, sand, context.rig, row.spoiled, report),
  );
}

/** Two sievings of one name would share their draws: the id of the later takes in its figures, which no order changes. */
function toldApart(sievings: readonly Sieving[], report: Report): Sieving[] {
  const seen = new Map<string, Sieving>();
  const reported = new Set<string>();
  return sievings.map((sieving) => {
    if (!seen.has(sieving.id)) {
      seen.set(sieving.id, sieving);
      return sieving;
    }
    const figures = figuresOf(sieving);
    const first = seen.get(sieving.id)!;
    const id = `${sieving.id} / ${fingerprint(figures)}`;
    const same = figuresOf(first) === figures ? first : seen.get(id);
    if (same) {
      report(sameTwice(String(same.place.line)), sieving.place);
      return { ...sieving, id: `${id} again`, usable: false };
    }
    seen.set(id, sieving);
    if (!reported.has(sieving.id)) report(noPortion(), sieving.place);
    reported.add(sieving.id);
    return { ...sieving, id };
  });
}

function figuresOf({ startG, retained }: Sieving): string {
  return [startG?.value ?? "", ...retained.map(({ label, mass }) => `${label}=${mass.value}`)].join(";");
}
