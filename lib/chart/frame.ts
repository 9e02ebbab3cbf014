// The frame of a chart: its box in pixels, its axes, and the layers in it.

import { invariant } from "../issue.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { themeConfig } from "./theme.ts";

/** The drawing box inside the margins, px. Everything is laid out by us, so a spec looks alike everywhere. */
export interface Box {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export type Layer = { readonly [key: string]: unknown };

/** The box that is left of the whole width when the margins are taken off. */
export function boxFor(
  width: number,
  inner: { height: number; left: number; right: number; top: number; bottom: number },
): Box {
  invariant(Number.isFinite(width) && width >= 240, `a chart needs at least 240 px, not ${width}`);
  const { left, right, top, bottom, height } = inner;
  return { width: Math.floor(width) - left - right, height, left, right, top, bottom };
}

/** Where a value stands on a scale of the box, px. */
export type Scale = (value: number) => number;

export function linearScale([from, to]: readonly [number, number], lengthPx: number): Scale {
  return (value) => ((value - from) / (to - from)) * lengthPx;
}
/** With from > to the scale runs from large to small. */
export function logScale([from, to]: readonly [number, number], lengthPx: number): Scale {
  return (value) => (Math.log(value / from) / Math.log(to / from)) * lengthPx;
}

/** Axes that are drawn once, by a layer of their own; every other layer shares the scales and draws none. */
export function axesLayer(x: object, y: object): Layer {
  return {
    name: "axes",
    data: { values: [{ x: null, y: null }] },
    mark: { type: "rule", opacity: 0 },
    encoding: {
      x: { field: "x", type: "quantitative", ...x },
      y: { field: "y", type: "quantitative", ...y },
    },
  };
}

/** The whole Vega-Lite spec. Title and description ride along for the reader who cannot see the chart. */
export function frame(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  box: Box,
  layers: readonly (Layer | undefined)[],
): VegaLiteSpec {
  const { left, right, top, bottom } = box;
  return {
    $schema: "https://vega.github.io/schema/vega-lite/v6.json",
    name: chart.name,
    description: chart.alt,
    usermeta: { title: chart.caption },
    background: "transparent",
    autosize: { type: "none" },
    padding: { left, right, top, bottom },
    width: box.width,
    height: box.height,
    layer: layers.filter((layer) => layer !== undefined),
    resolve: { axis: { x: "independent", y: "independent" } },
    config: themeConfig(),
  };
}
