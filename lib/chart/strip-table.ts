// The table of a number strip: figures with their ends, bands with their sources.

import type { ChartTable } from "./chart.ts";
import { cell } from "./data.ts";
import type { NumberStripInput } from "./strip-input.ts";
import { isLowerBound, sourceText } from "./strip-words.ts";

export function stripTable({ title, unit, marks, bands }: NumberStripInput): ChartTable {
  const column = (name: string) => ({ name, ...(unit === "" ? {} : { unit }) });
  return {
    columns: [
      { name: "what" },
      ...[title, "low end of 95 %", "high end of 95 %"].map(column),
      { name: "the ± is" },
      ...["lowest possible", "highest possible", "band from", "band to"].map(column),
      { name: "source" },
    ],
    rows: [
      ...marks.map((mark) => [
        mark.label,
        ...[mark.value, mark.low, mark.high].map(cell),
        isLowerBound(mark) ? "at least" : "",
        ...[mark.possible?.low, mark.possible?.high].map(cell),
        ...[null, null],
        "measured",
      ]),
      ...bands.map((band) => [
        band.label,
        ...[null, null, null],
        "",
        ...[null, null],
        ...[band.low, band.high].map(cell),
        sourceText(band),
      ]),
    ],
  };
}
