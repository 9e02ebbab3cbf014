// The charts of a diary, from its report.

import type { Chart } from "../chart/chart.ts";
import { controlChart } from "../chart/control-chart.ts";
import type { ControlInput, DayPoint } from "../chart/control-input.ts";
import { changeDays, nameOf } from "../finding/diary-findings.ts";
import { propertyName } from "../finding/diary-print.ts";
import { endsOf } from "../finding/ends.ts";
import { dayOf } from "../numbers/days.ts";
import type { Controlled, ControlReport } from "../trial/control-report.ts";
import type { DiarySeries, DiaryValue } from "../trial/control-series.ts";
import { diaryLetters } from "./diary-events.ts";
import { systemOf } from "./diary-print.ts";
import { fileStem } from "./file-name.ts";
import { inShownUnit, metric, type ShownUnits, shownUnit } from "./shown-units.ts";
import { nameAtAxis } from "./trial-names.ts";

/**
 * One for each test and method: with limits where there are enough values, points alone where there are two at least.
 * @example diaryCharts(controlReport(log), shownUnits(log)).map(({ name }) => name)
 */
export function diaryCharts(report: ControlReport, units: ShownUnits): readonly Chart[] {
  const drawn = (system: ShownUnits): Chart[] => [
    ...report.controlled.map((one) => limited(one, report, system)),
    ...report.few
      .filter(({ values }) => values.length > 1)
      .map((series) => pointsOnly(series, report, system)),
  ];
  const inMetric = drawn(metric);
  return drawn(units).map((chart, i) => ({ ...chart, data: inMetric[i]!.table }));
}

function limited(one: Controlled, report: ControlReport, units: ShownUnits): Chart {
  const { series, values, chart, baseline, within, after, change } = one;
  const to = convert(series, units);
  const signals = [...within, ...after];
  const places = (rule: (name: string) => boolean) =>
    new Set(signals.filter((signal) => rule(signal.rule)).flatMap(({ from, to: last }) => range(from, last)));
  const ringed = places((rule) => rule !== "range");
  const stepped = new Set(signals.filter(({ rule }) => rule === "range").map(({ to: at }) => at));
  const first = series.values.length - values.length;
  const points = series.values.map(
    (value, i): DayPoint => ({
      ...pointOf(value, to),
      judged: i >= first,
      signal: ringed.has(i - first),
      stepSignal: stepped.has(i - first),
    }),
  );
  const days = change?.suggested ? changeDays({ values, change }).map(dayOf) : undefined;
  return controlChart({
    ...common(series, report, units),
    points,
    limits: {
      mean: to(chart.mean),
      upper: to(chart.upper),
      // None of these can be below nothing.
      lower: Math.max(0, to(chart.lower)),
      rangeMean: to(chart.meanMovingRange),
      rangeUpper: to(chart.rangeUpper),
      from: values[0]!.day,
      baselineTo: values[baseline - 1]!.day,
      to: values.at(-1)!.day,
      count: baseline,
    },
    ...(days ? { change: { low: days[0]!, high: days[1]! } } : {}),
  });
}

function pointsOnly(series: DiarySeries, report: ControlReport, units: ShownUnits): Chart {
  const to = convert(series, units);
  const points = series.values.map((value) => ({ ...pointOf(value, to), judged: true }));
  return controlChart({ ...common(series, report, units), points });
}

const convert = (series: DiarySeries, units: ShownUnits) => {
  const system = systemOf(series, units);
  return (value: number): number => inShownUnit(value, series.unit, system).value;
};

function common(
  series: DiarySeries,
  report: ControlReport,
  units: ShownUnits,
): Pick<ControlInput, "name" | "property" | "unit" | "basis" | "events" | "pours" | "leftOut"> {
  const [unit, basis] = shownUnit(series.unit, systemOf(series, units)).split(" of ");
  return {
    name: fileStem(`diary ${nameOf(series)}`),
    property: nameAtAxis(propertyName(series.property)),
    unit: unit ?? "",
    ...(basis === undefined ? {} : { basis }),
    events: diaryLetters(report),
    pours: report.pours.map(({ day }) => day),
    leftOut: series.keptOut.map((value) => pointOf(value, convert(series, units))),
  };
}

function pointOf({ day, value, spread }: DiaryValue, to: (value: number) => number): DayPoint {
  const { low, high } = endsOf(spread);
  return { day, value: to(value), ...(low < high ? { low: to(low), high: to(high) } : {}) };
}

const range = (from: number, to: number): number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => from + i);
