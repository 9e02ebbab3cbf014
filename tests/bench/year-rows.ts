// How often what is printed with a \u00b1 holds the truth, over simulated founders' years that are typed and read as logs.
// FOUNDERS=n, 60 unless given: a quick look, and its standard error says how quick. All of them: npm run honesty.

import { type Entry, heldPercent, promisedPercent, standardError } from "../honesty/ledger.ts";
import { foundersYears } from "../honesty/run.ts";
import type { Row } from "./row.ts";

const founders = Number(process.env.FOUNDERS ?? 60);

/** The parts that the target names: fineness, moisture with aims and chances, rebond and season. */
const years = ["sands", "moisture", "heap"] as const;

export function yearRows(): Row[] {
  return years.flatMap((part) => foundersYears(part, founders).entries().map(rowOf));
}

/** Out of its range only where two standard errors do not reach back into it; "at least" promises no upper end. */
function rowOf(entry: Entry): Row {
  const promised = promisedPercent(entry);
  const error = standardError(entry);
  const bound = entry.figure.endsWith("at least");
  const round = (percent: number): number => Number(percent.toFixed(1));
  const most = bound ? {} : { most: round(Math.min(100, promised + entry.within + 2 * error)) };
  return {
    of: "coverage",
    work: `${entry.notebook}, ${entry.figure}: held by ${founders} founders' years, within two standard errors`,
    measured: `${heldPercent(entry).toFixed(1)} % of ${entry.asked}`,
    against: `promised ${promised.toFixed(1)} %; standard error ${error.toFixed(1)}`,
    figure: round(heldPercent(entry)),
    target: { least: round(promised - entry.within - 2 * error), ...most, unit: "%" },
  };
}
