// Which lines belong to which sand, batch or sheet, told from indentation alone, so that a fault can be kept to it.

import { logKeys } from "./log-keys.ts";
import { plainName } from "./node.ts";
import { indentOf, lineText, type Source } from "./source.ts";

export interface SandBlock {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

/** The blocks under `sands:`, `batches:` and `sheets:`; none where the log is written in another way (brackets, say). */
export function sandBlocks(source: Source): SandBlock[] {
  const blocks: SandBlock[] = [];
  let inside = false;
  let indent: number | undefined;
  let open: { name: string; start: number } | undefined;
  /** Where the fields of the open block stand. */
  let body = 0;
  const close = (end: number) => {
    if (open) blocks.push({ ...open, end });
    open = undefined;
  };
  source.lineStarts.forEach((start, index) => {
    const line = lineText(source, index)
      .replace(/^\uFEFF/, "")
      .slice(0, 400);
    if (/^\s*(#.*)?$/.test(line)) return;
    const depth = indentOf(line);
    // Only a name that a log knows ends the sands: a row that slipped to the left margin doesn't.
    // An odd space in front of it makes no row of it.
    const top = depth < (indent ?? 1) ? plainName(/^([^:]*):/.exec(line)?.[1] ?? "") : undefined;
    if (logKeys.some((key) => key === top) || /^(---|\.\.\.)/.test(line)) {
      close(start);
      inside = /^\s*(sands|batches|sheets)\s*:\s*(#.*)?$/i.test(line);
      indent = undefined;
    } else if (inside && depth > 0) {
      indent ??= depth;
      if (open && body === 0) body = depth;
      // A name by itself that slipped by a space, with fields below it that stand as those of the name above do.
      const slipped =
        Math.abs(depth - indent) === 1 &&
        depth < body &&
        /^[^-].*:\s*(#.*)?$/.test(line.trim()) &&
        nextIndent(source, index) === body;
      const key =
        depth === indent || slipped
          ? /^\s*["']?(.*?)["']?\s*:(?:\s*|\s+[{&*].*|\s+#.*)$/.exec(line)?.[1]
          : undefined;
      if (key === undefined) return;
      close(start);
      open = { name: key, start };
      body = 0;
    }
  });
  close(source.text.length);
  return blocks;
}

function nextIndent(source: Source, index: number): number | undefined {
  for (let at = index + 1; at < source.lineStarts.length; at++) {
    const line = lineText(source, at);
    if (!/^\s*(#.*)?$/.test(line)) return indentOf(line);
  }
  return undefined;
}

export function blockAt(blocks: readonly SandBlock[], offset: number | undefined): SandBlock | undefined {
  if (offset === undefined) return undefined;
  // They stand in the log's order and don't overlap; a long log asks this of every batch.
  let [low, high] = [0, blocks.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (blocks[middle]!.start <= offset) low = middle + 1;
    else high = middle;
  }
  const last = blocks[low - 1];
  return last && offset < last.end ? last : undefined;
}
