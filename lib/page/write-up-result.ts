// What came out: curves and aim, blocks and sands against each other, the fits, the state of the bond.

import type { WriteUp } from "../finding/write-up-record.ts";
import type { BlockComparison } from "./block-comparisons.ts";
import type { Block, Section } from "./blocks.ts";
import { grainCharts } from "./grain-charts.ts";
import type { ShownUnits } from "./shown-units.ts";
import { trialBond } from "./trial-bond.ts";
import { trialResult } from "./trial-result.ts";
import { writeUpFits } from "./write-up-fits.ts";

export function writeUpResult(
  { report, rows, log, sands }: WriteUp,
  compared: readonly BlockComparison[],
  units: ShownUnits,
): readonly Section[] {
  // What cannot be told from no difference is told in a sentence alone.
  const apart = compared.filter(({ figures: { low, high } }) => low > 0 || high < 0);
  const grain = grainCharts(sands, []).filter(({ name }) => name === "grain-curve");
  const charts = [...apart.map(({ chart }) => chart), ...grain];
  return [
    ...(report.rows.length > 0 ? [trialResult(report, units)] : []),
    {
      role: "result",
      title: compared.length > 0 ? "One against the other" : "The grain of the sand",
      blocks: charts.map((chart): Block => ({ kind: "chart", chart })),
    },
    writeUpFits(report, units),
    trialBond(rows, log),
  ];
}
