// The drawings of a page's charts.

import type { VegaLiteSpec } from "../chart/chart.ts";
import { fingerprint } from "../log/fingerprint.ts";
import { readingLines } from "./chart-readings.ts";
import { everyBlock, type LaidChart, type LaidPage } from "./lay-out.ts";

/** Draws a spec as SVG. */
export type Draw = (spec: VegaLiteSpec) => Promise<string>;

/** Widths that every chart is drawn for, px: a desk or a sheet of paper, and a phone. */
const WIDE = 720;
const NARROW = 340;

export interface Drawings {
  readonly wide: string;
  readonly narrow: string;
  /** Of a live page: what tells its spec from any other, at each width; empty where that is told later. */
  readonly specs?: { readonly wide: string; readonly narrow: string };
  /** Of a live page: what is told of the places in both drawings, see readingLines. */
  readonly readings?: string;
}

/** A chart's place in a page, its spec at one width, and what tells that drawing from any other. */
export interface ToDraw {
  readonly number: number;
  readonly width: "wide" | "narrow";
  readonly key: string;
  readonly spec: VegaLiteSpec;
}

/** The chart at a width, not drawn yet. */
export function toDraw({ chart, number }: LaidChart, width: ToDraw["width"]): ToDraw {
  const spec = chart.spec(width === "wide" ? WIDE : NARROW);
  const text = JSON.stringify(spec);
  const key = `${width[0]}${number}-${fingerprint(text)}${text.length.toString(36)}`;
  return { number, width, key, spec };
}

/** Every chart of the page, in order. */
export function chartsIn(page: LaidPage): LaidChart[] {
  return page.sections
    .flatMap((section) => everyBlock(section.blocks))
    .filter((block) => block.kind === "chart");
}

/** Every chart of the page at the widths asked for. Without charts the drawing library is not even loaded. */
export async function drawCharts(
  page: LaidPage,
  draw: Draw | undefined,
  widths: "both" | "wide",
): Promise<ReadonlyMap<LaidChart, Drawings>> {
  const drawings = new Map<LaidChart, Drawings>();
  const charts = chartsIn(page);
  if (charts.length === 0) return drawings;
  const svg = draw ?? (await import("../chart/svg.ts")).chartSvg;
  for (const block of charts) {
    const wide = await svg(block.chart.spec(WIDE));
    drawings.set(block, { wide, narrow: widths === "both" ? await svg(block.chart.spec(NARROW)) : "" });
  }
  return drawings;
}

/** The same drawings at both widths, each with its key, for a page that draws anew what has changed. */
export async function drawKeyedCharts(
  page: LaidPage,
  draw: Draw | undefined,
): Promise<ReadonlyMap<LaidChart, Drawings>> {
  const drawings = await drawCharts(page, draw, "both");
  return new Map(
    [...drawings].map(([block, drawn]) => {
      const shown = toDraw(block, "wide");
      const { other, readings } = restOf(block, shown);
      return [block, { ...drawn, specs: { wide: shown.key, narrow: other.key }, readings }];
    }),
  );
}

/** Places for drawings that are still to be made: with their key at the width that shows, at the other with none yet. */
export function undrawn(
  charts: readonly { readonly block: LaidChart; readonly shown: ToDraw }[],
): ReadonlyMap<LaidChart, Drawings> {
  return new Map(
    charts.map(({ block, shown: { width, key } }) => [
      block,
      { wide: "", narrow: "", specs: { wide: "", narrow: "", [width]: key } },
    ]),
  );
}

/** Of a chart at one width: the same at the other, and what is told of the places in both. */
export function restOf(
  block: LaidChart,
  shown: ToDraw,
): { readonly other: ToDraw; readonly readings: string } {
  const other = toDraw(block, shown.width === "wide" ? "narrow" : "wide");
  const [wide, narrow] = shown.width === "wide" ? [shown, other] : [other, shown];
  return { other, readings: readingLines(block, { wide: wide.spec, narrow: narrow.spec }) };
}
