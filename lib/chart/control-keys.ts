// The key of a control chart: only what is in it.

import type { ControlInput } from "./control-input.ts";
import type { KeyEntry } from "./key.ts";
import { colours, seriesStyle } from "./theme.ts";

const style = seriesStyle(0);
const fitted = { ...style, colour: colours.fitted };

export function controlKey({ points, limits, leftOut = [], pours = [], change }: ControlInput): KeyEntry[] {
  const doubt = points.some(({ low, high }) => low !== undefined && high !== undefined && high > low);
  const judged = points.some((point) => point.judged);
  return [
    { text: doubt ? "value, with its ±" : "value", sample: judged || !limits ? "mark" : "hollow", style },
    ...(judged && points.some((point) => !point.judged)
      ? [{ text: "before the limits begin", sample: "hollow" as const, style }]
      : []),
    ...(points.some(({ signal, stepSignal }) => signal || stepSignal)
      ? [{ text: "ringed: in a signal", sample: "hollow" as const, style: { ...style, colour: colours.ink } }]
      : []),
    ...(leftOut.length > 0
      ? [{ text: "crossed: left out by the log", sample: "cross" as const, style }]
      : []),
    ...(limits
      ? [
          { text: "mean", sample: "rule" as const, style: { ...fitted, dash: [] }, thickness: 1.5 },
          { text: "limits", sample: "rule" as const, style: { ...fitted, dash: [6, 3] }, thickness: 1.5 },
          {
            text: "baseline that they are from",
            sample: "band" as const,
            style: { ...style, colour: colours.band, fillOpacity: 0.45 },
          },
        ]
      : []),
    ...(change
      ? [
          {
            text: "days on which a suggested change may have fallen",
            sample: "area" as const,
            style: { ...style, colour: colours.secondSand, fillOpacity: 0.22 },
          },
        ]
      : []),
    ...(pours.length > 0
      ? [
          {
            text: "ticks at the foot: pours",
            sample: "rule" as const,
            style: { ...style, colour: colours.quiet, dash: [1.4, 4] },
            thickness: 5,
          },
        ]
      : []),
  ];
}
