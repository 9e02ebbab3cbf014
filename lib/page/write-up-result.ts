// What came out: curves and aim, blocks and sands against each other, the fits, the state of the bond.

import type { Chart } from "../chart/chart.ts";
import type { WriteUp } from "../finding/write-up-record.ts";
import type { BlockComparison } from "./block-comparisons.ts";
import type { Block, Section } from "./blocks.ts";
import { grainCharts } from "./grain-charts.ts";
import type { ShownUnits } from "./shown-units.ts";
import { trialBond } from "./trial-bond.ts";
import { trialResult } from "./trial-result.ts";
import { writeUpFits } from "./write-up-fits.ts";

/**
 * The results of a write-up: curves, aim and window, equations, comparisons, as sections.
 * @example writeUpResult(writeUpOf(log), [], shownUnits(log)).map(({ title }) => title)
 */
export function writeUpResult(
  { report, rows, log, sands }: WriteUp,
  compared: readonly BlockComparison[],
  units: ShownUnits,
): readonly Section[] {
  // What cannot be told from no difference is told in a sentence alone.
  const apart = compared.filter(({ figures: { low, high } }) => low > 0 || high < 0);
  const grain = grainCharts(sands, []).filter(({ name }) => name === "grain-curve");
  const charted = (charts: readonly Chart[]) => charts.map((chart): Block => ({ kind: "chart", chart }));
  return [
    // What was asked first; it also fills the sheet that the tall curves leave.
    {
      role: "result",
      title: "One against the other",
      blocks: charted(apart.map(({ chart }) => chart)),
    },
    ...(report.rows.length > 0 ? [evidenceOf(trialResult(report, units))] : []),
    {
      role: "result",
      title: sands.length === 1 ? "The grain of the sand" : "The grain of the sands",
      blocks: charted(grain),
    },
    writeUpFits(report, units),
    trialBond(rows, log),
  ];
}

/** What a founder does with a trial at the heap, and the hand's own calibration, stand on the page of the trial. */
function evidenceOf(section: Section): Section {
  const aside = ["next-batch", "hand"];
  return {
    ...section,
    blocks: section.blocks.filter(
      (block) => block.kind !== "fold" && !(block.kind === "chart" && aside.includes(block.chart.name)),
    ),
  };
}
