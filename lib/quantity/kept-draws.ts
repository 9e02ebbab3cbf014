// Columns of draws that are wanted again and again, run after run: scores of curves, biases of rigs.

import { drawing, drawsOf } from "./drawing.ts";
import { kept } from "./kept.ts";
import type { Spread } from "./spread.ts";

/** Values that a store counts in characters of two bytes. */
const columns = kept<Float64Array>(4_000_000, (column) => 4 * column.length);

/**
 * drawsOf(spread, its own drawing) for reading: the column is shared, and must not be written to.
 * count: a power of two.
 */
export function keptDraws(spread: Spread, count: number): Float64Array {
  const draw = () => drawsOf(spread, drawing(spread.sources, { count }));
  const { content } = spread;
  return content === undefined ? draw() : keptColumn(`${count} draws of ${content}`, draw);
}

/** The first of count draws of a spread, where no more are wanted; for reading, as those of keptDraws. */
export function keptFirstDraws(spread: Spread, first: number, count: number): Float64Array {
  const draw = () => {
    const column = new Float64Array(first);
    spread.fill(column, 0, drawing(spread.sources, { count }));
    return column;
  };
  const { content } = spread;
  return content === undefined ? draw() : keptColumn(`first ${first} of ${count} draws of ${content}`, draw);
}

/** A column that hangs on nothing but what its name says; for reading. */
export function keptColumn(name: string, make: () => Float64Array): Float64Array {
  const before = columns.get(name);
  if (before) return before;
  const made = make();
  columns.set(name, made);
  return made;
}
