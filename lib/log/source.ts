// A file's text with its line starts, so that every offset has a line and a column.

import type { Place } from "../issue.ts";

export interface Source {
  readonly file: string;
  readonly text: string;
  /** Offset of each line's first character. */
  readonly lineStarts: readonly number[];
  /** Starts of lines that were blanked because nobody can tell what they belong to. */
  readonly lost?: readonly number[];
}

/** Lines end at LF, CR LF or a lone CR, so that files from any machine count alike. */
export function sourceOf(file: string, text: string): Source {
  const lineStarts = [0];
  if (text.includes("\r")) {
    for (const end of text.matchAll(/\r\n|\r|\n/g)) lineStarts.push(end.index + end[0].length);
  } else for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) lineStarts.push(at + 1);
  return { file, text, lineStarts };
}

/** Index of the line (from 0) that holds the offset. */
export function lineIndex(source: Source, offset: number): number {
  let low = 0;
  let high = source.lineStarts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((source.lineStarts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Line and column count from 1; a byte order mark at the start is not a column. A place ends with its text. */
export function placeIn(source: Source, offset: number, length = 0): Place {
  const line = lineIndex(source, offset);
  const mark = line === 0 && source.text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const column = Math.max(1, offset - (source.lineStarts[line] ?? 0) + 1 - mark);
  const most = Math.max(0, source.text.length - offset);
  return { file: source.file, line: line + 1, column, offset, length: Math.min(length, most) };
}

/** A line's text without its end; the empty string past the last line. */
export function lineText(source: Source, index: number): string {
  const start = source.lineStarts[index];
  if (start === undefined) return "";
  return source.text.slice(start, source.lineStarts[index + 1]).replace(/[\r\n]+$/, "");
}

export function indentOf(line: string): number {
  return line.length - line.trimStart().length;
}

/** A line that says nothing: empty, or a remark. */
export function isIdle(line: string): boolean {
  return /^\s*(#.*)?$/.test(line);
}

/** Index of the next line that says something; undefined below the last one. */
export function nextLine(source: Source, index: number): number | undefined {
  for (let at = index + 1; at < source.lineStarts.length; at++) if (!isIdle(lineText(source, at))) return at;
  return undefined;
}

/** Long lines are cut, so that a message stays readable. */
export function shortened(text: string): string {
  return text.length <= 60 ? text : `${text.slice(0, 57)}...`;
}

/** True when the second place lies within the first, in the same file. */
export function holds(outer: Place, inner: Place | undefined): boolean {
  if (outer.offset === undefined || inner?.offset === undefined || outer.file !== inner.file) return false;
  return inner.offset >= outer.offset && inner.offset < outer.offset + (outer.length ?? 0);
}
