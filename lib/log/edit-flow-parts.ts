// Where the parts of a list or map in brackets begin and end, and the commas between them.

import { lineEnd, lineStart } from "./edit-splice.ts";
import { keepFlowCommas } from "./flow-commas.ts";
import type { LogNode } from "./node.ts";

export interface FlowPart {
  readonly start: number;
  readonly end: number;
  /** Offset of the comma after it, where there is one. */
  readonly comma?: number;
}

export interface FlowParts {
  /** Offsets of the brackets. */
  readonly open: number;
  readonly close: number;
  readonly parts: readonly FlowPart[];
}

/** Undefined where they are not as many as the reader made of them. */
export function flowParts(node: LogNode, text: string): FlowParts | undefined {
  const open = node.place.offset ?? 0;
  const close = open + (node.place.length ?? 0) - 1;
  const from = lineStart(text, open);
  // As the reader takes it: commas within ( ) part nothing.
  const signs = text.slice(0, from) + keepFlowCommas(text.slice(from, lineEnd(text, close)));
  const parts: FlowPart[] = [];
  let start: number | undefined;
  let end = open + 1;
  let depth = 0;
  const closePart = (comma?: number) => {
    if (start !== undefined) parts.push({ start, end, ...(comma === undefined ? {} : { comma }) });
    start = undefined;
  };
  for (let at = open + 1; at < close; at++) {
    const sign = signs[at]!;
    if (/\s/.test(sign)) continue;
    if (sign === "#" && /\s/.test(signs[at - 1]!)) {
      at = lineEnd(signs, at);
      continue;
    }
    if (sign === "," && depth === 0) {
      closePart(at);
      continue;
    }
    start ??= at;
    if (/[[{]/.test(sign)) depth += 1;
    if (/[\]}]/.test(sign)) depth -= 1;
    if (/["'“”„‘’]/.test(sign) && /[[{,:]\s*$/.test(signs.slice(Math.max(0, at - 80), at)))
      at = quoteEnd(signs, at);
    end = at + 1;
  }
  closePart();
  const count = node.kind === "list" ? node.items.length : node.kind === "map" ? node.entries.length : -1;
  return parts.length === count ? { open, close, parts } : undefined;
}

/** Offset of the closing quote. */
function quoteEnd(text: string, open: number): number {
  const sign = text[open]!;
  for (let at = open + 1; at < text.length; at++) {
    if (sign === '"' && text[at] === "\\") at += 1;
    else if (sign === "'" && text[at] === "'" && text[at + 1] === "'") at += 1;
    else if (sign === '"' || sign === "'" ? text[at] === sign : /[“”’]/.test(text[at]!)) return at;
  }
  return open;
}

/** True where a line holds nothing from here on but spaces and a comment. */
export function restIsComment(text: string, from: number): boolean {
  return /^[ \t]*(#.*)?$/.test(text.slice(from, lineEnd(text, from)));
}
