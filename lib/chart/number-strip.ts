// A strip: figures with their ± above the bands that they are held against.

import { invariant } from "../issue.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { checkName, ends, nothing } from "./data.ts";
import { axesLayer, boxFor, frame, type Layer, linearScale, type Scale } from "./frame.ts";
import { boxes, pixelMarks, strokes } from "./layers.ts";
import { type LaidRow, layRows } from "./rows.ts";
import type { NumberStripInput, StripBand, StripMark } from "./strip-input.ts";
import { stripTable } from "./strip-table.ts";
import { bandNote, markText, stripAlt, stripCaption, weak } from "./strip-words.ts";
import { figure, textWidth, wrap } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";
import { niceTicks } from "./ticks.ts";

const right = 16;

/**
 * Draws figures against bands on one arithmetic axis in the unit given: a row for each figure (its point, a thick bar
 * for 95 %, a thin bar for what is possible), then a row for each band with its range and tag, crossed by a rule in
 * the colour of each figure. Where a band comes from stands in the table and in the text.
 *
 * A figure that is NaN keeps its row and says "no figure". Ends the wrong way round throw Misuse.
 *
 * @example numberStrip({ name: "harbour-gfn", title: "grain fineness number", unit: "",
 *   marks: [{ label: "Harbour sand", value: 69.1, low: 68.7, high: 69.5 }],
 *   bands: [{ label: "small castings", low: 60, high: 80, source: "an invented handbook", tag: "our own" }] })
 */
export function numberStrip(input: NumberStripInput): Chart {
  checkName(input.name);
  for (const band of input.bands)
    invariant(band.low <= band.high, `the band "${band.label}" runs from ${band.low} to ${band.high}`);
  for (const mark of input.marks) {
    ends(mark);
    if (mark.possible) ends(mark.possible);
  }
  const chart = { name: input.name, caption: input.caption ?? stripCaption(input), alt: stripAlt(input) };
  return {
    ...chart,
    spec: (width) => spec(chart, input, width),
    table: stripTable(input),
  };
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: NumberStripInput,
  width: number,
): VegaLiteSpec {
  const { marks, bands } = input;
  const laid = layRows(
    [
      ...marks.map((mark) => ({ label: mark.label, under: markText(mark) })),
      ...bands.map((band) => ({ label: band.label, under: bandNote(band) })),
    ],
    width,
    right,
  );
  const innerWidth = Math.floor(width) - laid.left - right;
  const domain = domainOf(input);
  const x = linearScale(domain, innerWidth);
  const title = wrap(
    input.unit === "" ? input.title : `${input.title}, ${input.unit}`,
    innerWidth,
    letterPx.axis,
    2,
  );
  const box = boxFor(width, {
    height: laid.height,
    left: laid.left,
    right,
    top: 6,
    bottom: 26 + title.length * 15,
  });
  const widest = Math.max(...domain.map((end) => textWidth(figure(end, 2), letterPx.axis)));
  const ticks = niceTicks(domain[0], domain[1], Math.min(8, Math.floor(innerWidth / (widest + 24))));
  const axes = axesLayer(
    {
      scale: { domain, nice: false, zero: false },
      axis: { title, values: ticks, format: "~f", grid: laid.wide, labelFlush: false, titlePadding: 6 },
    },
    { scale: { domain: [0, 1] }, axis: null },
  );
  const empty = marks.length === 0 && bands.length === 0;
  return frame(chart, box, [
    axes,
    ...bands.map((band, i) => bandLayer(band, laid.rows[marks.length + i]!, i, x, domain)),
    ...marks.flatMap((mark, i) => markLayers(mark, laid.rows[i]!, laid.rows.slice(marks.length), i, x)),
    ...laid.layers(),
    empty ? nothing(box) : undefined,
  ]);
}

function bandLayer(
  band: StripBand,
  { middle }: LaidRow,
  place: number,
  x: Scale,
  domain: readonly number[],
): Layer | undefined {
  const px = x(Math.max(band.low, domain[0]!));
  const px2 = x(Math.min(band.high, domain[1]!));
  const look = weak(band)
    ? { opacity: 0.55, strokeDash: [4, 3], stroke: colours.bandEdge, strokeWidth: 1 }
    : { stroke: colours.bandEdge, strokeWidth: 1 };
  const name = weak(band) ? `band-weak-${place + 1}` : `band-${place + 1}`;
  return boxes(name, [{ px, py: middle - 8, px2: Math.max(px2, px + 2), py2: middle + 8 }], look);
}

/** A figure with its bars, and a short rule at its place across each band. */
function markLayers(
  mark: StripMark,
  { middle }: LaidRow,
  bandRows: readonly LaidRow[],
  place: number,
  x: Scale,
): (Layer | undefined)[] {
  if (!Number.isFinite(mark.value)) return [];
  const style = seriesStyle(place);
  const bar = (of: { low: number; high: number } | undefined) =>
    of ? [{ px: x(of.low), py: middle, px2: x(of.high), py2: middle }] : [];
  const at = x(mark.value);
  const guide = bandRows.map((row) => ({ px: at, py: row.middle - 10, px2: at, py2: row.middle + 10 }));
  return [
    strokes(`guide-${place + 1}`, guide, { color: style.colour, strokeWidth: 1.6, strokeDash: style.dash }),
    strokes(`possible-${place + 1}`, bar(mark.possible), { color: style.colour, strokeWidth: 1.3 }),
    strokes(`interval-${place + 1}`, bar(ends(mark)), { color: style.colour, strokeWidth: 6, opacity: 0.45 }),
    pixelMarks(`points-${place + 1}`, [{ px: at, py: middle }], style, 64),
  ];
}

/** Everything that is drawn, with some air; open bands reach to the edge. */
function domainOf({ marks, bands }: NumberStripInput): [number, number] {
  const all = [
    ...marks.flatMap((mark) => [mark.value, mark.low, mark.high, mark.possible?.low, mark.possible?.high]),
    ...bands.flatMap((band) => [band.low, band.high]),
  ].filter((value): value is number => Number.isFinite(value));
  if (all.length === 0) return [0, 1];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const air = high > low ? (high - low) * 0.06 : Math.max(Math.abs(low) * 0.1, 1);
  const before = bands.some((band) => band.low === Number.NEGATIVE_INFINITY) ? 3 * air : air;
  const after = bands.some((band) => band.high === Number.POSITIVE_INFINITY) ? 3 * air : air;
  return [Number((low - before).toPrecision(6)), Number((high + after).toPrecision(6))];
}
