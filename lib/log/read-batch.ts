// One batch: what went in, how it was treated, and what was tested on it.

import type { Batch } from "./batch.ts";
import type { BatchContext } from "./batch-context.ts";
import { leftOutWithoutWhy, noBatchDate, orderNotWhole } from "./complaints-batch.ts";
import { dateOf, type Fields, fieldsOf, textNodeOf, textOf, yesNoOf } from "./fields.ts";
import { batchKeys } from "./log-keys.ts";
import { measuredOf } from "./measured.ts";
import type { Entry, MapNode, Report } from "./node.ts";
import { readRecipe } from "./read-recipe.ts";
import { declared } from "./read-rig.ts";
import { readTest } from "./read-test.ts";
import { testNames } from "./test-forms.ts";

const minutes = (what: string) => ({ what, unit: "min", most: 100_000 });

export function readBatch(
  entry: Entry,
  map: MapNode,
  spoiled: boolean,
  context: BatchContext,
  report: Report,
): Batch {
  const name = entry.key.trim();
  const fields = fieldsOf(map, [...batchKeys, ...testNames], "of a batch", report);
  const date = dateOf(fields.get("date"), report);
  if (!fields.get("date") && !spoiled) report(noBatchDate(), entry.keyPlace);
  const order = orderOf(fields, report);
  const sand = sandOf(fields, context.sands, report);
  const recipe = readRecipe(fields.entry("made of"), context.instruments, report);
  const mulledMin = measuredOf(fields.get("mulled"), minutes("mulled"), report);
  const stoodMin = measuredOf(fields.get("stood"), minutes("stood"), report);
  const block = textOf(fields.get("block"), "block", report);
  const keptOut = keptOutOf(fields, report);
  const note = textOf(fields.get("note"), "note", report);
  const tests = testNames.flatMap((test) => {
    const tested = fields.entry(test);
    return tested ? [{ test, ...readTest(test, tested, context.instruments, report) }] : [];
  });
  const leftOut = tests.filter((tested) => tested.leftOut).map(({ test }) => test);
  return {
    id: `${name} / ${date ?? "undated"}`,
    name,
    sameHeap: yesNoOf(fields.get("same heap"), "same heap", report) ?? false,
    readings: tests.flatMap(({ readings }) => readings),
    ...(leftOut.length === 0 ? {} : { leftOut }),
    place: entry.keyPlace,
    usable: !spoiled,
    ...(date === undefined ? {} : { date }),
    ...(order === undefined ? {} : { order }),
    ...(sand === undefined ? {} : { sand }),
    ...(recipe === undefined ? {} : { recipe }),
    ...(mulledMin === undefined ? {} : { mulledMin }),
    ...(stoodMin === undefined ? {} : { stoodMin }),
    ...(block === undefined ? {} : { block }),
    ...(keptOut === undefined ? {} : { keptOut }),
    ...(note === undefined ? {} : { note }),
  };
}

function orderOf(fields: Fields, report: Report): number | undefined {
  const text = textNodeOf(fields.get("order"), "order", report);
  if (!text) return undefined;
  if (/^[1-9]\d{0,4}$/.test(text.text.trim())) return Number(text.text);
  report(orderNotWhole(text.text), text.place);
  return undefined;
}

/** A batch is left out for a reason in words; without one it counts. */
function keptOutOf(fields: Fields, report: Report): Batch["keptOut"] {
  const node = fields.get("left out");
  const why = textOf(node, "left out", report);
  if (node === undefined || why === undefined) return undefined;
  if (!/^(yes|no|true|false|none)$/i.test(why)) return { why, place: node.place };
  report(leftOutWithoutWhy(), node.place);
  return undefined;
}

/** The name as written; one that the log does not know is complained about where it names sands at all. */
function sandOf(fields: Fields, sands: readonly string[], report: Report): string | undefined {
  const node = fields.get("sand");
  const name = textOf(node, "sand", report);
  if (name === undefined || sands.length === 0) return name;
  const known = sands.map((sand) => ({ name: sand }));
  return declared(node, "sand", known, undefined, report)?.name ?? name;
}
