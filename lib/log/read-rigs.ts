// Home rigs that the log declares: tube, rammer, water column, vessel.

import type { Rig } from "./batch.ts";
import { checkBore, likelyBores } from "./check-bore.ts";
import { fieldsOf, mapOf, textOf, uniqueEntries } from "./fields.ts";
import { type MeasuredField, measuredOf } from "./measured.ts";
import type { LogNode, Report } from "./node.ts";
import type { Measured } from "./types.ts";

/** Key in the log, name in Rig.fields, and what it is on a card. */
const rigFields: readonly (MeasuredField & { readonly raw: string; readonly says: string })[] = [
  {
    what: "bore",
    raw: "boreMm",
    unit: "mm",
    most: 500,
    aboveZero: true,
    says: "inside diameter of the tube",
  },
  {
    what: "tube",
    raw: "tubeMm",
    unit: "mm",
    most: 1000,
    aboveZero: true,
    says: "height of the tube, filled level",
  },
  { what: "rammer", raw: "rammerKg", unit: "kg", most: 100, aboveZero: true, says: "falling weight" },
  { what: "drop", raw: "dropMm", unit: "mm", most: 2000, aboveZero: true, says: "height that it falls" },
  { what: "blows", raw: "blows", unit: "", most: 100, aboveZero: true, says: "how many blows" },
  {
    what: "column",
    raw: "columnMm",
    unit: "mm",
    most: 1000,
    aboveZero: true,
    says: "bore of the water column",
  },
  {
    what: "vessel",
    raw: "vesselMl",
    unit: "ml",
    most: 1e6,
    aboveZero: true,
    says: "volume of the air vessel and hose",
  },
  {
    what: "blank",
    raw: "blankMm",
    unit: "mm",
    most: 1000,
    alsoIn: ["mmH2O"],
    says: "pressure lost in the rig without a specimen, in mm of water",
  },
  {
    what: "blank time",
    raw: "blankS",
    unit: "s",
    most: 3600,
    says: "time that the rig takes without a specimen, in s",
  },
  {
    what: "ruler",
    raw: "rulerMm",
    unit: "mm",
    most: 50,
    aboveZero: true,
    says: "smallest step of ruler or caliper",
  },
];

export function readRigs(node: LogNode | undefined, report: Report): Rig[] {
  const map = mapOf(node, "rigs", report);
  if (!map) return [];
  const rigs = uniqueEntries(map, report).flatMap((entry) => {
    const name = entry.key.trim();
    const body = mapOf(entry.value, name, report);
    if (!body) return [];
    const known = [...rigFields.map(({ what }) => what), "note"];
    const fields = fieldsOf(body, known, `of the rig "${name}"`, report);
    const note = textOf(fields.get("note"), "note", report);
    const read: Record<string, Measured> = {};
    for (const field of rigFields) {
      const measured = measuredOf(fields.get(field.what), field, report);
      if (measured) read[field.raw] = measured;
    }
    return [{ name, fields: read, ...(note === undefined ? {} : { note }), place: entry.keyPlace }];
  });
  const bores = rigs.flatMap(({ fields }) => fields.boreMm ?? []);
  for (const bore of bores) checkBore("A bore", bore, likelyBores(bores), report);
  return rigs;
}
