// A surface on a grid of the plot: its levels as rings in px, and the part of the plot that nobody tried.

import { axisDomain, floorOf, ticksIn } from "./domain.ts";
import { linearScale } from "./frame.ts";
import { convexHull, inHull } from "./hull.ts";
import { type Crossing, type Grid, type Ring, ringsAbove } from "./isolines.ts";
import type { At } from "./pixel-layers.ts";
import type { SurfaceChartInput, SurfaceValue } from "./surface-input.ts";

const columns = 49;
const rows = 37;
/** Halvings of a step of the grid when the edge of what was tried is looked for: a hundredth of a pixel. */
const halvings = 10;

export interface SurfacePlace extends SurfaceValue {
  readonly x: number;
  readonly other: number;
}
export interface SurfaceField {
  readonly xDomain: readonly [number, number];
  readonly otherDomain: readonly [number, number];
  /** Round figures between the lowest and the highest mean that was borne out. */
  readonly levels: readonly number[];
  /** Nodes of the grid where the surface is borne out. */
  readonly places: readonly SurfacePlace[];
  tried(x: number, other: number): boolean;
  /** Rings about all that is at or above a level, px of a plot. */
  rings(level: number, box: { readonly width: number; readonly height: number }): At[][];
  /** The outline of what was tried, px of a plot. */
  outline(box: { readonly width: number; readonly height: number }): At[][];
}

export function surfaceField(input: SurfaceChartInput): SurfaceField {
  const { batches, at } = input;
  const xs = batches.map(({ x }) => x);
  const others = batches.map(({ y }) => y);
  const xDomain = axisDomain(xs, [], floorOf(xs));
  const otherDomain = axisDomain(others, [], floorOf(others));
  const hull = convexHull(batches.map(({ x, y }) => ({ x, y })));
  const tried = input.tried ?? ((x: number, other: number) => inHull(hull, { x, y: other }));
  const xAt = (column: number) => xDomain[0] + ((xDomain[1] - xDomain[0]) * column) / (columns - 1);
  const otherAt = (row: number) => otherDomain[1] - ((otherDomain[1] - otherDomain[0]) * row) / (rows - 1);
  const nodes = Array.from({ length: columns * rows }, (_, k) => {
    const [x, other] = [xAt(k % columns), otherAt(Math.floor(k / columns))];
    const value = at(x, other);
    return {
      x,
      other,
      value: value && Number.isFinite(value.mean) ? value : undefined,
      inside: tried(x, other),
    };
  });
  const grid = (figure: (node: (typeof nodes)[number]) => number): Grid => ({
    columns,
    rows,
    values: Float64Array.from(nodes, figure),
  });
  const means = grid(({ value }) => value?.mean ?? Number.NaN);
  const known = grid(({ inside, value }) => (inside && value ? 1 : 0));
  const crossing: Crossing = (from, to) => {
    const inside = (share: number) =>
      tried(xAt(from.x + (to.x - from.x) * share), otherAt(from.y + (to.y - from.y) * share));
    const first = inside(0);
    let [low, high] = [0, 1];
    for (let i = 0; i < halvings; i++) {
      const middle = (low + high) / 2;
      if (inside(middle) === first) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const places = nodes.flatMap(({ x, other, value, inside }) =>
    value && inside ? [{ x, other, ...value }] : [],
  );
  const borne = places.map(({ mean }) => mean);
  const span: [number, number] = borne.length === 0 ? [0, 0] : [Math.min(...borne), Math.max(...borne)];
  const inPx =
    ({ width, height }: { width: number; height: number }) =>
    (ring: Ring): At[] => {
      const [px, py] = [linearScale([0, columns - 1], width), linearScale([0, rows - 1], height)];
      return ring.map((point) => ({ px: px(point.x), py: py(point.y) }));
    };
  // For every width once: rings stand in steps of the grid.
  const ringsKnown = new Map<number, readonly Ring[]>();
  const ringsAt = (level: number): readonly Ring[] => {
    const rings = ringsKnown.get(level) ?? ringsAbove(means, level);
    ringsKnown.set(level, rings);
    return rings;
  };
  let outlineKnown: readonly Ring[] | undefined;
  const outlineOf = (): readonly Ring[] => {
    outlineKnown ??= ringsAbove(known, 0.5, crossing);
    return outlineKnown;
  };
  return {
    xDomain,
    otherDomain,
    levels: levelsIn(span),
    places,
    tried,
    rings: (level, box) => ringsAt(level).map(inPx(box)),
    outline: (box) => outlineOf().map(inPx(box)),
  };
}

/** Round figures; one at the very top or bottom would be a speck. */
function levelsIn([low, high]: readonly [number, number]): number[] {
  if (!(high > low)) return [];
  const speck = 0.03 * (high - low);
  return ticksIn([low, high], 6).filter((level) => level > low + speck && level < high - speck);
}
