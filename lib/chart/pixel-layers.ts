// Layers at places in px of the box, for charts that lay out several plots in one box.

import type { Layer } from "./frame.ts";
import { type Stroke, strokes } from "./layers.ts";
import type { SeriesStyle } from "./theme.ts";

const place = (field: string) => ({ field, type: "quantitative", scale: null, axis: null });

export interface At {
  readonly px: number;
  readonly py: number;
}

/** Straight pieces from place to place, from left to right, for each of the runs. */
export function pixelLine(name: string, runs: readonly (readonly At[])[], look: object): Layer | undefined {
  const long = runs.filter((run) => run.length > 1);
  if (long.length === 0) return undefined;
  return {
    name,
    data: { values: long.flatMap((run, i) => run.map(({ px, py }) => ({ px, py, run: i }))) },
    mark: { type: "line", interpolate: "linear", strokeWidth: 1.8, ...look },
    encoding: { x: place("px"), y: place("py"), detail: { field: "run", type: "nominal" } },
  };
}

/** Lines from place to place in the order that they are given in, each closed. */
export function closedLines(
  name: string,
  rings: readonly (readonly At[])[],
  look: object,
): Layer | undefined {
  if (rings.length === 0) return undefined;
  return ordered(
    name,
    rings.flatMap((ring, run) => ring.map(({ px, py }, i) => ({ px, py, i, run }))),
    { strokeWidth: 1.2, ...look },
  );
}

/** What lies within rings; one that runs the other way round is a hole in the one about it. */
export function filledRings(
  name: string,
  rings: readonly (readonly At[])[],
  look: object,
): Layer | undefined {
  const [outer] = rings;
  if (!outer?.[0]) return undefined;
  // One path: to each further ring and back again along the same line, which holds no area.
  const home = outer[0];
  const path = [...outer, home, ...rings.slice(1).flatMap((ring) => [...ring, ring[0]!, home])];
  return ordered(
    name,
    path.map(({ px, py }, i) => ({ px, py, i, run: 0 })),
    { strokeWidth: 0, ...look },
  );
}

function ordered(name: string, values: readonly object[], look: object): Layer {
  return {
    name,
    data: { values },
    mark: { type: "line", interpolate: "linear-closed", ...look },
    encoding: {
      x: place("px"),
      y: place("py"),
      order: { field: "i", type: "quantitative" },
      detail: { field: "run", type: "nominal" },
    },
  };
}

/** The fill between two lines. */
export function pixelFill(
  name: string,
  at: readonly (At & { readonly py2: number })[],
  look: object,
): Layer | undefined {
  if (at.length < 2) return undefined;
  return {
    name,
    data: { values: at.map(({ px, py, py2 }) => ({ px, py, py2 })) },
    mark: { type: "area", interpolate: "linear", line: false, ...look },
    encoding: { x: place("px"), y: place("py"), y2: { field: "py2" } },
  };
}

/** Marks that are not filled. */
export function hollowMarks(
  name: string,
  at: readonly At[],
  style: SeriesStyle,
  size = 44,
): Layer | undefined {
  if (at.length === 0) return undefined;
  return {
    name,
    data: { values: at.map(({ px, py }) => ({ px, py })) },
    mark: {
      type: "point",
      filled: false,
      opacity: 1,
      size,
      shape: style.shape,
      stroke: style.colour,
      strokeWidth: 1.6,
    },
    encoding: { x: place("px"), y: place("py") },
  };
}

/** ± bars, upright or level, with a short cap at each end. */
export function whiskersAt(name: string, at: readonly Stroke[], look: object): Layer | undefined {
  const half = 3.5;
  const all = at.flatMap((bar) => {
    const level = bar.py === bar.py2;
    const cap = (px: number, py: number): Stroke =>
      level ? { px, py: py - half, px2: px, py2: py + half } : { px: px - half, py, px2: px + half, py2: py };
    return [bar, cap(bar.px, bar.py), cap(bar.px2, bar.py2)];
  });
  return strokes(name, all, { strokeWidth: 1.3, ...look });
}
