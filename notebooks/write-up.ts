// From a log's experiment to a document that somebody else can repeat.

import {
  blockComparisons,
  notebook,
  shownUnits,
  withPointers,
  writeUpData,
  writeUpFindings,
  writeUpHead,
  writeUpOf,
  writeUpResult,
} from "../lib/index.ts";

export default notebook(
  "Write-up",
  (log) => {
    const writeUp = writeUpOf(log);
    const units = shownUnits(log);
    const { report, rows, sands } = writeUp;
    const compared = blockComparisons(report, units);
    const concluded = writeUpFindings(writeUp, compared, units);
    return {
      ...writeUpHead(writeUp, compared, concluded, units),
      sections: withPointers([
        ...writeUpData(writeUp, units),
        ...writeUpResult(writeUp, compared, units),
        ...concluded.sections,
      ]),
      sources: concluded.sources,
      numberedSources: true,
      issues: [...report.issues, ...sands.flatMap(({ issues }) => issues)],
      figures: {
        batches: rows.length,
        aim: report.result?.window ? report.result.aim : null,
        window: report.result?.window ?? null,
        chanceAtAim: report.result?.chanceAtAim ?? null,
        comparisons: compared.map(({ figures }) => figures),
        fits: report.properties.flatMap(({ test, unit, curve: { fit, used, from, to } }) => {
          if (!fit) return [];
          const { coefficients, standardErrors, residualSd, degreesOfFreedom } = fit;
          const figures = { coefficients, standardErrors, residualSd, degreesOfFreedom };
          return [{ test, unit, ...figures, batches: used.length, from, to }];
        }),
      },
    };
  },
  { question: "What was asked, done and found, told so that somebody else can repeat it?" },
);
