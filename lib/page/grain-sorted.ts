// Many sands as one table, coarse to fine, in place of a row of large figures.

import { byFineness, neighbours } from "../finding/compare-neighbours.ts";
import { figureText } from "../finding/sand-findings.ts";
import type { SandReport } from "../finding/sand-report.ts";
import { printNumber } from "../quantity/print.ts";
import { middleSize } from "../sand/middle-size.ts";
import type { Block, TableCell } from "./blocks.ts";

/** Number, difference to the next coarser sand, middle size, best three sieves and fines of each. */
export function sortedTable(reports: readonly SandReport[]): Block {
  const differences = neighbours(reports);
  return {
    kind: "table",
    name: "fineness",
    caption:
      "The sands from coarse to fine; ± and the ends in brackets are of 95 %, the ends at least so wide where the ± is. Of a difference, what both sands share, such as the openings of one set, cancels.",
    columns: [
      { head: "Sand", align: "text" },
      { head: "Grain fineness number", align: "number" },
      { head: "Finer than the row above by", align: "number" },
      { head: "Half of it passes", unit: "mm", align: "number" },
      { head: "Best three sieves hold", unit: "% of sum retained", align: "number" },
      { head: "Finer than 0.106 mm", unit: "% of sum retained", align: "number" },
    ],
    rows: byFineness(reports).map((report) => [
      report.sand.name,
      numberCell(report),
      differenceCell(differences.get(report.sand.name)),
      middleCell(report),
      percentCell(report.three?.sharePercent, 0),
      percentCell(report.fines.percent, 1),
    ]),
  };
}

function numberCell(report: SandReport): TableCell {
  const { printed, trusted, sand, fineness } = report;
  if (printed && trusted) return { text: printed.text, number: fineness.figure.value };
  const clay = sand.stateSaid ? "clay not washed out" : "not said to be new";
  return { text: figureText(report), fault: trusted ? "too little measured" : clay };
}

function differenceCell(
  found:
    | { readonly printed: { readonly text: string }; readonly difference: { readonly value: number } }
    | undefined,
): TableCell | string {
  return found ? { text: found.printed.text, number: found.difference.value } : "";
}

function middleCell({ statistics, sieves, trusted }: SandReport): TableCell | string {
  const value = statistics.d50Mm;
  if (value === undefined || !trusted) return "";
  const ends = middleSize(sieves);
  const text = ends ? `${mmText(value)} (${mmText(ends.low)} to ${mmText(ends.high)})` : mmText(value);
  return { text, number: value };
}

function percentCell(value: number | undefined, decimals: number): TableCell | string {
  return value === undefined ? "" : { text: printNumber(value, decimals), number: value };
}

/** Three figures, and thousandths at the finest: what the openings of sieves are known to. */
export function mmText(value: number): string {
  return printNumber(value, value >= 10 ? 1 : value >= 1 ? 2 : 3);
}
