// The charts of the questions about castings, in the units of the page.

import { type CastingMark, castingChart } from "../chart/casting-chart.ts";
import type { Chart } from "../chart/chart.ts";
import type { FaultAnswer } from "../trial/fault-questions.ts";
import { systemBeside } from "./casting-print.ts";
import { fileStem } from "./file-name.ts";
import { inShownUnit, metric, type ShownUnits, shownUnit } from "./shown-units.ts";

/**
 * One for each question with values, but for those of yes or no, which their counts tell.
 * @example castingCharts(faultsAndSand(log).answers, shownUnits(log)).map(({ name }) => name)
 */
export function castingCharts(answers: readonly FaultAnswer[], units: ShownUnits): Chart[] {
  return answers
    .filter(({ question, values }) => question.against !== "degassed" && values.length > 1)
    .map((answer) => ({ ...drawn(answer, units), data: drawn(answer, metric).table }));
}

function drawn({ question, values, unit, series }: FaultAnswer, units: ShownUnits): Chart {
  const { fault, against, limit } = question;
  const system = systemBeside({ unit, ...(series?.test ? { test: series.test } : {}) }, units);
  const to = (value: number): number => inShownUnit(value, unit, system).value;
  const marks = (has: boolean): CastingMark[] =>
    values
      .filter((one) => one.has === has)
      .map(({ name, value, low, high }) => ({
        label: name,
        value: to(value),
        ...(low < high ? { low: to(low), high: to(high) } : {}),
      }));
  return castingChart({
    name: fileStem(`castings ${fault} ${against}`),
    fault,
    against,
    unit: shownUnit(unit, system),
    withIt: marks(true),
    without: marks(false),
    ...(limit ? { limit: to(limit.value) } : {}),
  });
}
