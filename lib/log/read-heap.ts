// The heap: its mass, or how many buckets it is and what one of them weighs.

import {
  bucketBelowEmpty,
  bucketsNotWhole,
  heapTwice,
  heapWithoutMass,
  moreWeighedThanThere,
} from "./complaints-heap.ts";
import { type Fields, fieldsOf, mapOf, textOf } from "./fields.ts";
import type { HeapKg } from "./heap.ts";
import { heapKeys } from "./log-keys.ts";
import { type MeasuredField, measuredOf } from "./measured.ts";
import type { Entry, LogNode, Report } from "./node.ts";
import { declared } from "./read-rig.ts";
import type { Measured, Scale } from "./types.ts";

interface Scales {
  readonly scales: readonly Scale[];
  readonly scaleSection: LogNode | undefined;
}

const kilograms = (what: string): MeasuredField => ({ what, unit: "kg", most: 1e6, aboveZero: true });

export function readHeap(
  entry: Entry | undefined,
  { scales, scaleSection }: Scales,
  report: Report,
): HeapKg | undefined {
  const map = mapOf(entry?.value, "heap", report);
  if (!map || !entry) return undefined;
  const fields = fieldsOf(map, heapKeys, "of the heap", report);
  textOf(fields.get("note"), "note", report);
  const scale = declared(fields.get("scale"), "scale", scales, scaleSection, report);
  const weighedOn = scale ? { scale } : {};
  const mass = measuredOf(fields.get("mass"), kilograms("mass"), report);
  if (fields.get("mass")) {
    const twice = fields.entry("buckets") ?? fields.entry("bucket");
    if (twice) report(heapTwice(), twice.keyPlace);
    return mass && { ...mass, ...weighedOn };
  }
  const counted = bucketsOf(fields, report);
  if (counted === "not given" && !fields.holed) report(heapWithoutMass(), entry.keyPlace);
  return typeof counted === "object" ? { ...counted, ...weighedOn } : undefined;
}

/** Undefined where something is wrong with them and said. */
function bucketsOf(fields: Fields, report: Report): HeapKg | "not given" | undefined {
  const number = measuredOf(
    fields.get("buckets"),
    { what: "buckets", unit: "", most: 100_000, aboveZero: true },
    report,
  );
  const weighedKg = weighedOf(fields.get("bucket"), report);
  const emptyKg = measuredOf(fields.get("empty"), { ...kilograms("empty"), aboveZero: false }, report);
  if (!fields.get("buckets") || !fields.get("bucket")) return "not given";
  const unread = fields.get("empty") && !emptyKg;
  if (!number || !weighedKg || unread) return undefined;
  const { value: count, text, place } = number;
  if (!Number.isInteger(count)) return void report(bucketsNotWhole(text), place);
  if (weighedKg.length > count)
    return void report(moreWeighedThanThere(`${weighedKg.length}`, text), weighedKg[0]!.place);
  const light = weighedKg.find((bucket) => bucket.value <= (emptyKg?.value ?? 0));
  if (light && emptyKg) return void report(bucketBelowEmpty(light.text, emptyKg.text), light.place);
  const gross = weighedKg.reduce((all, bucket) => all + bucket.value, 0) / weighedKg.length;
  const value = Number((count * (gross - (emptyKg?.value ?? 0))).toPrecision(13));
  return { value, text, place, buckets: { count, weighedKg, ...(emptyKg ? { emptyKg } : {}) } };
}

/** One bucket, or a list of them; undefined where one cannot be read. */
function weighedOf(node: LogNode | undefined, report: Report): Measured[] | undefined {
  if (!node) return undefined;
  const items = node.kind === "list" && node.items.length > 0 ? node.items : [node];
  const read = items.map((item) => measuredOf(item, kilograms("bucket"), report));
  const whole = read.filter((bucket) => bucket !== undefined);
  return whole.length === read.length ? whole : undefined;
}
