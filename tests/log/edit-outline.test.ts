// The outline of a log: every value with its path, label, text and a place that an edit can use.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { editLog } from "../../lib/log/edit.ts";
import { filesNamedIn } from "../../lib/log/files-named.ts";
import { logOutline } from "../../lib/log/outline.ts";
import type { OutlineNode } from "../../lib/log/outline-node.ts";

const name = "log.yaml";
const demo = join(import.meta.dirname, "../../data-demo");

type Value = OutlineNode & { readonly kind: "value" };
function values(nodes: readonly (OutlineNode | undefined)[]): Value[] {
  return nodes.flatMap((node): Value[] => {
    if (!node) return [];
    if (node.kind === "value") return [node];
    return values(node.kind === "group" ? node.parts : node.rows.flat());
  });
}
/** Label and text, groups in braces, tables with their columns. */
function drawn(nodes: readonly OutlineNode[]): unknown {
  return nodes.map((node) => {
    if (node.kind === "value") return `${node.label}: ${node.text}`;
    if (node.kind === "group") return { [node.label]: drawn(node.parts) };
    const cells = node.rows.map((row) => row.flatMap((cell) => (cell ? drawn([cell]) : "none")));
    return { [node.label]: node.columns, names: node.names, cells };
  });
}

test("groups, lists, tables, and what is repeated once", () => {
  const text = `format: 1
# commented: out
scales:
  one: &s { reads to: 0.1 g }
  two: { reads to: 1 g, within: "2 g" }
faults: [ gas holes, rough skin ]
again: *s
events:
  - { date: 2026-01-01, pour: { metal: 2 kg } }
  - date: 2026-01-02
    note:
mixed: [ 70 kPa, { load: 3 kg } ]
odd key: { a: 1, b: { c: 2 } }
`;
  expect(drawn(logOutline([{ name, text }]))).toEqual([
    "format: 1",
    {
      scales: ["reads to", "within"],
      names: ["one", "two"],
      cells: [
        ["reads to: 0.1 g", "none"],
        ["reads to: 1 g", "within: 2 g"],
      ],
    },
    { faults: ["1: gas holes", "2: rough skin"] },
    {
      events: ["date", "pour", "note"],
      names: undefined,
      cells: [
        ["date: 2026-01-01", { pour: ["metal: 2 kg"] }, "none"],
        ["date: 2026-01-02", "none", "note: "],
      ],
    },
    { mixed: ["1: 70 kPa", { 2: ["load: 3 kg"] }] },
    { "odd key": ["a: 1", { b: ["c: 2"] }] },
  ]);
});

test("a CSV file is a table; rows count from 0", () => {
  const csv = { name: "b.csv", text: "bag,damp (g)\n\nAlder,12\nBirch\n" };
  const [file] = logOutline([{ name, text: "a: 1\n" }, csv]).slice(1);
  expect(file).toMatchObject({ kind: "rows", path: ["b.csv"], columns: ["bag", "damp (g)"] });
  expect(values([file]).map(({ path, text }) => [path, text])).toEqual([
    [["b.csv", 0, "bag"], "Alder"],
    [["b.csv", 0, "damp (g)"], "12"],
    [["b.csv", 1, "bag"], "Birch"],
  ]);
});

test("a text that is no log has none; beside a broken line the rest is there", () => {
  expect(logOutline([])).toEqual([]);
  expect(logOutline([{ name, text: "" }])).toEqual([]);
  expect(logOutline([{ name, text: "PK\u0003" }])).toEqual([]);
  const broken = 'sands:\n  A:\n    note: "open\n  B:\n    state: used\nmetal: brass\n';
  expect(values(logOutline([{ name, text: broken }])).map(({ text }) => text)).toEqual(["used", "brass"]);
});

const logs = readdirSync(demo, { recursive: true, encoding: "utf8" }).filter((file) =>
  file.endsWith(".yaml"),
);

test.each(logs)("each value of %s can be written at its place, and only it changes", (file) => {
  const path = join(demo, file);
  const text = readFileSync(path, "utf8");
  const beside = filesNamedIn(text).map((one) => ({
    name: one,
    text: readFileSync(join(path, "..", one), "utf8"),
  }));
  const texts = [{ name, text }, ...beside];
  const all = values(logOutline(texts));
  expect(all.length).toBeGreaterThan(5);
  const some = all.filter((_, k) => k % Math.ceil(all.length / 6) === 0);
  for (const { place, path, text: old } of some) {
    const index = texts.findIndex((one) => one.name === place.file);
    const whole = texts[index]!.text;
    const edited = editLog(texts, { kind: "write", at: place, text: "7 kg" }).texts![index]!.text;
    const [before, after] = [whole.slice(0, place.offset), whole.slice(place.offset! + place.length!)];
    expect(edited.startsWith(before) && edited.endsWith(after), `${path}`).toBe(true);
    const again = editLog(texts, { kind: "write", at: place, text: old });
    expect(again.texts?.[index]?.text).toBe(whole);
  }
});
