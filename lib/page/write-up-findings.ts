// What a write-up concludes: findings with their sources by number, what is open, the next trial.

import { compareSands } from "../finding/compare-sands.ts";
import type { Finding } from "../finding/finding.ts";
import { trialFindings } from "../finding/trial-findings.ts";
import { lacking } from "../finding/write-up-lacks.ts";
import { openQuestions } from "../finding/write-up-open.ts";
import type { WriteUp } from "../finding/write-up-record.ts";
import type { BlockComparison } from "./block-comparisons.ts";
import type { Section } from "./blocks.ts";
import type { ShownUnits } from "./shown-units.ts";
import { findingBlocks } from "./trial-blocks.ts";
import { printTestIn } from "./trial-print.ts";
import { writeUpNext } from "./write-up-next.ts";
import { writeUpOpen } from "./write-up-open.ts";
import { numberedFindings } from "./write-up-references.ts";

export interface WriteUpFindings {
  /** Of the trial, before sources are numbered in them. */
  readonly found: readonly Finding[];
  readonly open: readonly string[];
  readonly sections: readonly Section[];
  readonly sources: readonly string[];
}

/**
 * What a write-up concludes: findings with their evidence, what remains open, the next trial, and its sources.
 * @example writeUpFindings(writeUpOf(log), [], shownUnits(log)).open
 */
export function writeUpFindings(
  writeUp: WriteUp,
  compared: readonly BlockComparison[],
  units: ShownUnits,
): WriteUpFindings {
  const { report, sands } = writeUp;
  const found = trialFindings(report, printTestIn(units));
  const [first, second] = sands;
  const ofSands = first && second ? compareSands(first, second) : undefined;
  const { findings, sources } = numberedFindings([
    ...compared.map(({ finding }) => finding),
    ...(ofSands ? [ofSands.finding] : []),
    ...found,
  ]);
  const open = openQuestions(writeUp);
  return {
    found,
    open,
    sources,
    sections: [
      {
        role: "findings",
        title: "What the figures say",
        blocks: findingBlocks(findings),
      },
      writeUpOpen(writeUp, open, lacking(writeUp)),
      writeUpNext(writeUp, units),
    ],
  };
}
