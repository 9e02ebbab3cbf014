// The hand calibrated: what a squeeze by hand said, against the compactability that was measured.

import { invariant } from "../issue.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { cell, checkName, ends, nothing } from "./data.ts";
import { axisDomain } from "./domain.ts";
import { boxFor, frame, linearScale, type Scale } from "./frame.ts";
import { boxes, pixelMarks, type Stroke, strokes } from "./layers.ts";
import { whiskersAt } from "./pixel-layers.ts";
import { footAxis, levelTicks } from "./plot.ts";
import { layRows } from "./rows.ts";
import {
  compactabilityUnit,
  type SqueezeChartInput,
  type SqueezePoint,
  type SqueezeRow,
  squeezeAlt,
  squeezeCaption,
  squeezeRow,
} from "./squeeze-words.ts";
import { wrap } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";

const right = 16;

/**
 * Draws the steps of the squeeze test as rows, in their order, over an axis of compactability (% of height): a dot
 * for each trial with its ±, and an upright dash at the mean of each step that was felt twice or more. Where the dots
 * of two steps mix, the hand does not tell them apart.
 *
 * A point whose step is not among the steps, or a compactability outside 0..100, throws Misuse; a point without a
 * figure is left out.
 *
 * @example squeezeChart({ name: "hand", steps: [{ step: 1, words: "falls apart" }, { step: 2, words: "just holds" }],
 *   points: [{ step: 1, compactability: 28 }, { step: 2, compactability: 41 }, { step: 2, compactability: 44 }] })
 */
export function squeezeChart(input: SqueezeChartInput): Chart {
  checkName(input.name);
  const steps = input.steps.toSorted((a, b) => a.step - b.step);
  const known = new Set(steps.map(({ step }) => step));
  for (const { step, compactability, ...point } of input.points) {
    invariant(known.has(step), `${step} is none of the steps`);
    invariant(!(compactability < 0 || compactability > 100), `compactability cannot be ${compactability} %`);
    ends(point);
  }
  const points = input.points.filter(({ compactability }) => Number.isFinite(compactability));
  const rows = steps.map((step) => squeezeRow(step, points));
  const chart = {
    name: input.name,
    caption: input.caption ?? squeezeCaption(input),
    alt: squeezeAlt(rows, input),
  };
  return {
    ...chart,
    spec: (width) => spec(chart, rows, input, width),
    table: {
      columns: [
        { name: "step" },
        { name: "squeeze" },
        { name: "batch" },
        { name: "compactability", unit: compactabilityUnit },
        { name: "low end of 95 %", unit: compactabilityUnit },
        { name: "high end of 95 %", unit: compactabilityUnit },
      ],
      rows: steps.flatMap(({ step, words }) =>
        input.points
          .filter((point) => point.step === step)
          .map((point) => [
            step,
            words,
            point.label ?? null,
            cell(point.compactability),
            cell(point.low),
            cell(point.high),
          ]),
      ),
    },
  };
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  rows: readonly SqueezeRow[],
  { aim }: SqueezeChartInput,
  width: number,
): VegaLiteSpec {
  const laid = layRows(rows, width, right, 8);
  const innerWidth = Math.floor(width) - laid.left - right;
  const values = rows.flatMap(({ points }) =>
    points.flatMap((point) => [point.compactability, point.low, point.high]),
  );
  const seen = [...values, aim?.low, aim?.high].filter((value) => Number.isFinite(value));
  const [from, to] = seen.length === 0 ? [0, 100] : axisDomain(seen, [], 0);
  const domain: [number, number] = [from, Math.min(to, 100)];
  const x = linearScale(domain, innerWidth);
  const title = wrap(`compactability, ${compactabilityUnit}`, innerWidth, letterPx.axis, 2);
  const ticks = levelTicks(domain, innerWidth);
  const bottom = 26 + title.length * 15;
  const box = boxFor(width, { height: laid.height, left: laid.left, right, top: 6, bottom });
  const axes = footAxis(title, domain, ticks, laid.wide);
  const style = seriesStyle(0);
  const placed = rows.flatMap(({ points }, i) => inLanes(points, laid.rows[i]!.middle, x));
  const dashes: Stroke[] = rows.flatMap(({ points, mean }, i) => {
    if (points.length < 2) return [];
    const { middle } = laid.rows[i]!;
    return [{ px: x(mean), py: middle - 9, px2: x(mean), py2: middle + 9 }];
  });
  const tracks = laid.rows.map(({ middle }) => ({
    px: 0,
    py: middle - 10,
    px2: innerWidth,
    py2: middle + 10,
  }));
  const edges = [aim?.low, aim?.high]
    .filter((end) => end !== undefined && Number.isFinite(end))
    .flatMap((end) =>
      laid.rows.map(({ middle }) => ({ px: x(end!), py: middle - 10, px2: x(end!), py2: middle + 10 })),
    );
  return frame(chart, box, [
    boxes("tracks", tracks, { color: colours.rule, opacity: 0.25 }),
    axes,
    strokes("aim", edges, { color: colours.ink, strokeWidth: 1.3, strokeDash: [4, 3] }),
    strokes("means", dashes, { color: colours.ink, strokeWidth: 2.2 }),
    whiskersAt(
      "doubt",
      placed.flatMap(({ bar }) => bar),
      { color: style.colour },
    ),
    pixelMarks("points", placed, style, 40),
    ...laid.layers(),
    rows.length === 0 ? nothing(box) : undefined,
  ]);
}

/** Dots and bars that would lie on each other step up or down by a few px. */
function inLanes(points: readonly SqueezePoint[], middle: number, x: Scale) {
  const lanes = [0, -6, 6];
  const taken = lanes.map(() => Number.NEGATIVE_INFINITY);
  return points
    .toSorted((a, b) => a.compactability - b.compactability)
    .map((point) => {
      const px = x(point.compactability);
      const both = ends(point);
      const from = Math.min(px - 4, both ? x(both.low) - 2 : px);
      const lane = Math.max(
        0,
        taken.findIndex((end) => end <= from),
      );
      taken[lane] = Math.max(px + 4, both ? x(both.high) + 2 : px);
      const py = middle + lanes[lane]!;
      const bar: Stroke[] = both ? [{ px: Math.max(0, x(both.low)), py, px2: x(both.high), py2: py }] : [];
      return { px, py, bar };
    });
}
