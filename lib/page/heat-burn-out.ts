// Heat and burn-out: the part of a heap's page.

import type { Chart } from "../chart/chart.ts";
import { heatDepthChart } from "../chart/heat-depth-chart.ts";
import type { Caution } from "../finding/finding.ts";
import { frozenIsHot, waterOnHotSand } from "../finding/heat-cautions.ts";
import { clayTemperatures, type HeatFigures, heatFigures } from "../finding/heat-figures.ts";
import { temperatureWords } from "../finding/heat-messages.ts";
import type { Log } from "../log/types.ts";
import type { Block, Section, TableBlock } from "./blocks.ts";
import { heatFindings } from "./heat-findings.ts";
import { hotText, inUnit, lengthCell, lengthText, two } from "./heat-print.ts";
import { inShownUnit, type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";

type System = ShownUnits["recipe"];

/**
 * The hazards of a log that pours: before its figures. None where nothing is poured or planned.
 * @example heatCautions(log).map(({ text }) => text)
 */
export function heatCautions(log: Log): readonly Caution[] {
  const pours = log.events.some(({ kind }) => kind === "pour") || log.planned !== undefined;
  return [...(pours ? [frozenIsHot] : []), ...(pours || log.weather ? [waterOnHotSand] : [])];
}

/**
 * The section "Heat and burn-out" of a log with pours or a plan: clay burnt for each kilogram of metal as a range, depths
 * by section with their chart, freezing for comparison. Without pours it has no blocks.
 * @example heatAndBurnOut(log).title
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

/** Files keep metric units whatever is drawn. */
function depthChart(figures: HeatFigures, system: System): Chart {
  const drawn = depthChartIn(figures, system);
  return system === "metric" ? drawn : { ...drawn, data: depthChartIn(figures, "metric").table };
}

function depthChartIn({ perSection, sections }: HeatFigures, system: System): Chart {
  const to = (mm: number): number => inShownUnit(mm, "mm", system).value;
  const thickest = Math.max(10, ...sections.map(({ sectionMm }) => sectionMm * 1.2));
  return heatDepthChart({
    name: "heated-depth",
    unit: shownUnit("mm", system),
    upTo: to(thickest),
    temperatures: clayTemperatures.map((celsius) => ({
      label: temperatureWords[celsius](hotText(celsius, system)),
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
    head: `Past ${hotText(celsius, system)} to`,
    unit,
    ...(unit === "mm" ? {} : { dataUnit: "mm" }),
    align: "number" as const,
  });
  return {
    kind: "table",
    name: "heated-sections",
    caption:
      "Sections of this log as plates: freezing for comparing them, never a time to open a mould, and how deep the sand is heated",
    columns: [
      { head: "Section", unit, ...(unit === "mm" ? {} : { dataUnit: "mm" }), align: "number" },
      { head: "Pours", align: "number" },
      {
        head: "Freezes in, for comparison",
        unit: "s",
        align: "number",
      },
      ...clayTemperatures.map(depth),
    ],
    rows: sections.map(({ sectionMm, pours, planned, freezing, depthMm }) => [
      lengthCell(sectionMm, system),
      `${pours}${planned && pours === 0 ? ", planned" : ""}`,
      { text: two(freezing), ends: freezing },
      ...clayTemperatures.map((celsius) => ({
        text: two(inUnit(depthMm[celsius], system)),
        ends: depthMm[celsius],
      })),
    ]),
  };
}
