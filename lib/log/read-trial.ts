// The sections of a log that a trial is made of: rigs, aims, the axis, the batches.

import type { BatchMemory } from "./batch-memory.ts";
import { checkBatches } from "./check-batches.ts";
import type { Files } from "./csv-file.ts";
import type { Fields } from "./fields.ts";
import type { Entry, Report } from "./node.ts";
import { readAims, readTrialAxis } from "./read-aims.ts";
import { readBatches } from "./read-batches.ts";
import { readHeap } from "./read-heap.ts";
import { readRigs } from "./read-rigs.ts";
import type { Log, Scale } from "./types.ts";

export interface TrialContext {
  readonly files: Files;
  readonly scales: readonly Scale[];
  readonly sands: readonly string[];
  readonly spoiled: (entry: Entry) => boolean;
  readonly report: Report;
  readonly reportAbout: (name: string) => Report;
  readonly memory?: BatchMemory | undefined;
}

export function readTrial(
  fields: Fields,
  context: TrialContext,
): Pick<Log, "rigs" | "aims" | "axis" | "heapKg" | "batches"> {
  const { report, scales, reportAbout } = context;
  const rigs = readRigs(fields.get("rigs"), report);
  const aims = readAims(fields.get("aims"), report);
  const axis = readTrialAxis(fields.get("trial"), report);
  const instruments = {
    scales,
    rigs,
    scaleSection: fields.section("scales"),
    rigSection: fields.section("rigs"),
  };
  const heapKg = readHeap(fields.entry("heap"), instruments, report);
  const read = readBatches(fields, { ...context, instruments }, report);
  const batches = checkBatches(read, axis, reportAbout);
  return {
    rigs,
    aims,
    batches,
    ...(axis === undefined ? {} : { axis }),
    ...(heapKg ? { heapKg } : {}),
  };
}
