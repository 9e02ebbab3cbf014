// The season of a heap: its record, what the plan makes of it, and what if.

import { seasonChart } from "../chart/season-chart.ts";
import type { SeasonPoint as Drawn, SeasonPanel } from "../chart/season-words.ts";
import { clayOfDryMix } from "../finding/heap-history.ts";
import { dryingNotKnown } from "../finding/heap-messages.ts";
import type { HeapReport } from "../finding/heap-report.ts";
import type { HeapSeason } from "../finding/heap-season.ts";
import type { Log, Measured, UnitSystem } from "../log/types.ts";
import type { SeasonPoint } from "../sand/season.ts";
import type { Band } from "../sand/season-bands.ts";
import type { RecordPoint } from "../trial/own-burn-out.ts";
import type { Block, Section } from "./blocks.ts";
import { bandCell, kgCell, poursText } from "./heap-text.ts";
import { inShownUnit, type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";

type Part = "liveClayOfDryMixPercent" | "deadClayOfDryMixPercent" | "finesOfGrainPercent" | "dryKg";

/**
 * The section "The season"; without a record of pours it has no blocks.
 * @example heapSeasonSection(heapReport(log), log).title
 */
export function heapSeasonSection(
  report: HeapReport,
  log: Log,
  units: ShownUnits = shownUnits(log),
): Section {
  const section = { role: "result", title: "The season" } as const;
  const { course, season, assumed, burnOut } = report;
  if (course.length === 0) return { ...section, blocks: [] };
  const system = units.recipe;
  return {
    ...section,
    blocks: [
      { kind: "chart", chart: chartOf(report, log, system) },
      ...(season
        ? ([
            whatIfTable(season, system),
            {
              kind: "fold",
              screenOnly: true,
              summary: "The plan, pour by pour",
              blocks: [planTable(season, system)],
            },
          ] as const)
        : []),
      {
        kind: "fold",
        summary: "What was taken for granted",
        blocks: [{ kind: "list", items: [...assumed, ...(burnOut?.dryingKnown ? [] : [dryingNotKnown])] }],
      },
    ],
  };
}

function chartOf({ course, season, finesKnown }: HeapReport, log: Log, system: UnitSystem) {
  const panel = (
    part: Part,
    property: string,
    unit: string,
    measured: readonly Drawn[] = [],
  ): SeasonPanel => {
    const to = (x: number): number => (part === "dryKg" ? inShownUnit(x, "kg", system).value : x);
    const drawn = (pour: number, { value, low, high }: Band): Drawn => ({
      pour,
      value: to(value),
      low: to(low),
      high: to(high),
    });
    const record = course.map((point: RecordPoint, i) => drawn(i + 1 - course.length, point[part]));
    const planned = (points: readonly SeasonPoint[]) => points.map((point) => drawn(point.pour, point[part]));
    return {
      property,
      unit,
      measured,
      courses: [
        { label: "by your record", points: record },
        ...(season
          ? [
              { label: "mended after every pour", points: planned(season.mended.points) },
              { label: "nothing put in", points: planned(season.alone.points.filter(standing)) },
            ]
          : []),
      ],
    };
  };
  const days = course.slice(0, -1).map(({ date }) => date);
  const at = (date: string): number => days.filter((day) => day < date).length - days.length;
  const shown = (pick: (state: Log["measured"][number]) => Measured | undefined, within: number) =>
    log.measured.flatMap((state) => {
      const one = pick(state);
      if (!one) return [];
      const { size = within, meaning = "surely" } = one.plusMinus ?? {};
      const half = meaning === "surely" ? 0.95 * size : meaning === "sd" ? 1.96 * size : size;
      return [{ pour: at(state.date), value: one.value, low: one.value - half, high: one.value + half }];
    });
  const live = shown(({ liveClay, moisturePercent }) => {
    if (!liveClay) return undefined;
    const value = clayOfDryMix(liveClay, moisturePercent?.value ?? 3.3);
    return { ...liveClay, value };
  }, 0.5);
  const fines = shown(({ finesPercent }) => finesPercent, 0);
  return seasonChart({
    name: "season",
    panels: [
      panel("liveClayOfDryMixPercent", "live clay", "% of dry mix", live),
      panel("deadClayOfDryMixPercent", "dead clay", "% of dry mix"),
      ...(finesKnown ? [panel("finesOfGrainPercent", "fines", "% of the grain", fines)] : []),
      panel("dryKg", "dry heap", shownUnit("kg", system)),
    ],
    events: log.events.flatMap(({ kind, date }) =>
      kind === "rebond" || kind === "new sand" ? [{ pour: at(date), kind }] : [],
    ),
  });
}

/** Left alone a heap is worth telling of while half of it is surely there. */
function standing({ dryKg }: SeasonPoint, _: number, all: readonly SeasonPoint[]): boolean {
  return dryKg.low > 0.5 * all[0]!.dryKg.value;
}

function whatIfTable({ whatIf, plan, currency }: HeapSeason, system: UnitSystem): Block {
  const kg = shownUnit("kg", system);
  const mass = { unit: kg, dataUnit: "kg" };
  const priced = whatIf.some(({ cost }) => cost);
  const tons = inShownUnit(1000, "kg", system);
  return {
    kind: "table",
    name: "what-if",
    caption: `What if: clay, new sand and water for ${Math.round(tons.value)} ${tons.unit} of metal, the heap settled at what you want; and pours until live clay is nine tenths of that, nothing put in`,
    columns: [
      { head: "Plan", align: "text" },
      {
        head: "Clay",
        ...mass,
        align: "number",
        formula: "live clay × (1 − (1 − β)(1 − λ)) / π × 1000 / metal",
        source: "Mass balance",
      },
      {
        head: "New sand",
        ...mass,
        align: "number",
        formula: "(λ × heap − clay) × 1000 / metal",
        source: "Mass balance",
      },
      {
        head: "Water",
        ...mass,
        align: "number",
        formula: "(dried + water of what is lost − water of clay and new sand) × 1000 / metal",
        source:
          "Mass balance; as planned, dried as your record tells; with a cover, what the log's weather takes alone, without steam at the pour",
      },
      ...(priced ? [{ head: "Cost", unit: currency, align: "number" } as const] : []),
      { head: "Dead clay", unit: "% of dry mix", align: "number" },
      { head: "Pours", align: "text" },
    ],
    rows: whatIf.map((one) => [
      one.name,
      kgCell(one.clayKg, system),
      kgCell(one.newSandKg, system),
      kgCell(one.waterKg, system),
      ...(priced ? [one.cost ? bandCell(one.cost) : ""] : []),
      bandCell(one.deadClayPercent),
      poursText(one.toFloor, plan.pours),
    ]),
  };
}

function planTable({ mended, alone }: HeapSeason, system: UnitSystem): Block {
  const mass = { unit: shownUnit("kg", system), dataUnit: "kg" };
  const points = mended.points.filter(({ pour }) => pour % 5 === 0 || pour === mended.points.length - 1);
  return {
    kind: "table",
    name: "plan",
    caption:
      "The plan pour by pour: the heap mended after every pour, so that live clay is what is wanted, by the plan; and live clay if nothing is put in",
    columns: [
      { head: "Pours from today", align: "number" },
      { head: "Live clay", unit: "% of dry mix", align: "number" },
      { head: "Dead clay", unit: "% of dry mix", align: "number" },
      { head: "Clay put in so far", ...mass, align: "number" },
      { head: "New sand so far", ...mass, align: "number" },
      { head: "Water so far", ...mass, align: "number" },
      { head: "Live clay, nothing put in", unit: "% of dry mix", align: "number" },
    ],
    rows: points.map((point) => [
      String(point.pour),
      bandCell(point.liveClayOfDryMixPercent),
      bandCell(point.deadClayOfDryMixPercent),
      kgCell(point.clayKg, system),
      kgCell(point.newSandKg, system),
      kgCell(point.waterKg, system),
      alone.points.filter(standing)[point.pour]
        ? bandCell(alone.points[point.pour]!.liveClayOfDryMixPercent)
        : "half the heap is gone",
    ]),
  };
}
