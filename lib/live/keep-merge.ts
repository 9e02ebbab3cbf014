// Two hands in one log: what both changed since the same text, put together line by line.

import type { LogText } from "../log/types.ts";
import { aligned } from "./edit-align.ts";

/** Lines that both changed, each in its own way. */
export interface Meeting {
  readonly file: string;
  /** Line of the common text that it begins at, from 1. */
  readonly line: number;
  readonly mine: string;
  readonly theirs: string;
}

export interface Merged {
  /** Both changes; undefined where they meet. */
  readonly texts?: readonly LogText[];
  /** Both changes, and mine where they meet. */
  readonly mineFirst: readonly LogText[];
  readonly meets: readonly Meeting[];
}

/**
 * Changes of mine carried over to theirs. Lines that only one side changed are taken from that side, also where both
 * changed them alike; lines that both changed differently meet, as do lines put in at one place by both.
 */
export function mergedTexts(
  base: readonly LogText[],
  mine: readonly LogText[],
  theirs: readonly LogText[],
): Merged {
  const of = (texts: readonly LogText[], name: string): string =>
    texts.find((one) => one.name === name)?.text ?? "";
  const meets: Meeting[] = [];
  const names = [...new Set([...theirs, ...mine].map(({ name }) => name))];
  const mineFirst = names.map((name) => ({
    name,
    text: merged(name, of(base, name), of(mine, name), of(theirs, name), meets),
  }));
  return meets.length === 0 ? { texts: mineFirst, mineFirst, meets } : { mineFirst, meets };
}

function merged(file: string, base: string, mine: string, theirs: string, meets: Meeting[]): string {
  if (mine === theirs || base === theirs) return mine;
  if (base === mine) return theirs;
  const [b, m, t] = [linesOf(base), linesOf(mine), linesOf(theirs)];
  const [inMine, inTheirs] = [matches(b, m), matches(b, t)];
  let text = "";
  let [i, j, k] = [0, 0, 0];
  while (i < b.length || j < m.length || k < t.length) {
    if (i < b.length && inMine[i] === j && inTheirs[i] === k) {
      text += b[i];
      [i, j, k] = [i + 1, j + 1, k + 1];
      continue;
    }
    let next = i;
    while (next < b.length && (inMine[next] === undefined || inTheirs[next] === undefined)) next++;
    const [mineEnd, theirsEnd] = next < b.length ? [inMine[next]!, inTheirs[next]!] : [m.length, t.length];
    const [was, own, other] = [b.slice(i, next), m.slice(j, mineEnd), t.slice(k, theirsEnd)].map((lines) =>
      lines.join(""),
    );
    if (own !== was && other !== was && own !== other)
      meets.push({ file, line: i + 1, mine: own!, theirs: other! });
    text += own === was ? other : own;
    [i, j, k] = [next, mineEnd, theirsEnd];
  }
  return text;
}

/** Lines with their ends. */
export function linesOf(text: string): string[] {
  return text.match(/[^\r\n]*(?:\r\n|\r|\n)|[^\r\n]+$/g) ?? [];
}

function matches(before: readonly string[], after: readonly string[]): (number | undefined)[] {
  const found: (number | undefined)[] = new Array(before.length).fill(undefined);
  for (const [i, j] of aligned(before, after)) if (i !== undefined) found[i] = j;
  return found;
}
