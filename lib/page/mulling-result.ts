// How long is enough, and what the muller comes to, as sections of a page.

import { mullingChart } from "../chart/mulling-chart.ts";
import type { MullingSeries } from "../chart/mulling-input.ts";
import { minutesText } from "../finding/mulling-findings.ts";
import type { MulledWay, MullingReport } from "../finding/mulling-report.ts";
import type { Figure } from "../quantity/figure.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { MullingInterval } from "../trial/mulling-curve.ts";
import type { Block, KeyFigure, Section, TableCell, TableRow } from "./blocks.ts";
import { figureInShownUnit, inShownUnit, shownUnit, type UnitSystem } from "./shown-units.ts";

/** How many places of the minutes a curve is drawn at. */
const places = 16;

/**
 * Key figures, the chart, a table of full bond and times; the muller's arithmetic.
 * @example mullingResult(mullingReport(log)).title
 */
export function mullingResult(report: MullingReport, system: UnitSystem = "metric"): Section {
  const { ways } = report;
  const curved = ways.filter(({ curve }) => curve);
  const blocks: Block[] = [];
  if (curved.length > 0) {
    blocks.push({ kind: "figures", figures: curved.map(keyFigure) });
    blocks.push({ kind: "chart", chart: chartOf(ways, system) });
    blocks.push(timesTable(curved, system));
  }
  const muller = mullerTable(report, system);
  if (muller) blocks.push(muller);
  return { role: "result", title: "How long is enough", blocks };
}

/**
 * A strength with its ±, in the page's unit; open above where the readings do not close it.
 * @example strengthText({ value: 78, low: 74, high: 82 }, "metric")
 */
export function strengthText(of: MullingInterval, system: UnitSystem): string {
  const { value, low, high, unit } = figureInShownUnit(of, "kPa", system);
  if (low === high) return `${Number(value.toPrecision(3))} ${unit}`;
  if (!Number.isFinite(high)) return `${printNumber(low, 0)} ${unit} or more`;
  return printFigure({ value, low: Math.min(low, value), high: Math.max(high, value), unit, min: 0 }).text;
}

function keyFigure({ trial, curve, times }: MulledWay): KeyFigure {
  const time = times.at(-1)!;
  const closed = Number.isFinite(time.high);
  return {
    label: `${trial.name}, until ${time.sharePercent} % of full bond`,
    figure: curve!.straight ? "not known" : minutesText(time),
    under: closed
      ? `95 % interval, from ${trial.readings.length} readings.`
      : `Open above: not flat by ${printNumber(curve!.longestMin, 0)} min.`,
    weak: !closed,
  };
}

function chartOf(ways: readonly MulledWay[], system: UnitSystem) {
  const to = (kPa: number): number => inShownUnit(kPa, "kPa", system).value;
  const series = ways.map(({ trial, curve, times }): MullingSeries => {
    const points = trial.readings.map(({ minutes, greenCompressionKPa }) => ({
      minutes: minutes.value,
      strength: to(greenCompressionKPa.value),
    }));
    const time = times.at(-1);
    if (!curve || !time) return { name: trial.name, points, curve: [] };
    const minutes = Array.from({ length: places + 1 }, (_, k) => (curve.longestMin * k) / places);
    return {
      name: trial.name,
      points,
      curve: minutes.map((at) => {
        const { value, low, high } = curve.strengthAt(at);
        const top = Number.isFinite(high) ? { high: to(Math.max(high, value)) } : {};
        return { minutes: at, value: to(value), low: to(Math.min(low, value)), ...top };
      }),
      ...(curve.straight ? {} : { time: { value: time.value, low: time.low, high: time.high } }),
    };
  });
  return mullingChart({ name: "mulling", unit: shownUnit("kPa", system), sharePercent: 95, series });
}

function timesTable(ways: readonly MulledWay[], system: UnitSystem): Block {
  const unit = shownUnit("kPa", system);
  return {
    kind: "table",
    name: "mulling-times",
    caption:
      "Full bond and the minutes to a share of it, 95 % intervals; an end that the readings leave open says so",
    columns: [
      { head: "Mulled", align: "text" },
      { head: "Full bond", unit, align: "number", ...(unit === "kPa" ? {} : { dataUnit: "kPa" }) },
      ...ways[0]!.times.map(({ sharePercent }) => ({
        head: `Until ${sharePercent} %`,
        unit: "min",
        align: "number" as const,
      })),
      {
        head: "One reading scatters by",
        unit,
        align: "number",
        ...(unit === "kPa" ? {} : { dataUnit: "kPa" }),
      },
    ],
    rows: ways.map(({ trial, curve, times, fullBond }): TableRow => {
      const withoutUnit = (text: string): string => text.replace(` ${unit}`, "").replace(" min", "");
      const cellOf = (of: MullingInterval, text: string): TableCell => ({
        text: withoutUnit(text),
        ...(Number.isFinite(of.value) ? { number: of.value } : {}),
      });
      return [
        trial.name,
        cellOf(fullBond!, strengthText(fullBond!, system)),
        ...times.map((time) => cellOf(time, minutesText(time))),
        {
          text: printNumber(inShownUnit(curve!.scatterKPa, "kPa", system).value, 1),
          number: curve!.scatterKPa,
        },
      ];
    }),
  };
}

function mullerTable({ muller, logged }: MullingReport, system: UnitSystem): Block | undefined {
  const row = (
    name: string,
    of: Figure | undefined,
    unit: string,
    decimals: number,
    how: string,
    counted = false,
  ): TableRow[] => {
    if (!of) return [];
    const ends = of.sources.length === 0 ? { low: of.value, high: of.value } : of;
    const shown = figureInShownUnit({ value: of.value, low: ends.low, high: ends.high }, unit, system);
    const whole = (value: number): string => printNumber(value, 0);
    const text = counted
      ? [...new Set([whole(shown.low), whole(shown.high)])].join(" to ")
      : shown.low === shown.high
        ? printNumber(shown.value, shown.unit === "in" ? 1 : decimals)
        : printFigure({ ...shown, unit: "", min: 0 }).text;
    // Each row names its own unit, so that the number for files is in it too.
    return [[name, { text, number: shown.value }, shown.unit, how]];
  };
  const handling = "5 min to fill, stop, lock off and empty (our own)";
  const rows = [
    ...row("Turns of pan or wheels", muller.rpm, "a minute", 1, "motor speed / reduction"),
    ...row("Wheel passes in a load", muller.passes, "", 0, "turns × wheels × minutes"),
    ...row(
      "Floor under one wheel's track",
      muller.trackPercent,
      "% of floor",
      0,
      "2 × wheel width / pan diameter, track half way out",
    ),
    ...row("Speed at the pan's wall", muller.ploughMS, "m/s", 2, "π × diameter × turns"),
    ...row(
      "Depth of the loose sand",
      muller.bedMm,
      "mm",
      0,
      "load / (1100 kg/m³ × floor), the density common practice",
    ),
    ...row("Loads an hour", muller.loadsPerHour, "", 1, `60 / (minutes + ${handling})`),
    ...row("Loads for the heap", muller.loads, "", 0, "heap / load, whole loads", true),
    ...row("Hours for the heap", muller.hours, "h", 1, "loads / loads an hour"),
  ];
  if (rows.length === 0 || !logged) return undefined;
  return {
    kind: "table",
    name: "muller",
    caption:
      "What the muller comes to; exact arithmetic where the log has no ±, which then says nothing of slip or of the motor's load",
    columns: [
      { head: "What", align: "text" },
      { head: "Figure", align: "number" },
      { head: "Unit", align: "text" },
      { head: "From", align: "text" },
    ],
    rows,
  };
}
