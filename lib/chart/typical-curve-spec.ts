// The drawing of a typical curve at one width.

import { axisTitle } from "./axis-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { ends, nothing, within } from "./data.ts";
import { axisDomain, ticksIn } from "./domain.ts";
import { boxFor, frame, type Layer, linearScale, type Scale } from "./frame.ts";
import { type KeyEntry, key } from "./key.ts";
import { boxes, pixelMarks, type Stroke, words } from "./layers.ts";
import { hollowMarks, pixelFill, pixelLine, whiskersAt } from "./pixel-layers.ts";
import { footAxis, plotAt, plotFrame, tickRoom, titleLinePx, titleLines, titleWords } from "./plot.ts";
import { alongLine, namesOnLines, pointLabels, type Taken } from "./point-labels.ts";
import { textWidth, wrap } from "./text.ts";
import { colours, letterPx, type SeriesStyle, seriesStyle, smallestLetterPx } from "./theme.ts";
import type { TypicalCurve, TypicalCurveInput } from "./typical-input.ts";
import { dashed } from "./typical-words.ts";

const right = 16;
const batchStyle = seriesStyle(0);
const bandStyle: SeriesStyle = { ...batchStyle, colour: colours.band, fillOpacity: 1 };
/** Ways that disagree are told apart by dash and label; one alone is unbroken unless it is weak. */
const dashes: readonly (readonly number[])[] = [[], [2, 2.5], [9, 3, 2, 3], [6, 4]];
const curveStyle = (curve: TypicalCurve, place: number, many: boolean): SeriesStyle => ({
  ...batchStyle,
  colour: colours.fitted,
  dash: many ? dashes[place % dashes.length]! : dashed(curve.tag) ? [6, 4] : [],
});
/** Published marks by tag: what was read is a square, the rest a diamond. */
const publishedStyle = (tag: string): SeriesStyle => ({
  ...batchStyle,
  colour: colours.quiet,
  shape: tag === "read" ? "square" : "diamond",
});

export function typicalCurveSpec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: TypicalCurveInput,
  width: number,
): VegaLiteSpec {
  const { curves, published, batches } = input;
  const many = curves.length > 1;
  const height = Math.round(within(width * 0.5, 230, 330));
  const mayBeCut = curves.flatMap(({ points }) => points.map((at) => at.high));
  const yDomain = axisDomain([0, ...yMust(input)], [{ values: mayBeCut, reach: 0.6 }], 0);
  const yTicks = ticksIn(yDomain, 5);
  const left = tickRoom(yTicks);
  const innerWidth = Math.floor(width) - left - right;
  const xDomain = axisDomain(xMust(input), [], 0);
  const xTicks = ticksIn(xDomain, Math.min(9, Math.floor(innerWidth / 45)));
  const x = linearScale(xDomain, innerWidth);
  const plot = plotAt(0, height, innerWidth, yDomain, yTicks);
  const y: Scale = (value) => within(plot.y(value), 0, height);

  const entries = keyEntries(input);
  const keyRows = key(entries, innerWidth + left);
  const yTitle = titleLines(axisTitle(input.property), innerWidth + left);
  const xTitle = wrap(axisTitle(input.axis), innerWidth, letterPx.axis, 2);
  const titleTop = -(yTitle.length * titleLinePx + 6);
  const top = keyRows.heightPx - titleTop;
  const box = boxFor(width, { height, left, right, top, bottom: 26 + xTitle.length * 15 });

  const lines = curves.map(({ points }) => points.map((at) => ({ px: x(at.x), py: y(at.value) })));
  const placed = {
    published: published.map((each) => ({ px: x(each.x), py: y(each.y), label: each.label })),
    batches: batches.map((each) => ({ px: x(each.x), py: y(each.y), label: each.label })),
  };
  const bars = batches.flatMap((each) => batchBars(each, x, y, innerWidth));
  const ranges = published.flatMap((each) => {
    const both = ends(each);
    return both ? [{ px: x(each.x), py: y(both.low), px2: x(each.x), py2: y(both.high) }] : [];
  });
  // Ranges of several ways have edges, which run through everything: kept off where there is room.
  const rims = many ? curves.flatMap((curve) => rangeRims(curve, x, y)).flatMap(alongLine) : [];
  const taken: Taken[] = [
    ...[...placed.batches, ...placed.published].map(around),
    ...lines.flatMap(alongLine),
    ...[...bars, ...ranges].flatMap((bar) => alongLine([bar, { px: bar.px2, py: bar.py2 }])),
  ];
  const room = { left: 0, right: innerWidth, top: 0, bottom: height };
  const own = pointLabels(placed.batches, room, taken, rims);
  const others = pointLabels(placed.published, room, [...taken, ...own.map(wordBox)], rims);
  const empty = lines.every((line) => line.length < 2) && published.length + batches.length === 0;
  return frame(chart, box, [
    footAxis(xTitle, xDomain, xTicks),
    ...curves.flatMap((curve, i) => rangeLayers(curve, i, many, x, y)),
    ...plotFrame("y", plot, xTicks.map(x)),
    ...lines.map((line, i) => {
      const style = curveStyle(curves[i]!, i, many);
      return pixelLine(`line-${i + 1}`, [line], { color: style.colour, strokeDash: style.dash });
    }),
    boxes("label-ground", namesOnLines([...own, ...others], rims), { color: colours.paper, opacity: 0.8 }),
    whiskersAt("published-range", ranges, { color: colours.quiet }),
    ...["read", "other"].map((group) => {
      const at = placed.published.filter((_, i) => (published[i]!.tag === "read") === (group === "read"));
      return hollowMarks(`published-${group}`, at, publishedStyle(group));
    }),
    words("published-labels", others, { color: colours.quiet, fontSize: smallestLetterPx }),
    whiskersAt("doubt", bars, { color: colours.measured }),
    pixelMarks("batches", placed.batches, batchStyle, 56),
    words("batch-labels", own, { color: colours.measured, fontSize: smallestLetterPx }),
    titleWords("y-title", yTitle, left, titleTop),
    ...keyRows.layers(-left + 2, -top + 10),
    empty ? nothing(box) : undefined,
  ]);
}

function keyEntries({ curves, published, batches }: TypicalCurveInput): KeyEntry[] {
  const many = curves.length > 1;
  return [
    ...(batches.length > 0
      ? [{ text: "your batches, ± 95 %", sample: "mark" as const, style: batchStyle }]
      : []),
    ...curves.map((curve, i) => ({
      text: `${curve.label} (${curve.tag})`,
      sample: "rule" as const,
      style: curveStyle(curve, i, many),
    })),
    ...(curves.length > 0
      ? [
          {
            text: many ? "range of each way, darker where they agree" : "range of the curve",
            sample: "band" as const,
            style: bandStyle,
          },
        ]
      : []),
    ...(published.some(({ tag }) => tag === "read")
      ? [{ text: "published", sample: "hollow" as const, style: publishedStyle("read") }]
      : []),
    ...(published.some(({ tag }) => tag !== "read")
      ? [{ text: "published, from memory", sample: "hollow" as const, style: publishedStyle("from memory") }]
      : []),
  ];
}

/**
 * A way's own range, where it holds. Ranges of several ways lie over one another: each is light, so that what they
 * have in common is darker, and has edges in the dash of its way, so that it can be told which it is.
 */
function rangeLayers(
  { points }: TypicalCurve,
  place: number,
  many: boolean,
  x: Scale,
  y: Scale,
): (Layer | undefined)[] {
  const at = points.map((point) => ({ px: x(point.x), py: y(point.high), py2: y(point.low) }));
  const fill = pixelFill(`band-${place + 1}`, at, { color: colours.band, opacity: many ? 0.5 : 1 });
  if (!many) return [fill];
  const look = { color: colours.bandEdge, strokeWidth: 1, strokeDash: dashes[place % dashes.length]! };
  return [fill, pixelLine(`edge-${place + 1}`, rangeRims({ points }, x, y), look)];
}

/** The upper and the lower end of a way's range. */
function rangeRims(
  { points }: Pick<TypicalCurve, "points">,
  x: Scale,
  y: Scale,
): { px: number; py: number }[][] {
  const rims = [points.map(({ high }) => high), points.map(({ low }) => low)];
  return rims.map((rim) => rim.map((value, i) => ({ px: x(points[i]!.x), py: y(value) })));
}

function batchBars(
  { x: at, y: value, xLow, xHigh, yLow, yHigh }: TypicalCurveInput["batches"][number],
  x: Scale,
  y: Scale,
  width: number,
): Stroke[] {
  const across = ends({ low: xLow, high: xHigh });
  const up = ends({ low: yLow, high: yHigh });
  const px = (end: number) => within(x(end), 0, width);
  return [
    ...(up ? [{ px: x(at), py: y(up.low), px2: x(at), py2: y(up.high) }] : []),
    ...(across ? [{ px: px(across.low), py: y(value), px2: px(across.high), py2: y(value) }] : []),
  ];
}

const around = ({ px, py }: { px: number; py: number }): Taken => ({
  left: px - 6,
  right: px + 6,
  top: py - 6,
  bottom: py + 6,
});

function wordBox({ px, py, text }: { px: number; py: number; text: string }): Taken {
  return { left: px - 3, right: px + textWidth(text, smallestLetterPx) + 3, top: py - 8, bottom: py + 8 };
}

function xMust({ curves, published, batches }: TypicalCurveInput): (number | undefined)[] {
  return [
    ...curves.flatMap(({ points }) => points.map((at) => at.x)),
    ...published.map((each) => each.x),
    ...batches.flatMap((each) => [each.x, each.xLow, each.xHigh]),
  ];
}

function yMust({ curves, published, batches }: TypicalCurveInput): (number | undefined)[] {
  return [
    ...curves.flatMap(({ points }) => points.map((at) => at.value)),
    ...published.flatMap((each) => [each.y, each.low, each.high]),
    ...batches.flatMap((each) => [each.y, each.yLow, each.yHigh]),
  ];
}
