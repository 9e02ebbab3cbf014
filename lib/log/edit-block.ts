// An entry put between lines, or taken out of them, with its blank line and its comment.

import type { BlockParts } from "./edit-block-parts.ts";
import type { Put } from "./edit-flow.ts";
import { lineEnd, lineStart, type Splice } from "./edit-splice.ts";

const blankLine = /(?:\r\n|\r|\n)[ \t]*(?:\r\n|\r|\n)/;

/** The part's later lines are indented already. */
export function putIntoBlock(
  text: string,
  { parts, indent, behindDash }: BlockParts,
  index: number,
  part: string,
  eol: string,
): Put {
  const [before, after] = [parts[index - 1], parts[index]];
  const [left, right] = before && after ? [before, after] : before ? parts.slice(-2) : parts;
  const apart = left && right ? blankLine.test(text.slice(left.end, right.start)) : false;
  const blank = apart ? eol : "";
  if (before) return put(before.end, `${eol}${blank}${indent}`, part, "");
  const first = after!.start;
  if (behindDash) return put(first, "", part, `${eol}${blank}${indent}`);
  return put(commentsAbove(text, lineStart(text, first), indent), indent, part, `${eol}${blank}`);
}

function put(at: number, before: string, part: string, after: string): Put {
  const splice = { start: at, end: at, text: before + part + after };
  return { splices: [splice], splice, from: before.length };
}

/** Start of the comment lines that stand right above a line and as far in. */
function commentsAbove(text: string, start: number, indent: string): number {
  let at = start;
  while (at > 0) {
    const above = lineStart(text, beforeLineEnd(text, at));
    const line = text.slice(above, lineEnd(text, above));
    if (above >= at || !line.startsWith(`${indent}#`) || above === 0) break;
    at = above;
  }
  return at;
}

/** Offset of the line end that closes the line before. */
function beforeLineEnd(text: string, start: number): number {
  return start - (text.slice(start - 2, start) === "\r\n" ? 2 : Math.min(1, start));
}

/** Undefined where a comment stands in the way that would be lost. One of several entries. */
export function takenFromBlock(
  text: string,
  { parts, behindDash }: BlockParts,
  index: number,
): Splice | undefined {
  const { start, end } = parts[index]!;
  const [before, next] = [parts[index - 1], parts[index + 1]];
  const line = lineStart(text, start);
  const onlySpace = (from: number, to: number) => text.slice(from, to).trim() === "";
  if (before) {
    if (onlySpace(before.end, line)) return { start: before.end, end, text: "" };
    return { start: beforeLineEnd(text, line), end, text: "" };
  }
  const clear = onlySpace(end, next!.start);
  if (behindDash) return clear ? { start, end: next!.start, text: "" } : undefined;
  if (clear) return { start: line, end: lineStart(text, next!.start), text: "" };
  // A blank line below it parted it from the next; below a comment that stays, it still parts.
  const commented = commentsAbove(text, line, text.slice(line, start)) < line;
  const below = (commented ? /^(?:\r\n|\r|\n)/ : /^(?:[ \t]*(?:\r\n|\r|\n))+/).exec(
    text.slice(end, next!.start),
  );
  return { start: line, end: end + (below?.[0].length ?? 0), text: "" };
}

/** The only entry: its lines, from the end of the line before. */
export function onlyTaken(text: string, { parts, behindDash }: BlockParts): Splice {
  const { start, end } = parts[0]!;
  if (behindDash) return { start, end, text: "" };
  return { start: beforeLineEnd(text, lineStart(text, start)), end, text: "" };
}
