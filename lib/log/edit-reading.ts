// A log's text as the reader sees it, with places as typed: what an edit finds its way in, and is checked by.

import { checkDepth, checkText } from "./check-text.ts";
import { evenTabs } from "./even-tabs.ts";
import type { LogNode } from "./node.ts";
import { parseLog } from "./parse-log.ts";
import type { PieceMemory } from "./parse-pieces.ts";
import { relocated } from "./relocated.ts";
import { sandBlocks } from "./sand-blocks.ts";
import { sourceOf } from "./source.ts";

export interface Reading {
  readonly text: string;
  readonly root: LogNode;
  /** Codes of what is wrong with the writing, each as often as it is said. */
  readonly codes: readonly string[];
}

/** Undefined where the text is none that can be read. memory: of the text before an edit. */
export function readingOf(name: string, text: string, memory?: PieceMemory): Reading | undefined {
  const typed = sourceOf(name, text);
  const codes: string[] = [];
  const report = ({ code }: { readonly code: string }) => codes.push(code);
  if (!checkText(typed, report) || !checkDepth(typed, report)) return undefined;
  const { source, complaints, asTyped } = evenTabs(typed);
  const parsed = parseLog(source, sandBlocks(source), memory);
  for (const { complaint } of [...complaints, ...parsed.complaints]) report(complaint);
  return { text, root: source === typed ? parsed.root : relocated(parsed.root, asTyped), codes };
}

/** True where the second has nothing wrong that the first has not. */
export function noWorse(before: Reading, after: Reading): boolean {
  const left = [...before.codes];
  return after.codes.every((code) => {
    const at = left.indexOf(code);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
}
