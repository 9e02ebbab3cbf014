// Parses a log with faults in it, one fault at a time, so that what only follows from a fault is not complained about.

import { moreFaults } from "./complaints-yaml.ts";
import type { LogNode } from "./node.ts";
import { blockAt, isNameWithoutColon, type SandBlock } from "./sand-blocks.ts";
import { indentOf, lineIndex, lineText, type Source } from "./source.ts";
import { strayLines } from "./stray-lines.ts";
import { parseYaml, type Span, type YamlFault } from "./yaml-document.ts";
import { type WordedFault, wordsForFault } from "./yaml-faults.ts";

export interface Recovered {
  readonly root: LogNode;
  readonly faults: readonly WordedFault[];
}

/** Faults that leave the tree as it should be: all are told at once. */
const harmless = new Set([
  "REPEATS",
  "ODD_KEY",
  "BAD_ALIAS",
  "TAG_RESOLVE_FAILED",
  "MULTIPLE_DOCS",
  "BAD_DQ_ESCAPE",
]);
/**
 * The first fault's line, with what hangs below it, is overwritten by blanks and the rest is parsed again,
 * until nothing is left to complain about. After twenty rounds (fewer in a large file: a bound on the time)
 * the sands that still hold faults are blanked as a whole.
 */
export function parseRecovering(source: Source, given: string, blocks: readonly SandBlock[]): Recovered {
  const rounds = Math.min(20, Math.max(2, Math.floor(5e5 / (given.length + 1))));
  const gone: Span[] = (source.lost ?? []).map((start) => [
    start,
    start + lineText(source, lineIndex(source, start)).length,
  ]);
  const parse = (text: string) => parseYaml(source, text, gone);
  const without = (text: string, spans: readonly Span[]): string => {
    gone.push(...spans);
    return blanked(text, spans);
  };
  let tree = parse(given);
  const strays = tree.faults.some((fault) => !harmless.has(fault.code)) ? strayLines(source, blocks) : [];
  const told: WordedFault[] = strays.slice(0, 20);
  const untold = strays[told.length];
  if (untold)
    told.push({ complaint: moreFaults(String(strays.length - told.length)), offset: untold.offset });
  const strayTold = told.length;
  const spans = strays.map(({ offset }) => straySpan(source, offset, blocks));
  let text = without(given, spans);
  if (strays.length > 0) tree = parse(text);
  for (let round = 0; ; round++) {
    const fatal = tree.faults.filter((fault) => !harmless.has(fault.code));
    const [first] = fatal;
    if (!first) break;
    if (round === rounds) {
      const { offset } = wordsForFault(first, source);
      told.push({ complaint: moreFaults(String(fatal.length)), offset });
      return withMild(source, parse(without(text, sandSpans(fatal, blocks))), told);
    }
    const worded = wordsForFault(first, source);
    const below = without(text, [worded.span ?? spanBelow(source, worded.offset, blocks)]);
    // What is blank already can only be cured further up: the whole sand goes.
    const next = below === text ? without(text, sandSpans([first], blocks)) : below;
    if (below !== text || told.length === strayTold) told.push(worded);
    if (next === text) break;
    text = next;
    tree = parse(text);
  }
  return withMild(source, tree, told);
}

function withMild(
  source: Source,
  tree: { root: LogNode; faults: readonly YamlFault[] },
  told: WordedFault[],
): Recovered {
  const mild = tree.faults.filter((fault) => harmless.has(fault.code)).slice(0, 20);
  return { root: tree.root, faults: [...told, ...mild.map((fault) => wordsForFault(fault, source))] };
}

function sandSpans(faults: readonly YamlFault[], blocks: readonly SandBlock[]): Span[] {
  return faults
    .flatMap((fault) => blockAt(blocks, fault.opening ?? fault.offset) ?? [])
    .map(({ start, end }) => [start, end]);
}

/** The line and the lines below it that are further in, but no further than its sand reaches. */
function spanBelow(source: Source, offset: number, blocks: readonly SandBlock[]): Span {
  const index = lineIndex(source, offset);
  const start = source.lineStarts[index] ?? 0;
  const last = blockAt(blocks, offset)?.end ?? source.text.length;
  const indent = indentOf(lineText(source, index));
  let next = index + 1;
  for (; next < source.lineStarts.length && (source.lineStarts[next] ?? 0) < last; next++) {
    const line = lineText(source, next);
    if (line.trim() !== "" && indentOf(line) <= indent) break;
  }
  // A tab may stand for any depth: only its own line is known to be wrong.
  const tabbed = /^ *\t/.test(lineText(source, index));
  return [
    start,
    tabbed ? start + lineText(source, index).length : (source.lineStarts[next] ?? source.text.length),
  ];
}

/** A stray row goes alone; a stray name goes with what hangs below it. */
function straySpan(source: Source, offset: number, blocks: readonly SandBlock[]): Span {
  const line = lineText(source, lineIndex(source, offset));
  const block = blockAt(blocks, offset);
  // A name that slipped takes its own lines along, wherever they stand.
  if (block && lineIndex(source, block.start) === lineIndex(source, offset)) return [block.start, block.end];
  if (/:\s*(#.*)?$/.test(line) || isNameWithoutColon(source, lineIndex(source, offset)))
    return spanBelow(source, offset, blocks);
  const start = offset - indentOf(line);
  return [start, start + line.length];
}

/** The text with the spans overwritten by spaces; line ends stay, so that every offset does. */
function blanked(text: string, spans: readonly Span[]): string {
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
