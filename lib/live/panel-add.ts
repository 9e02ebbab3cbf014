// New lines and new named entries: a batch like the last one, a line that a section lacks.

import type { LogPath } from "../log/edit-types.ts";
import type { OutlineNode } from "../log/outline-node.ts";
import { type Bench, fewWords, issueWords } from "./edit-bench.ts";
import { button, h, setText } from "./edit-dom.ts";
import { forValuesBelow, pathKey } from "./edit-places.ts";
import { entryName } from "./edit-words.ts";
import { entryFields } from "./panel-entry.ts";
import { freshId } from "./panel-field.ts";
import type { Folds } from "./panel-folds.ts";

/** A form for one more entry, with the fields of the last. */
export function entryForm(
  bench: Bench,
  folds: Folds,
  path: LogPath,
  label: string,
  entries: readonly OutlineNode[],
): HTMLElement {
  const last = entries.at(-1)!;
  const asked = entryFields(entries);
  // Beside the name, where the focus goes: below the last field nobody would see it.
  const told = toldLine();
  // Items of a list have no names.
  const named = typeof last.path.at(-1) === "string";
  const name = field("name", "", `new name ${pathKey(path)}`, `after ${last.label}`, undefined, told);
  const fields = asked.map(({ keys, name, last, from, preset, repeated }) =>
    field(
      keys.join(", "),
      preset,
      `new ${name} ${pathKey(path)}`,
      last === "" ? "" : `${named ? `in ${from}` : "before"}: ${last}`,
      repeated ? { text: last, says: named ? `as in ${from}` : "as before" } : undefined,
    ),
  );
  const add = (): void => {
    const entered = asked.flatMap((one, k) => {
      const text = fields[k]!.input.value.trim();
      return text === "" ? [] : [{ ...one, text }];
    });
    // A test of which nothing was read is not done: its method and rig alone say nothing.
    const kept = entered.filter(
      ({ keys: [group, ...rest] }) =>
        rest.length === 0 ||
        entered.some(({ keys, reading }) => keys[0] === group && keys.length > 1 && reading),
    );
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
      {
        kind: "add",
        to: path,
        entries: Object.fromEntries(kept.map(({ name, text }) => [name, text])),
        ...(named ? { name: called } : {}),
      },
    ]);
    const key = named ? called : entries.length;
    if (bench.session.texts !== before) {
      bench.say(`${named ? called : "A row"} added to ${label}. ${fewWords(issues)}`);
      const faulty = faultBelow(bench, [...path, key]);
      // Where nothing is to be mended it stays folded, so that the form for the next one is at hand.
      if (faulty) bench.openLog(faulty);
      else bench.openLog([...path, key], true);
      return;
    }
    for (const [k, input] of typed.entries()) input.value = values[k]!;
    wrong(issues.map(issueWords).join(" "), name.input);
  };
  const wrong = (text: string, at: HTMLElement): void => {
    setText(told, text);
    told.hidden = false;
    at.focus({ preventScroll: true });
    told.scrollIntoView({ block: "center" });
  };
  return form(
    folds,
    `Add another to ${label}`,
    `entry ${pathKey(path)}`,
    [...(named ? [name.line] : [told]), ...fields.map(({ line }) => line)],
    add,
  );
}

/** Where something is to be mended in what was added: it may lie in a fold that would stay closed. */
function faultBelow(bench: Bench, path: LogPath): LogPath | undefined {
  // By what holds it: entries that are all alike are rows of a table, and a row is no node.
  const holder = bench.places().get(path.slice(0, -1));
  const faulty: LogPath[] = [];
  if (holder)
    forValuesBelow(holder, (value) => {
      if (!path.every((part, i) => part === value.path[i])) return;
      if (bench.issuesAt(value).some(({ severity }) => severity !== "note")) faulty.push(value.path);
    });
  return faulty[0];
}

/** A form for a line with a name and a value. */
export function lineForm(bench: Bench, folds: Folds, path: LogPath, what: string): HTMLElement {
  const told = toldLine();
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

const toldLine = (): HTMLElement =>
  h("p", { id: freshId(), class: "live-told live-fault", role: "alert", hidden: true });

/** again: what was written twice running, to be written once more with one press while the field is empty. */
function field(
  label: string,
  text: string,
  key: string,
  placeholder: string,
  again?: { readonly text: string; readonly says: string },
  told?: HTMLElement,
) {
  const input = h("input", {
    id: freshId(),
    type: "text",
    value: text,
    // Never empty: what is shown beside an empty field goes by whether this is seen.
    placeholder: placeholder === "" ? " " : placeholder,
    "data-key": key,
    "aria-describedby": told?.id,
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
  });
  const repeat =
    again &&
    button(
      again.says,
      () => {
        input.value = again.text;
        input.focus({ preventScroll: true });
      },
      { "aria-label": `${label} ${again.says}: ${again.text}` },
    );
  const field = repeat ? h("div", { class: "live-again" }, input, repeat) : input;
  return { input, line: h("div", { class: "live-line" }, h("label", { for: input.id }, label), field, told) };
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
        if (event.key !== "Enter" || event.isComposing || !(event.target instanceof HTMLInputElement)) return;
        event.preventDefault();
        // From field to field: after the first one, nobody means the entry to be whole.
        const inputs = [...fold.querySelectorAll("input")];
        const next = inputs[inputs.indexOf(event.target) + 1];
        if (next) next.focus();
        else add();
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
