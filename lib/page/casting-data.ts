// What was found on which casting, and its pour beside the sand of that day, as a section of a page.

import { listed } from "../finding/batch-names.ts";
import { endsOf } from "../finding/ends.ts";
import type { Measured } from "../log/figure-types.ts";
import { printFigure } from "../quantity/print.ts";
import type { CastPour } from "../trial/cast-pours.ts";
import type { DiarySeries } from "../trial/control-series.ts";
import { withEnds } from "../trial/fault-questions.ts";
import type { FaultsAndSand } from "../trial/faults-and-sand.ts";
import { freshDays, type SandThatDay } from "../trial/sand-that-day.ts";
import type { Block, Section, TableCell, TableColumn } from "./blocks.ts";
import { systemBeside } from "./casting-print.ts";
import { figureInShownUnit, type ShownUnits, shownUnit } from "./shown-units.ts";

/**
 * Every pour with its castings and what was found on them, beside the pour itself and the sand of its day.
 * @example castingData(faultsAndSand(log), shownUnits(log)).title
 */
export function castingData(report: FaultsAndSand, units: ShownUnits): Section {
  const blocks: Block[] =
    report.pours.length === 0 ? [] : [castingsTable(report), poursTable(report, units), countedFor];
  return { role: "data", title: "What was found, and what stood beside it", blocks };
}

const countedFor: Block = {
  kind: "prose",
  text: `A test counts for a pour for ${freshDays.moisture} day (moisture, compactability), ${freshDays.permeability} days (strength, permeability) or ${freshDays.fineness} days (clay, grain), and only where no water, clay or sand that changes it went in since: our own rule. What was done on the test's own day counts as done before the test.`,
};

function castingsTable({ pours }: FaultsAndSand): Block {
  const noted = pours.some(({ castings }) => castings.some(({ note }) => note !== undefined));
  return {
    kind: "table",
    name: "castings",
    caption: "Castings as they were looked over",
    columns: ["Pour", "Casting", "Found", ...(noted ? ["In the founder's words"] : [])].map((head) => ({
      head,
      align: "text",
    })),
    rows: pours.flatMap((pour) =>
      pour.castings.map(({ name, faults, incomplete, note, place }) => [
        pour.name,
        name,
        { text: foundWords(faults, incomplete), at: place },
        ...(noted ? [note ?? ""] : []),
      ]),
    ),
    foldAfter: 20,
  };
}

function foundWords(faults: readonly string[] | undefined, incomplete: boolean): string {
  if (!faults) return "not said";
  const named = faults.length === 0 ? (incomplete ? "" : "none") : faults.join(", ");
  return [named, ...(incomplete ? ["not all could be read"] : [])].filter((part) => part !== "").join("; ");
}

/** "none" only where every casting of the pour was looked over and told whole. */
function foundOnPour({ castings }: CastPour): string {
  const named = [...new Set(castings.flatMap(({ faults }) => faults ?? []))].join(", ");
  const open = castings.filter(({ faults, incomplete }) => faults === undefined || incomplete).length;
  if (open === 0) return named || "none";
  const told = open === 1 ? "one casting not told" : `${open} castings not told`;
  return named === "" ? told : `${named}; ${told}`;
}

function poursTable({ pours, diary }: FaultsAndSand, units: ShownUnits): Block {
  const shown = diary.series.filter(
    (series, i) =>
      pours.some(({ sand }) => sand.some((one) => one.series === series)) &&
      diary.series.findIndex(({ property }) => property === series.property) === i,
  );
  const hot = { unit: "°C" };
  const hotUnit = shownUnit("°C", systemBeside(hot, units));
  return {
    kind: "table",
    name: "pours-and-sand",
    caption:
      "Each pour beside the sand of that day: the test of the day, else the last before it. ± is 95 %, as far as it is known; a figure without one stands as it was written",
    columns: [
      { head: "Pour", align: "text" },
      { head: "Faults", align: "text" },
      { head: "Alloy", align: "text" },
      { head: "Scrap share", unit: "%", align: "number" },
      { head: "Poured at", unit: hotUnit, ...(hotUnit === "°C" ? {} : { dataUnit: "°C" }), align: "number" },
      { head: "Degassed", align: "text" },
      ...shown.map((series) => sandColumn(series, units)),
      { head: "Not of the day", align: "text" },
    ],
    rows: pours.map((pour) => [
      pour.name,
      foundOnPour(pour),
      pour.pour?.alloy ?? "",
      measuredCell(pour.pour?.scrapSharePercent, "%", units),
      measuredCell(pour.pour?.atC, "°C", units),
      pour.pour?.degassed === undefined ? "" : pour.pour.degassed ? "yes" : "no",
      ...shown.map((series) => sandCell(pour, series, units)),
      remarks(pour, shown),
    ]),
    foldAfter: 20,
  };
}

function sandColumn(series: DiarySeries, units: ShownUnits): TableColumn {
  const unit = shownUnit(series.unit, systemBeside(series, units));
  const { property, method } = series;
  return {
    head: `${property.charAt(0).toUpperCase()}${property.slice(1)}${method === undefined ? "" : `, ${method}`}`,
    ...(unit === "" ? {} : { unit }),
    ...(unit === series.unit ? {} : { dataUnit: series.unit }),
    align: "number",
  };
}

const ofSeries = ({ sand }: CastPour, series: DiarySeries): SandThatDay | undefined =>
  sand.find((one) => one.series === series);

function sandCell(pour: CastPour, series: DiarySeries, units: ShownUnits): TableCell | string {
  const one = ofSeries(pour, series);
  if (!one) return "";
  const { value, spread, missing } = one.reading;
  return cellOf({ value, ...endsOf(spread), atLeast: missing.length > 0 }, series, units);
}

function measuredCell(measured: Measured | undefined, unit: string, units: ShownUnits): TableCell | string {
  if (!measured) return "";
  return { ...cellOf(withEnds(measured, measured.text), { unit }, units), at: measured.place };
}

function cellOf(
  at: { value: number; low: number; high: number; atLeast: boolean },
  of: Parameters<typeof systemBeside>[0],
  units: ShownUnits,
): TableCell {
  const { value, low, high } = figureInShownUnit(at, of.unit, systemBeside(of, units));
  if (!(low < high)) return { text: String(Number(value.toPrecision(4))), number: at.value };
  const { text } = printFigure({
    value,
    low: Math.min(low, value),
    high: Math.max(high, value),
    atLeast: at.atLeast,
  });
  return { text, number: at.value };
}

const NOT_COUNTED = "not counted: ";

/** Which figures are older than the pour, and which of those do not stand for it; those alike together. */
function remarks(pour: CastPour, shown: readonly DiarySeries[]): string {
  const alike = new Map<string, string[]>();
  for (const series of shown) {
    const one = ofSeries(pour, series);
    if (!one || (one.ageDays === 0 && one.fresh)) continue;
    const days = one.ageDays === 1 ? "1 day" : `${one.ageDays} days`;
    const since = one.changed.length === 0 ? "" : `, ${listed(one.changed)} since`;
    const words = `${days} before${since}`;
    const key = `${one.fresh ? "" : NOT_COUNTED}${words}`;
    alike.set(key, [...(alike.get(key) ?? []), series.property]);
  }
  return [...alike]
    .map(([key, names]) => {
      const stale = key.startsWith(NOT_COUNTED);
      const words = stale ? key.slice(NOT_COUNTED.length) : key;
      return `${stale ? NOT_COUNTED : ""}${listed(names)} ${words}`;
    })
    .join("; ");
}
