// Small layers that every chart is put together from. Words go in as data, never as field names or expressions.

import type { Layer } from "./frame.ts";
import { colours, letterPx, type SeriesStyle } from "./theme.ts";

const x = { field: "x", type: "quantitative", axis: null };
const y = { field: "y", type: "quantitative", axis: null };
/** A place in px of the box, whatever the axes count. */
const px = { field: "px", type: "quantitative", scale: null, axis: null };
const py = { field: "py", type: "quantitative", scale: null, axis: null };
const to = (field: string) => ({ field });

export interface Words {
  readonly px: number;
  readonly py: number;
  readonly text: string;
}

/** Words at places in px; nothing when there are none. */
export function words(name: string, at: readonly Words[], look: object = {}): Layer | undefined {
  if (at.length === 0) return undefined;
  return {
    name,
    data: { values: at.map((each) => ({ px: each.px, py: each.py, text: each.text })) },
    mark: { type: "text", align: "left", baseline: "middle", fontSize: letterPx.label, ...look },
    encoding: { x: px, y: py, text: { field: "text", type: "nominal" } },
  };
}

export interface Stroke {
  readonly px: number;
  readonly py: number;
  readonly px2: number;
  readonly py2: number;
}

/** Strokes between places in px. */
export function strokes(name: string, at: readonly Stroke[], look: object = {}): Layer | undefined {
  if (at.length === 0) return undefined;
  return {
    name,
    data: { values: at },
    mark: { type: "rule", color: colours.quiet, ...look },
    encoding: { x: px, x2: to("px2"), y: py, y2: to("py2") },
  };
}

/** The two strokes of a cross over a mark. */
export function crossAt({ px, py }: { readonly px: number; readonly py: number }, half = 6): Stroke[] {
  return [
    { px: px - half, py: py - half, px2: px + half, py2: py + half },
    { px: px - half, py: py + half, px2: px + half, py2: py - half },
  ];
}

/** Filled boxes between places in px. */
export function boxes(name: string, at: readonly Stroke[], look: object = {}): Layer | undefined {
  if (at.length === 0) return undefined;
  return {
    name,
    data: { values: at },
    mark: { type: "rect", color: colours.band, ...look },
    encoding: { x: px, x2: to("px2"), y: py, y2: to("py2") },
  };
}

/** Marks at places in px. */
export function pixelMarks(
  name: string,
  at: readonly { readonly px: number; readonly py: number }[],
  style: SeriesStyle,
  size = 44,
): Layer | undefined {
  const values = at.map((each) => ({ px: each.px, py: each.py }));
  return filledPoints(name, values, { x: px, y: py }, style, size);
}

/** Marks at values of both axes. */
export function marks(
  name: string,
  at: readonly { readonly x: number; readonly y: number }[],
  style: SeriesStyle,
  size = 44,
): Layer | undefined {
  const values = at.map((each) => ({ x: each.x, y: each.y }));
  return filledPoints(name, values, { x, y }, style, size);
}

function filledPoints(
  name: string,
  values: readonly object[],
  encoding: object,
  { shape, colour }: SeriesStyle,
  size: number,
): Layer | undefined {
  if (values.length === 0) return undefined;
  return {
    name,
    data: { values },
    mark: { type: "point", filled: true, opacity: 1, size, shape, color: colour },
    encoding,
  };
}

/** Straight pieces from point to point, in the order of x. */
export function line(
  name: string,
  at: readonly { readonly x: number; readonly y: number }[],
  style: SeriesStyle,
): Layer | undefined {
  if (at.length < 2) return undefined;
  return {
    name,
    data: { values: at.map((each) => ({ x: each.x, y: each.y })) },
    mark: {
      type: "line",
      interpolate: "linear",
      color: style.colour,
      strokeWidth: 1.8,
      strokeDash: style.dash,
    },
    encoding: { x, y },
  };
}

export interface UpDown {
  readonly x: number;
  readonly y: number;
  readonly y2: number;
}

/** The light fill between two lines. */
export function fill(name: string, at: readonly UpDown[], colour: string): Layer | undefined {
  if (at.length < 2) return undefined;
  return {
    name,
    data: { values: at },
    mark: { type: "area", interpolate: "linear", color: colour, opacity: 0.18, line: false },
    encoding: { x, y, y2: to("y2") },
  };
}

/** ± bars: an upright rule with a short cap at each end. */
export function whiskers(name: string, at: readonly UpDown[], colour: string): (Layer | undefined)[] {
  if (at.length === 0) return [];
  const caps = at.flatMap((each) => [each.y, each.y2].map((end) => ({ x: each.x, y: end })));
  return [
    {
      name,
      data: { values: at },
      mark: { type: "rule", color: colour, strokeWidth: 1.3 },
      encoding: { x, y, y2: to("y2") },
    },
    {
      name: `${name}-ends`,
      data: { values: caps },
      mark: { type: "tick", orient: "horizontal", color: colour, thickness: 1.3, size: 7, opacity: 1 },
      encoding: { x, y },
    },
  ];
}
