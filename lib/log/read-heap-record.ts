// The heap: besides its mass, what clay it holds, how it lies and how it is covered.

import { entryOf } from "../numbers/entry-of.ts";
import { choiceOf, fieldsOf } from "./fields.ts";
import { given } from "./given.ts";
import type { HeapKg } from "./heap.ts";
import type { ClayKind, HeapRecord } from "./heap-record.ts";
import { heapKeys } from "./log-keys.ts";
import type { Entry, Report } from "./node.ts";
import { numberIn } from "./read-season-fields.ts";

const clayKinds: readonly ClayKind[] = ["sodium bentonite", "calcium bentonite"];
const shortKinds: { readonly [name: string]: ClayKind } = {
  sodium: "sodium bentonite",
  "na-bentonite": "sodium bentonite",
  western: "sodium bentonite",
  "western bentonite": "sodium bentonite",
  calcium: "calcium bentonite",
  "ca-bentonite": "calcium bentonite",
  southern: "calcium bentonite",
  "southern bentonite": "calcium bentonite",
};
const otherShapes: { readonly [name: string]: "heap" | "bin" } = {
  cone: "heap",
  pile: "heap",
  box: "bin",
  tub: "bin",
  barrel: "bin",
};
const otherCovers: { readonly [name: string]: "none" | "sheet" | "lid" } = {
  no: "none",
  open: "none",
  uncovered: "none",
  tarp: "sheet",
  tarpaulin: "sheet",
  plastic: "sheet",
  "plastic sheet": "sheet",
  cloth: "sheet",
};

/** readHeap has complained of unknown names already. */
export function readHeapRecord(
  entry: Entry | undefined,
  heapKg: HeapKg | undefined,
  report: Report,
): HeapRecord | undefined {
  if (entry?.value.kind !== "map") return undefined;
  const fields = fieldsOf(entry.value, heapKeys, "of the heap", () => {});
  const reader = { fields, report };
  return {
    ...given({
      heapKg,
      clayKind: choiceOf(fields.get("clay kind"), "clay kind", clayKinds, report, {
        named: (name) => entryOf(shortKinds, name),
      }),
      shape: choiceOf(fields.get("shape"), "shape", ["heap", "bin"] as const, report, {
        named: (name) => entryOf(otherShapes, name),
      }),
      cover: choiceOf(fields.get("cover"), "cover", ["none", "sheet", "lid"] as const, report, {
        named: (name) => entryOf(otherCovers, name),
      }),
      exposedM2: numberIn(reader, "exposed", "m²", 10_000),
      depthMm: numberIn(reader, "depth", "mm", 10_000),
    }),
    place: entry.keyPlace,
  };
}
