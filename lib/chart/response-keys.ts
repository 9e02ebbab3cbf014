// The keys of a trial's panels: what holds for all of them, and what belongs to one.

import { aimedKey } from "./aim-lane.ts";
import { ends } from "./data.ts";
import type { KeyEntry } from "./key.ts";
import type { ResponsePanel, ResponsePanelsInput } from "./response-input.ts";
import { courseDash, curveOpacity, newBatchOpacity } from "./response-plot.ts";
import { fittedStyle } from "./response-turning.ts";
import { aimText, bandWords, optimumWords, tagged } from "./response-words.ts";
import { weak } from "./strip-words.ts";
import { colours, type SeriesStyle, seriesStyle } from "./theme.ts";

/** What holds for every panel, said once. */
export function sharedKey(input: ResponsePanelsInput, decimals: number): KeyEntry[] {
  const points = input.panels.flatMap((panel) => panel.points);
  const curves = input.panels.flatMap((panel) => panel.curve ?? []);
  const measured = seriesStyle(0);
  const filled = (opacity: number): SeriesStyle => ({ ...fittedStyle, fillOpacity: opacity });
  const entries: KeyEntry[] = [];
  if (points.some((point) => !point.leftOut))
    entries.push({ text: "batch", sample: "mark", style: measured });
  if (points.some((point) => point.leftOut && point.why === undefined))
    entries.push({ text: "left out of the fit", sample: "hollow", style: measured });
  if (points.some((point) => point.why !== undefined))
    entries.push({ text: "left out by the log", sample: "crossed", style: measured });
  if (curves.length > 0) entries.push({ text: "fitted curve", sample: "rule", style: fittedStyle });
  if (curves.some((at) => ends(at)))
    entries.push({ text: "its 95 % interval", sample: "area", style: filled(curveOpacity) });
  if (curves.some(({ newLow, newHigh }) => ends({ low: newLow, high: newHigh })))
    entries.push({ text: "95 % of new batches", sample: "area", style: filled(newBatchOpacity) });
  return [...entries, ...aimedKey(input, input.axis, decimals)];
}

/** What belongs to one panel: its band, its aim, where its curve turns. */
export function panelKey(panel: ResponsePanel, decimals: number): KeyEntry[] {
  const entries: KeyEntry[] = [];
  const quiet: SeriesStyle = { ...seriesStyle(0), colour: colours.band, fillOpacity: 1 };
  const { band, typical = [] } = panel;
  if (panel.aim)
    entries.push({ text: aimText(panel), sample: "rule", style: { ...seriesStyle(3), dash: [6, 4] } });
  if (band)
    entries.push({
      text: bandWords(panel),
      sample: "band",
      style: { ...quiet, fillOpacity: weak(band) ? 0.55 : 1 },
    });
  for (const [i, course] of typical.entries())
    entries.push({
      text: tagged(course.label, course.tag),
      sample: "rule",
      style: { ...quiet, colour: colours.bandEdge, dash: courseDash(i) },
    });
  if (panel.optimum)
    entries.push({
      text: optimumWords(panel, decimals),
      sample: panel.optimum.bounded ? "mark" : "rule",
      style: { ...fittedStyle, dash: panel.optimum.bounded ? [] : [3, 5] },
    });
  return entries;
}
