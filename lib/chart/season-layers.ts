// Courses and their bands at places in px, for panels that have axes of their own.

import type { Layer, Scale } from "./frame.ts";
import type { SeasonPoint } from "./season-words.ts";
import type { SeriesStyle } from "./theme.ts";

const px = { field: "px", type: "quantitative", scale: null, axis: null };
const py = { field: "py", type: "quantitative", scale: null, axis: null };
const order = { field: "px", type: "quantitative" };
const py2 = { field: "py2", scale: null };

const finite = (points: readonly SeasonPoint[]): readonly SeasonPoint[] =>
  points.filter(({ value, low, high }) => [value, low, high].every(Number.isFinite));

export function bandAt(
  name: string,
  points: readonly SeasonPoint[],
  x: Scale,
  y: Scale,
  { colour }: SeriesStyle,
): Layer | undefined {
  const values = finite(points).map(({ pour, low, high }) => ({ px: x(pour), py: y(low), py2: y(high) }));
  if (values.length < 2) return undefined;
  return {
    name,
    data: { values },
    mark: { type: "area", interpolate: "linear", color: colour, opacity: 0.18, line: false },
    encoding: { x: px, y: py, y2: py2, order },
  };
}

export function courseAt(
  name: string,
  points: readonly SeasonPoint[],
  x: Scale,
  y: Scale,
  { colour, dash }: SeriesStyle,
): Layer | undefined {
  const values = finite(points).map(({ pour, value }) => ({ px: x(pour), py: y(value) }));
  if (values.length < 2) return undefined;
  return {
    name,
    data: { values },
    mark: { type: "line", interpolate: "linear", color: colour, strokeWidth: 1.8, strokeDash: dash },
    encoding: { x: px, y: py, order },
  };
}

export function whiskersAt(
  name: string,
  points: readonly SeasonPoint[],
  x: Scale,
  y: Scale,
  { colour }: SeriesStyle,
): Layer | undefined {
  const values = finite(points).flatMap(({ pour, low, high }) =>
    low < high ? [{ px: x(pour), py: y(low), px2: x(pour), py2: y(high) }] : [],
  );
  if (values.length === 0) return undefined;
  return {
    name,
    data: { values },
    mark: { type: "rule", color: colour, strokeWidth: 1.3 },
    encoding: { x: px, x2: { field: "px2", scale: null }, y: py, y2: py2 },
  };
}
