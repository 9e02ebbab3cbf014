// Heat and burn-out: the part of a heap's page.

import { heatDepthChart } from "../chart/heat-depth-chart.ts";
import type { Caution, Finding } from "../finding/finding.ts";
import { frozenIsHot, waterOnHotSand } from "../finding/heat-cautions.ts";
import {
  clayTemperatures,
  type Ends,
  type HeatFigures,
  type HeatSection,
  heatFigures,
} from "../finding/heat-figures.ts";
import * as say from "../finding/heat-messages.ts";
import type { Log } from "../log/types.ts";
import { printNumber } from "../quantity/print.ts";
import type { Block, Section, TableBlock, TableCell } from "./blocks.ts";
import { inShownUnit, type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";

type System = ShownUnits["recipe"];
const KG_PER_LB = 0.45359237;

/** The hazards of a log that pours: before its figures. None where nothing is poured or planned. */
export function heatCautions(log: Log): readonly Caution[] {
  const pours = log.events.some(({ kind }) => kind === "pour") || log.planned !== undefined;
  return [...(pours ? [frozenIsHot] : []), ...(pours || log.weather ? [waterOnHotSand] : [])];
}

/**
 * The section "Heat and burn-out" of a log with pours or a plan: clay burnt for each kilogram of metal as a range, depths
 * by section with their chart, freezing for comparison. Without pours it has no blocks.
 */
export function heatAndBurnOut(log: Log, units: ShownUnits = shownUnits(log)): Section {
  const section = { role: "result", title: "Heat and burn-out" } as const;
  const figures = heatFigures(log);
  const [first, ...rest] = heatFindings(log, units, figures).map(
    (finding): Block => ({ kind: "finding", finding }),
  );
  if (!first) return { ...section, blocks: [] };
  if (!figures) return { ...section, blocks: [first] };
  const system = units.recipe;
  return {
    ...section,
    blocks: [
      first,
      ...rest.slice(0, 2),
      { kind: "chart", chart: depthChart(figures, system) },
      ...(figures.sections.length > 0 ? [sectionTable(figures, system)] : []),
      { kind: "fold", summary: "Sections, freezing and steam", blocks: rest.slice(2) },
    ],
  };
}

/** The findings of that section, the answer first; none where nothing is poured or planned. */
export function heatFindings(
  log: Log,
  units: ShownUnits = shownUnits(log),
  figures = heatFigures(log),
): readonly Finding[] {
  const pours = log.events.some(({ kind }) => kind === "pour") || log.planned !== undefined;
  if (!figures) return pours ? [say.metalUnknown()] : [];
  const system = units.recipe;
  const { burnt, clayKind, mostWaterKg, metal } = figures;
  const kg = shownUnit("kg", system);
  return [
    say.burntSand(
      `${two(burnt)} ${kg}`,
      `${kg} of ${metal}`,
      clayKind ?? "clay of a kind that the log does not say",
      clayPerKg(figures, system),
      soFar(figures, system),
      burnt.source,
    ),
    ...(clayKind ? [] : [say.kindUnknown()]),
    ...(figures.sandToMetal === undefined
      ? []
      : [
          say.shareOfMould(
            `${two({ low: (100 * burnt.low) / figures.sandToMetal, high: Math.min(100, (100 * burnt.high) / figures.sandToMetal) })} %`,
            `${digits(figures.sandToMetal)} ${kg}`,
          ),
        ]),
    ...sectionFindings(figures, system),
    say.waterDriven(`${digits(mostWaterKg)} ${kg}`, `${kg} of ${metal}`),
  ];
}

/** ": at 6.8 % live clay (measured …) that is 1.4 to 17 g of clay". */
function clayPerKg({ burnt, liveClay }: HeatFigures, system: System): string {
  if (!liveClay) return "";
  // For a pound or a kilogram, as the page prints it.
  const range = clayRange(burnt, (liveClay.percent / 100) * (system === "US" ? KG_PER_LB : 1), system);
  return `: at ${printNumber(liveClay.percent, 1)} % of the dry mix (${liveClay.from}) that is ${range} of clay`;
}

function soFar({ burnt, liveClay, pouredKg, pours }: HeatFigures, system: System): string {
  if (!(pouredKg > 0) || !liveClay) return "";
  const metal = inShownUnit(pouredKg, "kg", system);
  const range = clayRange(burnt, pouredKg * (liveClay.percent / 100), system);
  const of = `${pours} ${pours === 1 ? "pour" : "pours"} of ${digits(metal.value)} ${metal.unit} in all`;
  return ` So far, ${of}: ${range} of clay.`;
}

/** In grams or ounces up to two kilograms. */
function clayRange(burnt: Ends, clayKg: number, system: System): string {
  const small = burnt.high * clayKg < 2;
  const unit = small ? "g" : "kg";
  const to = (x: number): number => inShownUnit(x * clayKg * (small ? 1000 : 1), unit, system).value;
  return `${two({ low: to(burnt.low), high: to(burnt.high) })} ${shownUnit(unit, system)}`;
}

function sectionFindings({ sections, constant }: HeatFigures, system: System): Finding[] {
  const [thin, thick] = [sections[0], sections.at(-1)];
  if (!thin || !thick) return [];
  const name = ({ sectionMm }: HeatSection): string => lengthText(sectionMm, system);
  const seconds = (section: HeatSection): string => `${two(section.freezing)} s for ${name(section)}`;
  const depths = ({ depthMm }: HeatSection): string => lengthRange(depthMm[500], system);
  const several = thin !== thick;
  const ratio = several
    ? `, ${digits((thick.sectionMm / thin.sectionMm) ** 2)} times as long for ${name(thick)}`
    : "";
  return [
    ...(several
      ? [
          say.sectionNoMatter(
            name(thin),
            name(thick),
            `${depths(thin)} and ${depths(thick)}`,
            hotText(500, system),
          ),
        ]
      : []),
    say.freezingCompared(seconds(thin), ratio, constant.source),
  ];
}

function depthChart({ perSection, sections }: HeatFigures, system: System) {
  const to = (mm: number): number => inShownUnit(mm, "mm", system).value;
  const thickest = Math.max(10, ...sections.map(({ sectionMm }) => sectionMm * 1.2));
  return heatDepthChart({
    name: "heated-depth",
    unit: shownUnit("mm", system),
    upTo: to(thickest),
    temperatures: clayTemperatures.map((celsius) => ({
      label: say.temperatureWords[celsius](hotText(celsius, system)),
      ...perSection[celsius],
    })),
    marked: sections.map(({ sectionMm, planned, pours }) => ({
      x: to(sectionMm),
      label: `${lengthText(sectionMm, system)}${planned && pours === 0 ? ", planned" : ""}`,
    })),
  });
}

function sectionTable({ sections }: HeatFigures, system: System): TableBlock {
  const unit = shownUnit("mm", system);
  const depth = (celsius: number) => ({
    head: `past ${hotText(celsius, system)} to`,
    unit,
    align: "number" as const,
  });
  return {
    kind: "table",
    name: "heated-sections",
    caption:
      "Sections of this log as plates: freezing for comparing them, never a time to open a mould, and how deep the sand is heated.",
    columns: [
      { head: "section", unit, align: "number" },
      { head: "pours", align: "number" },
      {
        head: "freezes in, for comparison",
        unit: "s",
        align: "number",
      },
      ...clayTemperatures.map(depth),
    ],
    rows: sections.map(({ sectionMm, pours, planned, freezing, depthMm }) => [
      lengthCell(sectionMm, system),
      `${pours}${planned && pours === 0 ? ", planned" : ""}`,
      two(freezing),
      ...clayTemperatures.map((celsius) => two(inUnit(depthMm[celsius], system))),
    ]),
  };
}

/** Rounded to ten degrees Fahrenheit, as such limits are printed. */
function hotText(celsius: number, system: System): string {
  const { value, unit } = inShownUnit(celsius, "°C", system);
  return `${system === "US" ? 10 * Math.round(value / 10) : value} ${unit}`;
}

const inUnit = ({ low, high }: Ends, system: System): Ends => ({
  low: inShownUnit(low, "mm", system).value,
  high: inShownUnit(high, "mm", system).value,
});
const lengthRange = (ends: Ends, system: System): string =>
  `${two(inUnit(ends, system))} ${shownUnit("mm", system)}`;
const lengthText = (mm: number, system: System): string =>
  `${digits(inShownUnit(mm, "mm", system).value)} ${shownUnit("mm", system)}`;
function lengthCell(mm: number, system: System): TableCell {
  const { value } = inShownUnit(mm, "mm", system);
  return { text: digits(value), number: value };
}

/** Two digits: a range of a model is known no better. */
const digits = (x: number): string => String(Number(x.toPrecision(2)));
const two = ({ low, high }: Ends): string => `${digits(low)} to ${digits(high)}`;
