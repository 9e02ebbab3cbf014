// One question of a log drawn: the values on pours with a fault, and below them those without.

import { capital } from "./axis-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { cell, checkName, ends, nothing } from "./data.ts";
import { axesLayer, boxFor, frame, linearScale, type Scale } from "./frame.ts";
import { pixelMarks, type Stroke, strokes, words } from "./layers.ts";
import { figure, textWidth, wrap } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";
import { niceTicks } from "./ticks.ts";

export interface CastingMark {
  /** Of the pour: "2026-05-02". */
  readonly label: string;
  readonly value: number;
  /** Ends of the 95 % interval. */
  readonly low?: number;
  readonly high?: number;
}
export interface CastingChartInput {
  readonly name: string;
  readonly fault: string;
  /** What it is held against: "moisture". */
  readonly against: string;
  /** With its basis where it is a percentage; empty for a bare number. */
  readonly unit: string;
  readonly withIt: readonly CastingMark[];
  readonly without: readonly CastingMark[];
  /** Where the question parts the values. */
  readonly limit?: number;
}

const sides = 14;
const linePx = 16;
const lanePx = 12;

/**
 * Draws two groups of values over one axis: a point for each value with its 95 % bar, those with the fault above those
 * without, each group packed into as few lanes as keep bars apart; a dashed rule at the limit where there is one.
 * Values that are not finite are left out; ends the wrong way round throw Misuse.
 * @example castingChart({ name: "gas-holes", fault: "gas holes", against: "moisture", unit: "% of damp mass",
 *   withIt: [{ label: "2026-05-02", value: 4.4, low: 4.2, high: 4.6 }], without: [{ label: "2026-05-09", value: 3.4 }] })
 */
export function castingChart(input: CastingChartInput): Chart {
  checkName(input.name);
  const { fault, against, unit, withIt, without, limit } = input;
  for (const mark of [...withIt, ...without]) ends(mark);
  const of = { ...(unit === "" ? {} : { unit }) };
  const parted =
    limit === undefined ? "" : `; the dashed line is the limit that the log names, ${figure(limit, 2)}`;
  const listed = (marks: readonly CastingMark[]): string =>
    marks.length === 0 ? "none" : marks.map(({ value }) => figure(value, 2)).join(", ");
  const chart = {
    name: input.name,
    caption: `${capital(against)} on pours with ${fault} and without, each with its 95 % bar as far as it is known${parted}.`,
    alt: `${capital(against)}${unit === "" ? "" : `, ${unit}`}. With ${fault}: ${listed(withIt)}. Without: ${listed(without)}.${limit === undefined ? "" : ` Limit: ${figure(limit, 2)}.`}`,
  };
  const rows = (group: string, marks: readonly CastingMark[]) =>
    marks.map(({ label, value, low, high }) => [label, group, cell(value), cell(low), cell(high)]);
  return {
    ...chart,
    spec: (width) => spec(chart, input, width),
    table: {
      columns: [
        { name: "pour" },
        { name: fault },
        { name: against, ...of },
        { name: "low end of 95 %", ...of },
        { name: "high end of 95 %", ...of },
      ],
      rows: [...rows("found", withIt), ...rows("not found", without)],
    },
  };
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  { fault, against, unit, withIt, without, limit }: CastingChartInput,
  width: number,
): VegaLiteSpec {
  const innerWidth = Math.floor(width) - 2 * sides;
  const finite = (marks: readonly CastingMark[]) => marks.filter(({ value }) => Number.isFinite(value));
  const groups = [
    { title: `with ${fault}`, marks: finite(withIt) },
    { title: `without ${fault}`, marks: finite(without) },
  ];
  const domain = domainOf(
    groups.flatMap(({ marks }) => marks),
    limit,
  );
  const x = linearScale(domain, innerWidth);
  let y = 4;
  const laid = groups.map(({ title, marks }) => {
    const [head] = wrap(`${title}: ${marks.length}`, innerWidth, letterPx.label, 1);
    const top = y + linePx;
    const { at, lanes } = packed(marks, x, top + lanePx / 2);
    y = top + Math.max(1, lanes) * lanePx + 8;
    return { head: { px: 0, py: top - linePx / 2, text: head ?? "" }, at, top, bottom: y - 8 };
  });
  const title = wrap(unit === "" ? against : `${against}, ${unit}`, innerWidth, letterPx.axis, 2);
  const box = boxFor(width, { height: y, left: sides, right: sides, top: 6, bottom: 26 + title.length * 15 });
  const widest = Math.max(...domain.map((end) => textWidth(figure(end, 2), letterPx.axis)));
  const ticks = niceTicks(domain[0], domain[1], Math.min(8, Math.floor(innerWidth / (widest + 24))));
  const rule: Stroke[] =
    limit === undefined
      ? []
      : laid.map(({ top, bottom }) => ({ px: x(limit), py: top, px2: x(limit), py2: bottom }));
  return frame(chart, box, [
    axesLayer(
      {
        scale: { domain, nice: false, zero: false },
        axis: { title, values: ticks, format: "~f", grid: false, labelFlush: false, titlePadding: 6 },
      },
      { scale: { domain: [0, 1] }, axis: null },
    ),
    strokes("limit", rule, { color: colours.ink, strokeWidth: 1.2, strokeDash: [4, 3] }),
    ...laid.flatMap(({ at }, i) => {
      const style = seriesStyle(i);
      const bars = at.flatMap(({ px, px2, py }) => (px < px2 ? [{ px, py, px2, py2: py }] : []));
      return [
        strokes(`interval-${i + 1}`, bars, { color: style.colour, strokeWidth: 4, opacity: 0.4 }),
        pixelMarks(
          `points-${i + 1}`,
          at.map(({ middle, py }) => ({ px: middle, py })),
          style,
        ),
      ];
    }),
    words(
      "groups",
      laid.map(({ head }) => head),
    ),
    groups.every(({ marks }) => marks.length === 0) ? nothing(box) : undefined,
  ]);
}

interface Packed {
  readonly middle: number;
  readonly px: number;
  readonly px2: number;
  readonly py: number;
}

/** From the smallest value on, each in the first lane where its bar touches no other. */
function packed(marks: readonly CastingMark[], x: Scale, firstPx: number): { at: Packed[]; lanes: number } {
  const taken: number[] = [];
  const spans = marks.map((mark) => {
    const both = ends(mark);
    const middle = x(mark.value);
    return { middle, px: both ? x(both.low) : middle, px2: both ? x(both.high) : middle };
  });
  const at = spans
    .toSorted((a, b) => a.px - b.px)
    .map(({ middle, px, px2 }) => {
      const free = taken.findIndex((end) => end + 6 < Math.min(px, middle - 5));
      const lane = free < 0 ? taken.length : free;
      taken[lane] = Math.max(px2, middle + 5);
      return { middle, px, px2, py: firstPx + lane * lanePx };
    });
  return { at, lanes: taken.length };
}

function domainOf(marks: readonly CastingMark[], limit: number | undefined): [number, number] {
  const all = [...marks.flatMap(({ value, low, high }) => [value, low, high]), limit].filter(
    (value): value is number => value !== undefined && Number.isFinite(value),
  );
  if (all.length === 0) return [0, 1];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const air = high > low ? (high - low) * 0.06 : Math.max(Math.abs(low) * 0.1, 1);
  return [Number((low - air).toPrecision(6)), Number((high + air).toPrecision(6))];
}
