// What YAML itself would swallow without a word: rows that are comments, and values cut at a #.

import type { Issue, Place } from "../issue.ts";
import { astmSieve, britishSieve } from "../sand/sieve-table.ts";
import { hashCut, hashRow, rowCommentedOut } from "./complaints-yaml.ts";
import { lineText, placeIn, type Source } from "./source.ts";

export interface Trap {
  readonly complaint: Issue;
  readonly place: Place;
}

const figure = String.raw`[-+]?[\d.,]*\d(?:\s*(?:g|%|oz))?`;
/** `#40: 0.15`, alone or after something else. */
const hashRowPattern = new RegExp(
  String.raw`(?:^|\s)(#(\d{1,3})(?:\s*mesh)?\s*:\s*(${figure}))\s*(?:#.*|[,}].*)?$`,
);
/** Inside a list of sieves also `# 40: 0.15`, `#20 3`, `# 40 - 40`, `#60 mesh held 9.5 g`. */
const parted = String.raw`(?:\s*[-–—:=,;]|\s+(?:held|has|had|is|was|retained)\b|\s*(?:mesh|sieve)\b)*`;
const hashRowInListPattern = new RegExp(
  String.raw`^[^:#]*?(?:^|\s)(#\s*(\d{1,3})${parted}[\s:=–—-]\s*(${figure}|${figure}\s*grams?))[\s.;]*(?:#.*|[,}].*)?$`,
  "i",
);
const commentedRowPattern = new RegExp(
  String.raw`^\s*(#\s*(?:(?:no\.?|us|astm|bs)\s*\d+|[\d.]+\s*(?:mm|µm|um)|pan)${parted}[\s:=–—-]\s*${figure})\s*$`,
  "i",
);
/** A sieve's number and one more, in whatever words. */
const wordyRowPattern = /^\s*(#\s*(\d{1,3})\b(?!\.\d)\D.*\d.*)$/;
const cutPattern = /^\s*(?:- +)*[^:#]+:\s+([^\s"'|>#[{&*!][^#]*?)\s+(#\.?\d.*)$/;

/** More than a log of sievings could hold by mistake; and longer lines hold no row. */
const trapLimit = 200;
const lineLimit = 400;

/** Line by line; whether a # stands inside a longer text is for the caller to know. */
export function trapsIn(source: Source): Trap[] {
  const traps: Trap[] = [];
  /** Indent of the `retained:` that the line lies under. */
  let retainedIndent: number | undefined;
  const nextIndent = nextIndents(source);
  for (let index = 0; index < source.lineStarts.length; index++) {
    if (traps.length >= trapLimit) break;
    const line = lineText(source, index);
    if (line.trim() === "") continue;
    const indent = /^[\s-]*/.exec(line)?.[0].length ?? 0;
    const isComment = line.trimStart().startsWith("#");
    if (!isComment) {
      if (retainedIndent !== undefined && indent <= retainedIndent) retainedIndent = undefined;
      if (/^[\s-]*retained\s*:/i.test(line)) retainedIndent = indent;
    }
    if (!line.includes("#") || line.length > lineLimit) continue;
    const at = (part: string) =>
      placeIn(source, (source.lineStarts[index] ?? 0) + line.lastIndexOf(part), part.length);
    const inRows =
      retainedIndent !== undefined &&
      (!isComment || indent > retainedIndent || nextIndent(index) > retainedIndent);

    const row = hashRowPattern.exec(line) ?? (inRows ? hashRowInListPattern.exec(line) : undefined);
    if (row?.[1] && row[2] && row[3]) {
      traps.push({ complaint: hashRow(row[1], row[2], row[3]), place: at(row[1]) });
      continue;
    }
    const commented = inRows ? (commentedRowPattern.exec(line)?.[1] ?? wordyRow(line)) : undefined;
    if (commented) traps.push({ complaint: rowCommentedOut(commented), place: at(commented) });
    const cut = isComment ? undefined : cutPattern.exec(line);
    if (cut?.[1] && cut[2]) traps.push({ complaint: hashCut(cut[1], cut[2]), place: at(cut[2]) });
  }
  return traps;
}

function wordyRow(line: string): string | undefined {
  const [, row, number] = wordyRowPattern.exec(line) ?? [];
  const isSieve = astmSieve(Number(number)) ?? britishSieve(Number(number));
  return isSieve && row?.trim();
}

/**
 * The indent of the next line that is no comment, asked for from the top down: what was found serves all comments above
 * it, or a log that ends in thousands of them is gone through once for each.
 */
function nextIndents(source: Source): (index: number) => number {
  let found = { at: -1, indent: -1 };
  const after = (index: number): typeof found => {
    for (let at = index + 1; at < source.lineStarts.length; at++) {
      const line = lineText(source, at);
      if (!/^\s*(#|$)/.test(line)) return { at, indent: /^[\s-]*/.exec(line)?.[0].length ?? 0 };
    }
    return { at: source.lineStarts.length, indent: -1 };
  };
  return (index) => {
    if (found.at <= index) found = after(index);
    return found.indent;
  };
}
