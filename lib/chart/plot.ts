// One plot of several in a box: its upright axis, its grid and its title, drawn by us in px; and the axis at the foot.

import { ticksIn } from "./domain.ts";
import { axesLayer, type Layer, linearScale, type Scale } from "./frame.ts";
import { type Stroke, strokes, type Words, words } from "./layers.ts";
import { figure, textWidth, wrap } from "./text.ts";
import { colours, letterPx } from "./theme.ts";

export interface Plot {
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  /** px of the box. */
  readonly y: Scale;
  readonly domain: readonly [number, number];
  readonly ticks: readonly number[];
}

export const titleLinePx = 16;

export function plotAt(
  top: number,
  height: number,
  width: number,
  domain: readonly [number, number],
  ticks: readonly number[],
): Plot {
  const scale = linearScale([domain[1], domain[0]], height);
  return { top, bottom: top + height, width, y: (value) => top + scale(value), domain, ticks };
}

/** Room that the widest of the tick labels needs at the left of a plot, px. */
export function tickRoom(ticks: readonly number[]): number {
  return Math.ceil(Math.max(18, ...ticks.map((tick) => textWidth(tickText(tick), letterPx.axis)))) + 10;
}

function tickText(tick: number): string {
  return figure(tick, 6);
}

/** The title's lines, from the chart's left edge to its right. */
export function titleLines(title: string, widthPx: number): string[] {
  return wrap(title, widthPx, letterPx.axis, 3);
}

export function titleWords(name: string, lines: readonly string[], left: number, top: number) {
  const at: Words[] = lines.map((text, i) => ({ px: -left + 2, py: top + (i + 0.5) * titleLinePx, text }));
  return words(name, at, { fontSize: letterPx.axis });
}

/** Grid, upright axis and foot line of a plot; at the given places of the level axis. */
export function plotFrame(name: string, plot: Plot, xTicksPx: readonly number[]): (Layer | undefined)[] {
  const { top, bottom, width, ticks, y } = plot;
  const grid: Stroke[] = [
    ...xTicksPx.map((px) => ({ px, py: top, px2: px, py2: bottom })),
    ...ticks.map((tick) => ({ px: 0, py: y(tick), px2: width, py2: y(tick) })),
  ];
  const axis: Stroke[] = [
    { px: 0, py: top, px2: 0, py2: bottom },
    { px: 0, py: bottom, px2: width, py2: bottom },
    ...ticks.map((tick) => ({ px: -4, py: y(tick), px2: 0, py2: y(tick) })),
  ];
  const labels = ticks.map((tick) => ({ px: -7, py: y(tick), text: tickText(tick) }));
  return [
    strokes(`grid-${name}`, grid, { color: colours.rule, strokeWidth: 1, opacity: 0.5 }),
    strokes(`axis-${name}`, axis, { strokeWidth: 1 }),
    words(`ticks-${name}`, labels, { align: "right", fontSize: letterPx.axis }),
  ];
}

/** Ticks of a level axis that leave room between their labels. */
export function levelTicks(domain: readonly [number, number], widthPx: number): readonly number[] {
  const widest = Math.max(...domain.map((end) => textWidth(figure(end, 2), letterPx.axis)));
  return ticksIn(domain, Math.min(9, Math.floor(widthPx / (widest + 26))));
}

/** The level axis at the foot of the box, and no upright one. */
export function footAxis(
  title: readonly string[],
  domain: readonly [number, number],
  ticks: readonly number[],
  grid = false,
): Layer {
  return axesLayer(
    {
      scale: { domain, nice: false, zero: false },
      axis: { title, values: ticks, format: "~f", grid, labelFlush: false, titlePadding: 6 },
    },
    { scale: { domain: [0, 1] }, axis: null },
  );
}
