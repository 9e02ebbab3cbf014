// Parses a log and keeps a fault to the line or the sand that it stands in.

import type { Issue, Place } from "../issue.ts";
import { hashRow, moreFaults, tabs } from "./complaints-yaml.ts";
import type { LogNode } from "./node.ts";
import { blockAt, type SandBlock } from "./sand-blocks.ts";
import { lineIndex, lineText, placeIn, type Source } from "./source.ts";
import { trapsIn } from "./traps.ts";
import { parseYaml, type YamlFault, type YamlTree } from "./yaml-document.ts";
import { wordsForFault } from "./yaml-faults.ts";

export interface PlacedComplaint {
  readonly complaint: Issue;
  readonly place: Place;
}
export interface ParsedLog {
  readonly root: LogNode;
  readonly complaints: readonly PlacedComplaint[];
}

const faultLimit = 20;

/**
 * 1 what is only a matter of spaces is put right, character for character, so that offsets stay;
 * 2 parse; 3 every faulty line is blanked and the rest parsed again; 4 if that fails, every faulty sand is blanked;
 * 5 rows that are comments are looked for.
 */
export function parseLog(source: Source, blocks: readonly SandBlock[]): ParsedLog {
  const complaints: PlacedComplaint[] = [];
  const text = evenSpaces(source, complaints);
  const first = parseYaml(source, text);
  const worded = first.faults.map((fault) => wordsForFault(fault, source));

  let { root } = first;
  const fatal = first.faults.filter((fault) => !harmless.has(fault.code));
  if (fatal.length > 0) {
    const offsets = fatal.map((fault) => wordsForFault(fault, source).offset);
    const withoutLines = blanked(
      text,
      offsets.map((offset) => lineSpan(source, offset)),
    );
    const second = parseYaml(source, withoutLines);
    root = second.root;
    const left = second.faults.filter((fault) => !harmless.has(fault.code));
    if (left.length > 0) root = withoutSands(source, withoutLines, [...left, ...fatal], blocks, first).root;
  }

  const traps = trapsIn(source).filter((trap) => !insideText(root, trap.place.offset ?? 0));
  complaints.push(...traps);
  const trapLines = new Set(
    traps.filter((trap) => trap.complaint.code === hashRow("", "", "").code).map((trap) => trap.place.line),
  );
  const seen = new Set<number | undefined>(trapLines);
  let count = 0;
  worded.forEach(({ complaint, offset }, index) => {
    const place = placeIn(source, offset, 1);
    if (seen.has(place.line)) return;
    seen.add(place.line);
    count += 1;
    if (count <= faultLimit) complaints.push({ complaint, place });
    else if (count === faultLimit + 1) {
      complaints.push({ complaint: moreFaults(String(worded.length - index)), place });
    }
  });
  return { root, complaints };
}

/** Faults that leave the tree as it should be. */
const harmless = new Set([
  "REPEATS",
  "ODD_KEY",
  "BAD_ALIAS",
  "TAG_RESOLVE_FAILED",
  "MULTIPLE_DOCS",
  "BAD_DQ_ESCAPE",
]);

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

function withoutSands(
  source: Source,
  text: string,
  faults: readonly YamlFault[],
  blocks: readonly SandBlock[],
  fallback: YamlTree,
): YamlTree {
  const spoiled = faults.flatMap((fault) => blockAt(blocks, fault.opening ?? fault.offset) ?? []);
  if (spoiled.length === 0) return fallback;
  return parseYaml(
    source,
    blanked(
      text,
      spoiled.map((block) => [block.start, block.end] as const),
    ),
  );
}

function lineSpan(source: Source, offset: number): readonly [number, number] {
  const index = lineIndex(source, offset);
  const start = source.lineStarts[index] ?? 0;
  return [start, start + lineText(source, index).length];
}

/** The text with the spans overwritten by spaces; line ends stay. */
function blanked(text: string, spans: readonly (readonly [number, number])[]): string {
  let result = "";
  let done = 0;
  for (const [start, end] of [...spans].sort((a, b) => a[0] - b[0])) {
    if (end <= done) continue;
    const from = Math.max(start, done);
    result += text.slice(done, from) + text.slice(from, end).replace(/[^\r\n\uFEFF]/g, " ");
    done = end;
  }
  return result + text.slice(done);
}

/** True when the offset lies within a scalar, where a # is text. */
function insideText(node: LogNode, offset: number): boolean {
  const { offset: start = 0, length = 0 } = node.place;
  if (node.kind === "text") return offset >= start && offset < start + length;
  if (node.kind === "map") return node.entries.some((entry) => insideText(entry.value, offset));
  return node.kind === "list" && node.items.some((item) => insideText(item, offset));
}
