// Limits and charts of a diary, as a section of a page.

import { changeRule, nameOf } from "../finding/diary-findings.ts";
import { d2OfTwo, d4OfTwo } from "../numbers/individuals-chart.ts";
import { printFigure } from "../quantity/print.ts";
import type { Controlled, ControlReport } from "../trial/control-report.ts";
import type { Block, Section, TableCell, TableRow } from "./blocks.ts";
import { diaryCharts } from "./diary-charts.ts";
import { systemOf } from "./diary-print.ts";
import { inShownUnit, type ShownUnits, shownUnit } from "./shown-units.ts";

/**
 * The control charts of a diary with their tables.
 * @example diaryResult(controlReport(log), shownUnits(log)).title
 */
export function diaryResult(report: ControlReport, units: ShownUnits): Section {
  const { controlled } = report;
  const charts = diaryCharts(report, units).map((chart): Block => ({ kind: "chart", chart }));
  return {
    role: "result",
    title: "Steady or moved",
    blocks: [...(controlled.length > 0 ? [limitsTable(controlled, units), rule(report)] : []), ...charts],
  };
}

const rule = (report: ControlReport): Block => ({
  kind: "prose",
  text: `${changeRule(report)} They say how the heap has behaved, and nothing of how it ought to be: a heap may be steady and wrong.`,
});

/** As a sheet would run them, from the columns Mean and Mean step; 3/1.128 is the 2.66 of the trade's cards. */
export const limitFormulas = {
  lower: "mean - 3 * step / 1.128",
  upper: "mean + 3 * step / 1.128",
  step: "3.267 * step",
} as const;

function limitsTable(controlled: readonly Controlled[], units: ShownUnits): Block {
  return {
    kind: "table",
    name: "diary-limits",
    caption: "Limits, each with the ± that its baseline leaves (95 %)",
    columns: [
      { head: "Test", align: "text" },
      { head: "Verdict", align: "text" },
      { head: "Unit", align: "text" },
      { head: "From", unit: "values", align: "number" },
      { head: "Mean", align: "number" },
      { head: "Mean step", align: "number" },
      {
        head: "Lower limit",
        align: "number",
        formula: limitFormulas.lower,
        source: "NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2",
      },
      {
        head: "Upper limit",
        align: "number",
        formula: limitFormulas.upper,
        source: "NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2",
      },
      {
        head: "Limit of a step",
        align: "number",
        formula: limitFormulas.step,
        source: "NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2",
      },
    ],
    rows: controlled.map((one) => limitsRow(one, units)),
  };
}

function limitsRow(
  { series, chart, doubt, baseline, verdict, restless }: Controlled,
  units: ShownUnits,
): TableRow {
  const system = systemOf(series, units);
  const to = (value: number): number => inShownUnit(value, series.unit, system).value;
  const cell = (value: number, half: number): TableCell => ({
    text: printFigure({ value: to(value), low: to(value - half), high: to(value + half) }).text,
    number: value,
  });
  const lower: TableCell | string = chart.lower > 0 ? cell(chart.lower, doubt.limit) : "none above nothing";
  return [
    nameOf(series),
    verdict === "steady" && restless ? "steady, by a baseline that was not" : verdict,
    shownUnit(series.unit, system) || "plain number",
    { text: String(baseline), number: baseline },
    cell(chart.mean, doubt.mean),
    cell(chart.meanMovingRange, stepDoubt(doubt)),
    lower,
    cell(chart.upper, doubt.limit),
    cell(chart.rangeUpper, d4OfTwo * stepDoubt(doubt)),
  ];
}

/** Half-width of the mean step: what the doubt of a limit holds beside that of the mean. */
function stepDoubt(doubt: Controlled["doubt"]): number {
  return (d2OfTwo / 3) * Math.sqrt(Math.max(0, doubt.limit ** 2 - doubt.mean ** 2));
}
