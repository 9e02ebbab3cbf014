// The words and the table of a typical curve.

import { axisTitle, capital, columnUnit, decimalsOver, rangeText, withInterval } from "./axis-words.ts";
import type { ChartTable } from "./chart.ts";
import { cell } from "./data.ts";
import { figure } from "./text.ts";
import { thinned } from "./thinned.ts";
import type { TypicalCurve, TypicalCurveInput } from "./typical-input.ts";

/** Drawn dashed: nobody's measurement. */
export const dashed = (tag: string): boolean => tag === "from memory" || tag === "our own";

function spanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
}

function allY({ curves, published, batches }: TypicalCurveInput): number[] {
  return [
    ...curves.flatMap(({ points }) => points.map(({ value }) => value)),
    ...published.map(({ y }) => y),
    ...batches.map(({ y }) => y),
  ];
}

export function typicalCaption({
  axis,
  property,
  curves,
  published,
  batches,
  conditions,
}: TypicalCurveInput): string {
  const parts = [
    curves.length === 1 ? "; the fill is the curve's own range, no promise for another sand" : "",
    curves.length > 1 ? "; the fills are the ranges of the ways, darker where they agree" : "",
    curves.length === 0 ? "; no curve is known here, only points" : "",
    published.length > 0 ? "; hollow marks are published" : "",
    batches.length > 0 ? "; filled marks are your batches" : "",
  ];
  const at = conditions === undefined ? "" : ` ${conditions}`;
  return `${capital(property.title)} against ${axis.title}${at}${parts.join("")}.`;
}

function curveText(curve: TypicalCurve, { axis, property }: TypicalCurveInput): string {
  const { points, label, tag, source, holds } = curve;
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return `${capital(label)}: no figure here.`;
  const x = decimalsOver(spanOf(points.map((at) => at.x)));
  const y = decimalsOver(spanOf(points.flatMap(({ low, high }) => [low, high])));
  const at = (point: typeof first) =>
    `${figure(point.value, y)} (${rangeText(point.low, point.high, y)}) at ${figure(point.x, x)}`;
  const ends = first === last ? at(first) : `${at(first)} to ${at(last)}`;
  const range = `The range holds: ${holds}.`;
  return `${capital(label)} (${tag}): ${property.title} ${ends} of ${axis.title}. ${range} ${source}.`;
}

export function typicalAlt(input: TypicalCurveInput): string {
  const { axis, property, curves, published, batches, conditions } = input;
  const y = decimalsOver(spanOf(allY(input)));
  const x = decimalsOver(spanOf([...published, ...batches].map((each) => each.x)));
  const at = conditions === undefined ? "" : `, ${conditions}`;
  return [
    `${capital(axisTitle(property))}, against ${axisTitle(axis)}${at}.`,
    ...curves.map((curve) => curveText(curve, input)),
    ...batches.map(
      (each) =>
        `Your batch ${each.label}: ${withInterval(each.y, { low: each.yLow, high: each.yHigh }, y)} at ${withInterval(each.x, { low: each.xLow, high: each.xHigh }, x)}.`,
    ),
    ...published.map(
      (each) => `Published, ${each.label} (${each.tag}): ${figure(each.y, y)} at ${figure(each.x, x)}.`,
    ),
  ].join(" ");
}

export function typicalTable({ axis, property, curves, published, batches }: TypicalCurveInput): ChartTable {
  const unit = columnUnit(property);
  return {
    columns: [
      { name: "what" },
      { name: axis.title, ...columnUnit(axis) },
      { name: property.title, ...unit },
      { name: "low end", ...unit },
      { name: "high end", ...unit },
      { name: "tag" },
      { name: "source" },
    ],
    rows: [
      ...batches.map((each) => [
        each.label,
        cell(each.x),
        cell(each.y),
        cell(each.yLow),
        cell(each.yHigh),
        "your batch",
        "",
      ]),
      ...published.map((each) => [
        each.label,
        cell(each.x),
        cell(each.y),
        cell(each.low),
        cell(each.high),
        each.tag,
        each.source,
      ]),
      ...curves.flatMap(({ label, points, tag, source }) =>
        thinned(points).map(({ x, value, low, high }) => [
          label,
          cell(x),
          cell(value),
          cell(low),
          cell(high),
          tag,
          source,
        ]),
      ),
    ],
  };
}
