// One panel of a trial: bands behind, the fitted curve with its intervals, the measured points in front.

import { clippedFill } from "./clip-course.ts";
import { type Ends, ends, within } from "./data.ts";
import { axisDomain, floorOf, ticksIn } from "./domain.ts";
import type { Layer, Scale } from "./frame.ts";
import { boxes, crossAt, pixelMarks, type Stroke, strokes, words } from "./layers.ts";
import { hollowMarks, pixelFill, pixelLine, whiskersAt } from "./pixel-layers.ts";
import type { Plot } from "./plot.ts";
import { alongLine, pointLabels, type Taken } from "./point-labels.ts";
import type { ResponsePanel, TypicalCourse } from "./response-input.ts";
import { turningLayers } from "./response-turning.ts";
import { weak } from "./strip-words.ts";
import { colours, seriesStyle, smallestLetterPx } from "./theme.ts";

export const curveOpacity = 0.3;
export const newBatchOpacity = 0.13;
const courseDashes = [[], [7, 3], [2, 2.5], [9, 3, 2, 3]];
export const courseDash = (place: number) => courseDashes[place % courseDashes.length]!;

/** How far the upright axis of a panel reaches: points, curve, aim and usual courses are seen whole, bands and intervals may be cut. */
export function panelDomain(panel: ResponsePanel): [number, number] {
  const { points, curve = [], aim, band, typical = [] } = panel;
  const measured = points.flatMap(({ y, yLow, yHigh }) => [y, yLow, yHigh]);
  const fitted = curve.flatMap(({ low, high, newLow, newHigh }) => [low, high, newLow, newHigh]);
  const usual = typical.flatMap((course) => course.points.flatMap(({ low, high }) => [low, high]));
  const must = [...measured, ...curve.map(({ mean }) => mean), ...usual, aim?.low, aim?.high];
  const maySee = [
    { values: fitted, reach: 0.4 },
    { values: [band?.low, band?.high], reach: 1 },
  ];
  return axisDomain(must, maySee, floorOf(must));
}

/** True where a panel has nothing at all to show. */
export function isEmpty({ points, curve = [], band, typical = [] }: ResponsePanel): boolean {
  return (
    points.length === 0 && curve.length === 0 && !band && typical.every((one) => one.points.length === 0)
  );
}

export function panelTicks(domain: readonly [number, number], heightPx: number): readonly number[] {
  return ticksIn(domain, Math.round(heightPx / 32));
}

/** What stands behind the window and the grid. */
export function behind(panel: ResponsePanel, n: number, plot: Plot, x: Scale): (Layer | undefined)[] {
  const { band, typical = [] } = panel;
  const y = clampedY(plot);
  const layers: (Layer | undefined)[] = [];
  if (band) {
    const [py, py2] = [y(band.high), y(band.low)];
    const light = weak(band) ? { opacity: 0.55, strokeDash: [4, 3] } : {};
    if (py2 > py)
      layers.push(
        boxes(`band-${n}`, [{ px: 0, py, px2: plot.width, py2 }], {
          stroke: colours.bandEdge,
          strokeWidth: 1,
          ...light,
        }),
      );
  }
  for (const [i, course] of typical.entries()) {
    const at = courseAt(course, plot, x);
    const look = { color: colours.bandEdge, strokeWidth: 1.4, strokeDash: courseDash(i) };
    const fill = { color: colours.band, opacity: weak(course) ? 0.55 : 1 };
    const wide = at.some(({ py, py2 }) => py2 - py > 0.5);
    const low = at.map(({ px, py2 }) => ({ px, py: py2 }));
    layers.push(
      wide ? pixelFill(`band-${n}-${i + 1}`, at, fill) : undefined,
      pixelLine(`course-${n}-${i + 1}-high`, [at], look),
      wide ? pixelLine(`course-${n}-${i + 1}-low`, [low], look) : undefined,
    );
  }
  return layers;
}

function courseAt({ points }: TypicalCourse, { y }: Plot, x: Scale) {
  return points.map((each) => ({ px: x(each.x), py: y(each.high), py2: y(each.low) }));
}

/** Aim, curve, points and their names. `uprights` are places of lines from top to bottom, which names keep off. */
export function inFront(
  panel: ResponsePanel,
  n: number,
  plot: Plot,
  x: Scale,
  uprights: readonly number[],
): (Layer | undefined)[] {
  const { points, curve = [] } = panel;
  const { width, domain } = plot;
  const y = clampedY(plot);
  const px = (value: number) => within(x(value), 0, width);
  const area = (name: string, of: (at: (typeof curve)[number]) => Ends, opacity: number) =>
    pixelFill(
      `${name}-${n}`,
      clippedFill(
        curve.flatMap((at) => {
          const both = ends(of(at));
          return both ? [{ px: px(at.x), py: plot.y(both.high), py2: plot.y(both.low) }] : [];
        }),
        plot.top,
        plot.bottom,
      ),
      { color: colours.fitted, opacity },
    );
  const edges = [panel.aim?.low, panel.aim?.high]
    .filter((end): end is number => end !== undefined && end >= domain[0] && end <= domain[1])
    .map((end) => ({ px: 0, py: y(end), px2: width, py2: y(end) }));
  const course = curve.map((at) => ({ px: px(at.x), py: y(at.mean) }));
  const placed = points.map((point) => ({ ...point, px: px(point.x), py: y(point.y) }));
  const whiskers = placed.map((point) => {
    const level = ends({ low: point.xLow, high: point.xHigh });
    const upright = ends({ low: point.yLow, high: point.yHigh });
    const bars: Stroke[] = [];
    if (level) bars.push({ px: px(level.low), py: point.py, px2: px(level.high), py2: point.py });
    if (upright) bars.push({ px: point.px, py: y(upright.low), px2: point.px, py2: y(upright.high) });
    return { bars, leftOut: point.leftOut === true };
  });
  const doubt = (leftOut: boolean) =>
    whiskers.filter((each) => each.leftOut === leftOut).flatMap((each) => each.bars);
  const taken: Taken[] = [
    ...placed.map((at) => round(at.px, at.py, 5)),
    ...whiskers.flatMap(({ bars }) => bars.map((bar) => along(bar, 4))),
    ...edges.map((bar) => along(bar, 2)),
    ...uprights.map((at) => along({ px: at, py: plot.top, px2: at, py2: plot.bottom }, 2)),
    ...alongLine(course),
    ...(panel.typical ?? []).flatMap((each) => {
      const at = courseAt(each, plot, x);
      return [...alongLine(at), ...alongLine(at.map((one) => ({ px: one.px, py: one.py2 })))];
    }),
  ];
  const room = { left: 0, right: width, top: plot.top + 1, bottom: plot.bottom - (panel.optimum ? 12 : 1) };
  const style = seriesStyle(0);
  return [
    area("new-batch", ({ newLow, newHigh }) => ({ low: newLow, high: newHigh }), newBatchOpacity),
    area("interval", ({ low, high }) => ({ low, high }), curveOpacity),
    strokes(`aim-${n}`, edges, { color: colours.ink, strokeWidth: 1.3, strokeDash: [6, 4] }),
    pixelLine(`line-${n}`, [course], { color: colours.fitted, strokeWidth: 2 }),
    ...turningLayers(panel, n, plot, x, course),
    whiskersAt(`doubt-left-out-${n}`, doubt(true), { color: style.colour, opacity: 0.6 }),
    whiskersAt(`doubt-${n}`, doubt(false), { color: style.colour }),
    hollowMarks(
      `left-out-${n}`,
      placed.filter((each) => each.leftOut),
      style,
    ),
    strokes(`outline-crosses-${n}`, placed.filter((each) => each.why !== undefined).flatMap(crossAt), {
      color: style.colour,
      strokeWidth: 1.6,
    }),
    pixelMarks(
      `points-${n}`,
      placed.filter((each) => !each.leftOut),
      style,
    ),
    words(`names-${n}`, pointLabels(placed, room, taken), {
      fontSize: smallestLetterPx,
    }),
  ];
}

function clampedY({ y, top, bottom }: Plot): Scale {
  return (value) =>
    value === Number.POSITIVE_INFINITY
      ? top
      : value === Number.NEGATIVE_INFINITY
        ? bottom
        : within(y(value), top, bottom);
}
function round(px: number, py: number, radius: number): Taken {
  return { left: px - radius, right: px + radius, top: py - radius, bottom: py + radius };
}
function along({ px, py, px2, py2 }: Stroke, half: number): Taken {
  return {
    left: Math.min(px, px2) - half,
    right: Math.max(px, px2) + half,
    top: Math.min(py, py2) - half,
    bottom: Math.max(py, py2) + half,
  };
}
