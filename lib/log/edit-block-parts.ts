// Where the entries of a list or map begin and end that stands line by line.

import { isFlow, isRepeat } from "./edit-find.ts";
import { lineEnd, lineStart } from "./edit-splice.ts";
import type { LogNode } from "./node.ts";

export interface BlockPart {
  /** Of its name or its dash. */
  readonly start: number;
  /** Of its last line, with a comment on it, before the line end. */
  readonly end: number;
}

export interface BlockParts {
  readonly parts: readonly BlockPart[];
  /** In front of each part; of one behind a dash, spaces in its place. */
  readonly indent: string;
  /** True where the first stands behind the dash of the list around it. */
  readonly behindDash: boolean;
}

/** Undefined where they cannot be told apart. */
export function blockParts(node: LogNode, text: string): BlockParts | undefined {
  if (node.kind !== "map" && node.kind !== "list") return undefined;
  const starts =
    node.kind === "map" ? node.entries.map(({ keyPlace }) => keyPlace.offset ?? 0) : dashes(node, text);
  const [first] = starts;
  const count = node.kind === "map" ? node.entries.length : node.items.length;
  if (first === undefined || starts.length !== count) return undefined;
  const before = (at: number) => text.slice(lineStart(text, at), at);
  const behindDash = before(first).trim() !== "";
  if (behindDash && !/^[ \t\u00A0]*(?:- +)+$/.test(before(first))) return undefined;
  if (starts.slice(1).some((at) => before(at).trim() !== "")) return undefined;
  const parts = starts.map((start, k) => ({ start, end: lastLineEnd(text, start, ownEnd(node, k, text)) }));
  return { parts, indent: before(first).replaceAll("-", " "), behindDash };
}

/** Offsets of the dashes that stand as far in as the first. */
function dashes(list: LogNode, text: string): number[] {
  const first = list.place.offset ?? 0;
  const last = first + (list.place.length ?? 0);
  const column = first - lineStart(text, first);
  const found = [first];
  for (let at = lineEnd(text, first); at < last; at = lineEnd(text, at)) {
    at += text.startsWith("\r\n", at) ? 2 : 1;
    const line = text.slice(at, lineEnd(text, at));
    if (/^\s*$/.test(line.slice(0, column)) && /^-(\s|$)/.test(line.slice(column))) found.push(at + column);
  }
  return found;
}

/** End of what stands last in an entry; undefined where that is a repeat or nothing. */
function ownEnd(parent: LogNode, index: number, text: string): number | undefined {
  if (isRepeat(parent, index)) return undefined;
  const node =
    parent.kind === "list"
      ? parent.items[index]!
      : parent.kind === "map"
        ? parent.entries[index]!.value
        : parent;
  const { offset = 0, length = 0 } = node.place;
  if (node.kind === "empty") return undefined;
  if (node.kind === "text" || isFlow(node, text)) return offset + length;
  const last = node.kind === "list" ? node.items.length - 1 : node.entries.length - 1;
  if (last < 0) return offset + length;
  const start = node.kind === "list" ? dashes(node, text)[last] : node.entries[last]!.keyPlace.offset;
  return ownEnd(node, last, text) ?? start;
}

/** To the end of the line that the offset is on; a text of several lines ends before its last line end. */
function lastLineEnd(text: string, start: number, end: number | undefined): number {
  let at = end ?? start;
  while (at > start && /[\r\n]/.test(text[at - 1]!)) at -= 1;
  return lineEnd(text, at);
}
