// Panels of a trial: each property against what was varied, stacked over one axis.

import { aimedValues, aimLayers, laneHeight, windowLayers } from "./aim-lane.ts";
import { axisTitle, unitText } from "./axis-words.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { checkName, nothing, within } from "./data.ts";
import { axisDomain, floorOf } from "./domain.ts";
import { boxFor, frame, linearScale } from "./frame.ts";
import { key } from "./key.ts";
import { words } from "./layers.ts";
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
import { checkedPanels } from "./response-check.ts";
import type { ResponsePanel, ResponsePanelsInput } from "./response-input.ts";
import { panelKey, sharedKey } from "./response-keys.ts";
import { behind, inFront, isEmpty, panelDomain, panelTicks } from "./response-plot.ts";
import { axisDecimals, responseAlt, responseCaption, responseTable } from "./response-words.ts";
import { wrap } from "./text.ts";
import { colours, letterPx } from "./theme.ts";

const right = 16;

/**
 * Draws what a trial found: a panel for each property over one shared axis (moisture, compactability or clay). Usual
 * ranges lie quiet behind, the founder's aim as dashed edges, the fitted curve with the 95 % interval of its mean
 * (dark) and of a new batch (light), and the batches as measured in front, with their ± in both directions; the
 * window where the aims are met is a shade through all panels, what to aim for a line with its interval underneath.
 *
 * Without `curve` the points stand alone: this is how three batches are drawn. Points without a figure are left out
 * and counted in the text. A percentage without its basis, or a low end above its high end, throws Misuse. Points,
 * curve and aim are always whole on the upright axis; intervals and bands may run out of the drawing.
 *
 * Source: confidence and prediction interval of a regression, any text (Draper & Smith, ch. 1 and 3, from memory).
 *
 * @example responsePanels({ name: "shed-trial", axis: { title: "moisture", unit: "%", basis: "damp mass" },
 *   panels: [{ property: "green compression strength", unit: "kPa", points: [{ x: 2.6, y: 48 }, { x: 3.4, y: 57 }] }] })
 */
export function responsePanels(input: ResponsePanelsInput): Chart {
  checkName(input.name);
  unitText(input.axis);
  for (const panel of input.panels) unitText({ ...panel, title: panel.property });
  const sound = checkedPanels(input);
  const count = (panels: readonly ResponsePanel[]) =>
    panels.reduce((sum, { points }) => sum + points.length, 0);
  const missing = count(input.panels) - count(sound.panels);
  const { name } = input;
  const chart = { name, caption: input.caption ?? responseCaption(sound), alt: responseAlt(sound, missing) };
  return { ...chart, spec: (width) => spec(chart, sound, width), table: responseTable(input) };
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: ResponsePanelsInput,
  width: number,
): VegaLiteSpec {
  const { axis, panels, window, aimAt } = input;
  const height = Math.round(within(width * 0.21, 112, 156));
  const domains = panels.map(panelDomain);
  const ticks = panels.map((panel, i) => (isEmpty(panel) ? [] : panelTicks(domains[i]!, height)));
  const left = tickRoom(ticks.flat());
  const innerWidth = Math.floor(width) - left - right;
  const domain = sharedDomain(input);
  const x = linearScale(domain, innerWidth);
  const decimals = axisDecimals(input);
  const xTicks = panels.every(isEmpty) ? [] : levelTicks(domain, innerWidth);

  const shared = key(sharedKey(input, decimals), innerWidth + left);
  let y = shared.heightPx === 0 ? 0 : shared.heightPx + 6;
  const laid = panels.map((panel, i) => {
    const title = titleLines(axisTitle({ ...panel, title: panel.property }), innerWidth + left);
    const own = key(panelKey(panel, decimals), innerWidth + left, `key-of-${i + 1}`);
    const top = y;
    const plotTop = top + title.length * titleLinePx + own.heightPx + 7;
    const plot = plotAt(plotTop, height, innerWidth, domains[i]!, ticks[i]!);
    y = plot.bottom + 14;
    return { panel, title, own, top, plot, keyTop: top + title.length * titleLinePx + 9 };
  });
  const plots = laid.map(({ plot }) => plot);
  const foot = plots.at(-1)?.bottom ?? y + 40;
  const title = wrap(axisTitle(axis), innerWidth, letterPx.axis, 2);
  const boxHeight = foot + laneHeight(input);
  const box = boxFor(width, { height: boxHeight, left, right, top: 8, bottom: 26 + title.length * 15 });
  const axes = footAxis(title, domain, xTicks);
  const uprights = [window?.low, window?.high, aimAt?.x].flatMap((at) => (at === undefined ? [] : [x(at)]));
  return frame(chart, box, [
    ...laid.flatMap(({ panel, plot }, i) => behind(panel, i + 1, plot, x)),
    ...windowLayers(window, plots, x, domain),
    axes,
    ...laid.flatMap(({ plot }, i) => plotFrame(`${i + 1}`, plot, xTicks.map(x))),
    ...aimLayers(aimAt, plots, foot, x, domain),
    ...laid.flatMap(({ panel, plot }, i) => inFront(panel, i + 1, plot, x, uprights)),
    ...laid.map(({ title: lines, top }, i) => titleWords(`title-${i + 1}`, lines, left, top)),
    ...laid.flatMap(({ own, keyTop }) => own.layers(-left + 2, keyTop)),
    ...shared.layers(-left + 2, 9),
    ...laid.map(({ panel, plot }, i) => {
      if (!isEmpty(panel)) return undefined;
      const at = [{ px: innerWidth / 2, py: (plot.top + plot.bottom) / 2, text: "No figures to draw." }];
      return words(`nothing-${i + 1}`, at, { align: "center", color: colours.quiet });
    }),
    panels.length === 0 ? nothing(box) : undefined,
  ]);
}

/** All batches, curves and usual courses; window, aim and turning point as far as half the span outside them. */
function sharedDomain(input: ResponsePanelsInput): [number, number] {
  const { panels } = input;
  const points = panels.flatMap((panel) => panel.points.flatMap(({ x, xLow, xHigh }) => [x, xLow, xHigh]));
  const curves = panels.flatMap((panel) => (panel.curve ?? []).map(({ x }) => x));
  const usual = panels.flatMap((panel) =>
    (panel.typical ?? []).flatMap((each) => each.points.map(({ x }) => x)),
  );
  const turns = panels.flatMap(({ optimum }) =>
    optimum?.bounded ? [optimum.x, optimum.low, optimum.high] : [],
  );
  const must = [...points, ...curves, ...usual];
  return axisDomain(must, [{ values: [...turns, ...aimedValues(input)], reach: 0.5 }], floorOf(must));
}
