// The way back from a place in a drawing to what it stands for: the axes of a spec, and the ticks of plots set in px.

import type { VegaLiteSpec } from "./chart.ts";
import { type Layer, linearScale, logScale, type Scale } from "./frame.ts";

/** One direction of a plot: values to px and back. */
interface Axis {
  readonly px: Scale;
  readonly value: Scale;
  /** How far the axis runs, in its own unit. */
  readonly span: number;
}

export interface ReadingScales {
  /** The level axis at a height in px. Undefined where it has no numbers. */
  x(py: number): Axis | undefined;
  /** The upright axis at a height in px. Undefined where it has no numbers; "outside" between the plots of a chart. */
  y(py: number): Axis | undefined | "outside";
}

/** An axis that is set in px, and the plot that it stands at. */
interface Ticks {
  /** True: under its plot, false: beside it. */
  readonly level: boolean;
  readonly top: number;
  readonly bottom: number;
  readonly axis: Axis;
}

type Values = readonly { readonly [field: string]: unknown }[];

export function readingScales(spec: VegaLiteSpec): ReadingScales {
  const layers = spec.layer as readonly Layer[];
  const axes = layers.find(({ name }) => name === "axes")?.encoding as Encodings | undefined;
  const x = axisOf(axes?.x, Number(spec.width), false);
  const upright = axes?.y?.axis === null ? undefined : axisOf(axes?.y, Number(spec.height), true);
  const ticks = layers.flatMap((layer): Ticks[] => ticksOf(layer, layers));
  const plots = ticks.filter(({ level }) => !level);
  const above = ticks.find(({ level }) => level);
  return {
    x: (py) => (above && py < above.bottom ? above.axis : x),
    y: (py) => {
      if (upright) return upright;
      if (plots.length === 0) return undefined;
      return plots.find(({ top, bottom }) => py >= top - 0.5 && py <= bottom + 0.5)?.axis ?? "outside";
    },
  };
}

interface Encodings {
  readonly [channel: string]: Encoding | undefined;
}
interface Encoding {
  readonly axis?: unknown;
  readonly scale?: {
    readonly domain?: readonly [number, number];
    readonly type?: string;
    readonly reverse?: boolean;
  };
}

function axisOf(encoding: Encoding | undefined, lengthPx: number, upwards: boolean): Axis | undefined {
  const { domain, type, reverse = false } = encoding?.scale ?? {};
  if (domain?.length !== 2 || !domain.every((end) => typeof end === "number")) return undefined;
  const [from, to] = reverse === upwards ? domain : [domain[1], domain[0]];
  const px = type === "log" ? logScale([from, to], lengthPx) : linearScale([from, to], lengthPx);
  const value: Scale =
    type === "log"
      ? (at) => from * (to / from) ** (at / lengthPx)
      : (at) => from + (to - from) * (at / lengthPx);
  return { px, value, span: Math.abs(to - from) };
}

/** "axis-1" begins with its own line; "ticks-1" has the numbers beside or under it. */
function ticksOf({ name, data }: Layer, layers: readonly Layer[]): Ticks[] {
  const which = /^ticks-(.+)$/.exec(String(name))?.[1];
  if (which === undefined) return [];
  const line = valuesOf(layers.find((layer) => layer.name === `axis-${which}`)?.data)[0];
  const [top, bottom] = [Number(line?.py), Number(line?.py2)];
  const level = top === bottom;
  const ticks = valuesOf(data).map(({ px, py, text }) => ({
    at: Number(level ? px : py),
    value: Number(String(text).replace("−", "-")),
  }));
  const [first, last] = [ticks[0], ticks.at(-1)];
  if (!first || !last || first.value === last.value || !line) return [];
  const each = (last.value - first.value) / (last.at - first.at);
  const length = level ? Number(line.px2) - Number(line.px) : bottom - top;
  const axis = {
    px: (value: number) => first.at + (value - first.value) / each,
    value: (at: number) => first.value + (at - first.at) * each,
    span: Math.abs(length * each),
  };
  return [{ level, top, bottom, axis }];
}

export function valuesOf(data: unknown): Values {
  return (data as { readonly values?: Values } | undefined)?.values ?? [];
}
