// The batches of a trial, from the log and from a CSV file.

import type { Batch } from "./batch.ts";
import type { BatchContext } from "./batch-context.ts";
import { noTests, orderTwice, sameBatchTwice } from "./complaints-batch.ts";
import { csvFile } from "./csv-file.ts";
import { type Fields, mapOf, textNodeOf, uniqueEntries } from "./fields.ts";
import { type Entry, plainName, type Report } from "./node.ts";
import { readBatch } from "./read-batch.ts";
import { csvBatches } from "./read-csv-batches.ts";

export function readBatches(fields: Fields, context: BatchContext, report: Report): Batch[] {
  const map = mapOf(fields.get("batches"), "batches", report);
  const listed = map ? uniqueEntries(map, report) : [];
  const node = textNodeOf(fields.get("batches file"), "batches file", report);
  const source = node && csvFile(node, context.files, report);
  const filed = source ? csvBatches(source, report) : [];
  const batches = [
    ...listed.flatMap((entry) => read(entry, context.spoiled(entry), context) ?? []),
    ...filed.flatMap(({ entry, spoiled }) => read(entry, spoiled, context) ?? []),
  ];
  return apart(batches, context);
}

function read(entry: Entry, spoiled: boolean, context: BatchContext): Batch | undefined {
  const { memory, reportAbout } = context;
  if (memory)
    return memory.recall(entry, spoiled, context, (report) => readAnew(entry, spoiled, context, report));
  return readAnew(entry, spoiled, context, reportAbout(entry.key.trim()));
}

function readAnew(entry: Entry, spoiled: boolean, context: BatchContext, report: Report): Batch | undefined {
  const map = mapOf(entry.value, entry.key.trim(), report);
  if (!map) return undefined;
  const batch = readBatch(entry, map, spoiled, context, report);
  const nothing = batch.readings.length === 0 && !batch.leftOut;
  if (!spoiled && nothing) report(noTests(), entry.keyPlace);
  return batch;
}

/** Ids come from name and date, so no two batches may share both; nor do two of a day share an order. */
function apart(batches: readonly Batch[], context: BatchContext): Batch[] {
  const byId = new Map<string, Batch>();
  for (const batch of batches) {
    const id = plainName(batch.id);
    const first = byId.get(id);
    if (first) context.reportAbout(batch.name)(sameBatchTwice(String(first.place.line)), batch.place);
    else byId.set(id, batch);
  }
  const kept = [...byId.values()];
  const orders = new Map<string, Batch>();
  for (const batch of kept) {
    if (batch.order === undefined) continue;
    const key = `${batch.date} ${batch.order}`;
    const first = orders.get(key);
    if (first) context.reportAbout(batch.name)(orderTwice(String(batch.order), first.name), batch.place);
    else orders.set(key, batch);
  }
  return kept;
}
