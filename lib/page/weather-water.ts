// Water for tomorrow: the part of a heap's page.

import type { Chart } from "../chart/chart.ts";
import { weatherWaterChart } from "../chart/weather-water-chart.ts";
import { listed } from "../finding/batch-names.ts";
import { takenWords } from "../finding/weather-messages.ts";
import { type WeatherWater, weatherWater } from "../finding/weather-water.ts";
import type { Log } from "../log/types.ts";
import type { Figure } from "../quantity/figure.ts";
import { printNumber } from "../quantity/print.ts";
import type { Block, Section, TableBlock, TableCell } from "./blocks.ts";
import { figureCell } from "./figure-cell.ts";
import { figureInShownUnit, type ShownUnits, shownUnit, shownUnits, type UnitSystem } from "./shown-units.ts";
import { coverWords, weatherFindings } from "./weather-findings.ts";

/**
 * The section "Water for tomorrow" of a log with `weather:`: the loss uncovered and covered as ranges, what to temper
 * to, the chart over the hours. Without `weather:` it has no blocks; where something is missing it says what.
 * @example waterForTomorrow(log).title
 */
export function waterForTomorrow(log: Log, units: ShownUnits = shownUnits(log)): Section {
  const section = { role: "result", title: "Water for tomorrow" } as const;
  const answer = weatherWater(log);
  if (!answer) return { ...section, blocks: [] };
  const findings = weatherFindings(log, units, answer).map(
    (finding): Block => ({ kind: "finding", finding }),
  );
  if (!answer.known) return { ...section, blocks: findings };
  const { known } = answer;
  const system = units.recipe;
  const chart = waterChart(known, system);
  const [first, ...rest] = findings;
  return {
    ...section,
    blocks: [
      ...(first ? [first] : []),
      ...rest.slice(0, 2),
      { kind: "chart", chart },
      coverTable(known, system),
      ...(known.taken.length > 0 ? [{ kind: "prose" as const, text: takenWords(listed(known.taken)) }] : []),
      { kind: "fold", summary: "Skin, bound and hot sand", blocks: rest.slice(2) },
    ],
  };
}

/** Files keep metric units whatever is drawn. */
function waterChart({ course }: WeatherWater, system: UnitSystem): Chart {
  const drawn = (shown: UnitSystem): Chart => {
    const to = (figure: Figure) => figureInShownUnit(figure, "kg", shown);
    return weatherWaterChart({
      name: "water-lost",
      unit: shownUnit("kg", shown),
      open: course.map(({ hours, open }) => ({ hours, ...to(open) })),
      sheet: course.map(({ hours, sheet }) => ({ hours, ...to(sheet) })),
    });
  };
  return system === "metric" ? drawn(system) : { ...drawn(system), data: drawn("metric").table };
}

function coverTable({ each, own, want }: WeatherWater, system: UnitSystem): TableBlock {
  return {
    kind: "table",
    name: "water-by-cover",
    caption: "What a cover does to the water of this heap",
    columns: [
      { head: "Cover", align: "text" },
      {
        head: "Water lost",
        unit: shownUnit("kg", system),
        ...(system === "metric" ? {} : { dataUnit: "kg" }),
        align: "number",
      },
      { head: "Moisture after", unit: "% of damp mass", align: "number" },
      {
        head: want === undefined ? "To temper to" : `To temper to for ${printNumber(want, 2)} %`,
        unit: "% of damp mass",
        align: "number",
      },
    ],
    rows: each.map(({ cover, lost, after, temper }) => [
      `${coverWords[cover]}${cover === own ? ", as the log says" : ""}`,
      { ...noFiner(figureInShownUnit(lost.figure, "kg", system), 3), number: lost.figure.value },
      after ? noFiner(after, 2) : "",
      temper ? noFiner(temper, 2) : "",
    ]),
  };
}

/** Nobody weighs a heap's water to a tenth of a gram, nor dries sand to a ten-thousandth of a percent. */
function noFiner(figure: Pick<Figure, "value" | "low" | "high">, decimals: number): TableCell {
  const cell = figureCell(figure);
  const places = Math.max(...[...cell.text.matchAll(/\.(\d+)/g)].map(([, digits = ""]) => digits.length), 0);
  if (places <= decimals) return cell;
  const [low, high] = [figure.low, figure.high].map((end) => printNumber(end, decimals));
  return { ...cell, text: low === high ? `${low}` : `${low} to ${high}` };
}
