// Courses that are known as ranges, over one axis: each a line in a fill, told apart by colour, dash and name.

import { type AxisName, axisTitle, capital, columnUnit, decimalsOver, rangeText } from "./axis-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { cell, checkName, ends, nothing, within } from "./data.ts";
import { axisDomain, ticksIn } from "./domain.ts";
import { boxFor, frame, type Layer, linearScale, type Scale } from "./frame.ts";
import { type KeyEntry, key } from "./key.ts";
import { markedPlaces, markedRowPx } from "./marked-places.ts";
import { pixelFill, pixelLine } from "./pixel-layers.ts";
import { footAxis, plotAt, plotFrame, tickRoom, titleLinePx, titleLines, titleWords } from "./plot.ts";
import { figure, wrap } from "./text.ts";
import { letterPx, type SeriesStyle, seriesStyle } from "./theme.ts";

export interface RangeCourse {
  readonly label: string;
  readonly points: readonly {
    readonly x: number;
    /** Undefined: the range has no middle. */
    readonly value?: number;
    readonly low: number;
    readonly high: number;
  }[];
}

export interface RangeCoursesInput {
  readonly name: string;
  readonly axis: AxisName;
  readonly property: AxisName;
  readonly courses: readonly RangeCourse[];
  /** Places on the level axis that have a name: a section, the end of the night. */
  readonly marked?: readonly { readonly x: number; readonly label: string }[];
  readonly caption: string;
}

const right = 16;
const fillOpacity = 0.2;

/**
 * Draws each course as a fill from its low to its high end with its middle as a line, from the axis's beginning.
 * Without a point nothing is drawn and the chart says so. A low end above its high end throws Misuse.
 * @example rangeCourses({ name: "water", axis: { title: "hours", unit: "h" }, property: { title: "water lost", unit: "kg" },
 *   courses: [{ label: "uncovered", points: [{ x: 0, low: 0, high: 0 }, { x: 16, low: 0.3, high: 1.2 }] }], caption: "…" })
 */
export function rangeCourses(input: RangeCoursesInput): Chart {
  checkName(input.name);
  for (const { points } of input.courses) for (const point of points) ends(point);
  const { name, caption, axis, property, courses } = input;
  const chart = { name, caption, alt: altOf(input) };
  const unit = columnUnit(property);
  return {
    ...chart,
    spec: (width) => spec(chart, input, width),
    table: {
      columns: [
        { name: "what" },
        { name: axis.title, ...columnUnit(axis) },
        { name: property.title, ...unit },
        { name: "low end", ...unit },
        { name: "high end", ...unit },
      ],
      rows: courses.flatMap(({ label, points }) =>
        points.map(({ x, value, low, high }) => [label, cell(x), cell(value), cell(low), cell(high)]),
      ),
    },
  };
}

function altOf({ axis, property, courses, marked = [] }: RangeCoursesInput): string {
  const told = courses.map(({ label, points }) => {
    const last = points.at(-1);
    if (!last) return `${capital(label)}: no figures.`;
    const places = decimalsOver(last.high - last.low || last.high);
    return `${capital(label)}: ${rangeText(last.low, last.high, places)} at ${figure(last.x, 1)}.`;
  });
  const names = marked.map(({ x, label }) => `${label} at ${figure(x, 1)}`);
  return [
    `${capital(axisTitle(property))}, against ${axisTitle(axis)}, as ranges.`,
    ...told,
    ...(names.length > 0 ? [`Marked: ${names.join(", ")}.`] : []),
  ].join(" ");
}

const styleOf = (place: number): SeriesStyle => ({ ...seriesStyle(place), fillOpacity });

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  { courses, axis, property, marked = [] }: RangeCoursesInput,
  width: number,
): VegaLiteSpec {
  const points = courses.flatMap((course) => course.points);
  const height = Math.round(within(width * 0.42, 190, 280));
  const yDomain = axisDomain([0, ...points.map(({ high }) => high)], [], 0);
  const yTicks = ticksIn(yDomain, 5);
  const left = tickRoom(yTicks);
  const innerWidth = Math.floor(width) - left - right;
  const xDomain = axisDomain([0, ...points.map(({ x }) => x), ...marked.map(({ x }) => x)], [], 0);
  const xTicks = ticksIn(xDomain, Math.min(9, Math.floor(innerWidth / 45)));
  const x = linearScale(xDomain, innerWidth);
  const plot = plotAt(0, height, innerWidth, yDomain, yTicks);
  const entries = courses.map(
    ({ label }, i): KeyEntry => ({ text: label, sample: "rule", style: styleOf(i) }),
  );
  const keyRows = key(entries, innerWidth + left);
  const yTitle = titleLines(axisTitle(property), innerWidth + left);
  const xTitle = wrap(axisTitle(axis), innerWidth, letterPx.axis, 2);
  const places = markedPlaces(marked, x, innerWidth, height);
  const titleTop = -(yTitle.length * titleLinePx + 6 + places.rows * markedRowPx);
  const top = keyRows.heightPx - titleTop;
  const box = boxFor(width, { height, left, right, top, bottom: 26 + xTitle.length * 15 });
  return frame(chart, box, [
    footAxis(xTitle, xDomain, xTicks),
    ...plotFrame("y", plot, xTicks.map(x)),
    ...courses.flatMap((course, i) => courseLayers(course, i, x, plot.y)),
    ...places.layers,
    titleWords("y-title", yTitle, left, titleTop),
    ...keyRows.layers(-left + 2, -top + 10),
    points.length === 0 ? nothing(box) : undefined,
  ]);
}

function courseLayers({ points }: RangeCourse, place: number, x: Scale, y: Scale): (Layer | undefined)[] {
  const style = styleOf(place);
  const n = place + 1;
  const low = points.map((at) => ({ px: x(at.x), py: y(at.low) }));
  const high = points.map((at) => ({ px: x(at.x), py: y(at.high) }));
  const middle = points.flatMap(({ x: at, value }) =>
    value === undefined ? [] : [{ px: x(at), py: y(value) }],
  );
  return [
    pixelFill(
      `range-${n}`,
      high.map((at, i) => ({ ...at, py2: low[i]!.py })),
      { color: style.colour, opacity: fillOpacity },
    ),
    pixelLine(`edges-${n}`, [low, high], {
      color: style.colour,
      strokeWidth: 1,
      strokeDash: style.dash,
      opacity: 0.8,
    }),
    pixelLine(`middle-${n}`, [middle], { color: style.colour, strokeDash: style.dash }),
  ];
}
