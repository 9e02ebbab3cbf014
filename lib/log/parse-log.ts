// From a log's text to nodes, with what is wrong in its writing.

import type { Issue, Place } from "../issue.ts";
import { hashRow, tabs } from "./complaints-yaml.ts";
import type { LogNode } from "./node.ts";
import { parseRecovering } from "./recover.ts";
import type { SandBlock } from "./sand-blocks.ts";
import { placeIn, type Source } from "./source.ts";
import { trapsIn } from "./traps.ts";

export interface PlacedComplaint {
  readonly complaint: Issue;
  readonly place: Place;
}
export interface ParsedLog {
  readonly root: LogNode;
  readonly complaints: readonly PlacedComplaint[];
}

/**
 * 1 what is only a matter of spaces is put right, character for character, so that offsets stay;
 * 2 parse, fault by fault; 3 rows that YAML takes for comments are looked for.
 */
export function parseLog(source: Source, blocks: readonly SandBlock[]): ParsedLog {
  const complaints: PlacedComplaint[] = [];
  const text = evenSpaces(source, complaints);
  const { root, faults } = parseRecovering(source, text, blocks);
  const swallowed = trapsIn(source).filter((trap) => !insideText(root, trap.place.offset ?? 0));
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

/** Lone CRs end lines, hard spaces indent, and tabs are levels where nothing else indents. */
function evenSpaces(source: Source, complaints: PlacedComplaint[]): string {
  const text = source.text
    .replace(/\r(?!\n)/g, "\n")
    .replace(/^[ \t\u00A0]*\u00A0/gm, (spaces) => spaces.replaceAll("\u00A0", " "));
  const indents = [...text.matchAll(/^([ \t]+)[^\s#]/gm)];
  const tabbed = indents.filter((match) => match[1]?.includes("\t"));
  const [firstTab] = tabbed;
  if (!firstTab || indents.some((match) => match[1]?.includes(" "))) return text;
  const place = placeIn(source, firstTab.index, firstTab[1]?.length ?? 1);
  complaints.push({ complaint: tabs(`${tabbed.length} of them`), place });
  return text.replace(/^\t+/gm, (run) => " ".repeat(run.length));
}

/** True when the offset lies within a scalar, where a # is text. */
function insideText(node: LogNode, offset: number): boolean {
  const { offset: start = 0, length = 0 } = node.place;
  if (node.kind === "text") return offset >= start && offset < start + length;
  if (node.kind === "map") return node.entries.some((entry) => insideText(entry.value, offset));
  return node.kind === "list" && node.items.some((item) => insideText(item, offset));
}
