// Where a long log may be cut, so that each piece can be read alone: its sections, and the entries of long ones.

import { beginsBelow, blocksIn, fewLines, type LineBlock, oddIndents } from "./edit-lines.ts";
import type { Source } from "./source.ts";

export interface Piece {
  readonly start: number;
  readonly end: number;
  /** Of its first character, from 0. */
  readonly line: number;
}

/** A section, or its name alone with the entries below it. */
export interface CutSection {
  readonly piece: Piece;
  readonly entries?: readonly Piece[];
}

/** Curly quotes are put right over the whole text, block texts end where the next line says so. */
const doubtful = /[“”„‘’\uFEFF]|\r(?!\n)|[:-][ \t]+(?:[!&][^\s]*[ \t]+)?[|>][+\-\d]*[ \t]*(?:#.*)?\r?$/m;

/** Undefined where the lines of a log do not tell their places surely. */
export function cutLog(source: Source): readonly CutSection[] | undefined {
  const { text, lineStarts, lost } = source;
  if (lost || oddIndents(text) || doubtful.test(text)) return undefined;
  const sections = blocksIn(source, 0, lineStarts.length, -1);
  if (!sections || sections.some(({ dashed }) => dashed)) return undefined;
  const pieceOf = (from: number, to: number): Piece => ({
    start: lineStarts[from]!,
    end: lineStarts[to] ?? text.length,
    line: from,
  });
  return sections.map((section): CutSection => {
    const within = entriesOf(source, section);
    if (!within) return { piece: pieceOf(section.from, section.to) };
    return {
      piece: pieceOf(section.from, within[0]!.from),
      entries: within.map(({ from, to }) => pieceOf(from, to)),
    };
  });
}

/** Of a section of many lines; undefined where it is none of named entries. */
function entriesOf(source: Source, { from, to, indent }: LineBlock): readonly LineBlock[] | undefined {
  if (to - from < fewLines || !beginsBelow(source, from)) return undefined;
  const within = blocksIn(source, from + 1, to, indent);
  return within && within.length > 1 && !within[0]!.dashed ? within : undefined;
}
