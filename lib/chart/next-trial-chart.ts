// What the next batch is worth: how narrow the aim's interval would be, against where the batch is made.

import { invariant } from "../issue.ts";
import { type AxisName, axisTitle, columnUnit, decimalsOver, unitText } from "./axis-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { cell, checkName, nothing, within } from "./data.ts";
import { axisDomain } from "./domain.ts";
import { boxFor, frame, linearScale } from "./frame.ts";
import { type KeyEntry, key } from "./key.ts";
import { pixelMarks, strokes } from "./layers.ts";
import { pixelLine } from "./pixel-layers.ts";
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
import { figure, wrap } from "./text.ts";
import { colours, letterPx, type SeriesStyle, seriesStyle } from "./theme.ts";
import { fromZero } from "./ticks.ts";

export interface NextTrialInput {
  readonly name: string;
  readonly axis: AxisName;
  /** Where the next batch could be made, and the expected width of the aim's 95 % interval after it. */
  readonly candidates: readonly { readonly x: number; readonly width: number }[];
  /** The width as it stands, in the unit of the axis. */
  readonly now: number;
  readonly caption?: string;
}

const right = 16;
const bestStyle: SeriesStyle = { ...seriesStyle(3), shape: "diamond", dash: [] };
const nowStyle: SeriesStyle = { ...seriesStyle(3), dash: [6, 4] };
const fitted: SeriesStyle = { ...seriesStyle(0), colour: colours.fitted };

/**
 * Draws the expected width of the aim's 95 % interval (in the unit of the axis, from zero) against where the next
 * batch is made, and the width as it stands as a dashed line. The lowest place is the batch that narrows the aim most;
 * where no place lies below the dashed line, another batch narrows nothing.
 *
 * Candidates without a figure are left out; a negative width throws Misuse.
 *
 * @example nextTrialChart({ name: "shed-next", axis: { title: "moisture", unit: "%", basis: "damp mass" }, now: 0.9,
 *   candidates: [{ x: 2.5, width: 0.8 }, { x: 3.1, width: 0.6 }, { x: 3.7, width: 0.7 }] })
 */
export function nextTrialChart(input: NextTrialInput): Chart {
  checkName(input.name);
  unitText(input.axis);
  for (const { width } of input.candidates) invariant(!(width < 0), `a width cannot be ${width}`);
  invariant(!(input.now < 0), `a width cannot be ${input.now}`);
  const candidates = input.candidates
    .filter(({ x, width }) => Number.isFinite(x) && Number.isFinite(width))
    .toSorted((a, b) => a.x - b.x);
  const sound = { ...input, candidates };
  const advice = adviceOf(sound);
  const chart = {
    name: input.name,
    caption:
      input.caption ??
      `How wide the 95 % interval of the aim is expected to be after one more batch, against the ${input.axis.title} of that batch.`,
    alt: [
      `Expected width of the aim's 95 % interval against ${axisTitle({ ...input.axis, title: `${input.axis.title} of the next batch` })}.`,
      `${nowText(sound)}.`,
      `${advice}.`,
    ].join(" "),
  };
  return {
    ...chart,
    spec: (width) => spec(chart, sound, width),
    table: {
      columns: [
        { name: `${input.axis.title} of the next batch`, ...columnUnit(input.axis) },
        { name: "expected width of the aim's 95 % interval", ...columnUnit(input.axis) },
      ],
      rows: [
        ...input.candidates.map(({ x, width }) => [cell(x), cell(width)]),
        ["without another batch", cell(input.now)],
      ],
    },
  };
}

function places({ candidates }: NextTrialInput): { x: number; width: number } {
  const over = (values: readonly number[]) => decimalsOver(Math.max(...values) - Math.min(...values));
  const highest = Math.max(...candidates.map(({ width }) => width));
  return { x: over(candidates.map(({ x }) => x)), width: decimalsOver(highest) };
}
function nowText(input: NextTrialInput, unit = unitText(input.axis)): string {
  const unknown = "As it stands: no figure";
  return Number.isFinite(input.now)
    ? `As it stands: ${figure(input.now, decimalsOver(input.now))} ${unit}`.trimEnd()
    : unknown;
}
function bestOf({ candidates }: NextTrialInput) {
  const [first] = candidates;
  return first && candidates.reduce((best, each) => (each.width < best.width ? each : best), first);
}
function adviceOf(input: NextTrialInput, unit = unitText(input.axis)): string {
  const best = bestOf(input);
  if (!best) return "No places to compare";
  if (best.width >= input.now) return "None of these places narrows it";
  const decimals = places(input);
  const at = `${figure(best.x, decimals.x)} ${unit}`.trimEnd();
  return `Narrowest after a batch at ${at}: ${figure(best.width, decimals.width)}`;
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: NextTrialInput,
  width: number,
): VegaLiteSpec {
  const { axis, candidates, now } = input;
  const best = bestOf(input);
  const helps = best !== undefined && !(best.width >= now);
  const highest = Math.max(0, ...candidates.map((each) => each.width), Number.isFinite(now) ? now : 0);
  const { domain: yDomain, ticks } = fromZero(highest * 1.05, 5);
  const left = tickRoom(ticks);
  const innerWidth = Math.floor(width) - left - right;
  const height = Math.round(within(width * 0.3, 150, 210));
  const domain = axisDomain(candidates.map(({ x }) => x));
  const x = linearScale(domain, innerWidth);
  const xTicks = candidates.length === 0 ? [] : levelTicks(domain, innerWidth);
  const heading = titleLines(
    axisTitle({ ...axis, title: "expected width of the aim's 95 % interval" }),
    innerWidth + left,
  );
  const entries: KeyEntry[] = [
    { text: nowText(input, axis.unit), sample: "rule", style: nowStyle },
    { text: adviceOf(input, axis.unit), sample: helps ? "mark" : "rule", style: helps ? bestStyle : fitted },
  ];
  const keyRows = key(candidates.length > 0 ? entries : entries.slice(0, 1), innerWidth + left);
  const keyTop = heading.length * titleLinePx;
  const plot = plotAt(keyTop + keyRows.heightPx + 8, height, innerWidth, yDomain, ticks);
  const title = wrap(
    axisTitle({ ...axis, title: `${axis.title} of the next batch` }),
    innerWidth,
    letterPx.axis,
    2,
  );
  const box = boxFor(width, { height: plot.bottom, left, right, top: 6, bottom: 26 + title.length * 15 });
  const axes = footAxis(title, domain, xTicks);
  const course = candidates.map((each) => ({ px: x(each.x), py: plot.y(each.width) }));
  const level = Number.isFinite(now) ? [{ px: 0, py: plot.y(now), px2: innerWidth, py2: plot.y(now) }] : [];
  return frame(chart, box, [
    axes,
    ...plotFrame("1", plot, xTicks.map(x)),
    strokes("now", level, { color: nowStyle.colour, strokeWidth: 1.4, strokeDash: nowStyle.dash }),
    pixelLine("line-1", [course], { color: colours.fitted, strokeWidth: 2 }),
    candidates.length <= 24 ? pixelMarks("candidates", course, fitted, 24) : undefined,
    pixelMarks("best", helps ? [{ px: x(best.x), py: plot.y(best.width) }] : [], bestStyle, 90),
    titleWords("title-1", heading, left, 0),
    ...keyRows.layers(-left + 2, keyTop + 10),
    candidates.length === 0 ? nothing({ ...box, height: plot.top + plot.bottom }) : undefined,
  ]);
}
