// Which CSV files a log refers to, so that whoever has the disk can fetch them.

import { checkDepth, checkText } from "./check-text.ts";
import { type Files, isFileName } from "./csv-file.ts";
import { evenTabs } from "./even-tabs.ts";
import { type LogNode, plainName } from "./node.ts";
import { parseLog } from "./parse-log.ts";
import { sandBlocks } from "./sand-blocks.ts";
import { sourceOf } from "./source.ts";
import type { LogText } from "./types.ts";

/**
 * Names of the CSV files that the log's sands, batches and sheets refer to, each once; only names that stand beside
 * the log (no folder in them). A text that is no log names none. What is wrong is left to readLog to say.
 *
 *     filesNamedIn("sands:\n  Silver sand:\n    sievings file: sievings.csv\n")   // ["sievings.csv"]
 */
export function filesNamedIn(text: string): string[] {
  const source = sourceOf("", text);
  const quiet = () => undefined;
  if (!checkText(source, quiet) || !checkDepth(source, quiet)) return [];
  const even = evenTabs(source).source;
  return namesIn(parseLog(even, sandBlocks(even)).root);
}

/** Names and texts of the files that were handed in and are referred to. */
export function filesUsed(root: LogNode, files: Files): LogText[] {
  return namesIn(root).flatMap((name) =>
    Object.hasOwn(files, name) ? [{ name, text: files[name] ?? "" }] : [],
  );
}

function namesIn(root: LogNode): string[] {
  const ofSands = valuesOf(root, "sands").flatMap((sands) =>
    sands.kind === "map" ? sands.entries.flatMap((sand) => valuesOf(sand.value, "sievings file")) : [],
  );
  const ofSheets = valuesOf(root, "sheets").flatMap((sheets) =>
    sheets.kind === "map" ? sheets.entries.flatMap((sheet) => valuesOf(sheet.value, "rows")) : [],
  );
  const names = [...ofSands, ...valuesOf(root, "batches file"), ...ofSheets];
  const texts = names.flatMap((name) => (name.kind === "text" ? [name.text.trim()] : []));
  return [...new Set(texts)].filter(isFileName);
}

function valuesOf(node: LogNode, key: string): LogNode[] {
  if (node.kind !== "map") return [];
  return node.entries.flatMap((entry) => (plainName(entry.key) === key ? [entry.value] : []));
}
