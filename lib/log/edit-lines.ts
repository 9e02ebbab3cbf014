// A long log cut into its entries by indentation alone, so that an edit need not read all of it.

import { lineText, type Source } from "./source.ts";

/** An entry or an item with all lines that hang on it, up to the next of its kind. */
export interface LineBlock {
  /** Lines, from 0; the end is the first line after it. */
  readonly from: number;
  readonly to: number;
  readonly indent: number;
  /** Of an entry whose name is plain; of an item undefined. */
  readonly name?: string;
  readonly dashed: boolean;
}

/** A section of fewer lines is taken whole: cutting it costs as much as reading it. */
export const fewLines = 8;

/**
 * Entries of the lines below a name, or of the whole log (after -1): in valid YAML whatever belongs to an entry stands
 * further in than its name. Undefined where the lines do not all begin as plain names or dashes do.
 */
export function blocksIn(source: Source, from: number, to: number, outer: number): LineBlock[] | undefined {
  let indent: number | undefined;
  let dashed = false;
  const starts: { readonly line: number; readonly name?: string }[] = [];
  for (let line = from; line < to; line++) {
    const depth = depthOf(source, line);
    if (depth === undefined) continue;
    if (indent === undefined) {
      indent = depth;
      dashed = isDash(source, line, depth);
      if (depth < outer || (depth === outer && !dashed)) return undefined;
    }
    if (depth < indent) return undefined;
    if (depth > indent) continue;
    if (isDash(source, line, depth) !== dashed) {
      // At the left margin a list stands as far in as its name.
      if (depth === 0 && !dashed) continue;
      return undefined;
    }
    const name = dashed ? undefined : plainKey(lineText(source, line));
    if (!dashed && name === undefined) return undefined;
    starts.push({ line, ...(name === undefined ? {} : { name }) });
  }
  if (indent === undefined) return undefined;
  const depth = indent;
  return starts.map(({ line, name }, k) => ({
    from: line,
    to: starts[k + 1]?.line ?? to,
    indent: depth,
    dashed,
    ...(name === undefined ? {} : { name }),
  }));
}

/** Spaces in front of a line; undefined where it is blank or a comment. */
function depthOf({ text, lineStarts }: Source, line: number): number | undefined {
  const start = lineStarts[line]!;
  let at = line === 0 && text.charCodeAt(0) === 0xfeff ? start + 1 : start;
  const from = at;
  while (text[at] === " ") at += 1;
  const sign = text[at];
  return sign === undefined || sign === "#" || sign === "\n" || sign === "\r" ? undefined : at - from;
}

function isDash({ text, lineStarts }: Source, line: number, depth: number): boolean {
  return /^-(\s|$)/.test(text.slice(lineStarts[line]! + depth, lineStarts[line]! + depth + 2));
}

function plainKey(line: string): string | undefined {
  return /^[\uFEFF ]*([^\s"'&*!|>%@`{}[\]?#,“”‘’-][^#:]*):(?:\s|$)/.exec(line)?.[1];
}

/** True where what hangs on the name begins on a line below it. */
export function beginsBelow(source: Source, line: number): boolean {
  return /^[^#"']*:[ \t]*(?:#.*)?$/.test(lineText(source, line));
}

/** True where indentation may not tell what belongs to what: tabs, hard spaces, several documents, repeats. */
export function oddIndents(text: string): boolean {
  return /^[ \u00A0]*[\t\u00A0]|^(?:---|\.\.\.)(?:\s|$)|(?:^|[\s[{,:-])[&*][^\s,\]}*]/m.test(text);
}
