// Columns of a founder's own sheet against a column of figures: stacked panels over one axis.

import type { Chart, VegaLiteSpec } from "./chart.ts";
import { checkName, ends, within } from "./data.ts";
import { axisDomain, floorOf } from "./domain.ts";
import { boxFor, frame, linearScale } from "./frame.ts";
import { type KeyEntry, key } from "./key.ts";
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
import type { ResponsePanel } from "./response-input.ts";
import { behind, curveOpacity, inFront, newBatchOpacity, panelDomain, panelTicks } from "./response-plot.ts";
import { fittedStyle } from "./response-turning.ts";
import { type SheetPlotInput, sheetAxisTitle } from "./sheet-input.ts";
import { bandWords, plotAlt, plotCaption, plotTable } from "./sheet-words.ts";
import { wrap } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";

const right = 16;

/**
 * Draws columns of a sheet upwards against another column: a dot for each row with its ± in both directions, the
 * founder's band as a quiet fill behind the first panel, and where one was fitted a line with the 95 % interval of its
 * mean (dark) and of a new row (light). Rows without a figure are left out and counted in the text. A low end above its
 * high end throws Misuse.
 * @example sheetPlot({ name: "wet-dry", x: { title: "wet", unit: "g" }, missing: 0,
 *   panels: [{ axis: { title: "dry", unit: "g" }, points: [{ x: 152.4, y: 147.8 }] }] })
 */
export function sheetPlot(input: SheetPlotInput): Chart {
  checkName(input.name);
  for (const { points } of input.panels) {
    for (const at of points) {
      ends({ low: at.xLow, high: at.xHigh });
      ends({ low: at.yLow, high: at.yHigh });
    }
  }
  const chart = { name: input.name, caption: plotCaption(input), alt: plotAlt(input) };
  return { ...chart, spec: (width) => spec(chart, input, width), table: plotTable(input) };
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  input: SheetPlotInput,
  width: number,
): VegaLiteSpec {
  const panels = input.panels.map(
    ({ axis, points, curve }, i): ResponsePanel => ({
      property: axis.title,
      unit: axis.unit ?? "",
      points,
      ...(curve ? { curve } : {}),
      ...(i === 0 && input.band ? { band: { ...input.band, label: "your band", tag: "read" } } : {}),
    }),
  );
  const height = Math.round(within(width * 0.26, 130, 190));
  const domains = panels.map(panelDomain);
  const ticks = panels.map(({ points }, i) => (points.length === 0 ? [] : panelTicks(domains[i]!, height)));
  const left = tickRoom(ticks.flat());
  const innerWidth = Math.floor(width) - left - right;
  const xs = panels.flatMap(({ points }) => points.flatMap(({ x, xLow, xHigh }) => [x, xLow, xHigh]));
  const domain = axisDomain(xs, [], floorOf(xs));
  const x = linearScale(domain, innerWidth);
  const xTicks = xs.length === 0 ? [] : levelTicks(domain, innerWidth);
  const shared = key(keyOf(input), innerWidth + left);
  let y = shared.heightPx === 0 ? 0 : shared.heightPx + 6;
  const laid = panels.map((panel, i) => {
    const title = titleLines(sheetAxisTitle(input.panels[i]!.axis), innerWidth + left);
    const top = y;
    const plot = plotAt(top + title.length * titleLinePx + 7, height, innerWidth, domains[i]!, ticks[i]!);
    y = plot.bottom + 14;
    return { panel, title, top, plot };
  });
  const foot = laid.at(-1)?.plot.bottom ?? y + 40;
  const title = wrap(sheetAxisTitle(input.x), innerWidth, letterPx.axis, 2);
  const box = boxFor(width, { height: foot, left, right, top: 8, bottom: 26 + title.length * 15 });
  return frame(chart, box, [
    ...laid.flatMap(({ panel, plot }, i) => behind(panel, i + 1, plot, x)),
    footAxis(title, domain, xTicks),
    ...laid.flatMap(({ plot }, i) => plotFrame(`${i + 1}`, plot, xTicks.map(x))),
    ...laid.flatMap(({ panel, plot }, i) => inFront(panel, i + 1, plot, x, [])),
    ...laid.map(({ title: lines, top }, i) => titleWords(`title-${i + 1}`, lines, left, top)),
    ...shared.layers(-left + 2, 9),
    ...laid.map(({ panel, plot }, i) => {
      if (panel.points.length > 0) return undefined;
      const at = [{ px: innerWidth / 2, py: (plot.top + plot.bottom) / 2, text: "No figures to draw." }];
      return words(`nothing-${i + 1}`, at, { align: "center", color: colours.quiet });
    }),
  ]);
}

function keyOf({ panels, band }: SheetPlotInput): KeyEntry[] {
  const measured = seriesStyle(0);
  const fitted = panels.some(({ curve = [] }) => curve.length > 0);
  const filled = (fillOpacity: number) => ({ ...fittedStyle, fillOpacity });
  return [
    { text: "row", sample: "mark", style: measured },
    ...(fitted
      ? ([
          { text: "fitted", sample: "rule", style: fittedStyle },
          { text: "its 95 % interval", sample: "area", style: filled(curveOpacity) },
          { text: "95 % of new rows", sample: "area", style: filled(newBatchOpacity) },
        ] as const)
      : []),
    ...(band
      ? ([
          {
            text: bandWords(band),
            sample: "band",
            style: { ...measured, colour: colours.band, fillOpacity: 1 },
          },
        ] as const)
      : []),
  ];
}
