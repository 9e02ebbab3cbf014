// Courses, their bands and what was measured, at places in px: panels have axes of their own.

import type { Layer, Scale } from "./frame.ts";
import { pixelFill, pixelLine, whiskersAt } from "./pixel-layers.ts";
import type { SeasonPoint } from "./season-words.ts";
import type { SeriesStyle } from "./theme.ts";

const finite = (points: readonly SeasonPoint[]): readonly SeasonPoint[] =>
  points.filter(({ value, low, high }) => [value, low, high].every(Number.isFinite));

export function courseLayers(
  name: string,
  points: readonly SeasonPoint[],
  x: Scale,
  y: Scale,
  { colour, dash }: SeriesStyle,
): (Layer | undefined)[] {
  const known = finite(points);
  const band = known.map(({ pour, low, high }) => ({ px: x(pour), py: y(low), py2: y(high) }));
  const line = known.map(({ pour, value }) => ({ px: x(pour), py: y(value) }));
  return [
    pixelFill(`interval-${name}`, band, { color: colour, opacity: 0.18 }),
    pixelLine(`course-${name}`, [line], { color: colour, strokeWidth: 1.8, strokeDash: dash }),
  ];
}

export function measuredDoubt(
  name: string,
  points: readonly SeasonPoint[],
  x: Scale,
  y: Scale,
  { colour }: SeriesStyle,
): Layer | undefined {
  const bars = finite(points).flatMap(({ pour, low, high }) =>
    low < high ? [{ px: x(pour), py: y(low), px2: x(pour), py2: y(high) }] : [],
  );
  return bars.length === 0 ? undefined : whiskersAt(`doubt-${name}`, bars, { color: colour });
}
