// Rows, named entries and keys added and removed in the form of their neighbours.

import { expect, test } from "vitest";
import { editLog } from "../../lib/log/edit.ts";
import type { LogEdit, LogPath } from "../../lib/log/edit-types.ts";

const name = "log.yaml";
type Entries = { readonly [key: string]: string };
interface AddOptions {
  readonly name?: string;
  readonly at?: number;
}

function edited(text: string, edit: LogEdit): string {
  const { texts, issues } = editLog([{ name, text }], edit);
  return texts?.[0]?.text ?? issues.map(({ code }) => code).join();
}
/** The text with what is added; removed again, the very bytes come back unless it began a list or map. */
function added(text: string, to: LogPath, entries: Entries, options: AddOptions = {}, began = false): string {
  const edit: LogEdit = { kind: "add", to, entries, ...options };
  const { texts, changed } = editLog([{ name, text }], edit);
  const now = texts?.[0]?.text;
  if (now === undefined) return edited(text, edit);
  const shown = now.slice(changed?.offset, changed!.offset! + changed!.length!);
  expect(now).toContain(shown);
  expect(shown.trimStart()).toBe(shown);
  const step = options.name ?? options.at ?? Object.keys(entries)[0]!;
  const path = Object.keys(entries).length === 1 || options.name !== undefined || options.at !== undefined;
  if (path && !began) expect(edited(now, { kind: "remove", path: [...to, step] })).toBe(text);
  return now;
}
const removed = (text: string, path: LogPath) => edited(text, { kind: "remove", path });

test("a row in brackets takes its neighbours' spacing, blank lines and place", () => {
  const text = `events:   # what happened
  # the first
  - {date: 2026-01-01, lost: 1 kg}   # swept

  - {date: 2026-01-02, water: 1 kg}
  # the end
heap: { mass: 1 kg }
`;
  const row = { date: "2026-02-01", "pour/metal": "2 kg" };
  const spelt = "  - {date: 2026-02-01, pour: { metal: 2 kg }}\n";
  expect(added(text, ["events"], row, { at: 2 })).toBe(text.replace("  # the end", `\n${spelt}  # the end`));
  expect(added(text, ["events"], row, { at: 1 })).toBe(text.replace("# swept\n", `# swept\n\n${spelt}`));
  expect(added(text, ["events"], row, { at: 0 })).toBe(
    text.replace("  # the first", `${spelt}\n  # the first`),
  );
  expect(added(text, ["events"], row)).toBe(added(text, ["events"], row, { at: 2 }));
});

test("a row of several lines keeps dash, indent, quotes and the form of what lies in it", () => {
  for (const eol of ["\n", "\r\n"]) {
    const text = `sands:
    A:
        sievings:
            -   date: 2026-01-01
                note: "wet"
                retained:
                    No. 40: 1   # coarse
                    pan: 2`.replaceAll("\n", eol);
    const row = { date: "2026-01-02", note: "dry", "retained/No. 40": "2", "retained/pan": "" };
    expect(added(text, ["sands", "A", "sievings"], row, { at: 1 })).toBe(
      `${text}
            -   date: 2026-01-02
                note: "dry"
                retained:
                    No. 40: 2
                    pan:`.replaceAll(/\r?\n/g, eol),
    );
  }
});

test("a named entry, nested keys in the form of the batch before", () => {
  const text = `batches:
  W1:
    date: 2026-01-01
    moisture: { damp: 1 g, dry: 1 g }
  W2: { date: 2026-01-02 }   # short
metal: brass
`;
  const entries = { date: "2026-01-03", "moisture/damp": "2 g", "moisture/dry": "1 g" };
  const block = "  W3:\n    date: 2026-01-03\n    moisture: { damp: 2 g, dry: 1 g }\n";
  const flow = "  W3: { date: 2026-01-03, moisture: { damp: 2 g, dry: 1 g } }\n";
  expect(added(text, ["batches"], entries, { name: "W3" })).toBe(text.replace("metal", `${flow}metal`));
  expect(added(text, ["batches"], entries, { name: "W3", at: 1 })).toBe(text.replace("  W2", `${block}  W2`));
  expect(added(text, ["batches"], {}, { name: "# 7: odd" })).toBe(
    text.replace("metal", '  "# 7: odd":\nmetal'),
  );
  expect(added(text, ["batches"], {}, { name: "w2" })).toBe("log/edit-name-taken");
  expect(added(text, ["batches"], {}, { name: " " })).toBe("log/edit-no-name");
  expect(added(text, [], { mass: "1 kg" }, { name: "heap" })).toBe(`${text}heap: { mass: 1 kg }\n`);
});

test("a key at the end of its map, in its style", () => {
  const text = "aims: {a: 1}\nheap:\n  mass: 1 kg   # about\n  # shape: box\nwanted: { b: 1 }\nend: 1\n";
  expect(added(text, ["aims"], { "c: d": "a, b" })).toBe(text.replace("{a: 1}", '{a: 1, "c: d": "a, b"}'));
  expect(added(text, ["heap"], { cover: "sheet" })).toBe(text.replace("about\n", "about\n  cover: sheet\n"));
  expect(added(text, ["wanted"], { c: "" })).toBe(text.replace("b: 1", "b: 1, c:"));
  expect(added(text, ["wanted"], { B: "2" })).toBe("log/edit-name-taken");
  expect(added(text, ["wanted"], { "x~1y": "2" }, {}, true)).toBe(text.replace("b: 1", "b: 1, x/y: 2"));
  expect(added(text, ["wanted"], { x: "1", "x/y": "2" })).toBe("log/edit-clashing-keys");
  expect(added(text, ["end"], { x: "1" })).toBe("log/edit-not-rows");
  expect(added(text, ["nowhere", "else"], { x: "1" })).toBe("log/edit-no-path");
});

test("a list or map that is empty, or not there yet, begins", () => {
  const text = "rows: # none yet\nevents: []   # none\nbatches: {}\nb: { rows: , c: [] }\n";
  const row = { a: "1", b: "x: y" };
  expect(added(text, ["rows"], row, {}, true)).toBe(text.replace("yet\n", 'yet\n  - { a: 1, b: "x: y" }\n'));
  expect(added(text, ["events"], row, { at: 0 })).toBe(
    text.replace("events: []   # none\n", 'events:   # none\n  - { a: 1, b: "x: y" }\n'),
  );
  expect(added(text, ["batches"], row, { name: "W1" })).toBe(
    text.replace("batches: {}\n", 'batches:\n  W1: { a: 1, b: "x: y" }\n'),
  );
  expect(added(text, ["b", "rows"], row, {}, true)).toBe(
    text.replace("rows: ,", 'rows: [ { a: 1, b: "x: y" } ],'),
  );
  expect(added(text, ["b", "c"], row, { at: 0 })).toBe(
    text.replace("[]   #", "[]   #").replace("c: []", 'c: [ { a: 1, b: "x: y" } ]'),
  );
  expect(added(text, ["measured"], row, {}, true)).toBe(`${text}measured:\n  - { a: 1, b: "x: y" }\n`);
  expect(added(text, ["aims"], { a: "1" }, {}, true)).toBe(`${text}aims: { a: 1 }\n`);
});

test("brackets over several lines, and plain items", () => {
  const text = `rows: [
    { a: 1 },  # one
    # two
    { a: max(1, 2) }
  ]
faults: [ gas holes, rough skin ]
list:
  - 70 kPa
`;
  expect(added(text, ["rows"], { a: "3" }, { at: 2 })).toBe(
    text.replace("max(1, 2) }\n", "max(1, 2) },\n    { a: 3 }\n"),
  );
  expect(added(text, ["rows"], { a: "3" }, { at: 1 })).toBe(
    text.replace("# one\n", "# one\n    { a: 3 },\n"),
  );
  expect(added(text, ["rows"], { a: "3" }, { at: 0 })).toBe(
    text.replace("{ a: 1 }", "{ a: 3 },\n    { a: 1 }"),
  );
  expect(added(text, ["faults"], { "": "a, b" }, { at: 2 })).toBe(text.replace("skin ]", 'skin, "a, b" ]'));
  expect(added(text, ["list"], { "": "71 kPa" }, { at: 1 })).toBe(text.replace("kPa\n", "kPa\n  - 71 kPa\n"));
  expect(added(text, ["list"], { a: "1" }, { name: "x" })).toBe("log/edit-name-unwanted");
});

test("removed with the comment on its line; what belongs to others stays", () => {
  const text = `# top
batches:
  # the first
  W1:
    a: 1
    # within
    b: 2   # last

  # the second
  W2: { a: 1, b: 2, c: 3 }   # own
  W3:
    - x: 1   # x
      y: 2
title: t
`;
  expect(removed(text, ["batches", "W1"])).toBe(text.replace(/ {2}W1:[\s\S]*?# last\n/, ""));
  expect(removed(text, ["batches", "W2"])).toBe(text.replace(/ {2}W2:.*\n/, ""));
  expect(removed(text, ["batches", "W2", "a"])).toBe(text.replace("a: 1, b", "b"));
  expect(removed(text, ["batches", "W2", "b"])).toBe(text.replace(" b: 2,", ""));
  expect(removed(text, ["batches", "W2", "c"])).toBe(text.replace(", c: 3", ""));
  expect(removed(text, ["batches", "W1", "a"])).toBe(text.replace("    a: 1\n", ""));
  expect(removed(text, ["batches", "W3", 0, "x"])).toBe(text.replace("x: 1   # x\n      y", "y"));
  expect(removed(text, ["batches", "W3", 0, "y"])).toBe(text.replace("      y: 2\n", ""));
  expect(removed(text, ["batches", "W3", 0])).toBe(text.replace(/W3:\n.*\n.*\n/, "W3: []\n"));
  expect(removed(text, ["title"])).toBe(text.replace("title: t\n", ""));
  expect(removed(text, ["batches", "W9"])).toBe("log/edit-no-path");
  expect(removed("a: { b: 1 }\n", ["a", "b"])).toBe("a: {}\n");
  expect(removed("a: 1\n", ["a"])).toBe("log/edit-last");
  expect(removed("a: 1\nb: 2\na: 3\n", ["a"])).toBe("log/edit-twice");
});

test("what is repeated by * is changed where it is written, and a repeat may be taken out", () => {
  const text = "a: &m { x: 1 }\nb: *m\nc: [ *m, { y: 1 } ]\n";
  expect(added(text, ["b"], { z: "1" })).toBe("log/edit-repeat");
  expect(removed(text, ["b", "x"])).toBe("log/edit-repeat");
  expect(removed(text, ["b"])).toBe(text.replace("b: *m\n", ""));
  expect(removed(text, ["c", 0])).toBe(text.replace("*m, ", ""));
  expect(removed(text, ["a"])).toBe("log/edit-changes-more");
  expect(added(text, ["a"], { z: "1" })).toBe(text.replace("x: 1", "x: 1, z: 1"));
});

test("rows of a CSV file", () => {
  const csv = '\uFEFFbag;damp (g);note\r\nAlder;12,5;"a;b"\r\n\r\nBirch;13;\r\n';
  const texts = [
    { name, text: "a: 1\n" },
    { name: "b.csv", text: csv },
  ];
  const after = (edit: LogEdit, from = texts) => {
    const { texts: now, issues } = editLog(from, edit);
    return now?.[1]?.text ?? issues.map(({ code }) => code).join();
  };
  const add = (entries: Entries, at?: number) =>
    after({ kind: "add", to: ["b.csv"], entries, ...(at === undefined ? {} : { at }) });
  expect(add({ "Damp (g)": "12,1", bag: "Cedar; old" })).toBe(`${csv}"Cedar; old";12,1;\r\n`);
  expect(add({ bag: "Cedar" }, 0)).toBe(csv.replace("Alder", "Cedar;;\r\nAlder"));
  expect(add({ bog: "Cedar" })).toBe("log/edit-unknown-column");
  expect(add({ bag: "" })).toBe("log/edit-changes-more");
  expect(after({ kind: "remove", path: ["b.csv", 0] })).toBe(csv.replace('Alder;12,5;"a;b"\r\n', ""));
  expect(after({ kind: "remove", path: ["b.csv", 1] })).toBe(csv.replace("Birch;13;\r\n", ""));
  expect(after({ kind: "remove", path: ["b.csv", 1, "damp (g)"] })).toBe(csv.replace("Birch;13", "Birch;"));
  expect(after({ kind: "remove", path: ["b.csv", 2] })).toBe("log/edit-no-row");
  for (const at of [0, 1, 2]) {
    const now = add({ bag: "Cedar" }, at);
    const back = [texts[0]!, { name: "b.csv", text: now }];
    expect(after({ kind: "remove", path: ["b.csv", at] }, back)).toBe(csv);
  }
});

test("a new figure takes no quotes over that its neighbour could not do without", () => {
  const text = 'batches:\n  W1:\n    moisture: { damp: "150,2 g", dry: "144.0 g" }\n';
  expect(
    edited(text, {
      kind: "add",
      to: ["batches"],
      name: "W2",
      entries: { "moisture/damp": "151.0 g", "moisture/dry": "145.1 g" },
    }),
  ).toBe(`${text}  W2:\n    moisture: { damp: 151.0 g, dry: "145.1 g" }\n`);
});
