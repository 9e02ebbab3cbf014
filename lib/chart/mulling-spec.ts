// The drawing of a mulling chart at one width.

import type { Chart, VegaLiteSpec } from "./chart.ts";
import { ends, nothing, within } from "./data.ts";
import { axisDomain, ticksIn } from "./domain.ts";
import { boxFor, frame, type Layer, linearScale, type Scale } from "./frame.ts";
import { type KeyEntry, key } from "./key.ts";
import { pixelMarks, strokes, words } from "./layers.ts";
import type { MullingChartInput, MullingSeries } from "./mulling-input.ts";
import { pixelFill, pixelLine, whiskersAt } from "./pixel-layers.ts";
import {
  footAxis,
  type Plot,
  plotAt,
  plotFrame,
  tickRoom,
  titleLinePx,
  titleLines,
  titleWords,
} from "./plot.ts";
import { wrap } from "./text.ts";
import { letterPx, seriesStyle, smallestLetterPx } from "./theme.ts";

const right = 16;
/** Between the plot and the axis: a row for each way's time. */
const lanePx = 15;

/** Series come checked. */
export function mullingSpec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: MullingChartInput,
  width: number,
): VegaLiteSpec {
  const { series, unit, sharePercent } = input;
  const plotHeight = Math.round(within(width * 0.36, 200, 260));
  const points = series.flatMap((one) => one.points);
  const mayBeCut = series.flatMap(({ curve }) => curve.map((at) => at.high));
  const yDomain = axisDomain(
    [
      0,
      ...points.map(({ strength }) => strength),
      ...series.flatMap(({ curve }) => curve.map(({ value }) => value)),
    ],
    [{ values: mayBeCut, reach: 0.25 }],
    0,
  );
  const yTicks = ticksIn(yDomain, 5);
  const left = tickRoom(yTicks);
  const innerWidth = Math.floor(width) - left - right;
  const xDomain = axisDomain(
    [
      0,
      ...points.map(({ minutes }) => minutes),
      ...series.flatMap(({ curve }) => curve.map(({ minutes }) => minutes)),
    ],
    [{ values: series.flatMap(({ time }) => time?.high), reach: 0.5 }],
    0,
  );
  const xTicks = ticksIn(xDomain, Math.min(9, Math.floor(innerWidth / 45)));
  const x = linearScale(xDomain, innerWidth);
  const plot = plotAt(0, plotHeight, innerWidth, yDomain, yTicks);
  const lanes = series.filter(({ time }) => time !== undefined).length;
  const height = plotHeight + (lanes > 0 ? lanes * lanePx + 22 : 0);

  const keyRows = key(keyEntries(input), innerWidth + left);
  const yTitle = titleLines(`green compression strength, ${unit}`, innerWidth + left);
  const xTitle = wrap("mulled after the water, min", innerWidth, letterPx.axis, 2);
  const titleTop = -(yTitle.length * titleLinePx + 6);
  const top = keyRows.heightPx - titleTop;
  const box = boxFor(width, { height, left, right, top, bottom: 26 + xTitle.length * 15 });
  const laneTitle = [{ px: 0, py: plotHeight + 11, text: `time to ${sharePercent} % of full bond` }];
  return frame(chart, box, [
    footAxis(xTitle, xDomain, xTicks),
    ...plotFrame("y", plot, xTicks.map(x)),
    ...series.flatMap((one, i) => seriesLayers(one, i, plot, x)),
    ...(lanes > 0 ? [words("lane-title", laneTitle, { fontSize: smallestLetterPx })] : []),
    ...timeLanes(series, plotHeight + 22, x, innerWidth),
    titleWords("y-title", yTitle, left, titleTop),
    ...keyRows.layers(-left + 2, -top + 10),
    points.length === 0 ? nothing(box) : undefined,
  ]);
}

function keyEntries({ series }: MullingChartInput): KeyEntry[] {
  return series.map(({ name, curve }, i) => ({
    text: name,
    sample: curve.length > 1 ? ("line" as const) : ("mark" as const),
    style: seriesStyle(i),
  }));
}

function seriesLayers(
  { points, curve }: MullingSeries,
  place: number,
  { y: scale, bottom, top }: Plot,
  x: Scale,
): (Layer | undefined)[] {
  const style = seriesStyle(place);
  const y = (value: number): number => within(scale(value), top, bottom);
  const interval = curve.flatMap((at) => {
    const both = ends(at);
    if (both) return [{ px: x(at.minutes), py: y(both.high), py2: y(both.low) }];
    // Open above: to the top of the box.
    return at.low === undefined ? [] : [{ px: x(at.minutes), py: top, py2: y(at.low) }];
  });
  const run = curve.map((at) => ({ px: x(at.minutes), py: y(at.value) }));
  return [
    pixelFill(`interval-${place + 1}`, interval, { color: style.colour, opacity: 0.14 }),
    pixelLine(`curve-${place + 1}`, [run], { color: style.colour, strokeDash: style.dash }),
    pixelMarks(
      `readings-${place + 1}`,
      points.map((at) => ({ px: x(at.minutes), py: y(at.strength) })),
      style,
    ),
  ];
}

/** A row for each way: its interval of time with the middle marked, an arrow where it has no end. */
function timeLanes(
  series: readonly MullingSeries[],
  top: number,
  x: Scale,
  width: number,
): (Layer | undefined)[] {
  let row = 0;
  return series.flatMap(({ time }, i) => {
    if (!time) return [];
    const style = seriesStyle(i);
    const py = top + row * lanePx + lanePx / 2;
    row += 1;
    const open = !(x(time.high) <= width);
    const bar = { px: within(x(time.low), 0, width), py, px2: open ? width : x(time.high), py2: py };
    const arrow = [
      { px: width - 6, py: py - 4, px2: width, py2: py },
      { px: width - 6, py: py + 4, px2: width, py2: py },
    ];
    const name = `time-${i + 1}`;
    const look = { color: style.colour, strokeWidth: 1.5 };
    const inside = x(time.value) <= width;
    return [
      open ? strokes(name, [bar, ...arrow], look) : whiskersAt(name, [bar], look),
      inside ? pixelMarks(`${name}-middle`, [{ px: x(time.value), py }], style) : undefined,
    ];
  });
}
