// Strength against minutes of mulling: readings, their curve with its interval, and how surely the time is known.

import { invariant } from "../issue.ts";
import type { Chart, ChartTable } from "./chart.ts";
import { cell, checkName, ends } from "./data.ts";
import { firstSands } from "./first-sands.ts";
import type { MullingChartInput, MullingSeries } from "./mulling-input.ts";
import { mullingSpec } from "./mulling-spec.ts";
import { figure, listed } from "./text.ts";
import { thinned } from "./thinned.ts";

/**
 * Draws green compression strength (from 0) against minutes mulled: marks for readings, a line for the fitted curve, its 95 % interval
 * as a light fill, and for each way of mulling a bar at the foot for the time to the share of full bond; an open end has an arrow.
 *
 * Readings without a figure are left out; an end above the other, or a name that cannot be a file name, throws Misuse. Of more than four
 * ways the first four are drawn. Without any reading the chart says so in its middle.
 *
 * @example mullingChart({ name: "mulling", unit: "kPa", sharePercent: 95, series: [{ name: "by hand",
 *   points: [{ minutes: 2, strength: 38 }, { minutes: 4, strength: 51 }], curve: [] }] })
 */
export function mullingChart(input: MullingChartInput): Chart {
  checkName(input.name);
  invariant(input.unit !== "", "strength has a unit");
  const { drawn, says } = firstSands(input.series);
  const series = drawn.map((one): MullingSeries => {
    for (const at of one.curve) ends(at);
    if (one.time) invariant(one.time.low <= one.time.high, "the low end of a time is above its high end");
    return {
      ...one,
      points: one.points.filter((at) => Number.isFinite(at.minutes) && Number.isFinite(at.strength)),
      curve: one.curve.filter(({ value }) => Number.isFinite(value)),
    };
  });
  const checked = { ...input, series };
  const ways = says.replace("sands", "ways of mulling");
  const words = {
    caption: `Green compression strength against minutes mulled after the water; fills are the curves' 95 % intervals, bars at the foot the time to ${input.sharePercent} % of full bond${ways === "" ? "" : `.${ways.replace(/\.$/, "")}`}.`,
    alt: `${alt(checked)}${ways}`,
  };
  return {
    name: input.name,
    ...words,
    spec: (width) => mullingSpec({ name: input.name, ...words }, checked, width),
    table: table(input),
  };
}

function alt({ series, unit, sharePercent }: MullingChartInput): string {
  const each = series.map(({ name, points, time }) => {
    if (points.length === 0) return `${name}: no figures.`;
    const read = listed(points.map((at) => `${figure(at.strength)} at ${figure(at.minutes)}`));
    return `${name}: ${read} min.${time ? ` To ${sharePercent} % of full bond: ${spanWords(time)}.` : ""}`;
  });
  return [
    `Green compression strength, ${unit}, against minutes mulled.`,
    ...(each.length === 0 ? ["No way of mulling has figures."] : each),
  ].join(" ");
}

function spanWords({ low, high }: { readonly low: number; readonly high: number }): string {
  if (Number.isFinite(high)) return `${figure(low)} to ${figure(high)} min`;
  return low > 0 ? `from ${figure(low)} min up` : "not known";
}

function table({ series, unit }: MullingChartInput): ChartTable {
  return {
    columns: [
      { name: "way of mulling" },
      { name: "what" },
      { name: "minutes", unit: "min" },
      { name: "green compression strength", unit },
      { name: "low end", unit },
      { name: "high end", unit },
    ],
    rows: series.flatMap(({ name, points, curve }) => [
      ...points.map((at) => [name, "reading", cell(at.minutes), cell(at.strength), null, null]),
      ...thinned(curve).map((at) => [
        name,
        "curve",
        cell(at.minutes),
        cell(at.value),
        cell(at.low),
        cell(at.high),
      ]),
    ]),
  };
}
