// Edits of any log by any text: bytes around the change stay, what was written is read, and nothing throws.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { editLog } from "../../lib/log/edit.ts";
import { abridged } from "../../lib/log/edit-abridge.ts";
import type { LogEdit, LogPath } from "../../lib/log/edit-types.ts";
import { filesNamedIn } from "../../lib/log/files-named.ts";
import { logOutline } from "../../lib/log/outline.ts";
import type { OutlineNode } from "../../lib/log/outline-node.ts";
import type { LogText } from "../../lib/log/types.ts";

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

const demos = readdirSync(demo, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".yaml"))
  .map((file): readonly LogText[] => {
    const path = join(demo, file);
    const text = readFileSync(path, "utf8");
    const beside = filesNamedIn(text).map((one) => ({
      name: one,
      text: readFileSync(join(path, "..", one), "utf8"),
    }));
    return [{ name, text }, ...beside];
  });

/** Signs that mean something to YAML, to CSV or to the reader, among letters and any others. */
const typed = fc.oneof(
  fc.constantFrom(
    "12.4 ± 0.1 g",
    "",
    "yes",
    "null",
    "0,15",
    "max(a, b)",
    "a: b",
    "# 40",
    "- x",
    "a\nb\n",
    "'",
    '"',
  ),
  fc.string({
    unit: fc.constantFrom(..."ab1 :#,-[]{}()&*!|>'\"%@`?~\\\n\t.=“”’é±\u00A0".split("")),
    maxLength: 12,
  }),
  fc.string({ unit: "binary", maxLength: 12 }),
);
const lineEnds = fc.constantFrom("\n", "\r\n", "\r");

/** A log of random depth and form: blocks, brackets, quotes, comments, blank lines, empty values. */
const scalar = fc.constantFrom(
  "1",
  "2.50 g",
  '"a: b"',
  "'it''s'",
  "",
  "x y",
  "max(a, b)",
  "|\n        two\n        lines",
);
const flowScalar = fc.constantFrom("1", "2.50 g", '"a, b"', "'q'", "x y");
const keys = fc.uniqueArray(fc.constantFrom("a", "b c", "No. 40", '"#40"', "damp", "pan"), {
  minLength: 1,
  maxLength: 4,
});
const flowMap = fc
  .tuple(keys, fc.array(flowScalar, { minLength: 4, maxLength: 4 }), fc.constantFrom(" ", ""))
  .map(([names, texts, pad]) => `{${pad}${names.map((key, k) => `${key}: ${texts[k]}`).join(", ")}${pad}}`);
const noise = fc.constantFrom("", "", "", "  # said", "\n", "\n    # between");
const blockMap = fc
  .tuple(
    keys,
    fc.array(fc.oneof(scalar, flowMap), { minLength: 4, maxLength: 4 }),
    fc.array(noise, { minLength: 4, maxLength: 4 }),
  )
  .map(([names, texts, ends]) =>
    names.map((key, k) => `    ${key}: ${texts[k]}${texts[k]!.includes("|") ? "" : ends[k]}`).join("\n"),
  );
const blockList = fc
  .array(fc.oneof(flowMap, flowScalar), { minLength: 1, maxLength: 4 })
  .map((items) => items.map((item) => `    - ${item}`).join("\n"));
const section = fc.oneof(blockMap, blockList).map((body) => `\n${body}`);
const generated = fc
  .tuple(
    fc.array(
      fc.oneof(
        section,
        flowMap.map((map) => ` ${map}`),
      ),
      { minLength: 1, maxLength: 4 },
    ),
    lineEnds,
    fc.boolean(),
  )
  .map(([sections, eol, final]): readonly LogText[] => {
    const text = `# top\n${sections.map((body, k) => `s${k}:${body}`).join("\n")}${final ? "\n" : ""}`;
    return [{ name, text: text.replaceAll("\n", eol) }];
  });
const anyLog = fc.oneof(fc.constantFrom(...demos), generated);

const options = { seed: 20260711, numRuns: 60 } as const;

test("a value written: bytes around it stay, it reads back, and written back it is as it was", () => {
  let done = 0;
  let undone = 0;
  fc.assert(
    fc.property(anyLog, fc.nat(), typed, (texts, pick, text) => {
      const all = values(logOutline(texts));
      const value = all[pick % all.length];
      if (!value) return;
      const index = texts.findIndex((one) => one.name === value.place.file);
      const old = texts[index]!.text;
      const { texts: now, changed, issues } = editLog(texts, { kind: "write", at: value.place, text });
      if (!now) {
        expect(issues[0]?.code).toMatch(/^log\/edit-/);
        // A log takes any text; a row of a CSV file cannot be left empty, nor hold controls.
        expect(index).toBeGreaterThan(0);
        return;
      }
      done += 1;
      const edited = now[index]!.text;
      const { offset = 0, length = 0 } = value.place;
      if (length > 0) expect(edited.startsWith(old.slice(0, offset))).toBe(true);
      expect(edited.endsWith(old.slice(offset + length))).toBe(true);
      expect(now.filter((_, k) => k !== index)).toEqual(texts.filter((_, k) => k !== index));
      const again = values(logOutline(now));
      const wanted = index === 0 ? text : text.trim();
      expect(again.map((one) => one.text)).toEqual(all.map((one) => (one === value ? wanted : one.text)));
      // The same bytes come back where quotes were neither put nor taken.
      const quote = (place: typeof changed, from: string) => from[place?.offset ?? 0]?.match(/["'|>]/)?.[0];
      if (length === 0 || text === "" || quote(value.place, old) !== quote(changed, edited)) return;
      if (
        /["'|>]/.test(old[offset] ?? "") &&
        index === 0 &&
        /\\|[|>]/.test(old.slice(offset, offset + length))
      )
        return;
      const at = again[all.indexOf(value)]!.place;
      const back = editLog(now, { kind: "write", at, text: value.text });
      // Quotes that the text between could not do without went with it.
      const bare = `${old.slice(0, offset)}${value.text}${old.slice(offset + length)}`;
      expect(/["']/.test(old[offset] ?? "") ? [old, bare] : [old]).toContain(back.texts?.[index]?.text);
      undone += 1;
    }),
    options,
  );
  expect(done).toBeGreaterThan(45);
  expect(undone).toBeGreaterThan(12);
});

type Holder = OutlineNode & { readonly kind: "rows" | "group" };
function holders(nodes: readonly (OutlineNode | undefined)[]): Holder[] {
  return nodes.flatMap((node): Holder[] => {
    if (!node || node.kind === "value") return [];
    return [node, ...holders(node.kind === "group" ? node.parts : node.rows.flat())];
  });
}

test("a row or an entry added and removed again: the very bytes come back", () => {
  let done = 0;
  fc.assert(
    fc.property(anyLog, fc.nat(), fc.nat({ max: 6 }), typed, typed, (texts, pick, at, text, other) => {
      const all = holders(logOutline(texts));
      const holder = all[pick % all.length];
      if (!holder) return;
      const inList = holder.kind === "rows" && !holder.names;
      const columns = holder.kind === "rows" ? holder.columns : ["one", "other"];
      const [first = "one"] = columns;
      const isFile = holder.path.length === 1 && texts.some((one, k) => k > 0 && one.name === holder.path[0]);
      const entries = isFile
        ? { [first]: "x", [columns.at(-1)!]: text }
        : { [first.replaceAll("/", "~1")]: text, zz: other };
      const most = holder.kind === "rows" ? holder.rows.length : holder.parts.length;
      const index = Math.min(at, most);
      const edit: LogEdit = {
        kind: "add",
        to: holder.path,
        entries,
        at: index,
        ...(inList ? {} : { name: "new: one" }),
      };
      const { texts: now, issues } = editLog(texts, edit);
      if (!now) {
        expect(issues.map(({ code }) => code).join()).toMatch(/log\/edit-(name-unwanted|sign|changes-more)/);
        return;
      }
      done += 1;
      const path: LogPath = [...holder.path, inList ? index : "new: one"];
      const back = editLog(now, { kind: "remove", path });
      expect(back.issues).toEqual([]);
      expect(back.texts).toEqual(texts);
    }),
    options,
  );
  expect(done).toBeGreaterThan(35);
});

test("no text, place or path makes it throw, and a refusal says why", () => {
  const broken = fc.tuple(fc.constantFrom(...demos), fc.nat(), typed).map(([texts, at, text]) => {
    const log = texts[0]!.text;
    const cut = at % log.length;
    return [{ name, text: log.slice(0, cut) + text + log.slice(cut + 3) }, ...texts.slice(1)];
  });
  const any = fc.string({ unit: "binary", maxLength: 60 }).map((text) => [{ name, text }]);
  fc.assert(
    fc.property(
      fc.oneof(broken, any, generated),
      fc.nat(),
      fc.nat(),
      typed,
      typed,
      (texts, pick, offset, text, key) => {
        const all = values(logOutline(texts));
        const value = all[pick % Math.max(1, all.length)];
        const log = texts[0]!.text;
        const edits: LogEdit[] = [
          { kind: "write", at: { file: name, offset: offset % (log.length + 1) }, text },
          { kind: "add", to: value?.path.slice(0, -1) ?? [], entries: { [key]: text } },
          { kind: "remove", path: value?.path ?? [] },
          ...(value ? [{ kind: "write", at: value.place, text } as const] : []),
        ];
        for (const edit of edits) {
          const result = editLog(texts, edit);
          if (result.texts) continue;
          expect(result.issues.length).toBe(1);
          expect(result.issues[0]).toMatchObject({ severity: "error", remedy: expect.any(String) });
        }
      },
    ),
    { ...options, numRuns: 20 },
  );
});

/** Two hundred batches of the demo trial, long enough to be read in part. */
const trial = demos.find(([log]) => log!.text.includes("title: Seven waters"))![0]!.text;
const [head, one] = [
  trial.slice(0, trial.indexOf("  W1:")),
  trial.slice(trial.indexOf("  W1:"), trial.indexOf("  W2:")),
];
const long =
  head +
  Array.from({ length: 60 }, (_, k) => one.replace("W1:", `B${k}:${k % 7 === 0 ? "   # wet" : ""}`)).join(
    "\n",
  );

test("in a long log, of which only a part is read, edits come to the same as in a short one", () => {
  const tail = "\n\nmetal again:\n  note: end\n";
  const at = (from: number) => long.indexOf("  B41:") + from;
  const block = long.slice(at(0), long.indexOf("  B42:"));
  // The same entries in a log so short that it is read whole.
  const near = ["  B39:", "  B40:", "  B41:", "  B42:"].map((label) => long.indexOf(label));
  const short = head + long.slice(near[0], long.indexOf("  B43:")) + tail;
  const whole = long + tail;
  expect([short.length < 20_000, whole.length > 40_000]).toEqual([true, true]);
  const edits: ((text: string) => LogEdit)[] = [
    (text) => ({
      kind: "write",
      at: { file: name, offset: text.indexOf("  B41:") + block.indexOf("148.5 g"), length: 7 },
      text: "a: b",
    }),
    (text) => ({
      kind: "write",
      at: { file: name, offset: text.indexOf("  B41:") + 2, length: 3 },
      text: "wet one",
    }),
    () => ({ kind: "remove", path: ["batches", "B41"] }),
    () => ({ kind: "remove", path: ["batches", "B41", "squeeze"] }),
    () => ({ kind: "remove", path: ["batches", "B41", "green compression", 1] }),
    () => ({ kind: "add", to: ["batches", "B41"], entries: { note: "x" } }),
    () => ({ kind: "add", to: ["batches", "B41", "green compression"], entries: { load: "3 kg" }, at: 1 }),
    (text) => ({
      kind: "add",
      to: ["batches"],
      name: "new",
      entries: { date: "2026-01-01", "moisture/damp": "1 g" },
      at: text === short ? 2 : 41,
    }),
    () => ({ kind: "remove", path: ["metal again", "note"] }),
  ];
  const rest = [whole.slice(0, near[0]), whole.slice(long.indexOf("  B43:"), long.length)];
  for (const edit of edits) {
    const [inShort, inWhole] = [short, whole].map((text) => editLog([{ name, text }], edit(text)));
    const expected = inShort!.texts![0]!.text.slice(head.length);
    const cut =
      expected.indexOf(tail.slice(0, 10)) < 0 ? expected.length : expected.indexOf(tail.slice(0, 10));
    expect(inWhole!.texts![0]!.text).toBe(rest[0] + expected.slice(0, cut) + rest[1] + expected.slice(cut));
  }
  const taken = editLog([{ name, text: whole }], { kind: "add", to: ["batches"], name: "b3", entries: {} });
  expect(taken.issues[0]?.code).toBe("log/edit-name-taken");
  const rename = editLog([{ name, text: whole }], {
    kind: "write",
    at: { file: name, offset: at(2), length: 3 },
    text: "b3",
  });
  expect(rename.issues[0]?.code).toBe("log/edit-name-taken");
});

test("an edit of a long log reads a small part of it", () => {
  const text = head + Array.from({ length: 300 }, (_, k) => one.replace("W1:", `B${k}:`)).join("");
  const offset = text.indexOf("148.5 g", text.indexOf("  B222:"));
  const edit: LogEdit = { kind: "write", at: { file: name, offset, length: 7 }, text: "148.4 g" };
  const short = abridged(name, text, edit)!;
  expect(short.text.length).toBeLessThan(text.length / 50);
  expect(editLog([{ name, text }], edit).texts?.[0]?.text).toBe(
    `${text.slice(0, offset)}148.4 g${text.slice(offset + 7)}`,
  );
});
