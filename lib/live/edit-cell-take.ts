// What is typed at a cell goes into the log, with what is wrong said beneath it; and a faulty text out of it again.

import type { LogPath } from "../log/edit-types.ts";
import { type Bench, issueWords } from "./edit-bench.ts";
import { setText } from "./edit-dom.ts";
import { pathWords } from "./edit-words.ts";
import type { Session } from "./session.ts";

export interface CellField {
  readonly cell: Element;
  readonly path: LogPath;
  readonly input: HTMLInputElement;
  readonly note: HTMLElement;
  /** A text that was taken and found faulty: Enter once more leaves it. */
  faulty?: { readonly was: string; readonly texts: Session["texts"] };
}

/**
 * True when the field has done its work: the text is as it was, or stands in the log.
 * stillOpen: writing puts the page together anew, and may close the field. fault: marks a cell whose text is faulty.
 */
export function takeTyped(
  bench: Bench,
  field: CellField,
  stillOpen: () => boolean,
  fault: (cell: Element, path: LogPath) => void,
): boolean {
  const { path, input } = field;
  const text = input.value.trim();
  const node = bench.places().get(path);
  if (node?.kind !== "value" || text === node.text) {
    if (field.faulty !== undefined) fault(field.cell, path);
    return true;
  }
  const was = takeBack(bench, field, node.text);
  if (text === was) return true;
  const before = bench.session.texts;
  const issues = bench
    .write(path, text)
    .filter(({ severity }) => severity === "error" || severity === "warning");
  const taken = bench.session.texts !== before;
  if (issues.length === 0 && taken) {
    bench.say(`${pathWords(path)}: ${text === "" ? "nothing" : text}.`);
    return true;
  }
  if (!stillOpen()) return false;
  if (taken) {
    field.faulty = { was, texts: bench.session.texts };
    fault(field.cell, path);
  }
  const said = issues.map(issueWords).join(" ") || "This cannot be written here.";
  sayFault(field, `${said}${taken ? " It stands in the log as typed; Leave it takes it out again." : ""}`);
  return false;
}

/** The faulty text out of the log again, however often another was tried; what stands there then. */
export function takeBack(bench: Bench, field: CellField, text: string): string {
  const { path, faulty } = field;
  if (faulty === undefined) return text;
  delete field.faulty;
  // Something else may have changed the log meanwhile: that stays.
  if (bench.session.texts === faulty.texts) bench.session.undo();
  else bench.write(path, faulty.was);
  return faulty.was;
}

function sayFault({ note, input }: CellField, text: string): void {
  setText(note, text);
  note.classList.add("live-fault");
  note.setAttribute("role", "alert");
  input.setAttribute("aria-invalid", "true");
}
