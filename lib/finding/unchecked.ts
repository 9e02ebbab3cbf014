// What could not be looked at, for all that the log does not say.

import type { Companion } from "../trial/confounding.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { counted } from "./trial-aim-findings.ts";
import { tooFewForOrder, unchecked } from "./trial-rig-messages.ts";

const words: { readonly [companion in Companion]?: string } = {
  "trial order": "the order of the batches",
  "minutes mulled": "the minutes mulled",
  "minutes stood": "the minutes stood",
  density: "the density of the specimens",
  "day or block": "the day",
};

/** Fewer show nothing that goes along, as uncheckedCompanions has it. */
const fewest = 4;

export function uncheckedFindings({
  unchecked: lacking,
  rows,
}: Pick<TrialReport, "unchecked" | "rows">): readonly Finding[] {
  if (lacking.length === 0) return [];
  if (rows.length < fewest) return [tooFewForOrder(counted(rows.length, "batch", "batches"))];
  return [unchecked(listed(lacking.map(({ companion }) => words[companion] ?? companion)))];
}
