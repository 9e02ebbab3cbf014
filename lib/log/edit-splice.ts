// Stretches of a text that give way to others.

export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** The text with all splices made; they don't overlap, and stand in any order. */
export function spliced(text: string, splices: readonly Splice[]): string {
  let result = "";
  let done = 0;
  for (const splice of [...splices].sort((a, b) => a.start - b.start)) {
    result += text.slice(done, splice.start) + splice.text;
    done = splice.end;
  }
  return result + text.slice(done);
}

/** Offset of a line's first character. */
export function lineStart(text: string, offset: number): number {
  for (let at = offset; at > 0; at--) if (text[at - 1] === "\n" || text[at - 1] === "\r") return at;
  return text.charCodeAt(0) === 0xfeff ? 1 : 0;
}

/** Offset of a line's end, before CR or LF. */
export function lineEnd(text: string, offset: number): number {
  for (let at = offset; at < text.length; at++) if (text[at] === "\n" || text[at] === "\r") return at;
  return text.length;
}

/** The line end that the text uses first; LF where it has none. */
export function endOfLine(text: string): string {
  return /\r\n|\r|\n/.exec(text)?.[0] ?? "\n";
}
