// The drawing of a grain curve at one width.

import { sameSieve } from "../sand/same-sieve.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { ends, nothing, within } from "./data.ts";
import {
  axesLayer,
  type Box,
  boxFor,
  frame,
  type Layer,
  linearScale,
  logScale,
  type Scale,
} from "./frame.ts";
import type { GrainCurveInput, GrainCurveSand } from "./grain-input.ts";
import { type KeyEntry, key } from "./key.ts";
import { fill, line, marks, strokes, whiskers, words } from "./layers.ts";
import { labelLinePx, placeLabels, toPixels } from "./place-labels.ts";
import { sieveLabels, sieveLabelWords } from "./sieve-labels.ts";
import { textWidth, wrap } from "./text.ts";
import { colours, letterPx, type SeriesStyle, seriesStyle } from "./theme.ts";

const left = 36;
const right = 16;
const titleRowPx = 18;
/** Half of a bar's cap and a little air: no name stands on one. */
const capPx = 6;
const bandStyle: SeriesStyle = { ...seriesStyle(0), colour: colours.band, fillOpacity: 1 };

/** Sands come checked and coarse first. */
export function grainCurveSpec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: GrainCurveInput,
  width: number,
): VegaLiteSpec {
  const { sands, band } = input;
  const coarseFirst = input.direction !== "fine to coarse";
  const innerWidth = Math.floor(width) - left - right;
  const height = Math.round(within(width * 0.46, 240, 330));
  const domain = openings(input);
  const x = logScale(coarseFirst ? [domain[1], domain[0]] : domain, innerWidth);
  const y = linearScale([100, 0], height);
  const curves = sands.map((sand) => ({ name: sand.name, points: toPixels(onAxes(sand), x, y) }));
  const drawn = curves.filter((curve) => curve.points.length > 0);

  const bars = sands.flatMap(doubtBars).map(({ x: at, y: low, y2: high }) => ({
    left: x(at) - capPx,
    right: x(at) + capPx,
    top: y(high) - 2,
    bottom: y(low) + 2,
  }));
  const direct = placeLabels(drawn, { width: innerWidth, height }, bars);
  const entries: KeyEntry[] = [
    ...(direct
      ? []
      : sands.map((sand, i) => ({ text: sand.name, sample: "line" as const, style: styleOf(sand, i) }))),
    ...(band ? [{ text: band.label, sample: "band" as const, style: bandStyle }] : []),
  ];
  const keyRows = key(entries, innerWidth + left);
  const sieves = sieveLabels(
    uniqueSieves(sands).map((each) => ({ px: x(each.openingMm), label: each.label })),
  );
  const way = coarseFirst ? "coarse at left, fine at right" : "fine at left, coarse at right";
  const title = wrap(`sieve opening, mm (log scale; ${way})`, innerWidth, letterPx.axis, 2);
  const top = keyRows.heightPx + titleRowPx + sieves.heightPx + 12;
  const box = boxFor(width, { height, left, right, top, bottom: 26 + title.length * 15 });

  const ticks = roundOpenings(domain, x);
  const axes = axesLayer(
    {
      scale: { type: "log", domain, nice: false, reverse: coarseFirst },
      axis: {
        title,
        values: ticks,
        format: "~f",
        grid: false,
        labelOverlap: false,
        titlePadding: 6,
        labelFlush: false,
      },
    },
    {
      scale: { domain: [0, 100], nice: false },
      axis: {
        title: "passing, % of the sand by mass",
        values: [0, 20, 40, 60, 80, 100],
        titleAngle: 0,
        titleAlign: "left",
        titleBaseline: "middle",
        titleX: -left + 2,
        titleY: -(sieves.heightPx + 12 + titleRowPx / 2),
      },
    },
  );
  return frame(chart, box, [
    band ? bandLayer(band) : undefined,
    axes,
    ...sieveLayers(sieves, box),
    ...sands.map((sand, i) =>
      fill(
        `interval-${i + 1}`,
        (sand.interval ?? []).map((at) => ({
          x: at.openingMm,
          y: within(at.low, 0, 100),
          y2: within(at.high, 0, 100),
        })),
        styleOf(sand, i).colour,
      ),
    ),
    ...sands.flatMap((sand, i) => sandLayers(sand, i)),
    ...drawn.map((curve, i) => {
      const label = direct?.[i];
      if (!label) return undefined;
      const at = label.lines.map((text, row) => ({ px: label.x, py: label.y + row * labelLinePx, text }));
      const place = curves.indexOf(curve);
      return words(`label-${place + 1}`, at, { color: styleOf(sands[place]!, place).colour });
    }),
    ...keyRows.layers(-left + 2, -top + 12),
    drawn.length === 0 ? nothing(box) : undefined,
  ]);
}

function styleOf({ quiet }: GrainCurveSand, place: number): SeriesStyle {
  return quiet ? { ...seriesStyle(4), colour: colours.quiet } : seriesStyle(place);
}

function onAxes(sand: GrainCurveSand): { x: number; y: number }[] {
  return sand.points.map((point) => ({ x: point.openingMm, y: within(point.passingPercent, 0, 100) }));
}

/** The 95 % intervals of what passes, as upright bars. */
function doubtBars({ points }: GrainCurveSand): { x: number; y: number; y2: number }[] {
  return points.flatMap((point) => {
    const both = ends(point);
    if (!both) return [];
    return [{ x: point.openingMm, y: within(both.low, 0, 100), y2: within(both.high, 0, 100) }];
  });
}

function sandLayers(sand: GrainCurveSand, place: number): (Layer | undefined)[] {
  const style = styleOf(sand, place);
  const at = onAxes(sand);
  return [
    line(`line-${place + 1}`, at, style),
    ...whiskers(`doubt-${place + 1}`, doubtBars(sand), style.colour),
    marks(`points-${place + 1}`, at, style),
  ];
}

/** Behind everything, from top to bottom of the box. */
function bandLayer({ lowMm, highMm }: { lowMm: number; highMm: number }): Layer {
  return {
    name: "band",
    data: { values: [{ x: lowMm, x2: highMm, y: 0, y2: 100 }] },
    mark: { type: "rect", color: colours.band },
    encoding: {
      x: { field: "x", type: "quantitative", axis: null },
      x2: { field: "x2" },
      y: { field: "y", type: "quantitative", axis: null },
      y2: { field: "y2" },
    },
  };
}

/** The sieves along the top: a tick down into the box for each, its name, and what the names are. */
function sieveLayers(sieves: ReturnType<typeof sieveLabels>, box: Box): (Layer | undefined)[] {
  if (sieves.labels.length === 0) return [];
  const { words: at, look } = sieveLabelWords(sieves, sieves.upright ? -6 : -12, -1);
  const lines = sieves.labels.map(({ px }) => ({ px, py: -4, px2: px, py2: box.height }));
  const title = { px: box.width + 8, py: -(sieves.heightPx + 12 + titleRowPx / 2), text: sieves.title };
  return [
    strokes("sieves", lines, { color: colours.rule, strokeWidth: 1, opacity: 0.7 }),
    words("sieve-names", at, { ...look, color: colours.quiet }),
    words("sieve-title", [title], { align: "right", color: colours.quiet }),
  ];
}

function uniqueSieves(sands: readonly GrainCurveSand[]): { openingMm: number; label: string }[] {
  const unique: { openingMm: number; label: string }[] = [];
  for (const { openingMm, label } of sands.flatMap(({ points }) => points))
    if (!unique.some((one) => sameSieve(one.openingMm, openingMm))) unique.push({ openingMm, label });
  return unique;
}

/** From the finest to the coarsest opening that is drawn, with some air; 0.05 to 2 mm when there is none. */
function openings({ sands, band }: GrainCurveInput): readonly [number, number] {
  const all = sands.flatMap((sand) =>
    [...sand.points, ...(sand.interval ?? [])].map((each) => each.openingMm),
  );
  if (band) all.push(band.lowMm, band.highMm);
  if (all.length === 0) return [0.05, 2];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const air = high / low < 2 ? 2 : 1.12;
  return [Number((low / air).toPrecision(4)), Number((high * air).toPrecision(4))];
}

const fewSteps = [1, 2, 5];
const manySteps = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9];

/** 1, 2 and 5 times powers of ten inside the domain (steps between where it is short) that stand free of each other. */
function roundOpenings([low, high]: readonly [number, number], x: Scale): number[] {
  const found: number[] = [];
  for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power += 1)
    for (const step of high / low > 16 ? fewSteps : manySteps) {
      const value = Number(`${step}e${power}`);
      if (value >= low && value <= high) found.push(value);
    }
  const free: number[] = [];
  for (const value of found) {
    const last = free.at(-1);
    const room =
      (textWidth(String(value), letterPx.axis) + textWidth(String(last ?? ""), letterPx.axis)) / 2 + 4;
    if (last === undefined || Math.abs(x(value) - x(last)) >= room) free.push(value);
  }
  return free;
}
