// What is remembered from one reading of a log to the next, after an edit.

import { type BatchMemory, batchMemory } from "./batch-memory.ts";
import { type PieceMemory, pieceMemory } from "./parse-pieces.ts";

export interface ReadingMemory {
  readonly pieces: PieceMemory;
  readonly batches: BatchMemory;
}

/** shortest: a text of fewer characters is read whole. */
export function readingMemory(shortest?: number): ReadingMemory {
  const pieces = pieceMemory(shortest);
  return { pieces, batches: batchMemory(pieces) };
}
