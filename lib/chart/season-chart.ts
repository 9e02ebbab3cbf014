// A season of a heap: live clay, dead clay, fines and sand, pour by pour, with their ± and what was done.

import type { Chart, VegaLiteSpec } from "./chart.ts";
import { cell, checkName, nothing, within } from "./data.ts";
import { axisDomain, ticksIn } from "./domain.ts";
import { boxFor, frame, linearScale } from "./frame.ts";
import { type KeyEntry, key } from "./key.ts";
import { boxes, pixelMarks, strokes, words } from "./layers.ts";
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
import { courseLayers, measuredDoubt } from "./season-layers.ts";
import {
  type SeasonChartInput,
  type SeasonPanel,
  type SeasonPoint,
  seasonAlt,
  seasonCaption,
} from "./season-words.ts";
import { wrap } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";

const right = 16;

/**
 * Draws a heap over its pours: a panel for each property over one axis of pours, 0 being today, the record to the left
 * and the plan to the right of it; a line with its 95 % band for each course (mended, left alone), what was measured as
 * points with their ±, and marks under the last panel where clay or new sand went in.
 *
 * Ends the wrong way round throw Misuse. Figures that are not finite are left out.
 *
 * @example seasonChart({ name: "season", panels: [{ property: "live clay", unit: "% of dry mix", courses: [{ label:
 *   "mended", points: [{ pour: 0, value: 8, low: 7.6, high: 8.4 }] }], measured: [] }], events: [] })
 */
export function seasonChart(input: SeasonChartInput): Chart {
  checkName(input.name);
  const chart = { name: input.name, caption: input.caption ?? seasonCaption(input), alt: seasonAlt(input) };
  return {
    ...chart,
    spec: (width) => spec(chart, input, width),
    table: {
      columns: [
        { name: "property" },
        { name: "course" },
        { name: "pours from today" },
        { name: "value" },
        { name: "low end of 95 %" },
        { name: "high end of 95 %" },
        { name: "unit" },
      ],
      rows: input.panels.flatMap(({ property, unit, courses, measured }) =>
        [...courses, { label: "measured", points: measured }].flatMap(({ label, points }) =>
          inTable(points).map(({ pour, value, low, high }) => [
            property,
            label,
            pour,
            cell(value),
            cell(low),
            cell(high),
            unit,
          ]),
        ),
      ),
    },
  };
}

/** Every fifth pour, the first and the last: the page's tables have the others. */
const inTable = (points: readonly SeasonPoint[]): readonly SeasonPoint[] =>
  points.filter(({ pour }, i) => points.length < 12 || pour % 5 === 0 || i === 0 || i === points.length - 1);

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  { panels, events }: SeasonChartInput,
  width: number,
): VegaLiteSpec {
  const height = Math.round(within(width * 0.2, 92, 132));
  const domains = panels.map(domainOf);
  const ticks = domains.map((domain) => ticksIn(domain, 4));
  const left = tickRoom(ticks.flat());
  const innerWidth = Math.floor(width) - left - right;
  const pours = panels.flatMap(({ courses, measured }) =>
    [...courses.flatMap(({ points }) => points), ...measured].map(({ pour }) => pour),
  );
  const domain: [number, number] =
    pours.length === 0 ? [0, 1] : [Math.min(...pours) - 0.7, Math.max(...pours) + 0.7];
  const x = linearScale(domain, innerWidth);
  const labels = [...new Set(panels.flatMap(({ courses }) => courses.map(({ label }) => label)))];
  const style = (label: string) => seriesStyle(labels.indexOf(label) + 1);
  const kinds = [...new Set(events.map(({ kind }) => kind))];
  const measuredStyle = seriesStyle(0);
  const entries: KeyEntry[] = [
    ...labels.map((label): KeyEntry => ({ text: label, sample: "rule", style: style(label) })),
    ...(panels.some(({ measured }) => measured.length > 0)
      ? [{ text: "measured", sample: "mark", style: measuredStyle } as const]
      : []),
  ];
  const shared = key(entries, innerWidth + left);
  let y = shared.heightPx + (entries.length > 0 ? 6 : 0);
  const laid = panels.map((panel, i) => {
    const title = titleLines(
      panel.unit === "" ? panel.property : `${panel.property}, ${panel.unit}`,
      innerWidth + left,
    );
    const top = y;
    const plot = plotAt(top + title.length * titleLinePx + 7, height, innerWidth, domains[i]!, ticks[i]!);
    y = plot.bottom + 14;
    return { panel, title, top, plot };
  });
  const foot = laid.at(-1)?.plot.bottom ?? y + 40;
  const lanes = kinds.map((kind, i) => ({ kind, y: foot + 12 + i * 17 }));
  const boxHeight = foot + (lanes.length > 0 ? 8 + lanes.length * 17 : 0);
  const title = wrap(
    "pours from today, number: the record to the left of it, the plan to the right",
    innerWidth,
    letterPx.axis,
    2,
  );
  const box = boxFor(width, { height: boxHeight, left, right, top: 8, bottom: 26 + title.length * 15 });
  const xTicks = levelTicks(domain, innerWidth).filter(Number.isInteger);
  const today = laid.map(({ plot }) => ({ px: x(0), py: plot.top, px2: x(0), py2: plot.bottom }));
  return frame(chart, box, [
    boxes(
      "lanes",
      lanes.map((lane) => ({ px: 0, py: lane.y - 7, px2: innerWidth, py2: lane.y + 7 })),
      {
        color: colours.rule,
        opacity: 0.22,
      },
    ),
    footAxis(title, domain, xTicks),
    ...laid.flatMap(({ plot }, i) => plotFrame(`${i + 1}`, plot, xTicks.map(x))),
    ...laid.flatMap(({ panel, plot }, i) =>
      panel.courses.flatMap(({ label, points }, k) =>
        courseLayers(`${i + 1}-${k + 1}`, points, x, plot.y, style(label)),
      ),
    ),
    strokes("today", today, { color: colours.ink, strokeWidth: 1.2, strokeDash: [4, 3] }),
    ...laid.flatMap(({ panel, plot }, i) => [
      measuredDoubt(`${i + 1}`, panel.measured, x, plot.y, measuredStyle),
      pixelMarks(
        `points-${i + 1}`,
        panel.measured.map(({ pour, value }) => ({ px: x(pour), py: plot.y(value) })),
        measuredStyle,
      ),
    ]),
    ...lanes.map(({ kind, y: py }, i) =>
      pixelMarks(
        `events-${i + 1}`,
        events.filter((event) => event.kind === kind).map(({ pour }) => ({ px: x(pour), py })),
        seriesStyle(i + 3),
        30,
      ),
    ),
    words("lane-words", laneWords(lanes, events, x, innerWidth), {
      fontSize: letterPx.tick,
      color: colours.quiet,
    }),
    ...laid.map(({ title: lines, top }, i) => titleWords(`title-${i + 1}`, lines, left, top)),
    ...shared.layers(-left + 2, 9),
    panels.length === 0 ? nothing(box) : undefined,
  ]);
}

/** The name of a lane stands behind its last mark where there is room, at its right end. */
function laneWords(
  lanes: readonly { readonly kind: string; readonly y: number }[],
  events: SeasonChartInput["events"],
  x: (pour: number) => number,
  width: number,
) {
  return lanes.map(({ kind, y }) => {
    const last = Math.max(...events.filter((event) => event.kind === kind).map(({ pour }) => x(pour)));
    return { px: Math.min(last + 10, width - 70), py: y, text: kind };
  });
}

function domainOf({ courses, measured }: SeasonPanel): [number, number] {
  const all = [...courses.flatMap(({ points }) => points), ...measured];
  const values = all.flatMap(({ value, low, high }) => [value, low, high]);
  return axisDomain(values, [], 0);
}
