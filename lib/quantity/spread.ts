// A number with its doubt, as a function of sources: anything that can be drawn.

import type { Source } from "./source.ts";

/** Which draws are wanted; made once for a whole evaluation by drawing(). */
export interface Drawing {
  /** How many draws there are in all: a power of two. */
  readonly count: number;
  /** Adds scale × score of the source, for draws start, start + 1, …, to each place of out. */
  add(source: Source, scale: number, out: Float64Array, start: number): void;
  /** False for a source that stays at its middle in every draw. Without it all may move. */
  readonly moves?: (source: Source) => boolean;
}

/** A number that may be off. Its draw i is a pure function of the scores that its sources have in draw i. */
export interface Spread {
  /** With every source at its middle. */
  readonly value: number;
  readonly sources: readonly Source[];
  /** All that its draws hang on, as a text: spreads of one content have the same draws. Undefined where none can tell. */
  readonly content?: string | undefined;
  /** Writes draws start, start + 1, … (as many as out is long). */
  fill(out: Float64Array, start: number, drawing: Drawing): void;
}

export function isSpread(x: unknown): x is Spread {
  return typeof x === "object" && x !== null && "fill" in x && "sources" in x;
}
