// A figure of the heap over the days: single values with their limits on top, their moving range below.

import { type AxisName, axisTitle, columnUnit, decimalsOver, unitText } from "./axis-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { dayTicks } from "./control-days.ts";
import { type ControlInput, controlAlt, controlCaption, type DayPoint, dateText } from "./control-input.ts";
import { controlKey } from "./control-keys.ts";
import { cell, checkName, ends, nothing, within } from "./data.ts";
import { axisDomain, floorOf, ticksIn } from "./domain.ts";
import { boxFor, frame, type Layer, linearScale, type Scale } from "./frame.ts";
import { key } from "./key.ts";
import { boxes, pixelMarks, type Stroke, strokes, words } from "./layers.ts";
import { hollowMarks, pixelLine } from "./pixel-layers.ts";
import { type Plot, plotAt, plotFrame, tickRoom, titleLinePx, titleLines, titleWords } from "./plot.ts";
import { figure, textWidth } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";

export type { ControlInput } from "./control-input.ts";

const eventLanePx = 16;

/**
 * Draws values by their day with their ±, the mean and the limits of a baseline over the days that they hold for, and
 * under them the step from each value to the next with its own mean and limit. Values in a signal are ringed; events
 * are dotted lines with a letter that the page explains; pours are ticks at the foot; a change that is suggested is a
 * shade over the days that it may have fallen on.
 *
 * Without `limits` the points stand alone, and there is no lower plot: this is how fewer than eight values are drawn. Values that are no
 * finite numbers are left out and counted in the text. A percentage without its basis, ends the wrong way round: Misuse.
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2 (individuals over moving range).
 *
 * @example controlChart({ name: "diary-moisture", property: "moisture", unit: "%", basis: "damp mass",
 *   points: [{ day: 20700, value: 3.3 }, { day: 20707, value: 3.5 }] })
 */
export function controlChart(input: ControlInput): Chart {
  checkName(input.name);
  const axis: AxisName = { ...input, title: input.property };
  unitText(axis);
  for (const point of input.points) ends(point);
  const known = input.points.filter(({ value }) => Number.isFinite(value));
  const sound = { ...input, points: known };
  const decimals = decimalsOver(spanOf(known.map(({ value }) => value)));
  const chart = {
    name: input.name,
    caption: input.caption ?? controlCaption(sound, axis, decimals),
    alt: controlAlt(sound, axis, decimals, input.points.length - known.length),
  };
  const unit = columnUnit(axis);
  return {
    ...chart,
    spec: (width) => spec(chart, sound, axis, width),
    table: {
      columns: [
        { name: "date" },
        { name: input.property, ...unit },
        { name: "low end of 95 %", ...unit },
        { name: "high end of 95 %", ...unit },
        { name: "step from the one before", ...unit },
        { name: "signal" },
      ],
      rows: input.points.map((point, i) => [
        dateText(point.day),
        cell(point.value),
        cell(point.low),
        cell(point.high),
        point.judged && input.points[i - 1]?.judged
          ? cell(Math.abs(point.value - input.points[i - 1]!.value))
          : null,
        point.signal ? "yes" : "",
      ]),
    },
  };
}

const spanOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: ControlInput,
  axis: AxisName,
  width: number,
): VegaLiteSpec {
  const { points, limits } = input;
  const [height, lowerHeight] = [Math.round(within(width * 0.24, 130, 180)), 64];
  const values = valueDomain(input);
  const steps = stepsOf(points);
  const most = Math.max(0, ...steps.map(({ step }) => step), limits?.rangeUpper ?? 0);
  const stepDomain = axisDomain([0, most], [], 0);
  const ticks = points.length === 0 ? [] : ticksIn(values, Math.floor(height / 34));
  const stepTicks = ticksIn(stepDomain, 3);
  const left = tickRoom([...ticks, ...(limits ? stepTicks : [])]);
  const right = limits ? labelRoom(input) : 16;
  const innerWidth = Math.floor(width) - left - right;
  const days = dayDomain(input);
  const x = linearScale(days, innerWidth);

  const above = key(controlKey(input), innerWidth + left);
  const title = titleLines(axisTitle(axis), innerWidth + left);
  const titleTop = above.heightPx === 0 ? 0 : above.heightPx + 4;
  const lane = input.events?.length ? eventLanePx : 4;
  const plot = plotAt(titleTop + title.length * titleLinePx + 6 + lane, height, innerWidth, values, ticks);
  const stepTitle = titleLines(
    axisTitle({ ...axis, title: `step from one value to the next` }),
    innerWidth + left,
  );
  const stepTop = plot.bottom + 14;
  const lower = plotAt(
    stepTop + stepTitle.length * titleLinePx + 5,
    lowerHeight,
    innerWidth,
    stepDomain,
    stepTicks,
  );
  const foot = limits ? lower.bottom : plot.bottom;
  const box = boxFor(width, { height: foot + 38, left, right, top: 8, bottom: 6 });
  const marks = dayTicks(days, innerWidth);
  const tickPx = marks.map(({ day }) => x(day));
  return frame(chart, box, [
    baseLayer(input, plot, x),
    changeLayer(input, plot, x),
    ...plotFrame("1", plot, tickPx),
    ...(limits ? plotFrame("2", lower, tickPx) : []),
    ...eventLayers(input, limits ? [plot, lower] : [plot], x),
    ...(limits ? limitLayers(input, plot, lower, x) : []),
    ...valueLayers(points, plot, x),
    ...(limits ? stepLayers(steps, lower, x) : []),
    titleWords("title-1", title, left, titleTop),
    limits ? titleWords("title-2", stepTitle, left, stepTop) : undefined,
    ...above.layers(-left + 2, 9),
    words(
      "days",
      marks.map(({ day, text }) => ({ px: x(day), py: foot + 12, text })),
      { align: "center" },
    ),
    words(
      "years",
      marks.flatMap(({ day, year }) => (year ? [{ px: x(day), py: foot + 27, text: year }] : [])),
      { align: "center", color: colours.quiet },
    ),
    points.length === 0 ? nothing({ ...box, height }) : undefined,
  ]);
}

function valueDomain({ points, limits }: ControlInput): [number, number] {
  const must = points.flatMap(({ value }) => [value]);
  const may = points.flatMap(({ low, high }) => [low, high]);
  const lines = limits ? [limits.upper, limits.lower] : [];
  return axisDomain(
    [...must, ...lines],
    [{ values: may, reach: limits ? 0.4 : 1 }],
    floorOf([...must, ...lines]),
  );
}

function dayDomain({ points, events = [], pours = [] }: ControlInput): [number, number] {
  const days = [...points, ...events].map(({ day }) => day).concat(pours);
  if (days.length === 0) return [0, 1];
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const air = Math.max(1, (last - first) * 0.02);
  return [first - air, last + air];
}

interface Step {
  readonly day: number;
  readonly step: number;
  readonly signal: boolean;
}

function stepsOf(points: readonly DayPoint[]): Step[] {
  const judged = points.filter((point) => point.judged);
  return judged.slice(1).map((point, i) => ({
    day: point.day,
    step: Math.abs(point.value - judged[i]!.value),
    signal: point.stepSignal === true,
  }));
}

/** The figures of the limits stand at the right of the plot. */
function limitLabels({ limits, points }: ControlInput): { at: number; text: string }[] {
  if (!limits) return [];
  const places = decimalsOver(spanOf(points.map(({ value }) => value)) || limits.upper - limits.lower);
  return [limits.upper, limits.mean, limits.lower].map((at) => ({
    at,
    text: figure(at, Math.max(0, places - 1)),
  }));
}

function labelRoom(input: ControlInput): number {
  return Math.ceil(Math.max(...limitLabels(input).map(({ text }) => textWidth(text, letterPx.label)))) + 10;
}

function baseLayer({ limits }: ControlInput, plot: Plot, x: Scale): Layer | undefined {
  if (!limits) return undefined;
  const at = [{ px: x(limits.from), py: plot.top, px2: x(limits.baselineTo), py2: plot.bottom }];
  return boxes("band-baseline", at, { color: colours.band, opacity: 0.45 });
}

function changeLayer({ change }: ControlInput, plot: Plot, x: Scale): Layer | undefined {
  if (!change) return undefined;
  const [from, to] = [x(change.low), x(change.high)];
  const slim = Math.max(0, 3 - (to - from)) / 2;
  return boxes("change", [{ px: from - slim, py: plot.top, px2: to + slim, py2: plot.bottom }], {
    color: colours.secondSand,
    opacity: 0.22,
  });
}

function eventLayers({ events = [], pours = [] }: ControlInput, plots: readonly Plot[], x: Scale) {
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

function limitLayers(input: ControlInput, plot: Plot, lower: Plot, x: Scale) {
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

function valueLayers(points: readonly DayPoint[], plot: Plot, x: Scale) {
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

function stepLayers(steps: readonly Step[], plot: Plot, x: Scale) {
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
