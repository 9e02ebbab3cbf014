// The comments of the public functions: each says what it does, by what source, with an example; and the examples hold.

import { transformSync } from "esbuild";
import { beforeAll, expect, test } from "vitest";
import { commentParts } from "../lib/disk/reference-comment.ts";
import { type ReferenceEntry, referenceEntries } from "../lib/disk/reference-entries.ts";
import * as door from "../lib/index.ts";
import fineness from "../notebooks/grain-fineness.ts";
import { demoLogs } from "./browser/demo-pages.ts";
import { built, root } from "./cli/mullbook.ts";
import { examplesInWords, examplesOf } from "./public-examples.ts";
import { fits, statedValue } from "./stated-value.ts";

let functions: readonly ReferenceEntry[];
beforeAll(async () => {
  await built();
  const entries = referenceEntries(`${root}/dist/types`)!;
  functions = entries.filter(({ kind }) => kind === "function");
}, 180_000);

/** They read, look up or put in order, and compute nothing that could have a source. */
const noSource = [
  "aimsFromBands",
  "bands",
  "castingFaultNamed",
  "decides",
  "everyBand",
  "gradingOf",
  "gradingOfPortion",
  "metalNamed",
  "readGrading",
  "readSieveLabel",
  "sieveStack",
];
const SOURCE =
  /\b(Sources?|Method)\b[^:\n]{0,60}(:| as )|Certified digits|common practice|from memory|our own|thresholds? are/;

test("every public function says in a sentence what it gives", () => {
  const silent = functions.filter(({ comment }) => (commentParts(comment)[0]?.text.length ?? 0) < 20);
  expect(silent.map(({ name }) => name)).toEqual([]);
});

test("every public function has an example", () => {
  const without = functions.filter(({ comment }) => examplesOf(comment).length === 0);
  expect(without.map(({ name }) => name)).toEqual([]);
});

test("what computes a number says by which source or method", () => {
  const computing = functions.filter(
    ({ stage, name }) => (stage === "sand" || stage === "numbers") && !noSource.includes(name),
  );
  expect(computing.length).toBeGreaterThan(150);
  expect(computing.filter(({ comment }) => !SOURCE.test(comment)).map(({ name }) => name)).toEqual([]);
});

test("every example runs as it stands, and gives the value that it states", async () => {
  const wrong: string[] = [];
  let stated = 0;
  for (const { name, comment } of functions) {
    if (examplesInWords.includes(name)) continue;
    for (const example of examplesOf(comment)) {
      const { code, value } = statedValue(example);
      if (value !== undefined) stated++;
      const said = await heldBy(name, code, value);
      if (said !== undefined) wrong.push(`${name}: ${said}`);
    }
  }
  expect(wrong).toEqual([]);
  expect(stated).toBeGreaterThan(230);
}, 480_000);

const heaps = new WeakMap<door.Log, door.HeapReport>();
/** The same for one log: it draws a whole season. */
function heapReport(log: door.Log): door.HeapReport {
  const known = heaps.get(log) ?? door.heapReport(log);
  heaps.set(log, known);
  return known;
}

/** What is wrong with it, or undefined. A `log` in it is that of a demo: of some demo the example must hold. */
async function heldBy(name: string, code: string, value: unknown): Promise<string | undefined> {
  const logs = /\b(log|text|page)\b(?!:)/.test(code) ? demosFor(name) : [undefined];
  let said: string | undefined;
  for (const demo of logs) {
    const scope = { ...door, heapReport, fineness, writeFile: async () => true, ...demo?.() };
    try {
      const got = await run(code, scope);
      if (value === undefined ? got !== undefined || !/=>|\(/.test(code) : fits(got, value)) return undefined;
      said ??= `gives ${JSON.stringify(got)?.slice(0, 160)}, where it states ${JSON.stringify(value)}`;
    } catch (error) {
      said ??= String(error);
    }
  }
  return said;
}

const words: readonly (readonly [RegExp, string])[] = [
  [/casting|fault/i, "castings"],
  [/diary|control/i, "diary"],
  [/heap|heat|weather|Tomorrow/i, "heap"],
  [/mull|minutes|strengthText/i, "mulling-trial"],
  [/blend/i, "blend"],
  [/sheet|foot/i, "own-sheets"],
  [/recipe[A-Z]/, "recipe"],
  [/sand|grain|siev|fineness|portion|buying|figureText|write/i, "grain-fineness"],
];

const empty = { question: "What?", answer: [], sections: [] };
const read = new Map<string, door.Log>();

/** All demo logs, the likeliest first; read when they are asked for. */
function demosFor(name: string) {
  const likely = words.find(([pattern]) => pattern.test(name))?.[1] ?? "moisture-trial";
  const sorted = demoLogs().toSorted((a, b) => Number(b.notebook === likely) - Number(a.notebook === likely));
  return sorted.map((demo) => () => {
    const known =
      read.get(demo.text) ?? door.readLog(demo.text, { name: demo.name, files: demo.files }).value!;
    read.set(demo.text, known);
    return { log: known, text: demo.text, page: door.notebook("Page", () => empty).run(known) };
  });
}

/** The value of the last statement; undefined where that is a declaration. */
async function run(code: string, scope: Readonly<Record<string, unknown>>): Promise<unknown> {
  const lines = code.trimEnd().replace(/;$/, "").split("\n");
  const start = lines.findLastIndex((line) => /^[^\s})\]]/.test(line));
  const last = lines.slice(start).join("\n");
  const before = lines.slice(0, start).join("\n");
  const body = /^const /.test(last) ? `${before}\n${last}\nreturn true;` : `${before}\nreturn (${last});`;
  const { code: plain } = transformSync(`async function example() {\n${body}\n}`, { loader: "ts" });
  const make = new Function(...Object.keys(scope), `${plain}\nreturn example();`);
  return make(...Object.values(scope)) as Promise<unknown>;
}
