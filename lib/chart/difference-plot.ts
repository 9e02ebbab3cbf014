// Two groups of batches and the difference of their means: before and after, one clay or another.

import { invariant } from "../issue.ts";
import { type AxisName, axisTitle, capital, columnUnit, decimalsOver, unitText } from "./axis-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { cell, checkName, ends, nothing, within } from "./data.ts";
import {
  type DifferenceGroup,
  type DifferencePlotInput,
  differenceName,
  differenceRow,
  groupRow,
  meanOf,
} from "./difference-words.ts";
import { axisDomain, ticksIn } from "./domain.ts";
import { boxFor, frame, linearScale, type Scale } from "./frame.ts";
import { pixelMarks, type Stroke, strokes, words } from "./layers.ts";
import { footAxis } from "./plot.ts";
import { layRows } from "./rows.ts";
import { figure, textWidth, wrap } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";

const right = 16;
const spareLinePx = 15;

/**
 * Draws the figures of two groups as dots with an upright dash at each mean, and under them the difference of the
 * means (second less first) with its 95 % interval, on an axis of its own whose zero stands under the first mean, to
 * the same scale: an interval that crosses the line of zero allows for no difference.
 *
 * Other than two groups, or ends the wrong way round, throw Misuse; NaN is left out. A difference that is NaN keeps
 * its row and says "no figure".
 *
 * Source: Gardner & Altman 1986, BMJ 292, 746–750 (difference with its interval beside the data; from memory).
 *
 * @example differencePlot({ name: "new-clay", property: "green compression strength", unit: "kPa",
 *   groups: [{ label: "old bag", values: [48, 51, 47] }, { label: "new bag", values: [55, 58, 54] }],
 *   difference: { value: 7, low: 2.3, high: 11.7 } })
 */
export function differencePlot(input: DifferencePlotInput): Chart {
  checkName(input.name);
  invariant(input.groups.length === 2, `a difference is between two groups, not ${input.groups.length}`);
  ends(input.difference);
  const axis: AxisName = { ...input, title: input.property };
  unitText(axis);
  const known = (group: DifferenceGroup) => ({ ...group, values: group.values.filter(Number.isFinite) });
  const [first, second] = [known(input.groups[0]!), known(input.groups[1]!)];
  const all = [...first.values, ...second.values];
  const decimals = decimalsOver(Math.max(...all) - Math.min(...all));
  const rows = [
    ...[first, second].map((group) => groupRow(group, decimals)),
    differenceRow(first, second, input, axis),
  ];
  const chart = {
    name: input.name,
    caption:
      input.caption ??
      `${capital(input.property)} of two groups of batches, dot by dot; a dash is a mean; the thick bar is the 95 % interval of the difference.`,
    alt: `${capital(axisTitle(axis))}, of two groups. ${rows.map((row) => `${row.label}: ${row.under}.`).join(" ")}`,
  };
  return {
    ...chart,
    spec: (width) => spec(chart, rows, { ...input, groups: [first, second] }, axis, width),
    table: {
      columns: [
        { name: "group" },
        { name: input.property, ...columnUnit(axis) },
        { name: "low end of 95 %", ...columnUnit(axis) },
        { name: "high end of 95 %", ...columnUnit(axis) },
      ],
      rows: [
        ...input.groups.flatMap(({ label, values }) =>
          values.map((value) => [label, cell(value), null, null]),
        ),
        [
          differenceName(first, second),
          cell(input.difference.value),
          cell(input.difference.low),
          cell(input.difference.high),
        ],
      ],
    },
  };
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  rows: readonly { label: string; under: string }[],
  { groups, difference }: DifferencePlotInput,
  axis: AxisName,
  width: number,
): VegaLiteSpec {
  const upper = layRows(rows.slice(0, 2), width, right);
  const innerWidth = Math.floor(width) - upper.left - right;
  const first = meanOf(groups[0]!.values);
  const zero = Number.isFinite(first) ? first : 0;
  const { value, low, high } = difference;
  const values = groups.flatMap((group) => group.values);
  const domain = axisDomain(
    [...values, zero, zero + value],
    [{ values: [zero + low, zero + high], reach: 1 }],
  );
  const x = linearScale(domain, innerWidth);
  const upperTitle = wrap(axisTitle(axis), innerWidth, letterPx.axis, 2);
  // The upper axis is drawn by us, the lower one, of the difference, by the frame.
  const axisY = upper.height;
  const start = axisY + 24 + upperTitle.length * spareLinePx + 8;
  const lower = layRows(rows.slice(2), width, right, start);
  const lowerDomain: [number, number] = [domain[0] - zero, domain[1] - zero];
  const widest = Math.max(
    ...[...domain, ...lowerDomain].map((end) => textWidth(figure(end, 2), letterPx.axis)),
  );
  const many = Math.min(8, Math.floor(innerWidth / (widest + 22)));
  const title = wrap(
    axisTitle({ ...axis, title: axis.unit === "" ? `difference in ${axisTitle(axis)}` : "difference" }),
    innerWidth,
    letterPx.axis,
    2,
  );
  const box = boxFor(width, {
    height: lower.height,
    left: upper.left,
    right,
    top: 6,
    bottom: 26 + title.length * spareLinePx,
  });
  const axes = footAxis(title, lowerDomain, ticksIn(lowerDomain, many));
  const middle = lower.rows[0]!.middle;
  const nil: Stroke[] = [
    ...upper.rows
      .slice(0, 2)
      .map((row) => ({ px: x(zero), py: row.middle - 9, px2: x(zero), py2: row.middle + 9 })),
    { px: x(zero), py: middle - 9, px2: x(zero), py2: lower.height },
  ];
  const known = Number.isFinite(value);
  const both = !Number.isNaN(low) && !Number.isNaN(high) && known;
  const bar = both
    ? [
        {
          px: x(within(zero + low, ...domain)),
          py: middle,
          px2: x(within(zero + high, ...domain)),
          py2: middle,
        },
      ]
    : [];
  return frame(chart, box, [
    axes,
    ...levelAxis(x, ticksIn(domain, many), axisY, innerWidth, upperTitle),
    strokes("zero", nil, { strokeWidth: 1, strokeDash: [3, 3] }),
    ...groups.flatMap(({ values: own }, i) => groupLayers(own, i, upper.rows[i]!.middle, x)),
    strokes("interval", bar, { color: colours.ink, strokeWidth: 6, opacity: 0.45 }),
    pixelMarks("difference", known ? [{ px: x(zero + value), py: middle }] : [], { ...seriesStyle(3) }, 70),
    ...upper.layers(),
    ...lower.layers().map((layer) => layer && { ...layer, name: `${String(layer.name)}-2` }),
    values.length === 0 && !known ? nothing({ ...box, height: upper.height }) : undefined,
  ]);
}

function groupLayers(values: readonly number[], place: number, middle: number, x: Scale) {
  const style = seriesStyle(place);
  const steps = [0, -5, 5];
  const sorted = values.toSorted((a, b) => a - b);
  const at = sorted.map((value, i) => {
    const crowded = i > 0 && x(value) - x(sorted[i - 1]!) < 8;
    return { px: x(value), py: middle + (crowded ? steps[i % 3]! : 0) };
  });
  const dash = { px: x(meanOf(values)), py: middle - 9, px2: x(meanOf(values)), py2: middle + 9 };
  return [
    strokes(`mean-${place + 1}`, values.length > 1 ? [dash] : [], { color: colours.ink, strokeWidth: 2.2 }),
    pixelMarks(`points-${place + 1}`, at, style, 40),
  ];
}

/** A level axis in the middle of the box. */
function levelAxis(x: Scale, ticks: readonly number[], py: number, width: number, title: readonly string[]) {
  const marks = [
    { px: 0, py, px2: width, py2: py },
    ...ticks.map((tick) => ({ px: x(tick), py, px2: x(tick), py2: py + 4 })),
  ];
  const labels = ticks.map((tick) => ({ px: x(tick), py: py + 13, text: figure(tick, 6) }));
  const lines = title.map((text, i) => ({ px: width / 2, py: py + 30 + i * spareLinePx, text }));
  return [
    strokes("axis-1", marks, { strokeWidth: 1 }),
    words("ticks-1", labels, { align: "center" }),
    words("title-1", lines, { align: "center" }),
  ];
}
