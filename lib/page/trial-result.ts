// The aim, the window and the curves, as a section of a page.

import { axisUnit, chanceText, placeText } from "../finding/trial-findings.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import { spread } from "../quantity/spread-of.ts";
import { firstDoseKg } from "../sand/first-dose.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import type { Block, KeyFigure, Section } from "./blocks.ts";
import { handChart, trialCharts } from "./trial-charts.ts";

/** Key figures, curves, chances; what to add to a heap; the hand against compactability. */
export function trialResult(report: TrialReport): Section {
  const figures = keyFigures(report);
  const blocks: Block[] = figures.length > 0 ? [{ kind: "figures", figures }] : [];
  blocks.push(...trialCharts(report).map((chart): Block => ({ kind: "chart", chart })));
  const wanted = report.properties.find(({ test }) => test === "compactability")?.wanted;
  const hand = handChart(report.rows, wanted);
  if (hand) blocks.push({ kind: "chart", chart: hand });
  const dose = doseTable(report);
  if (dose) blocks.push(...dose);
  return { role: "result", title: "Curves, aim and window", blocks };
}

function keyFigures(report: TrialReport): KeyFigure[] {
  const { result } = report;
  const unit = axisUnit(report);
  if (!result?.window) return [];
  return [
    {
      label: `Aim, ${unit}`,
      figure: placeText(result.aim),
      under: "95 % interval of the place where your aims are met with the most to spare.",
    },
    {
      label: `Temper window, ${unit}`,
      figure: `${printNumber(result.window.low, 2)} to ${printNumber(result.window.high, 2)}`,
      under: "The chance of meeting all aims is a half or better.",
    },
    {
      label: "Chance at the aim",
      figure: `${chanceText(result.chanceAtAim)} in 100`,
      under: "Of meeting your own aims with a new batch; not of a sound casting.",
    },
  ];
}

/** First doses for 100 kg of heap, from several moistures to the aim, each as well known as this trial's moistures. */
function doseTable({ axis, result, x }: TrialReport): Block[] | undefined {
  if (axis !== "moisture" || !result?.window) return undefined;
  const half =
    [...x.map(({ low, high }) => (high - low) / 2)].sort((a, b) => a - b)[Math.floor(x.length / 2)] ?? 0;
  const to = result.aim.x;
  const rows = [2, 1.5, 1, 0.5].flatMap((below) => {
    const from = to - below;
    if (from <= 0) return [];
    const known = spread({
      mean: from,
      halfWidth: half,
      kind: "normal",
      source: "moisture of the heap as tested",
    });
    const dose = firstDoseKg({ heapKg: 100, fromOfDampPercent: known, toOfDampPercent: to });
    if (dose.verdict === "too wet") return [];
    const { inAllKg } = dose;
    return [
      [
        { text: printNumber(from, 2), number: from },
        { text: printNumber(dose.nowKg, 2), number: dose.nowKg },
        {
          text: printFigure({ value: inAllKg.value, low: inAllKg.low, high: inAllKg.high, min: 0 }).text,
          number: inAllKg.value,
        },
      ],
    ];
  });
  if (rows.length === 0) return undefined;
  return [
    {
      kind: "prose",
      text: `To bring a heap to the aim of ${printNumber(to, 2)} % of damp mass: add the water of the second column, mull, test again, and expect to need the third in all. The first dose is too much only once in ten.`,
    },
    {
      kind: "table",
      name: "first-dose",
      caption: `Water for 100 kg of damp heap, with moisture known to ± ${printNumber(half, 2)} points`,
      columns: [
        { head: "Tested now", unit: "% of damp mass", align: "number" },
        { head: "Add now", unit: "kg", align: "number" },
        { head: "In all", unit: "kg", align: "number" },
      ],
      rows,
    },
  ];
}
