// One value of the log as a field: taken with Enter or on leaving it, left with Escape; what is wrong stands below.

import type { LogPath } from "../log/edit-types.ts";
import type { OutlineNode } from "../log/outline-node.ts";
import { type Bench, fewWords, issueWords } from "./edit-bench.ts";
import { button, byFinger, h, setText } from "./edit-dom.ts";
import { pathKey } from "./edit-places.ts";
import { trySpan } from "./edit-span.ts";
import { tryControl } from "./edit-try.ts";
import { pathWords } from "./edit-words.ts";

type ValueNode = Extract<OutlineNode, { kind: "value" }>;

let ids = 0;
export const freshId = (): string => `live-${ids++}`;

export interface FieldParts {
  readonly input: HTMLInputElement;
  /** What is wrong, what it was; hidden where there is nothing to tell. */
  readonly told: HTMLElement;
}

/** The input alone, for a cell of a table or a line of its own. */
export function valueField(bench: Bench, node: ValueNode, label?: string): FieldParts {
  const id = freshId();
  const told = toldOf(bench, node, `${id}-told`);
  const wrong = told.classList.contains("live-fault");
  const input = h("input", {
    id,
    type: "text",
    value: node.text,
    "data-key": pathKey(node.path),
    "aria-label": label,
    "aria-invalid": wrong ? "true" : undefined,
    "aria-describedby": told.hidden ? undefined : told.id,
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
    enterkeyhint: "done",
    class: bench.changeAt(node.path) ? "live-changed" : undefined,
  });
  if (/^[-+.]?\d/.test(node.text)) selectedByTap(input);
  takesText(input, (text) => {
    if (text === node.text) return;
    const issues = bench.write(node.path, text);
    const now = bench.places().get(node.path);
    if (now?.kind === "value" && now.text === node.text && issues.length > 0) {
      // Refused: the text stays in the field.
      const wrong = issues.map(issueWords).join(" ");
      setText(told, wrong);
      told.hidden = false;
      told.classList.add("live-fault");
      input.setAttribute("aria-invalid", "true");
      input.setAttribute("aria-describedby", told.id);
      bench.say(wrong);
    } else bench.say(fewWords(issues));
  });
  return { input, told };
}

/**
 * A figure is mostly written over: the first tap of a finger takes all of it, the next one sets the caret. It is taken
 * before the focus moves by itself: leaving another field may put the panel together anew, under the finger.
 */
function selectedByTap(input: HTMLInputElement): void {
  input.addEventListener("mousedown", (event) => {
    if (document.activeElement === input || !byFinger()) return;
    event.preventDefault();
    input.focus({ preventScroll: true });
    input.select();
  });
}

/** Enter and leaving the field take its text, Escape puts back what was there. */
export function takesText(input: HTMLInputElement, take: (text: string) => void): void {
  input.addEventListener("change", () => take(input.value.trim()));
  input.addEventListener("keydown", (event) => {
    if (event.isComposing) return;
    if (event.key === "Enter") {
      if (input.value.trim() !== input.defaultValue.trim()) take(input.value.trim());
      event.preventDefault();
    }
    if (event.key === "Escape" && input.value !== input.defaultValue) {
      input.value = input.defaultValue;
      input.select();
      event.preventDefault();
    }
  });
}

function toldOf(bench: Bench, node: ValueNode, id: string): HTMLElement {
  const issues = bench.issuesAt(node).filter(({ severity }) => severity !== "note");
  const was = bench.changeAt(node.path)?.was;
  const tried = bench.tried(node.path);
  const words = [
    ...issues.map(issueWords),
    ...(tried === undefined ? [] : [`What if: ${tried}, not saved.`]),
    ...(was === undefined ? [] : [`Changed; was ${was === "" ? "empty" : was}.`]),
  ].join(" ");
  return h(
    "p",
    { id, hidden: words === "", class: issues.length > 0 ? "live-told live-fault" : "live-told" },
    words,
  );
}

/** A line of the outline: the label, the field, and what can be done with it while the focus is in it. */
export function valueLine(bench: Bench, node: ValueNode): HTMLElement {
  const { input, told } = valueField(bench, node);
  const line = h("div", { class: "live-line" });
  const change = bench.changeAt(node.path);
  const trying = (): void => {
    const control = tryControl(bench, node.path, node.text, () => control?.remove());
    if (!control) return;
    line.append(control);
    control.querySelector<HTMLElement>("[type=range]")?.focus();
  };
  line.append(
    h("label", { for: input.id }, node.label),
    input,
    told,
    h(
      "p",
      { class: "live-actions live-on-focus" },
      trySpan(node.text) !== undefined && button("What if", trying),
      change?.kind === "value" && button("Put back", () => bench.apply(change.back)),
      button("Take the line out", () => removeAt(bench, node.path)),
    ),
  );
  return line;
}

export function removeAt(bench: Bench, path: LogPath): void {
  const wrong = bench.apply([{ kind: "remove", path }]).filter(({ severity }) => severity === "error");
  bench.say(
    wrong.length > 0 ? wrong.map(issueWords).join(" ") : `${pathWords(path)} taken out; Undo brings it back.`,
  );
}
