// The chance that a new batch meets the founder's own aims, against what was varied.

import { invariant } from "../issue.ts";
import { aimedKey, aimedValues, aimLayers, laneHeight, windowLayers } from "./aim-lane.ts";
import { axisTitle, unitText } from "./axis-words.ts";
import type { ChancePanelInput, ChancePoint } from "./chance-input.ts";
import { allStyle, chanceLines, ownLabels } from "./chance-lines.ts";
import {
  allAtOnce,
  chanceAlt,
  chanceCaption,
  chanceDecimals,
  chanceTable,
  hasRange,
  isKnown,
  rangeWords,
  whose,
} from "./chance-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { stretches } from "./clip-course.ts";
import { checkName, ends, nothing, within } from "./data.ts";
import { axisDomain, floorOf } from "./domain.ts";
import { boxFor, frame, linearScale } from "./frame.ts";
import { type KeyEntry, key } from "./key.ts";
import { words } from "./layers.ts";
import { pixelFill, pixelLine } from "./pixel-layers.ts";
import { labelLinePx } from "./place-labels.ts";
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
import { wrap } from "./text.ts";
import { letterPx } from "./theme.ts";

const right = 16;
const yTicks = [0, 25, 50, 75, 100];
const title = (input: ChancePanelInput) => `chance of meeting ${whose(input)}, % of new batches`;

/**
 * Draws the chance of meeting the founder's own aims (0..100 % of new batches) against moisture, compactability or
 * clay: a line for each property, and the chance of meeting all at once as the heavy one. The caption says that this
 * is never the chance of a sound casting.
 *
 * Chances outside 0..100 throw Misuse; where a chance is NaN the line is broken.
 *
 * @example chancePanel({ name: "shed-chance", axis: { title: "moisture", unit: "%", basis: "damp mass" },
 *   each: [{ property: "strength", points: [{ x: 2.6, chance: 31 }, { x: 3.4, chance: 88 }] }],
 *   all: [{ x: 2.6, chance: 22 }, { x: 3.4, chance: 71 }] })
 */
export function chancePanel(input: ChancePanelInput): Chart {
  checkName(input.name);
  unitText(input.axis);
  const sound: ChancePanelInput = {
    ...input,
    each: input.each.map((one) => ({ ...one, points: checked(one.points) })),
    all: checked(input.all),
  };
  const { name } = input;
  const chart = { name, caption: input.caption ?? chanceCaption(sound), alt: chanceAlt(sound) };
  return { ...chart, spec: (width) => spec(chart, sound, width), table: chanceTable(input) };
}

function checked<T extends ChancePoint & { low?: number; high?: number }>(points: readonly T[]): T[] {
  const placed = points.filter(({ x }) => Number.isFinite(x));
  for (const at of placed.filter(isKnown)) {
    ends(at);
    invariant(at.chance > -1e-6 && at.chance < 100 + 1e-6, `a chance cannot be ${at.chance} %`);
  }
  return placed.toSorted((a, b) => a.x - b.x);
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: ChancePanelInput,
  width: number,
): VegaLiteSpec {
  const { axis, each, all, window, aimAt } = input;
  const left = tickRoom(yTicks);
  const innerWidth = Math.floor(width) - left - right;
  const height = Math.round(within(width * 0.36, 190, 260));
  const xs = [...each.flatMap(({ points }) => points), ...all].filter(isKnown).map((at) => at.x);
  const domain = axisDomain(xs, [{ values: aimedValues(input), reach: 0.3 }], floorOf(xs));
  const x = linearScale(domain, innerWidth);
  const xTicks = xs.length === 0 ? [] : levelTicks(domain, innerWidth);

  const lines = chanceLines(input, x, height);
  const labels = ownLabels(lines, input, x, domain, { width: innerWidth, height });
  const own = lines.filter(({ name }) => name !== allAtOnce);
  const inKey = labels ? lines.filter(({ name }) => name === allAtOnce) : lines;
  const entries: KeyEntry[] = inKey.map(({ name, style, thickness }) => ({
    text: name,
    sample: "rule",
    style,
    thickness,
  }));
  if (hasRange(input)) entries.push({ text: rangeWords(input), sample: "area", style: allStyle });
  const keyRows = key([...entries, ...aimedKey(input, axis, chanceDecimals(input))], innerWidth + left);
  const heading = titleLines(title(input), innerWidth + left);
  const keyTop = heading.length * titleLinePx;
  const top = keyTop + keyRows.heightPx + 8;
  const plot = plotAt(top, height, innerWidth, [0, 100], yTicks);
  const foot = wrap(axisTitle(axis), innerWidth, letterPx.axis, 2);
  const boxHeight = plot.bottom + laneHeight(input);
  const box = boxFor(width, { height: boxHeight, left, right, top: 6, bottom: 26 + foot.length * 15 });
  const axes = footAxis(foot, domain, xTicks);
  const ranges = stretches(all, (at) => isKnown(at) && ends(at) !== undefined).map((run) =>
    run.map((at) => ({
      px: x(at.x),
      py: plot.y(within(at.high!, 0, 100)),
      py2: plot.y(within(at.low!, 0, 100)),
    })),
  );
  return frame(chart, box, [
    ...windowLayers(window, [plot], x, domain),
    axes,
    ...plotFrame("1", plot, xTicks.map(x)),
    ...ranges.map((range, i) =>
      pixelFill(`interval-${i + 1}`, range, { color: allStyle.colour, opacity: allStyle.fillOpacity }),
    ),
    ...aimLayers(aimAt, [plot], plot.bottom, x, domain),
    ...lines.toReversed().map(({ courses, style, thickness }, i) =>
      pixelLine(
        `line-${lines.length - i}`,
        courses.map((course) => course.map((at) => ({ px: at.x, py: top + at.y }))),
        {
          color: style.colour,
          strokeWidth: thickness,
          strokeDash: style.dash,
        },
      ),
    ),
    ...own.map(({ style }, i) => {
      const label = labels?.[i];
      if (!label) return undefined;
      const at = label.lines.map((text, row) => ({
        px: label.x,
        py: top + label.y + row * labelLinePx,
        text,
      }));
      return words(`label-${i + 1}`, at, { color: style.colour });
    }),
    titleWords("title-1", heading, left, 0),
    ...keyRows.layers(-left + 2, keyTop + 10),
    lines.length === 0 ? nothing({ ...box, height: 2 * top + height }) : undefined,
  ]);
}
