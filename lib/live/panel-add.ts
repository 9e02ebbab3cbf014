// New lines and new named entries: a batch like the last one, a line that a section lacks.

import type { LogPath } from "../log/edit-types.ts";
import type { OutlineNode } from "../log/outline-node.ts";
import { type Bench, issueWords } from "./edit-bench.ts";
import { button, h, setText } from "./edit-dom.ts";
import { forValuesBelow, pathKey } from "./edit-places.ts";
import { entryName } from "./edit-words.ts";
import { freshId } from "./panel-field.ts";
import type { Folds } from "./panel-folds.ts";

type Group = Extract<OutlineNode, { kind: "group" }>;

interface Leaf {
  readonly keys: readonly string[];
  readonly text: string;
}

/** Names of the values below, without the numbers of repeats: the first of several stands for them. */
function leavesOf(node: OutlineNode, above: readonly string[] = []): Leaf[] {
  if (node.kind === "value") return [{ keys: above, text: node.text }];
  const parts =
    node.kind === "group" ? node.parts : (node.rows[0] ?? []).filter((cell) => cell !== undefined);
  return parts.flatMap((part) => {
    const key = part.path.at(-1);
    return leavesOf(part, typeof key === "number" ? above : [...above, key ?? ""]);
  });
}

/** What names a thing rather than measures it is taken over from the last entry; figures and days are asked for. */
const isTakenOver = (text: string): boolean => text !== "" && !/^[-+\d.]/.test(text);

/** A form for one more entry, with the fields of the last. */
export function entryForm(
  bench: Bench,
  folds: Folds,
  path: LogPath,
  label: string,
  entries: readonly Group[],
): HTMLElement {
  const last = entries.at(-1)!;
  const seen = new Set<string>();
  const leaves = leavesOf(last).filter(({ keys }) => {
    const name = entryName(keys);
    return name !== "" && !seen.has(name) && seen.add(name);
  });
  const told = h("p", { class: "live-told live-fault", role: "alert", hidden: true });
  // Items of a list have no names.
  const named = typeof last.path.at(-1) === "string";
  const name = field("name", "", `new name ${pathKey(path)}`, `after ${last.label}`);
  const fields = leaves.map(({ keys, text }) =>
    field(keys.join(", "), isTakenOver(text) ? text : "", `new ${entryName(keys)} ${pathKey(path)}`, text),
  );
  const add = (): void => {
    const entered = Object.fromEntries(
      leaves.flatMap(({ keys }, k) => {
        const text = fields[k]!.input.value.trim();
        return text === "" ? [] : [[entryName(keys), text]];
      }),
    );
    // A test of which nothing was read is not done: its method and rig alone say nothing.
    const kept = Object.entries(entered).filter(([key]) => {
      const [group, ...rest] = key.split("/");
      return (
        rest.length === 0 ||
        leaves.some(({ keys, text }) => {
          const own = entryName(keys);
          return own.startsWith(`${group}/`) && !isTakenOver(text) && entered[own] !== undefined;
        })
      );
    });
    const called = name.input.value.trim();
    if (named && called === "") {
      wrong("Give it a name first.", name.input);
      return;
    }
    const before = bench.session.texts;
    const typed = [name, ...fields].map(({ input }) => input);
    const values = typed.map(({ value }) => value);
    for (const input of typed) input.value = input.defaultValue;
    const issues = bench.apply([
      { kind: "add", to: path, entries: Object.fromEntries(kept), ...(named ? { name: called } : {}) },
    ]);
    const key = named ? called : entries.length;
    if (bench.session.texts !== before) {
      bench.say(`${named ? called : "A row"} added to ${label}. ${issues.map(issueWords).join(" ")}`);
      bench.openLog(faultBelow(bench, [...path, key]) ?? [...path, key]);
      return;
    }
    for (const [k, input] of typed.entries()) input.value = values[k]!;
    wrong(issues.map(issueWords).join(" "), name.input);
  };
  const wrong = (text: string, at: HTMLElement): void => {
    setText(told, text);
    told.hidden = false;
    at.focus();
  };
  return form(
    folds,
    `Add another to ${label}`,
    `entry ${pathKey(path)}`,
    [...(named ? [name.line] : []), ...fields.map(({ line }) => line), told],
    add,
  );
}

/** Where something is to be mended in what was added: it may lie in a fold that would stay closed. */
function faultBelow(bench: Bench, path: LogPath): LogPath | undefined {
  const node = bench.places().get(path);
  const faulty: LogPath[] = [];
  if (node)
    forValuesBelow(node, (value) => {
      if (bench.issuesAt(value).some(({ severity }) => severity !== "note")) faulty.push(value.path);
    });
  return faulty[0];
}

/** A form for a line with a name and a value. */
export function lineForm(bench: Bench, folds: Folds, path: LogPath, what: string): HTMLElement {
  const told = h("p", { class: "live-told live-fault", role: "alert", hidden: true });
  const name = field("name", "", `line name ${pathKey(path)}`, "as in the log");
  const value = field("value", "", `line value ${pathKey(path)}`, "");
  const add = (): void => {
    const [key, text] = [name.input.value.trim(), value.input.value.trim()];
    if (key === "") return void name.input.focus();
    const before = bench.session.texts;
    [name.input.value, value.input.value] = ["", ""];
    const issues = bench
      .apply([{ kind: "add", to: path, entries: { [entryName([key])]: text } }])
      .filter(({ severity }) => severity !== "note");
    if (bench.session.texts === before) [name.input.value, value.input.value] = [key, text];
    const wrong = issues.map(issueWords).join(" ");
    setText(told, wrong);
    told.hidden = issues.length === 0;
    bench.say(wrong || `${key}: ${text} added.`);
  };
  return form(folds, `Add ${what}`, `line ${pathKey(path)}`, [name.line, value.line, told], add);
}

function field(label: string, text: string, key: string, placeholder: string) {
  const input = h("input", {
    id: freshId(),
    type: "text",
    value: text,
    placeholder,
    "data-key": key,
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
  });
  return { input, line: h("div", { class: "live-line" }, h("label", { for: input.id }, label), input) };
}

function form(
  folds: Folds,
  says: string,
  key: string,
  lines: readonly HTMLElement[],
  add: () => void,
): HTMLElement {
  const fold = h(
    "details",
    {
      class: "live-form",
      open: folds.open.has(key),
      ontoggle: () => {
        if (fold.open) folds.open.add(key);
        else folds.open.delete(key);
      },
      onkeydown: (event: KeyboardEvent) => {
        if (event.key !== "Enter" || !(event.target instanceof HTMLInputElement)) return;
        event.preventDefault();
        add();
      },
    },
    h("summary", { "data-key": key }, says),
    h(
      "div",
      { class: "live-inside" },
      ...lines,
      h("p", { class: "live-actions" }, button("Add it", add, { "data-key": `do ${key}` })),
    ),
  );
  return fold;
}
