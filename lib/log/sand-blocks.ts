// Which lines belong to which sand, told from indentation alone, so that a fault can be kept to its sand.

import { lineText, type Source } from "./source.ts";

export interface SandBlock {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

/** The blocks under `sands:`; none where the log is written in another way (brackets, say). */
export function sandBlocks(source: Source): SandBlock[] {
  const blocks: SandBlock[] = [];
  let inside = false;
  let indent: number | undefined;
  let open: { name: string; start: number } | undefined;
  const close = (end: number) => {
    if (open) blocks.push({ ...open, end });
    open = undefined;
  };
  source.lineStarts.forEach((start, index) => {
    const line = lineText(source, index).replace(/^\uFEFF/, "");
    if (/^\s*(#.*)?$/.test(line)) return;
    const depth = line.length - line.trimStart().length;
    if (depth === 0) {
      close(start);
      inside = /^sands\s*:\s*(#.*)?$/i.test(line);
      indent = undefined;
    } else if (inside) {
      indent ??= depth;
      const key = depth === indent ? /^\s*["']?(.*?)["']?\s*:\s*(#.*)?$/.exec(line)?.[1] : undefined;
      if (key === undefined) return;
      close(start);
      open = { name: key, start };
    }
  });
  close(source.text.length);
  return blocks;
}

export function blockAt(blocks: readonly SandBlock[], offset: number | undefined): SandBlock | undefined {
  if (offset === undefined) return undefined;
  return blocks.find((block) => offset >= block.start && offset < block.end);
}
