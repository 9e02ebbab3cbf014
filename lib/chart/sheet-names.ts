// A column of a founder's own sheet by names: a row for each name, figures with their ± along one axis.

import type { Chart, VegaLiteSpec } from "./chart.ts";
import { checkName, ends, nothing, within } from "./data.ts";
import { axisDomain, floorOf } from "./domain.ts";
import { boxFor, frame, linearScale } from "./frame.ts";
import { key } from "./key.ts";
import { boxes, pixelMarks, type Stroke } from "./layers.ts";
import { whiskersAt } from "./pixel-layers.ts";
import { footAxis, levelTicks } from "./plot.ts";
import { layRows } from "./rows.ts";
import { type SheetNamesInput, sheetAxisTitle } from "./sheet-input.ts";
import { bandWords, namesAlt, namesCaption, namesTable } from "./sheet-words.ts";
import { wrap } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";

const right = 16;

/**
 * Draws a column of a sheet by the names of a text column: names as rows in the sheet's order, a dot for each figure
 * with its ±, the founder's band as a quiet fill behind. Rows of one name share a line. A low end above its high end
 * throws Misuse.
 * @example sheetNames({ name: "by-bag", names: "bag", y: { title: "swelling", unit: "ml" }, missing: 0,
 *   points: [{ label: "Alder", value: 24, low: 23, high: 25 }] })
 */
export function sheetNames(input: SheetNamesInput): Chart {
  checkName(input.name);
  for (const point of input.points) ends(point);
  const chart = { name: input.name, caption: namesCaption(input), alt: namesAlt(input) };
  return { ...chart, spec: (width) => spec(chart, input, width), table: namesTable(input) };
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: SheetNamesInput,
  width: number,
): VegaLiteSpec {
  const { points, band, y } = input;
  const labels = [...new Set(points.map(({ label }) => label))];
  const style = seriesStyle(0);
  const quiet = { ...style, colour: colours.band, fillOpacity: 1 };
  const entries = band ? [{ text: bandWords(band), sample: "band" as const, style: quiet }] : [];
  const keyed = key(entries, Math.floor(width) - right - 12);
  const laid = layRows(
    labels.map((label) => ({ label })),
    width,
    right,
    8 + keyed.heightPx,
  );
  const innerWidth = Math.floor(width) - laid.left - right;
  const values = points.flatMap((at) => [at.value, at.low, at.high]);
  const domain = axisDomain(values, [{ values: [band?.low, band?.high], reach: 1 }], floorOf(values));
  const x = linearScale(domain, innerWidth);
  const px = (value: number) => within(x(value), 0, innerWidth);
  const title = wrap(sheetAxisTitle(y), innerWidth, letterPx.axis, 2);
  const bottom = 26 + title.length * 15;
  const box = boxFor(width, { height: laid.height, left: laid.left, right, top: 6, bottom });
  const middle = (label: string) => laid.rows[labels.indexOf(label)]!.middle;
  const bars = points.flatMap((at): Stroke[] => {
    const both = ends(at);
    const py = middle(at.label);
    return both && both.high > both.low ? [{ px: px(both.low), py, px2: px(both.high), py2: py }] : [];
  });
  const tracks = laid.rows.map(({ middle: at }) => ({ px: 0, py: at - 10, px2: innerWidth, py2: at + 10 }));
  const fills = band
    ? laid.rows.map(({ middle: at }) => ({ px: px(band.low), py: at - 10, px2: px(band.high), py2: at + 10 }))
    : [];
  return frame(chart, box, [
    boxes("tracks", tracks, { color: colours.rule, opacity: 0.25 }),
    boxes("band-1", fills, { stroke: colours.bandEdge, strokeWidth: 1 }),
    footAxis(title, domain, points.length === 0 ? [] : levelTicks(domain, innerWidth), laid.wide),
    whiskersAt("doubt", bars, { color: style.colour }),
    pixelMarks(
      "points",
      points.map((at) => ({ px: px(at.value), py: middle(at.label) })),
      style,
      40,
    ),
    ...laid.layers(),
    ...keyed.layers(laid.wide ? -laid.left + 2 : 0, 9),
    points.length === 0 ? nothing(box) : undefined,
  ]);
}
