// A long log shortened to the lines that an edit is about and those beside them.

import { beginsBelow, blocksIn, fewLines, type LineBlock, oddIndents } from "./edit-lines.ts";
import type { Splice } from "./edit-splice.ts";
import type { LogEdit, LogPath } from "./edit-types.ts";
import { plainName } from "./node.ts";
import { lineIndex, type Source, sourceOf } from "./source.ts";

/** Of shorter texts an entry is most of it. */
const shortText = 1_000;

export interface Abridged {
  readonly text: string;
  /** The edit as it reads in the shorter text. */
  readonly edit: LogEdit;
  /** A splice of the shorter text as one of the whole; undefined where lines that were left out lie within it. */
  readonly inWhole: (splice: Splice) => Splice | undefined;
}

/** Undefined where the log is short, or its lines do not tell their places surely. */
export function abridged(name: string, text: string, edit: LogEdit): Abridged | undefined {
  if (text.length < shortText || oddIndents(text)) return undefined;
  const source = sourceOf(name, text);
  const kept = edit.kind === "write" ? forPlace(source, edit) : forPath(source, edit);
  if (!kept) return undefined;
  const start = (line: number) => source.lineStarts[line] ?? text.length;
  const spans = merged(kept.lines).map(([from, to]) => [start(from), start(to)] as const);
  if (spans.reduce((sum, [from, to]) => sum + to - from, 0) > text.length / 2) return undefined;
  const toWhole = (offset: number): number => {
    let left = offset;
    for (const [from, to] of spans) {
      if (left < to - from) return from + left;
      left -= to - from;
    }
    return spans.at(-1)![1] + left;
  };
  const fromWhole = (offset: number): number => {
    let before = 0;
    for (const [from, to] of spans) {
      if (offset <= to) return before + offset - from;
      before += to - from;
    }
    return before;
  };
  const short = spans.map(([from, to]) => text.slice(from, to)).join("");
  return {
    text: short,
    edit:
      edit.kind === "write"
        ? { ...edit, at: { ...edit.at, offset: fromWhole(edit.at.offset ?? 0) } }
        : kept.edit,
    inWhole: (splice) => {
      const start = toWhole(splice.start);
      const end = start + splice.end - splice.start;
      const same = text.slice(start, end) === short.slice(splice.start, splice.end);
      return same ? { ...splice, start, end } : undefined;
    },
  };
}

interface Kept {
  readonly lines: readonly Lines[];
  readonly edit: LogEdit;
}
type Lines = readonly [from: number, to: number];

const linesOf = ({ from, to }: LineBlock): Lines => [from, to];
const isNamed = (block: LineBlock, name: string): boolean =>
  block.name !== undefined && plainName(block.name) === plainName(name);

/** The entry that holds the place, within the one that holds it, and so on; and others that have the new name already. */
function forPlace(source: Source, edit: LogEdit & { kind: "write" }): Kept | undefined {
  if (edit.at.offset === undefined) return undefined;
  const line = lineIndex(source, edit.at.offset);
  const lines: Lines[] = [];
  let blocks = blocksIn(source, 0, source.lineStarts.length, -1);
  for (;;) {
    const block = blocks?.find(({ from, to }) => from <= line && line < to);
    if (!blocks || !block) break;
    if (line === block.from)
      lines.push(...blocks.filter((one) => one !== block && isNamed(one, edit.text)).map(linesOf));
    const within = contents(source, block);
    if (!within || line < within[0]!.from) return { lines: [...lines, linesOf(block)], edit };
    lines.push([block.from, within[0]!.from]);
    blocks = within;
  }
  return undefined;
}

/** Entries below a name, where they are many lines and each has its own. */
function contents(source: Source, block: LineBlock): LineBlock[] | undefined {
  const { from, to, indent, dashed } = block;
  if (dashed || to - from < fewLines || !beginsBelow(source, from)) return undefined;
  const blocks = blocksIn(source, from + 1, to, indent);
  return blocks && blocks.length > 1 ? blocks : undefined;
}

/** The entries on the path, others of the same name, and what stands beside the last of them. */
function forPath(source: Source, edit: Exclude<LogEdit, { kind: "write" }>): Kept | undefined {
  const path = edit.kind === "add" ? edit.to : edit.path;
  const ends = edit.kind === "add" ? path.length : path.length - 1;
  const lines: Lines[] = [];
  const shorter: (string | number)[] = [];
  let blocks = blocksIn(source, 0, source.lineStarts.length, -1);
  for (let depth = 0; blocks; depth++) {
    const at: number | undefined = depth === ends ? placeAmong(blocks, edit) : indexIn(blocks, path[depth]!);
    if (at === undefined) return undefined;
    if (depth === ends) {
      if (depth === 0) return undefined;
      const names =
        edit.kind === "add" ? [edit.name ?? "", ...Object.keys(edit.entries)] : [String(path[depth])];
      const kept = blocks.filter(
        (one, k) => Math.abs(k - at + 0.5) < 2 || names.some((same) => isNamed(one, same)),
      );
      const index = kept.filter((one) => blocks!.indexOf(one) < at).length;
      return { lines: [...lines, ...kept.map(linesOf)], edit: renumbered(edit, shorter, index) };
    }
    const block: LineBlock = blocks[at]!;
    const step = path[depth]!;
    if (typeof step === "string") {
      lines.push(...blocks.filter((one) => one !== block && isNamed(one, step)).map(linesOf));
    }
    shorter.push(typeof step === "number" ? 0 : step);
    const within = contents(source, block);
    if (!within) {
      return {
        lines: [...lines, linesOf(block)],
        edit: withPath(edit, [...shorter, ...path.slice(depth + 1)]),
      };
    }
    lines.push([block.from, within[0]!.from]);
    blocks = within;
  }
  return undefined;
}

function indexIn(blocks: readonly LineBlock[], step: string | number): number | undefined {
  if (typeof step === "number") return blocks[step]?.dashed ? step : undefined;
  const index = blocks.findIndex(({ name }) => name === step);
  return index < 0 ? undefined : index;
}

/** Index of the entry to be removed, or before which one is added. */
function placeAmong(
  blocks: readonly LineBlock[],
  edit: Exclude<LogEdit, { kind: "write" }>,
): number | undefined {
  if (edit.kind === "remove") return indexIn(blocks, edit.path.at(-1)!);
  return Math.min(Math.max(0, edit.at ?? blocks.length), blocks.length);
}

function renumbered(edit: Exclude<LogEdit, { kind: "write" }>, holder: LogPath, index: number): LogEdit {
  if (edit.kind === "add") return { ...edit, to: holder, at: index };
  const last = edit.path.at(-1)!;
  return { ...edit, path: [...holder, typeof last === "number" ? index : last] };
}

const withPath = (edit: Exclude<LogEdit, { kind: "write" }>, path: LogPath): LogEdit =>
  edit.kind === "add" ? { ...edit, to: path } : { ...edit, path };

function merged(lines: readonly Lines[]): Lines[] {
  const result: Lines[] = [];
  for (const [from, to] of [...lines].sort((a, b) => a[0] - b[0])) {
    const last = result.at(-1);
    if (last && from <= last[1]) result[result.length - 1] = [last[0], Math.max(last[1], to)];
    else result.push([from, to]);
  }
  return result;
}
