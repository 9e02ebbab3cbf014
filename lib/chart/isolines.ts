// Where a surface stands at a level: rings about all that is at or above it, on a grid of figures.

export interface Grid {
  /** Columns from left to right, rows from top to bottom; row by row. */
  readonly columns: number;
  readonly rows: number;
  readonly values: Float64Array;
}
/** A place in steps of the grid. */
export interface RingPoint {
  readonly x: number;
  readonly y: number;
}
export type Ring = readonly RingPoint[];
/** How far from one node to its neighbour the level lies, 0 to 1. */
export type Crossing = (from: RingPoint, to: RingPoint) => number;

/**
 * Closed rings about the part of the grid that is at or above the level, places straight between the nodes. A ring
 * about a hollow runs the other way round. NaN counts as below. What lies on the border closes along it.
 * crossing: where a ring passes between two nodes, if not straight between their figures.
 * Method: marching squares (Lorensen & Cline 1987, in the plane); a saddle is parted by the mean of its corners.
 * @example ringsAbove({ columns: 3, rows: 3, values: Float64Array.of(0, 0, 0, 0, 1, 0, 0, 0, 0) }, 0.5).length // 1
 */
export function ringsAbove(grid: Grid, level: number, crossing?: Crossing): Ring[] {
  const pieces = new Map<string, { readonly to: string; readonly at: RingPoint }[]>();
  for (let row = -1; row < grid.rows; row++)
    for (let column = -1; column < grid.columns; column++)
      for (const [from, to] of cellPieces(grid, level, column, row)) {
        const start = keyOf(from);
        const next = { to: keyOf(to), at: placeOf(grid, level, from, crossing) };
        pieces.set(start, [...(pieces.get(start) ?? []), next]);
      }
  const rings: Ring[] = [];
  for (const start of pieces.keys()) {
    const ring: RingPoint[] = [];
    let at = start;
    for (let next = pieces.get(at)?.pop(); next; next = pieces.get(at)?.pop()) {
      const last = ring.at(-1);
      if (!last || last.x !== next.at.x || last.y !== next.at.y) ring.push(next.at);
      at = next.to;
    }
    if (ring.length > 2) rings.push(ring);
  }
  return rings;
}

/** An edge between two neighbouring nodes: of the upper or left one, to the right or down. */
interface Edge {
  readonly column: number;
  readonly row: number;
  readonly down: boolean;
}
const keyOf = ({ column, row, down }: Edge) => `${column},${row},${down}`;

/** Outside the grid lies what is below every level. */
function valueAt({ columns, rows, values }: Grid, column: number, row: number): number {
  const inside = column >= 0 && row >= 0 && column < columns && row < rows;
  const value = inside ? values[row * columns + column]! : Number.NaN;
  return Number.isNaN(value) ? Number.NEGATIVE_INFINITY : value;
}

/** The pieces of the rings in the cell whose upper left node this is, with what is above the level on their right. */
function cellPieces(grid: Grid, level: number, column: number, row: number): [Edge, Edge][] {
  const corners = [
    valueAt(grid, column, row),
    valueAt(grid, column + 1, row),
    valueAt(grid, column + 1, row + 1),
    valueAt(grid, column, row + 1),
  ] as const;
  // Through nearly all cells no ring passes.
  const isAbove = corners[0] >= level;
  if (corners[1] >= level === isAbove && corners[2] >= level === isAbove && corners[3] >= level === isAbove)
    return [];
  const above = corners.map((value) => value >= level);
  const sides: Edge[] = [
    { column, row, down: false },
    { column: column + 1, row, down: true },
    { column, row: row + 1, down: false },
    { column, row, down: true },
  ];
  // Side k runs from corner k to corner k + 1. A ring leaves the cell's high part at a side that falls, clockwise.
  const falls = sides.flatMap((side, k) => (above[k] && !above[(k + 1) % 4] ? [{ side, k }] : []));
  const rises = sides.flatMap((side, k) => (!above[k] && above[(k + 1) % 4] ? [{ side, k }] : []));
  if (falls.length === 0) return [];
  if (falls.length === 1) return [[falls[0]!.side, rises[0]!.side]];
  const joined = corners.reduce((all, value) => all + value, 0) / 4 >= level;
  return falls.map(({ side, k }) => {
    const next = rises.find((rise) => rise.k === (joined ? (k + 1) % 4 : (k + 3) % 4))!;
    return [side, next.side];
  });
}

function placeOf(grid: Grid, level: number, { column, row, down }: Edge, crossing?: Crossing): RingPoint {
  const [toColumn, toRow] = down ? [column, row + 1] : [column + 1, row];
  const [from, to] = [valueAt(grid, column, row), valueAt(grid, toColumn, toRow)];
  const between = (): number =>
    crossing ? crossing({ x: column, y: row }, { x: toColumn, y: toRow }) : (level - from) / (to - from);
  // Nothing lies between a node and the outside: there the ring runs through the node.
  const share = from === Number.NEGATIVE_INFINITY ? 1 : to === Number.NEGATIVE_INFINITY ? 0 : between();
  return { x: column + (toColumn - column) * share, y: row + (toRow - row) * share };
}
