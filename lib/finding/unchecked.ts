// What could not be looked at, for all that the log does not say.

import type { Companion } from "../trial/confounding.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { unchecked } from "./trial-rig-messages.ts";

const words: { readonly [companion in Companion]?: string } = {
  "trial order": "the order of the batches",
  "minutes mulled": "the minutes mulled",
  "minutes stood": "the minutes stood",
  density: "the density of the specimens",
  "day or block": "the day",
};

export function uncheckedFindings({
  unchecked: lacking,
}: Pick<TrialReport, "unchecked">): readonly Finding[] {
  if (lacking.length === 0) return [];
  return [unchecked(listed(lacking.map(({ companion }) => words[companion] ?? companion)))];
}
