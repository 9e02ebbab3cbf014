// One mark of a drawing: where it stands, and which numbers it shows.

import type { Layer } from "./frame.ts";
import type { ReadingScales } from "./reading-scales.ts";
import type { WantedNumber } from "./table-search.ts";

export interface DrawnDatum {
  /** px of the box. */
  readonly x: number;
  readonly y: number;
  /** In both directions where both axes have numbers; of a bar its length, of a band its ends. */
  readonly wanted: readonly WantedNumber[];
}

type Axis = Exclude<ReturnType<ReadingScales["y"]>, "outside">;

export function kindOf({ mark }: Layer): string {
  return typeof mark === "string" ? mark : String((mark as { readonly type?: unknown } | undefined)?.type);
}

/** Undefined for what stands outside the plots, or shows no number. */
export function drawnDatum(
  datum: { readonly [field: string]: unknown },
  layer: Layer,
  scales: ReadingScales,
): DrawnDatum | undefined {
  const inPx = typeof datum.px === "number";
  const number = (field: string) => (typeof datum[field] === "number" ? datum[field] : undefined);
  const [x, x2, y, y2] = (inPx ? ["px", "px2", "py", "py2"] : ["x", "x2", "y", "y2"]).map(number);
  if (x === undefined || y === undefined) return undefined;
  const level = scales.x(inPx ? y : Number.POSITIVE_INFINITY);
  const upright = scales.y(inPx ? y : 0);
  if (upright === "outside" || (!inPx && !(level && upright))) return undefined;

  const wanted: WantedNumber[] = [];
  const want = (axis: Axis, at: number): void => {
    if (!axis) return;
    const value = inPx ? axis.value(at) : at;
    // Numbers of a table have ten digits, those of ticks six.
    wanted.push({ value, within: 1e-7 * (Math.abs(value) + axis.span) });
  };
  const px = (axis: Axis, at: number): number => (inPx || !axis ? at : axis.px(at));
  const middle = (axis: Axis, from: number, to: number): number => (px(axis, from) + px(axis, to)) / 2;

  if (kindOf(layer) !== "rect" || x2 === undefined || y2 === undefined) {
    want(level, x);
    want(upright, y);
    if (y2 !== undefined) want(upright, y2);
    return { x: px(level, x), y: middle(upright, y, y2 ?? y), wanted };
  }
  if (!String(layer.name).startsWith("bars")) {
    for (const end of [x, x2]) want(level, end);
    return { x: middle(level, x, x2), y: middle(upright, y, y2), wanted };
  }
  want(upright ?? level, upright ? y : x2);
  return upright
    ? { x: middle(level, x, x2), y: px(upright, y), wanted }
    : { x: px(level, x2), y: middle(upright, y, y2), wanted };
}
