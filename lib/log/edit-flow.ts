// A part put into brackets, or taken out of them.

import { type FlowParts, restIsComment } from "./edit-flow-parts.ts";
import { lineEnd, lineStart, type Splice } from "./edit-splice.ts";

/** The splices, and where in which of them the part itself stands. */
export interface Put {
  readonly splices: readonly Splice[];
  readonly splice: Splice;
  readonly from: number;
}

export function putIntoFlow(
  text: string,
  { open, close, parts }: FlowParts,
  index: number,
  part: string,
): Put | undefined {
  if (parts.length === 0) {
    if (text.slice(open + 1, close).trim() !== "") return undefined;
    return put(open + 1, close, " ", part, " ");
  }
  const gap = gapOf(text, parts);
  if (index < parts.length) {
    const before = parts[index - 1];
    if (before?.comma !== undefined && gap !== " " && restIsComment(text, before.comma + 1)) {
      const at = lineEnd(text, before.comma);
      return put(at, at, gap, part, ",");
    }
    return put(parts[index]!.start, parts[index]!.start, "", part, `,${gap}`);
  }
  const last = parts.at(-1)!;
  const after = (last.comma ?? last.end - 1) + 1;
  const own = /[\r\n]/.test(gap) && restIsComment(text, after);
  const at = own ? lineEnd(text, after) : after;
  if (last.comma !== undefined) return put(at, at, gap, part, ",");
  if (!own) return put(at, at, `,${gap}`, part, "");
  const line = put(at, at, gap, part, "");
  return at === after
    ? put(at, at, `,${gap}`, part, "")
    : { ...line, splices: [{ start: after, end: after, text: "," }, line.splice] };
}

function put(start: number, end: number, before: string, part: string, after: string): Put {
  const splice = { start, end, text: before + part + after };
  return { splices: [splice], splice, from: before.length };
}

/** What stands between a comma and the next part; a line end with its indent where parts have lines of their own. */
function gapOf(text: string, parts: FlowParts["parts"]): string {
  const [first, second] = parts;
  if (second && first?.comma !== undefined) {
    const between = text.slice(first.comma + 1, second.start);
    const line = /(?:\r\n|\r|\n)[ \t]*$/.exec(between)?.[0];
    return line ?? (between.trim() === "" ? between : " ");
  }
  const before = text.slice(lineStart(text, first!.start), first!.start);
  if (before.trim() !== "") return " ";
  return /(?:\r\n|\r|\n)[ \t]*$/.exec(text.slice(0, first!.start))?.[0] ?? " ";
}

export function takenFromFlow(text: string, { open, close, parts }: FlowParts, index: number): Splice[] {
  const { start, end, comma } = parts[index]!;
  const after = comma === undefined ? end : comma + 1;
  if (parts.length === 1) {
    const rest = text.slice(open + 1, start) + text.slice(after, close);
    return [rest.trim() === "" ? cut(open + 1, close) : cut(start, after)];
  }
  const [before, next] = [parts[index - 1], parts[index + 1]];
  const ownLines =
    text.slice(lineStart(text, start), start).trim() === "" &&
    restIsComment(text, after) &&
    lineStart(text, start) > open;
  if (ownLines) {
    const lines = cut(lineStart(text, start), nextLine(text, after));
    const needless = next === undefined && comma === undefined && before?.comma !== undefined;
    return needless ? [cut(before.comma!, before.comma! + 1), lines] : [lines];
  }
  if (next) return [text.slice(after, next.start).trim() === "" ? cut(start, next.start) : cut(start, after)];
  const from =
    before!.comma === undefined
      ? start
      : text.slice(before!.comma + 1, start).trim() === ""
        ? before!.end
        : start;
  return [cut(from, end)];
}

const cut = (start: number, end: number): Splice => ({ start, end, text: "" });

function nextLine(text: string, offset: number): number {
  const end = lineEnd(text, offset);
  return end + (text.startsWith("\r\n", end) ? 2 : end < text.length ? 1 : 0);
}
