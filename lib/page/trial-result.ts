// The aim, the window and the curves, as a section of a page.

import { chanceText } from "../finding/trial-aim-findings.ts";
import { axisPlaces, axisUnit, spanText } from "../finding/trial-axis.ts";
import { tubeAim } from "../finding/tube-aim.ts";
import type { Figure } from "../quantity/figure.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import { spread } from "../quantity/spread-of.ts";
import { type FirstDose, firstDoseKg } from "../sand/first-dose.ts";
import type { BlockAim } from "../trial/block-aims.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import type { Block, KeyFigure, Section, TableRow } from "./blocks.ts";
import { type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";
import { handChart, trialCharts } from "./trial-charts.ts";

/**
 * Key figures, curves, chances; what to add to a heap; the hand against compactability.
 * @example trialResult(trialReport(log)).title
 */
export function trialResult(
  report: TrialReport,
  units: ShownUnits = shownUnits({ batches: report.rows.map(({ batch }) => batch) }),
): Section {
  const figures = keyFigures(report);
  const blocks: Block[] = figures.length > 0 ? [{ kind: "figures", figures }] : [];
  blocks.push(...trialCharts(report, units).map((chart): Block => ({ kind: "chart", chart })));
  const wanted = report.properties.find(({ test }) => test === "compactability")?.wanted;
  const hand = handChart(report.rows, wanted);
  if (hand) blocks.push({ kind: "chart", chart: hand });
  const dose = doseTable(report, units);
  if (dose) blocks.push(dose);
  return { role: "result", title: "Curves, aim and window", blocks };
}

function keyFigures(report: TrialReport): KeyFigure[] {
  const { result } = report;
  const unit = axisUnit(report);
  if (!result?.window) return [];
  const open = result.aim.open.low || result.aim.open.high;
  const tube = tubeAim(report);
  return [
    {
      label: `Aim, ${unit}`,
      figure: open
        ? `about ${printNumber(result.aim.x, axisPlaces(report))}`
        : `${printNumber(result.aim.x, axisPlaces(report))} (${spanText(result.aim, report)}${report.atLeast ? " or wider" : ""})`,
      weak: open,
      under: open
        ? "At the end of what was tried: the best place may lie beyond."
        : `${report.blockAims.length > 0 ? "At the mean of both blocks, as drawn" : "Where a new batch most surely meets the ranges"}; in brackets its 95 % interval.`,
    },
    ...(tube ? [byTube(tube, report.atLeast)] : []),
    {
      label: `${report.axis === "clay" ? "Window" : "Temper window"}, ${unit}`,
      figure: spanText(result.window, report),
      under: `${report.blockAims.length > 0 ? "At the mean of both blocks, as drawn: the" : "The"} chance of meeting all of the ranges is a half or better.`,
    },
    ...(report.blockAims.length > 0
      ? report.blockAims.map((one) => inBlock(one, report))
      : [
          {
            label: "Chance at the aim",
            figure: `${chanceText(result.chanceAtAim)} in 100`,
            under: "Of meeting the ranges with a new batch; not of a sound casting.",
          },
        ]),
  ];
}

function inBlock({ block, result: { aim, chanceAtAim } }: BlockAim, report: TrialReport): KeyFigure {
  const open = aim.open.low || aim.open.high;
  const place = printNumber(aim.x, axisPlaces(report));
  return {
    label: `${block} alone, ${axisUnit(report)}`,
    figure: open
      ? `about ${place}`
      : `${place} (${spanText(aim, report)}${report.atLeast ? " or wider" : ""})`,
    weak: open,
    under: `Its own best place: ${chanceText(chanceAtAim)} in 100 new batches would meet all of the ranges; not the chance of a sound casting.`,
  };
}

function byTube({ value, low, high }: Figure, atLeast: boolean): KeyFigure {
  return {
    label: "Aim by the tube, % compactability",
    figure: printFigure({ value, low, high, atLeast }).text,
    under: "What your own curve of compactability has at that aim.",
  };
}

/**
 * First doses for 100 kg (or lb) of heap, from several moistures about the aim, each as well known as this trial's moistures; the
 * aim's own interval is in them. None where the moistures have no known ±, or the aim is open.
 */
function doseTable(report: TrialReport, { recipe: system }: ShownUnits): Block | undefined {
  const { axis, result, x } = report;
  const unit = shownUnit("kg", system);
  // What 100 kg of heap need in kg, 100 lb need in lb.
  const dosed = unit === "kg" ? { unit } : { unit, dataUnit: "kg for 100 kg" };
  if (axis !== "moisture" || !result?.window || result.aim.open.low || result.aim.open.high) return undefined;
  const half =
    [...x.map(({ low, high }) => (high - low) / 2)].sort((a, b) => a - b)[Math.floor(x.length / 2)] ?? 0;
  if (!(half > 0)) return undefined;
  const { aim } = result;
  const to = spread({
    mean: aim.x,
    halfWidth: (aim.high - aim.low) / 2,
    kind: "normal",
    source: "the aim of this trial",
  });
  const rows = [-2, -1.5, -1, -0.5, 0.5].flatMap((off) => {
    const from = aim.x + off;
    if (from <= 0) return [];
    const known = spread({
      mean: from,
      halfWidth: half,
      kind: "normal",
      source: "moisture of the heap as tested",
    });
    return [doseRow(from, firstDoseKg({ heapKg: 100, fromOfDampPercent: known, toOfDampPercent: to }))];
  });
  const aimText = printNumber(aim.x, axisPlaces(report));
  return {
    kind: "fold",
    summary: "Water for a heap at other moistures",
    blocks: [
      {
        kind: "prose",
        text: `To bring a heap to the aim of ${aimText} % of damp mass: add the water of the second column, mull, test again, and expect to need the third in all. A heap that is too wet gets no water: spread it, turn it and let it dry; never pour on it as it is.`,
      },
      {
        kind: "table",
        name: "first-dose",
        caption: `Water for 100 ${unit} of damp heap, with moisture known to ± ${printNumber(half, 2)} points`,
        columns: [
          { head: "Tested now", unit: "% of damp mass", align: "number" },
          { head: "Add now", ...dosed, align: "text" },
          { head: "In all", ...dosed, align: "text" },
        ],
        rows,
      },
    ],
  };
}

function doseRow(from: number, dose: FirstDose): TableRow {
  const tested = { text: printNumber(from, 2), number: from };
  if (dose.verdict === "too wet") {
    return [tested, "none: too wet", `${rangeText(dose.loseKg)} must dry off`];
  }
  const inAll = { text: rangeText(dose.inAllKg), number: dose.inAllKg.value };
  if (dose.verdict === "hold") return [tested, "none yet: mull and test again", inAll];
  return [tested, { text: printNumber(dose.nowKg, 2), number: dose.nowKg }, inAll];
}

const rangeText = ({ value, low, high }: Figure): string => printFigure({ value, low, high, min: 0 }).text;
