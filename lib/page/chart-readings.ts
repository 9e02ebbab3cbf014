// What a live page tells of the places in a drawing: written at its figure, read there when somebody points.

import type { VegaLiteSpec } from "../chart/chart.ts";
import { chartReadings } from "../chart/readings.ts";
import type { LaidChart } from "./lay-out.ts";
import { readingWords } from "./reading-words.ts";

/** A curve's row is told at each of its lines, with the figure of that line alone. */
const TWICE = 2;

/**
 * One line for each reading: px of the wide drawing, px of the narrow one, its layer, its row in the table under the
 * chart, and its words, with strokes between. Empty where nothing can be read.
 */
export function readingLines(
  { chart }: Pick<LaidChart, "chart">,
  specs: { readonly wide: VegaLiteSpec; readonly narrow: VegaLiteSpec },
): string {
  const readings = chartReadings([specs.wide, specs.narrow], chart.table);
  const words = readingWords(chart.table);
  const times = new Map<number, number>();
  for (const { row } of readings) times.set(row, (times.get(row) ?? 0) + 1);
  return readings
    .map(({ at, layer, row, columns }) => {
      const only = (times.get(row) ?? 0) >= TWICE ? columns : undefined;
      return [...at.flat(), layer, row, words(row, only)].join("|");
    })
    .join("\n");
}
