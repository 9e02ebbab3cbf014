// The layers of a control chart: limits, values with their ±, steps, events, a suggested change.

import { type ControlInput, type DayPoint, limitText } from "./control-input.ts";
import { within } from "./data.ts";
import type { Layer, Scale } from "./frame.ts";
import { crossLook, smallCross } from "./key.ts";
import { boxes, crossAt, pixelMarks, type Stroke, strokes, words } from "./layers.ts";
import { hollowMarks, pixelLine } from "./pixel-layers.ts";
import type { Plot } from "./plot.ts";
import { textWidth } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";

/** Above the upper plot, for the letters. */
export const eventLanePx = 16;

export interface Step {
  readonly day: number;
  readonly step: number;
  readonly signal: boolean;
}

export function stepsOf(points: readonly DayPoint[]): Step[] {
  const judged = points.filter((point) => point.judged);
  return judged.slice(1).map((point, i) => ({
    day: point.day,
    step: Math.abs(point.value - judged[i]!.value),
    signal: point.stepSignal === true,
  }));
}

/** The figures of the limits stand at the right of the plot. */
function limitLabels({ limits }: ControlInput): { at: number; text: string }[] {
  if (!limits) return [];
  return [limits.upper, limits.mean, limits.lower].map((at) => ({ at, text: limitText(limits, at) }));
}

export function labelRoom(input: ControlInput): number {
  return Math.ceil(Math.max(...limitLabels(input).map(({ text }) => textWidth(text, letterPx.label)))) + 10;
}

export function baseLayer({ limits }: ControlInput, plot: Plot, x: Scale): Layer | undefined {
  if (!limits) return undefined;
  const at = [{ px: x(limits.from), py: plot.top, px2: x(limits.baselineTo), py2: plot.bottom }];
  return boxes("band-baseline", at, { color: colours.band, opacity: 0.45 });
}

export function changeLayer({ change }: ControlInput, plot: Plot, x: Scale): Layer | undefined {
  if (!change) return undefined;
  const [from, to] = [x(change.low), x(change.high)];
  const slim = Math.max(0, 3 - (to - from)) / 2;
  return boxes("change", [{ px: from - slim, py: plot.top, px2: to + slim, py2: plot.bottom }], {
    color: colours.secondSand,
    opacity: 0.22,
  });
}

export function eventLayers({ events = [], pours = [] }: ControlInput, plots: readonly Plot[], x: Scale) {
  const plot = plots[0]!;
  const lines: Stroke[] = events.flatMap(({ day }) =>
    plots.map(({ top, bottom }) => ({ px: x(day), py: top, px2: x(day), py2: bottom })),
  );
  let last = Number.NEGATIVE_INFINITY;
  // The letter of a day that lies too near to the one before it moves on a little, or is left out.
  const letters = events.flatMap(({ day, letter }) => {
    const px = Math.max(x(day), last + textWidth(letter, letterPx.label) + 1);
    if (px - x(day) > 13) return [];
    last = px;
    return [{ px, py: plot.top - eventLanePx / 2, text: letter }];
  });
  const ticks: Stroke[] = pours.map((day) => ({
    px: x(day),
    py: plot.bottom - 5,
    px2: x(day),
    py2: plot.bottom,
  }));
  return [
    strokes("events", lines, { color: colours.quiet, strokeWidth: 1, strokeDash: [1.5, 2.5] }),
    words("event-letters", letters, { align: "center" }),
    strokes("pours", ticks, { color: colours.quiet, strokeWidth: 1.4 }),
  ];
}

export function limitLayers(input: ControlInput, plot: Plot, lower: Plot, x: Scale) {
  const { mean, upper, lower: low, from, to, rangeMean, rangeUpper } = input.limits!;
  const level = (of: Plot, value: number): Stroke => ({
    px: x(from),
    py: of.y(value),
    px2: x(to),
    py2: of.y(value),
  });
  const fitted = { color: colours.fitted };
  const labels = limitLabels(input).map(({ at, text }) => ({ px: plot.width + 5, py: plot.y(at), text }));
  return [
    strokes("limits", [level(plot, upper), level(plot, low)], {
      ...fitted,
      strokeWidth: 1.5,
      strokeDash: [6, 3],
    }),
    strokes("mean", [level(plot, mean)], { ...fitted, strokeWidth: 1.5 }),
    words("limit-labels", spreadOut(labels), { color: colours.fitted }),
    strokes("range-limit", [level(lower, rangeUpper)], { ...fitted, strokeWidth: 1.5, strokeDash: [6, 3] }),
    strokes("range-mean", [level(lower, rangeMean)], { ...fitted, strokeWidth: 1.5 }),
  ];
}

/** Labels from the top down, none nearer to the one above than a line. */
function spreadOut<T extends { readonly py: number }>(labels: readonly T[]): T[] {
  let last = Number.NEGATIVE_INFINITY;
  return labels.map((label) => {
    last = Math.max(label.py, last + 13);
    return { ...label, py: last };
  });
}

export function valueLayers(points: readonly DayPoint[], plot: Plot, x: Scale) {
  const at = (chosen: readonly DayPoint[]) =>
    chosen.map(({ day, value }) => ({ px: x(day), py: plot.y(value) }));
  const style = seriesStyle(0);
  const held = (value: number): number => within(value, ...plot.domain);
  const whiskers: Stroke[] = points.flatMap(({ day, low, high }) => {
    if (low === undefined || high === undefined || !(high > low)) return [];
    return [{ px: x(day), py: plot.y(held(low)), px2: x(day), py2: plot.y(held(high)) }];
  });
  const judged = points.filter((point) => point.judged);
  const rings = { ...style, colour: colours.ink, shape: "circle" };
  return [
    pixelLine("course", [at(judged)], { color: colours.measured, strokeWidth: 1, opacity: 0.5 }),
    strokes("doubt", whiskers, { color: colours.measured, strokeWidth: 1.2, opacity: 0.75 }),
    pixelMarks("values", at(judged), style, 26),
    hollowMarks("before", at(points.filter((point) => !point.judged)), style, 26),
    hollowMarks("signals", at(points.filter(({ signal }) => signal)), rings, 95),
  ];
}

/** What the log leaves out. */
export function crossLayer({ leftOut = [] }: ControlInput, plot: Plot, x: Scale): Layer | undefined {
  if (leftOut.length === 0) return undefined;
  const crosses = leftOut.flatMap(({ day, value }) => crossAt({ px: x(day), py: plot.y(value) }, smallCross));
  return strokes("left-out", crosses, crossLook);
}

export function stepLayers(steps: readonly Step[], plot: Plot, x: Scale) {
  const bars: Stroke[] = steps.map(({ day, step }) => ({
    px: x(day),
    py: plot.y(step),
    px2: x(day),
    py2: plot.bottom,
  }));
  const over = steps
    .filter(({ signal }) => signal)
    .map(({ day, step }) => ({ px: x(day), py: plot.y(step) }));
  return [
    strokes("steps", bars, { color: colours.measured, strokeWidth: 2 }),
    hollowMarks("step-signals", over, { ...seriesStyle(0), colour: colours.ink, shape: "circle" }, 60),
  ];
}
