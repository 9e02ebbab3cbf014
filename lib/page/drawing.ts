// The drawings of a page's charts.

import type { VegaLiteSpec } from "../chart/chart.ts";
import { everyBlock, type LaidChart, type LaidPage } from "./lay-out.ts";

/** Draws a spec as SVG. */
export type Draw = (spec: VegaLiteSpec) => Promise<string>;

/** Widths that every chart is drawn for, px: a desk or a sheet of paper, and a phone. */
const WIDE = 720;
const NARROW = 340;

export interface Drawings {
  readonly wide: string;
  readonly narrow: string;
}

/** Every chart of the page at the widths asked for. Without charts the drawing library is not even loaded. */
export async function drawCharts(
  page: LaidPage,
  draw: Draw | undefined,
  widths: "both" | "wide",
): Promise<ReadonlyMap<LaidChart, Drawings>> {
  const charts = page.sections
    .flatMap((section) => everyBlock(section.blocks))
    .filter((block) => block.kind === "chart");
  const drawings = new Map<LaidChart, Drawings>();
  if (charts.length === 0) return drawings;
  const svg = draw ?? (await import("../chart/svg.ts")).chartSvg;
  for (const block of charts) {
    const wide = await svg(block.chart.spec(WIDE));
    drawings.set(block, { wide, narrow: widths === "both" ? await svg(block.chart.spec(NARROW)) : "" });
  }
  return drawings;
}
