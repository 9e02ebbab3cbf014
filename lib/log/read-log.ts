// The founder's log, from its text to figures with places.

import { type Checked, type Issue, invariant } from "../issue.ts";
import { checkDepth, checkText } from "./check-text.ts";
import type { Files } from "./csv-file.ts";
import { evenTabs } from "./even-tabs.ts";
import { inFileOrder, reportTo } from "./issue-list.ts";
import { readSource } from "./read-source.ts";
import { type ReadingMemory, readingMemory } from "./reading-memory.ts";
import { relocated } from "./relocated.ts";
import { sourceOf } from "./source.ts";
import type { Log } from "./types.ts";

export interface ReadLogOptions {
  /** Of the file, for places: "my-sands.yaml". */
  readonly name: string;
  /** Texts of the CSV files beside the log, by name; filesNamedIn tells which. */
  readonly files?: Files;
}

/**
 * Reads a log (YAML, format 1). Pure: CSV files beside the log are handed in.
 *
 * Everything that is wrong becomes an issue with file, line, column and remedy; a fault in one sand leaves the others.
 * No value: the text is no log at all, or one of a newer format. Throws only where the text is not a string.
 *
 *     const { value, issues } = readLog(text, { name: "my-sands.yaml" });
 *     value?.sands[0]?.sievings[0]?.retained[0]?.mass.value   // 0.15
 */
export function readLog(text: string, options: ReadLogOptions): Checked<Log> {
  return readWith(text, options);
}

/** readLog for one text after the other, each an edit of the one before: what did not change is not read again. */
export function logReader(memory: ReadingMemory = readingMemory()): typeof readLog {
  return (text, options) => readWith(text, options, memory);
}

function readWith(text: string, options: ReadLogOptions, memory?: ReadingMemory): Checked<Log> {
  invariant(typeof text === "string", "readLog reads a text, not a file name's bytes or an object.");
  const { name, files = {} } = options;
  const typed = sourceOf(name, text);
  const issues: Issue[] = [];

  // 1. Is it text, of a size and depth that can be read?
  const aboutFile = reportTo(issues, () => undefined);
  if (!checkText(typed, aboutFile) || !checkDepth(typed, aboutFile)) return { issues };

  // 2. Tabs become spaces, so that nothing below has to know of them; 3. the log is read from that.
  const { source, complaints, asTyped } = evenTabs(typed);
  const log = readSource({ source, typed, files, complaints, memory }, issues);

  // 4. Places as typed, one list of issues in file order.
  const even = source === typed;
  const value = log && frozen(even ? log : relocated(log, asTyped));
  const placed = even ? issues : relocated(issues, asTyped);
  return { ...(value ? { value } : {}), issues: inFileOrder(placed, name) };
}

function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) frozen(part);
  }
  return value;
}
