// Which lines belong to which sand, batch or sheet, told from indentation alone, so that a fault can be kept to it.

import { logKeys, sandKeys, sievingKeys } from "./log-keys.ts";
import { plainName } from "./node.ts";
import { indentOf, isIdle, lineText, nextLine, type Source } from "./source.ts";

export interface SandBlock {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

/** The blocks under `sands:`, `batches:` and `sheets:`; none where the log is written in another way (brackets, say). */
export function sandBlocks(source: Source): SandBlock[] {
  const blocks: SandBlock[] = [];
  /** The section that the lines stand in, if it is one of the three. */
  let inside: string | undefined;
  let indent: number | undefined;
  let open: { name: string; start: number } | undefined;
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
      inside = /^\s*(sands|batches|sheets)\s*:\s*(#.*)?$/i.exec(line)?.[1]?.toLowerCase();
      indent = undefined;
    } else if (inside && depth > 0) {
      indent ??= inside === "sands" ? leastIndent(source, index) : depth;
      // The name of a sand is known by the field below it, wherever it slipped to.
      const isName = depth === indent || (inside === "sands" && isSandName(source, index));
      const key = isName ? /^\s*["']?(.*?)["']?\s*:(?:\s*|\s+[{&*].*|\s+#.*)$/.exec(line)?.[1] : undefined;
      const colonless =
        key === undefined && isName && isNameWithoutColon(source, index)
          ? line.replace(/\s#.*$/, "").trim()
          : undefined;
      const name = key ?? colonless;
      if (name === undefined) return;
      close(start);
      open = { name, start };
    }
  });
  close(source.text.length);
  return blocks;
}

/** Where the names of sands stand: the least of those from here to the end of the section; this line if there is none. */
function leastIndent(source: Source, index: number): number {
  let least: number | undefined;
  for (let at = index; at < source.lineStarts.length; at++) {
    const line = lineText(source, at);
    if (isIdle(line)) continue;
    const depth = indentOf(line);
    if (depth === 0) break;
    if ((least === undefined || depth < least) && isSandName(source, at)) least = depth;
  }
  return least ?? indentOf(lineText(source, index));
}

const fields: readonly string[] = [...sandKeys, ...sievingKeys];

/** Words alone, with lines further in below them: it is the colon that is lost, not a space. */
export function isNameWithoutColon(source: Source, index: number): boolean {
  const line = lineText(source, index);
  if (!/^\s*[^-\s:#"'[{][^:#[{]*(#[^:]*)?$/.test(line) || line.trim().length > 60) return false;
  const next = nextLine(source, index);
  return next !== undefined && indentOf(lineText(source, next)) > indentOf(line);
}

/** A name by itself, and below it a field that only a sand has. */
function isSandName(source: Source, index: number): boolean {
  const name = /^\s*["']?([^-\s"'].*?)["']?\s*:\s*(?:#.*)?$/.exec(lineText(source, index))?.[1];
  if (name === undefined || fields.includes(plainName(name))) return false;
  const next = nextLine(source, index);
  return next !== undefined && /^\s*(state|sievings|sievings file|note)\s*:/i.test(lineText(source, next));
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
