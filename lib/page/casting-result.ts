// The questions of a log and their p, as a section of a page.

import { pWords } from "../finding/casting-words.ts";
import type { FaultAnswer } from "../trial/fault-questions.ts";
import type { FaultsAndSand } from "../trial/faults-and-sand.ts";
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
