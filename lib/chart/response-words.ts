// The words and the table of a trial's panels.

import { aimWords, windowWords } from "./aim-lane.ts";
import {
  axisTitle,
  capital,
  columnUnit,
  decimalsOver,
  rangeText,
  unitText,
  withInterval,
} from "./axis-words.ts";
import type { ChartTable } from "./chart.ts";
import { cell, ends } from "./data.ts";
import type { ResponsePanel, ResponsePanelsInput, ResponsePoint, TypicalCourse } from "./response-input.ts";
import { figure, listed } from "./text.ts";
import { thinned } from "./thinned.ts";

const span = (values: readonly number[]) =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
/** Decimals for places on the shared axis. */
export function axisDecimals({ panels }: ResponsePanelsInput): number {
  const all = panels.flatMap(({ points, curve }) => [...points, ...(curve ?? [])]);
  return decimalsOver(span(all.map(({ x }) => x)));
}
/** Decimals for the figures of one panel. */
function panelDecimals({ points, curve }: ResponsePanel): number {
  return decimalsOver(span([...points.map(({ y }) => y), ...(curve ?? []).map(({ mean }) => mean)]));
}

/** Where a range comes from; that it was read there goes without saying. */
export function tagged(label: string, tag: string): string {
  return tag === "read" ? label : `${label} (${tag})`;
}
/** An end that was turned into another unit says no more than three digits. */
const threeDigits = (end: number): number => Number(end.toPrecision(3));
export function bandWords(panel: ResponsePanel): string {
  const { band } = panel;
  return band
    ? `${tagged(band.label, band.tag)}: ${rangeText(threeDigits(band.low), threeDigits(band.high), 3)}`
    : "";
}
export function aimText(panel: ResponsePanel): string {
  const { aim } = panel;
  return aim ? `your aim: ${rangeText(aim.low, aim.high, 3)}` : "";
}
export function optimumWords({ optimum }: ResponsePanel, decimals: number): string {
  if (!optimum) return "";
  if (optimum.bounded && Number.isFinite(optimum.x))
    return `the curve turns at ${withInterval(optimum.x, optimum, decimals)}`;
  const at = Number.isFinite(optimum.x) ? ` near ${figure(optimum.x, decimals)}` : "";
  return `where the curve turns${at} is not bounded by these batches`;
}

export function responseCaption({ axis, panels, window, aimAt }: ResponsePanelsInput): string {
  const points = panels.flatMap((panel) => panel.points);
  const curves = panels.flatMap((panel) => panel.curve ?? []);
  return [
    `${capital(listed(panels.map(({ property }) => property))) || "Nothing"} against ${axis.title}`,
    points.some(bars) ? "; bars are 95 % intervals" : "",
    curves.some((at) => ends(at)) ? "; dark fill: 95 % interval of the curve" : "",
    curves.some((at) => ends({ low: at.newLow, high: at.newHigh }))
      ? "; light fill: where 95 % of new batches fall"
      : "",
    points.some((point) => point.leftOut && point.why === undefined)
      ? "; hollow: measured, left out of the fit"
      : "",
    points.some((point) => point.why !== undefined) ? "; hollow and crossed: left out by the log" : "",
    window ? `; shaded: the ${window.label ?? "window"}` : "",
    aimAt ? "; diamond: what to aim for, with its 95 % interval" : "",
    ".",
  ].join("");
}

function bars(point: ResponsePoint): boolean {
  return [ends({ low: point.xLow, high: point.xHigh }), ends({ low: point.yLow, high: point.yHigh })].some(
    (each) => each !== undefined,
  );
}

export function responseAlt(input: ResponsePanelsInput, missing: number): string {
  const { axis, panels, window, aimAt } = input;
  const places = axisDecimals(input);
  const count = panels.length === 1 ? "One panel" : `${panels.length} panels`;
  return [
    panels.length === 0 ? "No panels." : `${count} over one axis: ${axisTitle(axis)}.`,
    ...panels.map((panel) => panelAlt(panel, places)),
    ...(window ? [`${capital(windowWords(window, unitText(axis), places))}.`] : []),
    ...(aimAt && Number.isFinite(aimAt.x) ? [`${capital(aimWords(aimAt, unitText(axis), places))}.`] : []),
    ...(missing > 0 ? [`${missing} without a figure, not drawn.`] : []),
  ].join(" ");
}

const most = 10;

function panelAlt(panel: ResponsePanel, places: number): string {
  const decimals = panelDecimals(panel);
  const { points, curve = [], typical = [] } = panel;
  const told = points.slice(0, most).map((point) => {
    const low = point.yLow;
    const name = point.label === undefined ? "" : `${point.label}, `;
    const y = withInterval(point.y, { low, high: point.yHigh }, decimals);
    return `${name}${y} at ${figure(point.x, places)}${outWords(point)}`;
  });
  if (points.length > most) told.push(`${points.length - most} more`);
  const first = curve[0];
  const last = curve.at(-1);
  const at = (place: { x: number; mean: number }) =>
    `${figure(place.mean, decimals)} at ${figure(place.x, places)}`;
  const top = curve.reduce((best, each) => (each.mean > best.mean ? each : best), first ?? { x: 0, mean: 0 });
  const between = top === first || top === last ? "" : `, highest ${at(top)}`;
  return [
    `${capital(axisTitle({ ...panel, title: panel.property }))}: ${told.length === 0 ? "no figures" : told.join("; ")}.`,
    first && last ? `Fitted curve from ${at(first)} to ${at(last)}${between}.` : "",
    panel.optimum ? `${capital(optimumWords(panel, places))}.` : "",
    panel.aim ? `${capital(aimText(panel))}.` : "",
    panel.band ? `Band, ${bandWords(panel)}.` : "",
    ...typical.map((course) => courseAlt(course, places)),
  ]
    .filter((each) => each !== "")
    .join(" ");
}

function outWords({ leftOut, why }: ResponsePoint): string {
  if (why !== undefined) return ` (left out by the log: ${why})`;
  return leftOut ? " (left out of the fit)" : "";
}

function courseAlt({ label, tag, points }: TypicalCourse, places: number): string {
  const name = `Usual course, ${tagged(label, tag)}`;
  const told = [points[0], points.length > 1 ? points.at(-1) : undefined]
    .filter((at) => at !== undefined)
    .map(({ x, low, high }) => {
      const decimals = decimalsOver(Math.max(Math.abs(low), Math.abs(high)));
      const range = low === high ? figure(low, decimals) : rangeText(low, high, decimals);
      return `${range} at ${figure(x, places)}`;
    });
  return `${name}: ${told.length === 0 ? "no figures" : told.join(", ")}.`;
}

export function responseTable({ axis, panels, window, aimAt }: ResponsePanelsInput): ChartTable {
  type Row = (string | number | null)[];
  const row = (panel: ResponsePanel, what: string, of: { [at: string]: number | undefined }): Row => [
    panel.property,
    unitText({ ...panel, title: panel.property }),
    what,
    ...["x", "xLow", "xHigh", "y", "low", "high", "newLow", "newHigh"].map((name) => cell(of[name])),
  ];
  const onAxis = (what: string, { x, low, high }: { x?: number; low: number; high: number }): Row => [
    axis.title,
    unitText(axis),
    what,
    ...[x, low, high].map(cell),
    ...[null, null, null, null, null],
  ];
  const x = columnUnit(axis);
  return {
    columns: [
      { name: "property" },
      { name: "unit" },
      { name: "what" },
      { name: axis.title, ...x },
      { name: `${axis.title}, low end of 95 %`, ...x },
      { name: `${axis.title}, high end of 95 %`, ...x },
      { name: "figure" },
      { name: "low end of 95 %" },
      { name: "high end of 95 %" },
      { name: "low end of 95 %, new batch" },
      { name: "high end of 95 %, new batch" },
    ],
    rows: [
      ...panels.flatMap((panel) => [
        ...panel.points.map((point) =>
          row(panel, `${point.label ?? "batch"}${point.leftOut ? ", left out of the fit" : ""}`, {
            ...{ x: point.x, xLow: point.xLow, xHigh: point.xHigh },
            ...{ y: point.y, low: point.yLow, high: point.yHigh },
          }),
        ),
        ...thinned(panel.curve ?? []).map(({ mean, ...at }) =>
          row(panel, "fitted curve", { ...at, y: mean }),
        ),
        ...(panel.optimum ? [row(panel, "where the curve turns", turning(panel.optimum))] : []),
        ...(panel.aim ? [row(panel, "your aim", { ...panel.aim })] : []),
        ...(panel.band
          ? [
              row(panel, tagged(panel.band.label, panel.band.tag), {
                low: panel.band.low,
                high: panel.band.high,
              }),
            ]
          : []),
        ...(panel.typical ?? []).flatMap((course) =>
          thinned(course.points).map((at) => row(panel, tagged(course.label, course.tag), { ...at })),
        ),
      ]),
      ...(window ? [onAxis(window.label ?? "window", window)] : []),
      ...(aimAt ? [onAxis("what to aim for", aimAt)] : []),
    ],
  };
}

function turning({ x, low, high, bounded }: NonNullable<ResponsePanel["optimum"]>) {
  return bounded ? { x, xLow: low, xHigh: high } : { x };
}
