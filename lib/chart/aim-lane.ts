// The window and the aim on the axis of a trial: a shade and a line through every plot, and the aim's interval in a
// narrow lane under the last one.

import { type AxisName, rangeText, withInterval } from "./axis-words.ts";
import { within } from "./data.ts";
import type { Layer, Scale } from "./frame.ts";
import { edgeDash, type KeyEntry } from "./key.ts";
import { boxes, pixelMarks, type Stroke, strokes } from "./layers.ts";
import type { Plot } from "./plot.ts";
import { colours, type SeriesStyle, seriesStyle } from "./theme.ts";

/** Where on the axis the aims are met together; an end that is not finite is open. */
export interface AimWindow {
  readonly low: number;
  readonly high: number;
  /** "temper window"; "window" by default. */
  readonly label?: string;
}
/** The place to aim at, with the ends of its 95 % interval; an end that is not finite is not bounded by the data. */
export interface AimPlace {
  readonly x: number;
  readonly low: number;
  readonly high: number;
  /** True where a part of the doubt is not known, so that the interval is at least so wide. */
  readonly atLeast?: boolean;
}
export interface Aimed {
  readonly window?: AimWindow;
  readonly aimAt?: AimPlace;
}

const laneHeightPx = 18;
const aimStyle: SeriesStyle = { ...seriesStyle(3), shape: "diamond", dash: [], fillOpacity: 0.45 };
const windowStyle: SeriesStyle = { ...seriesStyle(0), colour: colours.rule, fillOpacity: 0.5 };

export function laneHeight({ aimAt }: Aimed): number {
  return aimAt && Number.isFinite(aimAt.x) ? laneHeightPx : 0;
}

/** Values that the axis should reach, if it can. */
export function aimedValues({ window, aimAt }: Aimed): (number | undefined)[] {
  return [window?.low, window?.high, aimAt?.x, aimAt?.low, aimAt?.high];
}

export function windowWords({ low, high, label }: AimWindow, unit: string, decimals: number): string {
  return `${label ?? "window"}: ${rangeText(low, high, decimals)} ${unit}`.trimEnd();
}
export function aimWords(aimAt: AimPlace, unit: string, decimals: number): string {
  const place = withInterval(aimAt.x, aimAt, decimals);
  const told = aimAt.atLeast ? place.replace(/\)$/, " or wider)") : place;
  const at = `aim for ${told} ${unit}`.trimEnd();
  const open = [
    aimAt.low === Number.NEGATIVE_INFINITY ? "below" : undefined,
    aimAt.high === Number.POSITIVE_INFINITY ? "above" : undefined,
  ].filter((side) => side !== undefined);
  return open.length === 0 ? at : `${at}, not bounded ${open.join(" or ")}`;
}

/** Of a percentage the key gives no basis: that stands at the axis, and a key is read at 340 px. */
export function aimedKey({ window, aimAt }: Aimed, { unit }: AxisName, decimals: number): KeyEntry[] {
  const entries: KeyEntry[] = [];
  if (window)
    entries.push({ text: windowWords(window, unit, decimals), sample: "edged", style: windowStyle });
  if (aimAt && Number.isFinite(aimAt.x))
    entries.push({ text: aimWords(aimAt, unit, decimals), sample: "line", style: aimStyle });
  return entries;
}

/** The shade of the window in each plot, and its edges. */
export function windowLayers(
  window: AimWindow | undefined,
  plots: readonly Plot[],
  x: Scale,
  domain: readonly [number, number],
): (Layer | undefined)[] {
  if (!window || Number.isNaN(window.low) || Number.isNaN(window.high)) return [];
  const [px, px2] = [window.low, window.high].map((end) => x(within(end, ...domain))) as [number, number];
  if (px2 <= px) return [];
  const shades = plots.map(({ top, bottom }) => ({ px, py: top, px2, py2: bottom }));
  const seen = [window.low, window.high].filter((end) => end > domain[0] && end < domain[1]);
  const edges = seen.flatMap((end) =>
    plots.map(({ top, bottom }) => ({ px: x(end), py: top, px2: x(end), py2: bottom })),
  );
  return [
    boxes("window", shades, { color: colours.rule, opacity: windowStyle.fillOpacity }),
    strokes("window-edges", edges, { strokeWidth: 1, strokeDash: edgeDash }),
  ];
}

/** The aim's line through the plots, its point and its interval in the lane. */
export function aimLayers(
  aimAt: AimPlace | undefined,
  plots: readonly Plot[],
  laneTop: number,
  x: Scale,
  domain: readonly [number, number],
): (Layer | undefined)[] {
  if (!aimAt || !(aimAt.x >= domain[0] && aimAt.x <= domain[1])) return [];
  const px = x(aimAt.x);
  const middle = laneTop + laneHeightPx / 2;
  const upright: Stroke[] = plots.map(({ top, bottom }) => ({ px, py: top, px2: px, py2: bottom }));
  const known = !Number.isNaN(aimAt.low) && !Number.isNaN(aimAt.high) && aimAt.low <= aimAt.high;
  const [from, to] = [aimAt.low, aimAt.high].map((end) => x(within(end, ...domain))) as [number, number];
  const bar = known ? [{ px: from, py: middle, px2: to, py2: middle }] : [];
  return [
    strokes("aim-at", upright, { color: aimStyle.colour, strokeWidth: 1.4 }),
    strokes("aim-interval", bar, { color: aimStyle.colour, strokeWidth: 6, opacity: 0.45 }),
    pixelMarks("aim-place", [{ px, py: middle }], aimStyle, 70),
  ];
}
