// The place on the axis where a new batch most surely meets all ranges at once.

import type { CurveToDraw } from "./curve-draws.ts";
import { lnChance, type RangeAndScatter } from "./ln-chance.ts";
import { PlaceSearch } from "./place-search.ts";

/** One property with the range that the founder wants. */
export interface AimedCurve extends CurveToDraw {
  readonly low: number;
  readonly high: number;
}

/** The place where the product of the properties' chances is largest, their means as told for each row of the grid. */
export function bestPlace(
  curves: readonly RangeAndScatter[],
  grid: readonly number[],
  mean: (property: number, row: number) => number,
): number {
  const chances = curves.map(lnChance);
  let best = Number.NEGATIVE_INFINITY;
  let at = grid[0]!;
  for (let row = 0; row < grid.length; row++) {
    let all = 0;
    for (let k = 0; k < chances.length; k++) all += chances[k]!.of(mean(k, row));
    if (all > best) {
      best = all;
      at = grid[row]!;
    }
  }
  return at;
}

/**
 * The best place for every draw of the mean curves, as its number on the grid; of two alike the first. coefficients:
 * columns for the powers 1, u and, if curved, u². near: a place for each draw that is about as good, from which others
 * fall behind soon: it moves no answer; left out, the best of the draw before.
 */
export function bestRows(
  curves: readonly AimedCurve[],
  drawn: readonly { readonly coefficients: readonly Float64Array[] }[],
  grid: readonly number[],
  near?: ArrayLike<number>,
): Uint16Array {
  const columns = drawn.map(({ coefficients }) => coefficients);
  const count = columns[0]![0]!.length;
  const search = new PlaceSearch(curves, grid);
  const best = new Uint16Array(count);
  let before = grid.length >>> 1;
  for (let i = 0; i < count; i++) {
    for (let k = 0; k < columns.length; k++) {
      const [b0, b1, b2] = columns[k] as readonly Float64Array[];
      search.set(k, b0![i]!, b1![i]!, b2 ? b2[i]! : 0);
    }
    before = near ? search.best(near[i]!, 1) : search.best(before, 3);
    best[i] = before;
  }
  return best;
}

/** Rows of a grid as places on the axis. */
export function placesOn(grid: readonly number[], rows: Uint16Array): Float64Array {
  const places = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) places[i] = grid[rows[i]!]!;
  return places;
}
