// A long log parsed piece by piece, so that after an edit only the pieces that it changed are parsed again.

import { keepFlowCommas } from "./flow-commas.ts";
import type { Entry, MapNode } from "./node.ts";
import { type Shift, shiftedEntry } from "./node-shift.ts";
import { cutLog, type Piece } from "./piece-cut.ts";
import { placeIn, type Source, sourceOf } from "./source.ts";
import { parseYaml } from "./yaml-document.ts";

interface KnownPiece extends Piece {
  readonly text: string;
  readonly entry: Entry;
}

/** What was parsed last, and which entry has come of which by being moved. */
export interface PieceMemory {
  pieces: readonly KnownPiece[];
  readonly movedFrom: WeakMap<Entry, { readonly entry: Entry; readonly by: Shift }>;
  /** A text of fewer characters is not cut. */
  readonly shortest: number;
}

/** Of shorter logs a piece is most of it. */
const shortText = 1_000;

export const pieceMemory = (shortest = shortText): PieceMemory => ({
  pieces: [],
  movedFrom: new WeakMap(),
  shortest,
});

/**
 * The tree that parsing the whole gives, or undefined where a cut is in doubt or a piece has a fault of writing: what a
 * fault spoils is told from the whole. A piece whose text and place are as they were is the very same entry.
 */
export function treeOfPieces(source: Source, memory: PieceMemory): MapNode | undefined {
  const sections = source.text.length < memory.shortest ? undefined : cutLog(source);
  if (!sections) return undefined;
  const pieces = sections.flatMap(({ piece, entries = [] }) => [piece, ...entries]);
  const known = entriesFor(pieces, source, memory);
  if (!known) return undefined;
  memory.pieces = known;
  const byStart = new Map(known.map(({ start, entry }) => [start, entry]));
  return mapOver(
    source,
    sections.map(({ piece, entries }) => {
      const own = byStart.get(piece.start)!;
      if (!entries) return own;
      return {
        ...own,
        value: mapOver(
          source,
          entries.map(({ start }) => byStart.get(start)!),
        ),
      };
    }),
  );
}

/** From the name of the first entry to the end of the last. */
function mapOver(source: Source, entries: readonly Entry[]): MapNode {
  const start = entries[0]!.keyPlace.offset!;
  const last = entries.at(-1)!.value.place;
  return { kind: "map", entries, place: placeIn(source, start, last.offset! + last.length! - start) };
}

/** Those before and after what changed are taken over; undefined where one cannot be read alone. */
function entriesFor(
  pieces: readonly Piece[],
  source: Source,
  memory: PieceMemory,
): readonly KnownPiece[] | undefined {
  const { text } = source;
  const { pieces: before } = memory;
  const same = (old: KnownPiece | undefined, { start, end }: Piece): boolean =>
    old !== undefined && old.text.length === end - start && text.startsWith(old.text, start);
  let head = 0;
  while (head < pieces.length && same(before[head], pieces[head]!)) head += 1;
  let tail = 0;
  while (
    head + tail < Math.min(pieces.length, before.length) &&
    same(before[before.length - 1 - tail], pieces[pieces.length - 1 - tail]!)
  )
    tail += 1;
  const found: KnownPiece[] = [];
  for (const [k, piece] of pieces.entries()) {
    const old =
      k < head
        ? before[k]
        : k >= pieces.length - tail
          ? before[before.length - (pieces.length - k)]
          : undefined;
    const entry = old ? movedTo(old, piece, memory) : parsedAlone(piece, source);
    if (!entry) return undefined;
    found.push({ ...piece, text: old?.text ?? text.slice(piece.start, piece.end), entry });
  }
  return found;
}

function movedTo({ entry, start, line }: KnownPiece, to: Piece, { movedFrom }: PieceMemory): Entry {
  const by = { characters: to.start - start, lines: to.line - line };
  if (by.characters === 0 && by.lines === 0) return entry;
  const moved = shiftedEntry(entry, by);
  movedFrom.set(moved, { entry, by });
  return moved;
}

function parsedAlone({ start, end, line }: Piece, source: Source): Entry | undefined {
  const text = source.text.slice(start, end);
  const { root, faults } = parseYaml(sourceOf(source.file, text), keepFlowCommas(text));
  if (faults.length > 0 || root.kind !== "map" || root.entries.length !== 1) return undefined;
  return shiftedEntry(root.entries[0]!, { characters: start, lines: line });
}
