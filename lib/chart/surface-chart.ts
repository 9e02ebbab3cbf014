// A property over two things varied together, as lines of one figure.

import { axisTitle, unitText } from "./axis-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { checkName, nothing, within } from "./data.ts";
import { ticksIn } from "./domain.ts";
import { boxFor, frame, linearScale } from "./frame.ts";
import { type KeyEntry, key } from "./key.ts";
import { boxes, pixelMarks, type Words, words } from "./layers.ts";
import { type At, closedLines, filledRings } from "./pixel-layers.ts";
import {
  footAxis,
  levelTicks,
  plotAt,
  plotFrame,
  tickRoom,
  titleLinePx,
  titleLines,
  titleWords,
} from "./plot.ts";
import { alongLine, namesOnLines, pointLabels, type Taken } from "./point-labels.ts";
import { type SurfaceField, surfaceField } from "./surface-field.ts";
import type { SurfaceChartInput } from "./surface-input.ts";
import {
  doubtText,
  levelText,
  surfaceAim,
  surfaceAlt,
  surfaceCaption,
  surfaceTable,
} from "./surface-words.ts";
import { textWidth, wrap } from "./text.ts";
import { colours, letterPx, type SeriesStyle, seriesStyle, smallestLetterPx } from "./theme.ts";

const right = 16;
const batchStyle = seriesStyle(0);
/** The darkest fill: ink on it still stands 4.5 : 1. */
const darkest = 0.4;
const fillStyle: SeriesStyle = { ...batchStyle, colour: colours.fitted, dash: [], fillOpacity: 0.25 };
const aimStyle: SeriesStyle = { ...seriesStyle(3), dash: [6, 4] };

/**
 * Draws a fitted property over two things that were varied together, such as moisture and clay: lines join places of
 * one figure and carry it, and what is higher is darker (one hue in steps of lightness, so that a grey print and a
 * colour-blind reader lose nothing). The founder's aim is dashed, batches stand in front. What lies beyond the
 * batches is left blank: nothing was tried there. How well the mean is known stands in the key.
 *
 * Batches without a figure are left out and counted in the text. A percentage without its basis throws Misuse.
 *
 * @example surfaceChart({ name: "strength-surface", axis: { title: "moisture", unit: "%", basis: "damp mass" },
 *   other: { title: "bentonite added", unit: "%", basis: "dry mix" }, property: { title: "green compression strength", unit: "kPa" },
 *   at: (x, clay) => ({ mean: 60 + 5 * clay - 8 * (x - 3.4) ** 2, low: 55, high: 65 }),
 *   batches: [{ label: "A", x: 2.8, y: 6, value: 86 }, { label: "B", x: 4, y: 6, value: 88 }, { label: "C", x: 3.4, y: 9, value: 106 }] })
 */
export function surfaceChart(input: SurfaceChartInput): Chart {
  checkName(input.name);
  for (const axis of [input.axis, input.other, input.property]) unitText(axis);
  const batches = input.batches.filter(({ x, y, value }) => [x, y, value].every(Number.isFinite));
  const sound: SurfaceChartInput = { ...input, batches };
  const field = surfaceField(sound);
  const chart = {
    name: input.name,
    caption: input.caption ?? surfaceCaption(sound, field),
    alt: surfaceAlt(sound, field, input.batches.length - batches.length),
  };
  return { ...chart, spec: (width) => spec(chart, sound, field, width), table: surfaceTable(input, field) };
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: SurfaceChartInput,
  field: SurfaceField,
  width: number,
): VegaLiteSpec {
  const { batches, aim } = input;
  const height = Math.round(within(width * 0.62, 240, 400));
  const yTicks = batches.length === 0 ? [] : ticksIn(field.otherDomain, 6);
  const left = tickRoom(yTicks);
  const innerWidth = Math.floor(width) - left - right;
  const box = { width: innerWidth, height };
  const xTicks = batches.length === 0 ? [] : levelTicks(field.xDomain, innerWidth);
  const x = linearScale(field.xDomain, innerWidth);
  const plot = plotAt(0, height, innerWidth, field.otherDomain, yTicks);

  const outline = field.outline(box);
  const levels = outline.length === 0 ? [] : field.levels;
  const rings = levels.map((level) => field.rings(level, box));
  const opacity = 1 - (1 - darkest) ** (1 / Math.max(1, levels.length));
  const edges = [aim?.low, aim?.high].filter((end) => end !== undefined && Number.isFinite(end));
  const placed = batches.map(({ label, x: at, y }) => ({ px: x(at), py: plot.y(y), label }));
  const around: Taken[] = placed.map(({ px, py }) => ({
    left: px - 7,
    right: px + 7,
    top: py - 7,
    bottom: py + 7,
  }));
  const figures = levelLabels(levels, rings, field, plot.y, x, around);
  const aims = edges.map((edge) => field.rings(edge!, box));
  const lines = [...rings, ...aims, outline]
    .flat()
    .flatMap((ring) => alongLine([...ring, ...ring.slice(0, 1)]));
  const names = pointLabels(
    placed,
    { left: 0, right: innerWidth, top: 0, bottom: height },
    [...around, ...figures.map(({ box: taken }) => taken)],
    lines,
  );

  const keyRows = key(keyEntries(input, field, levels.length > 0), innerWidth + left);
  const yTitle = titleLines(axisTitle(input.other), innerWidth + left);
  const xTitle = wrap(axisTitle(input.axis), innerWidth, letterPx.axis, 2);
  const titleTop = -(yTitle.length * titleLinePx + 6);
  const top = keyRows.heightPx - titleTop;
  const whole = boxFor(width, { height, left, right, top, bottom: 26 + xTitle.length * 15 });
  // Clockwise as what is tried runs, then the tried part the other way round: a sheet with a hole. It reaches over the
  // border of the plot, along which lines close.
  const over = 1.5;
  const sheet: At[] = [
    { px: -over, py: -over },
    { px: innerWidth + over, py: -over },
    { px: innerWidth + over, py: height + over },
    { px: -over, py: height + over },
  ];
  return frame(chart, whole, [
    footAxis(xTitle, field.xDomain, xTicks),
    ...rings.map((ring, i) =>
      filledRings(`level-${i + 1}`, ring, { fill: colours.fitted, fillOpacity: opacity }),
    ),
    ...rings.map((ring, i) => closedLines(`isoline-${i + 1}`, ring, { color: colours.fitted })),
    ...aims.map((aimed, i) =>
      closedLines(`aim-${i + 1}`, aimed, {
        color: colours.ink,
        strokeWidth: 1.6,
        strokeDash: aimStyle.dash,
      }),
    ),
    filledRings("not-tried", [sheet, ...outline.map((ring) => ring.toReversed())], {
      fill: colours.paper,
      fillOpacity: 1,
    }),
    closedLines("outline", outline, { color: colours.quiet, strokeDash: [1, 3] }),
    ...plotFrame("y", plot, xTicks.map(x)),
    boxes(
      "figure-ground",
      figures.map(({ box: { left: px, right: px2, top: py, bottom: py2 } }) => ({ px, py, px2, py2 })),
      { color: colours.paper },
    ),
    words(
      "figures",
      figures.map(({ word }) => word),
      { fontSize: smallestLetterPx, align: "center" },
    ),
    boxes("name-ground", namesOnLines(names, lines), { color: colours.paper, opacity: 0.8 }),
    pixelMarks("batches", placed, batchStyle, 56),
    words("names", names, { fontSize: smallestLetterPx }),
    titleWords("y-title", yTitle, left, titleTop),
    ...keyRows.layers(-left + 2, -top + 10),
    batches.length === 0 ? nothing(whole) : undefined,
  ]);
}

function keyEntries(input: SurfaceChartInput, field: SurfaceField, drawn: boolean): KeyEntry[] {
  const { property, batches, aim } = input;
  const entries: KeyEntry[] = [];
  if (batches.length > 0) entries.push({ text: "batch", sample: "mark", style: batchStyle });
  if (drawn)
    entries.push({
      text: `${axisTitle(property)}: ${doubtText(field, input)}; deeper colour is higher`,
      sample: "area",
      style: fillStyle,
    });
  if (drawn && aim) entries.push({ text: surfaceAim(input), sample: "rule", style: aimStyle });
  return entries;
}

/** A line's figure keeps so far off the border of the plot, px. */
const rim = 4;

/** The figure of each line, on the line where nothing else stands, as near to the middle of what was tried as it goes. */
function levelLabels(
  levels: readonly number[],
  rings: readonly (readonly (readonly At[])[])[],
  { xDomain, otherDomain, tried }: SurfaceField,
  y: (value: number) => number,
  x: (value: number) => number,
  around: readonly Taken[],
): { readonly word: Words; readonly box: Taken }[] {
  const used = [...around];
  const [xFrom, xTo] = [x(xDomain[0]), x(xDomain[1])];
  const xOf = (px: number) => xDomain[0] + ((px - xFrom) / (xTo - xFrom)) * (xDomain[1] - xDomain[0]);
  // The upright scale is straight: two of its places give all.
  const [zero, one] = [y(0), y(1)];
  const otherOf = (py: number) => (py - zero) / (one - zero);
  const [foot, head] = [y(otherDomain[0]), y(otherDomain[1])];
  // Along the border a ring closes without being a line of one figure.
  const within = ({ px, py }: At): boolean =>
    px > xFrom + rim && px < xTo - rim && py > head + rim && py < foot - rim;
  const off = ({ px, py }: At): number => Math.hypot(px - (xFrom + xTo) / 2, py - (foot + head) / 2);
  return levels.flatMap((level, i) => {
    const text = levelText(level);
    const half = textWidth(text, smallestLetterPx) / 2 + 2;
    const free = rings[i]!.flat()
      .filter(within)
      .sort((a, b) => off(a) - off(b))
      .map(({ px, py }) => ({
        word: { px, py, text },
        box: { left: px - half, right: px + half, top: py - 7, bottom: py + 7 },
      }))
      .filter(({ box: { left, right: end, top, bottom } }) =>
        [left, end].every((px) => [top, bottom].every((py) => tried(xOf(px), otherOf(py)))),
      )
      .find(({ box }) => !used.some((each) => meet(each, box)));
    if (!free) return [];
    used.push(free.box);
    return [free];
  });
}

function meet(a: Taken, b: Taken): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
