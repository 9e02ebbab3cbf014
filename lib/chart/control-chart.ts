// A figure of the heap over the days: single values with their limits on top, their moving range below.

import { dateOfDay } from "../numbers/days.ts";
import { type AxisName, axisTitle, columnUnit, decimalsOver, unitText } from "./axis-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { dayTicks } from "./control-days.ts";
import { type ControlInput, controlAlt, controlCaption } from "./control-input.ts";
import { controlKey } from "./control-keys.ts";
import {
  baseLayer,
  changeLayer,
  crossLayer,
  eventLanePx,
  eventLayers,
  labelRoom,
  limitLayers,
  stepLayers,
  stepsOf,
  valueLayers,
} from "./control-layers.ts";
import { cell, checkName, ends, nothing, within } from "./data.ts";
import { axisDomain, floorOf, ticksIn } from "./domain.ts";
import { boxFor, frame, linearScale } from "./frame.ts";
import { key } from "./key.ts";
import { words } from "./layers.ts";
import { plotAt, plotFrame, tickRoom, titleLinePx, titleLines, titleWords } from "./plot.ts";
import { colours } from "./theme.ts";

export type { ControlInput } from "./control-input.ts";

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
    caption: input.caption ?? controlCaption(sound, axis),
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
      rows: [
        ...input.points.map((point, i) => [
          dateOfDay(point.day),
          cell(point.value),
          cell(point.low),
          cell(point.high),
          point.judged && input.points[i - 1]?.judged
            ? cell(Math.abs(point.value - input.points[i - 1]!.value))
            : null,
          point.signal ? "yes" : "",
        ]),
        ...(input.leftOut ?? []).map(({ day, value, low, high }) => [
          dateOfDay(day),
          cell(value),
          cell(low),
          cell(high),
          null,
          "left out",
        ]),
      ],
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
    crossLayer(input, plot, x),
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

function valueDomain({ points, limits, leftOut = [] }: ControlInput): [number, number] {
  const must = [...points, ...leftOut].flatMap(({ value }) => [value]);
  const may = points.flatMap(({ low, high }) => [low, high]);
  const lines = limits ? [limits.upper, limits.lower] : [];
  return axisDomain(
    [...must, ...lines],
    [{ values: may, reach: limits ? 0.4 : 1 }],
    floorOf([...must, ...lines]),
  );
}

function dayDomain({ points, leftOut = [], events = [], pours = [] }: ControlInput): [number, number] {
  const days = [...points, ...leftOut, ...events].map(({ day }) => day).concat(pours);
  if (days.length === 0) return [0, 1];
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const air = Math.max(1, (last - first) * 0.02);
  return [first - air, last + air];
}
