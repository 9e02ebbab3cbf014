// A log read again after an edit, from what is remembered of it, is the log that is read from nothing.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { expect, test } from "vitest";
import { filesNamedIn } from "../../lib/log/files-named.ts";
import { logReader, readLog } from "../../lib/log/read-log.ts";
import { readingMemory } from "../../lib/log/reading-memory.ts";
import { batchLog } from "../bench/batch-log.ts";

const demo = join(import.meta.dirname, "../../data-demo");
const name = "log.yaml";
type Read = readonly [text: string, files: { readonly [name: string]: string }];

const demos = readdirSync(demo, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".yaml"))
  .map((file): Read => {
    const path = join(demo, file);
    const text = readFileSync(path, "utf8");
    const beside = filesNamedIn(text).map((one) => [one, readFileSync(join(path, "..", one), "utf8")]);
    return [text, Object.fromEntries(beside)];
  });

/** Many more edits where DEMOS=all. */
const all = process.env.DEMOS === "all";

/** What founders type, and what YAML takes for more than a text. */
const typed = fc.oneof(
  fc.constantFrom(
    "",
    " ",
    "\n",
    "\n  ",
    "\n\n",
    "#",
    "# 40: 0.15\n",
    '"',
    "'",
    ":",
    ": ",
    "- ",
    "\t",
    "“",
    "”",
  ),
  fc.constantFrom(
    "{",
    "}",
    "[",
    "]",
    ",",
    "|",
    ">\n",
    "&a ",
    "*a",
    "!",
    "? ",
    "---\n",
    "\r",
    "\r\n",
    "\u00a0",
  ),
  fc.constantFrom(
    "0,15",
    "12.4 ± 0.1 g",
    "batches:\n",
    "  B7:\n",
    "\n  B3: { moisture: 3 % }\n",
    "left out: why\n",
  ),
  fc.constantFrom("rigs:\n", "scales:\n", "note: a\n  b\n", "title: x\n", "# kept\n"),
  fc.stringMatching(/^[0-9a-z .:%-]{0,6}$/),
);
/** Where, how much of the text goes, and what comes. */
const edit = fc.tuple(fc.nat(1_000_000), fc.constantFrom(0, 0, 1, 1, 3, 20, 300), typed);

function edited(text: string, [at, gone, come]: readonly [number, number, string]): string {
  const offset = at % (text.length + 1);
  return text.slice(0, offset) + come + text.slice(offset + gone);
}

function expectSame(read: typeof readLog, text: string, files: Read[1]): void {
  const [again, fresh] = [read(text, { name, files }), readLog(text, { name, files })];
  if (!isDeepStrictEqual(again, fresh)) expect(again).toEqual(fresh);
}

test("every demo log, through edits of any kind, one after the other", () => {
  fc.assert(
    fc.property(fc.constantFrom(...demos), fc.array(edit, { maxLength: 3 }), ([text, files], edits) => {
      const read = logReader(readingMemory(0));
      let now = text;
      expectSame(read, now, files);
      for (const one of edits) {
        now = edited(now, one);
        expectSame(read, now, files);
      }
      expectSame(read, text, files);
    }),
    { numRuns: all ? 300 : 10, seed: 1 },
  );
});

test("a log of many batches, through edits of any kind and the way back", () => {
  const text = batchLog(8);
  const read = logReader(readingMemory(0));
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 2 }), (edits) => {
      expectSame(read, edits.reduce(edited, text), {});
      expectSame(read, text, {});
    }),
    { numRuns: all ? 300 : 20, seed: 2 },
  );
});

test("batches before an edit are the very same, those behind it moved with their figures' places", () => {
  const text = batchLog(60);
  const read = logReader();
  const before = read(text, { name }).value!;
  const at = text.indexOf("damp: 150.0 g", text.indexOf("  B30:"));
  const longer = `${text.slice(0, at)}damp: 150.25 g${text.slice(at + 13)}`;
  const after = read(longer, { name }).value!;
  expect(after).toEqual(readLog(longer, { name }).value);
  expect(after.batches[28]).toBe(before.batches[28]);
  expect(after.batches[29]).not.toBe(before.batches[29]);
  expect(after.batches[30]!.place.offset).toBe(before.batches[30]!.place.offset! + 1);
  expect(after.batches[30]!.readings[0]!.rig).toBe(before.batches[30]!.readings[0]!.rig);
});

test("another scale, and every batch is read anew", () => {
  const text = batchLog(60);
  const read = logReader();
  const before = read(text, { name }).value!;
  const finer = text.replace("kitchen scale: { reads to: 0.1 g", "kitchen scale: { reads to: 0.2 g");
  const after = read(finer, { name }).value!;
  expect(after).toEqual(readLog(finer, { name }).value);
  expect(before.batches[3]!.recipe?.scale?.stepG).toBe(0.1);
  expect(after.batches[3]!.recipe?.scale?.stepG).toBe(0.2);
});
