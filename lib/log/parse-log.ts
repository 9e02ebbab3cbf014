// From a log's text to nodes, with what is wrong in its writing.

import { curlyQuotes, hashRow } from "./complaints-yaml.ts";
import { keepFlowCommas } from "./flow-commas.ts";
import { lineList } from "./line-list.ts";
import type { LogNode, PlacedComplaint } from "./node.ts";
import { type PieceMemory, treeOfPieces } from "./parse-pieces.ts";
import { parseRecovering } from "./recover.ts";
import type { SandBlock } from "./sand-blocks.ts";
import { lineIndex, placeIn, type Source } from "./source.ts";
import { type Trap, trapsIn } from "./traps.ts";

export interface ParsedLog {
  readonly root: LogNode;
  readonly complaints: readonly PlacedComplaint[];
}

/**
 * 1 what is only a matter of signs is put right, character for character, so that offsets stay;
 * 2 parse, fault by fault; 3 rows that YAML takes for comments are looked for.
 * memory: of the log before an edit; the result is the same without it.
 */
export function parseLog(source: Source, blocks: readonly SandBlock[], memory?: PieceMemory): ParsedLog {
  const complaints: PlacedComplaint[] = [];
  const pieced = memory && treeOfPieces(source, memory);
  if (pieced) return { root: pieced, complaints: trapsOutside(pieced, source) };
  const text = evenSigns(source, complaints);
  const { root, faults } = parseRecovering(source, text, blocks);
  const swallowed = trapsOutside(root, source);
  complaints.push(...swallowed);

  // A line with a #40 in it is no YAML fault as well; nor does one line need two complaints.
  const hashRowCode = hashRow("", "", "").code;
  const seen = new Set(
    swallowed.flatMap(({ complaint, place }) => (complaint.code === hashRowCode ? [place.line] : [])),
  );
  for (const { complaint, offset } of faults) {
    const place = placeIn(source, offset, 1);
    if (!seen.has(place.line)) complaints.push({ complaint, place });
    seen.add(place.line);
  }
  return { root, complaints };
}

/** A # within a text is a sign like others. */
function trapsOutside(root: LogNode, source: Source): readonly Trap[] {
  return trapsIn(source).filter((trap) => !insideText(root, trap.place.offset ?? 0));
}

/** Lone CRs end lines, hard spaces indent, and a scalar in curly quotes is one in straight quotes. */
function evenSigns(source: Source, complaints: PlacedComplaint[]): string {
  const curly: number[] = [];
  const text = source.text
    .replace(/\r(?!\n)/g, "\n")
    .replace(leadingSpaces, (spaces) => spaces.replaceAll(oddSpace, " "))
    .replace(spacesAfterSign, (spaces) => spaces.replaceAll(oddSpace, " "))
    .replace(curlyScalar, (whole, before: string, quoted: string, offset: number) => {
      const line = source.text.slice(source.lineStarts[lineIndex(source, offset)], offset);
      // Within straight quotes, or behind a #, they are text.
      if ((line.split('"').length - 1) % 2 === 1 || /(^|\s)#/.test(line)) return whole;
      curly.push(offset + before.length);
      const quote = /[‘’]/.test(quoted[0]!) ? "'" : '"';
      return `${before}${quote}${quoted.slice(1, -1)}${quote}`;
    });
  const [first] = curly;
  if (first !== undefined) {
    const lines = [...new Set(curly.map((offset) => lineIndex(source, offset) + 1))];
    complaints.push({ complaint: curlyQuotes(lineList(lines)), place: placeIn(source, first, 1) });
  }
  return keepFlowCommas(text);
}

/** Spaces of other widths than the space bar's, as they come from a web page or a word processor. */
const oddSpace = /[\u00A0\u2000-\u200A\u202F\u205F\u3000]/g;
const leadingSpaces =
  /^[ \t]*[\u00A0\u2000-\u200A\u202F\u205F\u3000][ \t\u00A0\u2000-\u200A\u202F\u205F\u3000]*/gm;
/** Where YAML wants a space: behind a colon, a comma, a bracket, or a dash that begins an entry. */
const spacesAfterSign = /(?<=[:,{[]|^[ \u00A0]*-)[ \t]*[\u00A0\u2000-\u200A\u202F\u205F\u3000]+/gm;

/** A whole name or value in curly quotes: where one could begin, up to where one could end. */
const curlyScalar =
  /((?:^|[-:,{[])[ \t]*)([“”„][^“”„"\n\r]*[“”]|[‘’][^‘’'\n\r]*’)(?=[ \t]*(?::|[,}\]]|$|#))/gm;

/** True when the offset lies within a scalar, where a # is text. */
function insideText(node: LogNode, offset: number): boolean {
  const { offset: start = 0, length = 0 } = node.place;
  if (node.kind === "text") return offset >= start && offset < start + length;
  if (node.kind === "map") return node.entries.some((entry) => insideText(entry.value, offset));
  return node.kind === "list" && node.items.some((item) => insideText(item, offset));
}
