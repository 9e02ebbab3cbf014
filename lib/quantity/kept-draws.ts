// Columns of draws that are wanted again and again, run after run: scores of curves, biases of rigs.

import { drawing, drawsOf } from "./drawing.ts";
import { keptColumn } from "./kept-column.ts";
import type { Spread } from "./spread.ts";

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
