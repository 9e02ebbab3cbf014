// Where a fitted curve turns: a bar at the foot of its panel.

import { ends, within } from "./data.ts";
import type { Layer, Scale } from "./frame.ts";
import { pixelMarks, strokes } from "./layers.ts";
import type { Plot } from "./plot.ts";
import type { ResponsePanel } from "./response-input.ts";
import { colours, type SeriesStyle, seriesStyle } from "./theme.ts";

export const fittedStyle: SeriesStyle = { ...seriesStyle(0), colour: colours.fitted, shape: "triangle-down" };

/** A bar at the foot for where the curve turns; dashed to the sides where nothing bounds it. */
export function turningLayers(
  { optimum }: ResponsePanel,
  n: number,
  plot: Plot,
  x: Scale,
  course: readonly { readonly px: number; readonly py: number }[],
): (Layer | undefined)[] {
  if (!optimum) return [];
  const foot = plot.bottom - 6;
  const place = x(optimum.x);
  const seen = Number.isFinite(place) && place >= 0 && place <= plot.width;
  if (!optimum.bounded) {
    const open = [{ px: 0, py: foot, px2: plot.width, py2: foot }];
    return [
      strokes(`optimum-open-${n}`, open, {
        color: colours.fitted,
        strokeWidth: 3,
        strokeDash: [3, 5],
        opacity: 0.6,
      }),
    ];
  }
  const both = ends(optimum);
  const bar = both
    ? [
        {
          px: within(x(both.low), 0, plot.width),
          py: foot,
          px2: within(x(both.high), 0, plot.width),
          py2: foot,
        },
      ]
    : [];
  const curveAt = seen ? heightAt(course, place) : undefined;
  const stem = curveAt === undefined ? [] : [{ px: place, py: curveAt, px2: place, py2: foot }];
  return [
    strokes(`optimum-stem-${n}`, stem, { color: colours.fitted, strokeWidth: 1, strokeDash: [2, 3] }),
    strokes(`optimum-${n}`, bar, { color: colours.fitted, strokeWidth: 5, opacity: 0.5 }),
    seen ? pixelMarks(`optimum-place-${n}`, [{ px: place, py: foot }], fittedStyle, 50) : undefined,
  ];
}

function heightAt(course: readonly { readonly px: number; readonly py: number }[], px: number) {
  const next = course.findIndex((at) => at.px >= px);
  const [a, b] = [course[next - 1], course[next]];
  if (!b || (!a && b.px > px)) return undefined;
  if (!a || b.px === a.px) return b.py;
  return a.py + ((px - a.px) / (b.px - a.px)) * (b.py - a.py);
}
