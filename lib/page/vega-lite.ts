// The charts of a page as Vega-Lite specs, to use in any tool that draws those.

import type { Chart, VegaLiteSpec } from "../chart/chart.ts";
import { colours } from "../chart/theme.ts";
import type { Page } from "./blocks.ts";
import { everyBlock, layOut } from "./lay-out.ts";
import { visible } from "./visible.ts";
import { english } from "./words.ts";

/** Wide enough for a desk. */
const WIDTH_PX = 720;

/**
 * Each chart of the page as a file, "<chart>.vl.json": a whole Vega-Lite v6 spec with its data in it, drawn for a width
 * in px, 720 unless given, at least 240. It stands on paper of its own colour, for a page that is not ours. The caption
 * is its usermeta.title, and what a reader who cannot see it should know its description; both are ours, and an
 * invented log is said there. Hidden characters are written as codes. The numbers behind a chart stand in writeCsv.
 * @example
 * const files = writeVegaLite(fineness.run(log)); // { "grain-curve.vl.json": '{ "$schema": …', … }
 */
export function writeVegaLite(
  page: Page,
  options: { readonly width?: number } = {},
): { [fileName: string]: string } {
  const { width = WIDTH_PX } = options;
  const laid = layOut(page);
  const files: { [fileName: string]: string } = {};
  for (const block of laid.sections.flatMap((section) => everyBlock(section.blocks))) {
    if (block.kind !== "chart") continue;
    const spec = alone(block.chart, width, laid.invented);
    files[`${block.stem}.vl.json`] = `${JSON.stringify(spec, printable, 1)}\n`;
  }
  return files;
}

function alone(chart: Chart, width: number, invented: boolean): VegaLiteSpec {
  const spec = chart.spec(width);
  const description = invented ? `${chart.alt} ${english.invented()}` : chart.alt;
  return { ...spec, description, background: colours.paper };
}

function printable(_key: string, value: unknown): unknown {
  return typeof value === "string" ? visible(value) : value;
}
