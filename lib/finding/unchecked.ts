// What went along with the axis, for all that the log says.

import type { TrialReport } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { unchecked } from "./trial-rig-messages.ts";

/** Fewer batches that say it, and ranks cannot be compared: as in confounding. */
const least = 4;

export function uncheckedFindings({ rows }: TrialReport): readonly Finding[] {
  const said: readonly (readonly [string, (row: TrialReport["rows"][number]) => unknown])[] = [
    ["the order of the batches", ({ batch }) => batch.order],
    ["the minutes mulled", ({ batch }) => batch.mulledMin],
    ["the minutes stood", ({ batch }) => batch.stoodMin],
  ];
  const lacking = said.filter(
    ([, of]) => rows.length >= least && rows.filter((row) => of(row) !== undefined).length < least,
  );
  return lacking.length === 0 ? [] : [unchecked(listed(lacking.map(([what]) => what)))];
}
