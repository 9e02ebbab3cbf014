// The words and the tables of a founder's own charts.

import { capital, decimalsOver, rangeText, withInterval } from "./axis-words.ts";
import type { ChartTable } from "./chart.ts";
import { cell, ends } from "./data.ts";
import type { SheetNamesInput, SheetPanel, SheetPlotInput } from "./sheet-input.ts";
import { sheetAxisTitle } from "./sheet-input.ts";
import { figure, listed } from "./text.ts";
import { thinned } from "./thinned.ts";

const span = (values: readonly number[]) =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
const most = 10;

export function bandWords({ low, high }: { readonly low: number; readonly high: number }): string {
  return `your band: ${rangeText(low, high, 3)}`;
}

export function plotCaption({ title, x, panels }: SheetPlotInput): string {
  const y = listed(panels.map(({ axis }) => axis.title));
  const points = panels.flatMap((panel) => panel.points);
  const bars = points.some(
    (at) => ends({ low: at.yLow, high: at.yHigh }) ?? ends({ low: at.xLow, high: at.xHigh }),
  );
  const lines = panels.flatMap(({ line }) => line ?? []);
  return [
    title === undefined ? `${capital(y)} against ${x.title}` : `${title}: ${y} against ${x.title}`,
    bars ? "; bars are 95 % intervals" : "",
    panels.some(({ curve = [] }) => curve.length > 0)
      ? "; dark fill: 95 % interval of the line; light fill: where 95 % of new rows fall"
      : "",
    ".",
    ...[...new Set(lines)].map((line) => ` ${line}`),
  ].join("");
}

export function plotAlt({ x, panels, band, missing }: SheetPlotInput): string {
  const places = decimalsOver(span(panels.flatMap(({ points }) => points.map((at) => at.x))));
  return [
    `${panels.length === 1 ? "One panel" : `${panels.length} panels`} over one axis: ${sheetAxisTitle(x)}.`,
    ...panels.map((panel) => panelAlt(panel, places)),
    band ? `${capital(bandWords(band))}.` : "",
    missing > 0 ? `${missing} ${missing === 1 ? "row" : "rows"} without a figure, not drawn.` : "",
  ]
    .filter((part) => part !== "")
    .join(" ");
}

function panelAlt({ axis, points, curve = [] }: SheetPanel, places: number): string {
  const decimals = decimalsOver(span(points.map(({ y }) => y)));
  const told = points.slice(0, most).map((at) => {
    const name = at.label === undefined ? "" : `${at.label}, `;
    return `${name}${withInterval(at.y, { low: at.yLow, high: at.yHigh }, decimals)} at ${figure(at.x, places)}`;
  });
  if (points.length > most) told.push(`${points.length - most} more`);
  const [first, last] = [curve[0], curve.at(-1)];
  const course =
    first && last
      ? ` Fitted from ${figure(first.mean, decimals)} at ${figure(first.x, places)} to ${figure(last.mean, decimals)} at ${figure(last.x, places)}.`
      : "";
  return `${capital(sheetAxisTitle(axis))}: ${told.length === 0 ? "no figures" : told.join("; ")}.${course}`;
}

const withUnit = (unit: string | undefined) => (unit === undefined ? {} : { unit });

export function plotTable({ x, panels, band }: SheetPlotInput): ChartTable {
  const several = new Set(panels.map(({ axis }) => axis.unit)).size > 1;
  const unit = several ? {} : withUnit(panels[0]?.axis.unit);
  type Row = (string | number | null)[];
  const row = (panel: SheetPanel, what: string, at: { readonly [name: string]: number | undefined }): Row => [
    panel.axis.title,
    ...(several ? [panel.axis.unit ?? ""] : []),
    what,
    ...["x", "y", "low", "high", "newLow", "newHigh"].map((name) => cell(at[name])),
  ];
  return {
    columns: [
      { name: "column" },
      ...(several ? [{ name: "unit" }] : []),
      { name: "what" },
      { name: x.title, ...withUnit(x.unit) },
      { name: "figure", ...unit },
      { name: "low end of 95 %", ...unit },
      { name: "high end of 95 %", ...unit },
      { name: "low end of 95 %, new row", ...unit },
      { name: "high end of 95 %, new row", ...unit },
    ],
    rows: panels.flatMap((panel, i) => [
      ...panel.points.map((at) =>
        row(panel, at.label ?? "row", { x: at.x, y: at.y, low: at.yLow, high: at.yHigh }),
      ),
      ...thinned(panel.curve ?? []).map(({ mean, ...at }) => row(panel, "fitted", { ...at, y: mean })),
      ...(band && i === 0 ? [row(panel, "your band", { ...band })] : []),
    ]),
  };
}

export function namesCaption({ title, names, y, points }: SheetNamesInput): string {
  const bars = points.some((at) => ends(at)) ? "; bars are 95 % intervals" : "";
  const what = `${title === undefined ? capital(y.title) : `${title}: ${y.title}`} by ${names}`;
  return `${what}${bars}.`;
}

export function namesAlt({ y, points, band, missing }: SheetNamesInput): string {
  const decimals = decimalsOver(span(points.map(({ value }) => value)));
  const told = points.slice(0, most).map((at) => `${at.label}, ${withInterval(at.value, at, decimals)}`);
  if (points.length > most) told.push(`${points.length - most} more`);
  return [
    `${capital(sheetAxisTitle(y))}: ${told.length === 0 ? "no figures" : told.join("; ")}.`,
    band ? `${capital(bandWords(band))}.` : "",
    missing > 0 ? `${missing} ${missing === 1 ? "row" : "rows"} without a figure, not drawn.` : "",
  ]
    .filter((part) => part !== "")
    .join(" ");
}

export function namesTable({ names, y, points }: SheetNamesInput): ChartTable {
  const unit = withUnit(y.unit);
  return {
    columns: [
      { name: names },
      { name: y.title, ...unit },
      { name: "low end of 95 %", ...unit },
      { name: "high end of 95 %", ...unit },
    ],
    rows: points.map(({ label, value, low, high }) => [label, cell(value), cell(low), cell(high)]),
  };
}
