// What was read while mulling, and what the muller is, as a section of a page.

import type { MullingReport } from "../finding/mulling-report.ts";
import type { Measured } from "../log/figure-types.ts";
import type { MullingReading } from "../log/heap-record.ts";
import { printNumber } from "../quantity/print.ts";
import { type MulledState, mullingEfficiencyPercent } from "../sand/mulling-efficiency.ts";
import type { Block, Section, TableCell, TableColumn } from "./blocks.ts";
import { inShownUnit, shownUnit, type UnitSystem } from "./shown-units.ts";

/**
 * Readings in the order of the log, those of one way together.
 * @example mullingData(mullingReport(log)).title
 */
export function mullingData(report: MullingReport, system: UnitSystem = "metric"): Section {
  const blocks: Block[] = [];
  const readings = report.ways.flatMap(({ trial }) => trial.readings.map((reading) => ({ trial, reading })));
  if (readings.length > 0) blocks.push(readingsTable(report, system));
  return { role: "data", title: "What was read", blocks };
}

function readingsTable({ ways }: MullingReport, system: UnitSystem): Block {
  const all = ways.flatMap(({ trial }) => trial.readings);
  const more = {
    compactability: all.some(({ compactabilityPercent }) => compactabilityPercent),
    moisture: all.some(({ moisturePercent }) => moisturePercent),
    load: ways.some(({ trial }) => trial.loadKg),
  };
  const efficiency = ways.map(({ trial }) => efficiencyOf(trial.readings));
  const known = efficiency.some((of) => of !== undefined);
  const columns: TableColumn[] = [
    { head: "Mulled", align: "text" },
    ...(more.load ? [unitColumn("Load", "kg", system)] : []),
    { head: "Minutes", unit: "min", align: "number" },
    unitColumn("Green compression", "kPa", system),
    ...(more.compactability
      ? [{ head: "Compactability", unit: "% of height", align: "number" } as const]
      : []),
    ...(more.moisture ? [{ head: "Moisture", unit: "% of damp mass", align: "number" } as const] : []),
    ...(known ? [{ head: "Mulled, of the last", unit: "%", align: "number" } as const] : []),
  ];
  return {
    kind: "table",
    name: "mulling-readings",
    caption: `Readings while mulling, as the log has them${known ? "; of the last: strength × compactability / moisture against the last reading of more than ten minutes (TJFS-108), not for a mix of new sand and new clay" : ""}`,
    columns,
    rows: ways.flatMap(({ trial }, k) =>
      trial.readings.map((reading) => [
        trial.name,
        ...(more.load ? [typed(trial.loadKg, "kg", system)] : []),
        typed(reading.minutes, "min", "metric"),
        typed(reading.greenCompressionKPa, "kPa", system),
        ...(more.compactability ? [typed(reading.compactabilityPercent, "%", "metric")] : []),
        ...(more.moisture ? [typed(reading.moisturePercent, "%", "metric")] : []),
        ...(known ? [efficiencyCell(efficiency[k]?.(reading))] : []),
      ]),
    ),
  };
}

function unitColumn(head: string, unit: string, system: UnitSystem): TableColumn {
  const shown = shownUnit(unit, system);
  return { head, unit: shown, align: "number", ...(shown === unit ? {} : { dataUnit: unit }) };
}

/** A reading as it is, with its ± as typed. */
function typed(of: Measured | undefined, unit: string, system: UnitSystem): TableCell {
  if (!of) return { text: "" };
  const show = (value: number): string =>
    String(Number(inShownUnit(value, unit, system).value.toPrecision(4)));
  const half = of.plusMinus ? ` ± ${show(of.plusMinus.size)}` : "";
  return { text: `${show(of.value)}${half}`, number: of.value, whole: true, at: of.place };
}

function efficiencyCell(percent: number | undefined): TableCell {
  return percent === undefined ? { text: "" } : { text: printNumber(percent, 0), number: percent };
}

/** Against the last reading, where that makes a reference and reads all three; undefined where it does not. */
function efficiencyOf(
  readings: readonly MullingReading[],
): ((reading: MullingReading) => number | undefined) | undefined {
  const last = readings.at(-1);
  const reference = last && stateOf(last);
  if (!last || !reference || !(last.minutes.value > 10)) return undefined;
  return (reading) => {
    const batch = stateOf(reading);
    return batch && mullingEfficiencyPercent({ batch, reference });
  };
}

function stateOf(reading: MullingReading): MulledState | undefined {
  const { greenCompressionKPa, compactabilityPercent, moisturePercent } = reading;
  if (!compactabilityPercent || !moisturePercent) return undefined;
  const state = {
    strengthKPa: greenCompressionKPa.value,
    compactabilityPercent: compactabilityPercent.value,
    moistureOfDampPercent: moisturePercent.value,
  };
  return Object.values(state).every((value) => value > 0) ? state : undefined;
}
