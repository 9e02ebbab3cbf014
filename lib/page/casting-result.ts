// The questions of a log and their p, and what each fault is usually put down to, as sections of a page.

import { type CauseStanding, causeStandings, linkSource, type SideCount } from "../finding/casting-causes.ts";
import { capital, pWords } from "../finding/casting-words.ts";
import type { Log } from "../log/types.ts";
import { type CastingFault, castingFaultRows } from "../sand/casting-faults.ts";
import type { FaultAnswer } from "../trial/fault-questions.ts";
import type { FaultCount, FaultsAndSand } from "../trial/faults-and-sand.ts";
import type { Block, Section, TableRow } from "./blocks.ts";
import { castingCharts } from "./casting-charts.ts";
import { castingPrintIn } from "./casting-print.ts";
import type { ShownUnits } from "./shown-units.ts";

/**
 * The pairs that were named beforehand, a row each.
 * @example castingQuestions(faultsAndSand(log), shownUnits(log)).title
 */
export function castingQuestions(report: FaultsAndSand, units: ShownUnits): Section {
  const rows = report.answers.map((answer, i) => questionRow(answer, report.adjusted[i], units));
  const blocks: Block[] =
    rows.length === 0
      ? []
      : [
          {
            kind: "table",
            name: "casting-questions",
            caption: "The pairs that the log names, and no other. A pour, or a test of the sand, counts once",
            columns: [
              { head: "Fault", align: "text" },
              { head: "Against", align: "text" },
              { head: "With it", align: "number" },
              { head: "Without", align: "number" },
              { head: "What was found", align: "text" },
              { head: "p", align: "number" },
              { head: "p beside the others", align: "number" },
              { head: "Smallest p there could be", align: "number" },
            ],
            rows,
          },
          ...castingCharts(report.answers, units).map((chart): Block => ({ kind: "chart", chart })),
          {
            kind: "prose",
            text: "p: had chance alone dealt the fault out among these pours, how often they would lie as far apart as this, or farther. By custom below 0.05 is telling; a larger p tells nothing either way. Named beforehand, by the log's word: a question that was added after looking at the castings is worth less than its p. Beside the others: several questions of one log give a small p by chance more often, and Holm's steps make up for that. Smallest: what so few pours could give at the very best; where that is above 0.05, only more pours can answer.",
          },
        ];
  return { role: "result", title: "What was asked beforehand", blocks };
}

function questionRow(
  { question, result, values, unit, series }: FaultAnswer,
  adjusted: number | undefined,
  units: ShownUnits,
): TableRow {
  const print = castingPrintIn(units);
  const of = { unit, ...(series?.test ? { test: series.test } : {}) };
  const limit = question.limit
    ? `${question.against}, limit ${print.number(question.limit.value, of)}`
    : question.against;
  const count = (has: boolean) => {
    const found = values.filter((one) => one.has === has).length;
    return { text: String(found), number: found };
  };
  const p = (value: number | undefined) =>
    value === undefined ? "" : { text: pWords(value), number: value };
  const told =
    result.kind === "none"
      ? "no figure"
      : result.kind === "rank"
        ? `with it less without: ${print.difference({ value: result.shift, ...result.interval }, of)}`
        : `${question.against === "degassed" ? "degassed" : "above"} ${result.over.withIt} of ${result.over.of}; ${question.against === "degassed" ? "not" : "at or below"} ${result.under.withIt} of ${result.under.of}`;
  const asked = result.kind === "none" ? undefined : result;
  return [question.fault, limit, count(true), count(false), told, p(asked?.p), p(adjusted), p(asked?.least)];
}

/**
 * Faults that were found: what comes first outside the sand, then the sand, with where it stood.
 * @example castingCauses(faultsAndSand(log), log, shownUnits(log)).title
 */
export function castingCauses(
  report: FaultsAndSand,
  log: Pick<Log, "aims" | "metal" | "bond">,
  units: ShownUnits,
): Section {
  if (report.faults.length === 0) return { role: "result", title: "", blocks: [] };
  return {
    role: "result",
    title: "What such faults are usually put down to",
    blocks: [
      {
        kind: "table",
        name: "casting-first-causes",
        caption: "Looked at first: metal, pouring, gating, pattern (common practice)",
        columns: ["Fault", "Looks like", "Looked at first"].map((head) => ({ head, align: "text" })),
        rows: report.faults.map(({ fault }) => firstRow(fault)),
      },
      {
        kind: "table",
        name: "casting-sand-causes",
        caption:
          "In the sand and the ramming: on how many pours the sand lay on that side of the range, with its whole ±. Pours without a test near enough are not counted",
        columns: [
          { head: "Fault", align: "text" },
          { head: "In the sand", align: "text" },
          { head: "Pours with it", align: "text" },
          { head: "Pours without", align: "text" },
          { head: "Range", align: "text" },
          { head: "Source of the link", align: "text" },
        ],
        rows: report.faults.flatMap((count) => causeRows(count, report, log, units)),
        foldAfter: 24,
      },
      ...rangesList(report, log, units),
      {
        kind: "prose",
        text: "A link that was read in a source, against a range that was read or the log's own aim, makes a finding. A link or a range that is common practice, from memory or our own is shown and makes none. A table of causes says where to look; it proves none.",
      },
    ],
  };
}

function firstRow(fault: CastingFault): TableRow {
  const { looks, first } = castingFaultRows[fault];
  return [capital(fault), looks, first.join("; ")];
}

function causeRows(
  count: FaultCount,
  report: FaultsAndSand,
  log: Pick<Log, "aims" | "metal" | "bond">,
  units: ShownUnits,
): TableRow[] {
  return causeStandings(count, report, log).map((standing) => [
    capital(count.fault),
    standing.cause.says,
    sideWords(standing.withIt),
    sideWords(standing.without),
    rangeWords(standing, units),
    linkSource(standing.cause),
  ]);
}

function sideWords(side: SideCount | undefined): string {
  if (!side) return "not placed";
  if (side.tested === 0) return "not tested";
  return `${side.on} of ${side.tested}${side.notTold > 0 ? ` (${side.notTold} not told by their ±)` : ""}`;
}

function rangeWords(standing: CauseStanding, units: ShownUnits): string {
  const { cause, range } = standing;
  if (!cause.test) return "no home test";
  if (!range) return "no range known for this metal, bond and fineness";
  const tag = /\(([^()]+)\)$/.exec(range.source)?.[1] ?? range.source;
  return `${rangeEnds(standing, units)} (${tag})`;
}

/** Where each range comes from, told once for all faults. */
function rangesList(
  report: FaultsAndSand,
  log: Pick<Log, "aims" | "metal" | "bond">,
  units: ShownUnits,
): Block[] {
  const told = report.faults.flatMap((count) =>
    causeStandings(count, report, log).flatMap((standing) => {
      const { cause, range } = standing;
      return cause.test && range
        ? [`${capital(cause.test.property)} ${rangeEnds(standing, units)}: ${range.source}`]
        : [];
    }),
  );
  const items = [...new Set(told)];
  return items.length === 0
    ? []
    : [{ kind: "fold", summary: "Where the ranges come from", blocks: [{ kind: "list", items }] }];
}

function rangeEnds({ cause, range }: CauseStanding, units: ShownUnits): string {
  const print = castingPrintIn(units);
  const { property } = cause.test!;
  const of =
    property === "green compression"
      ? ({ unit: "kPa", test: property } as const)
      : { unit: percent.includes(property) ? "%" : "" };
  const low = print.number(range!.low, { ...of, unit: of.unit === "%" ? "" : of.unit });
  return `${low} to ${print.number(range!.high, of)}`;
}

const percent: readonly string[] = ["moisture", "compactability", "live clay"];
