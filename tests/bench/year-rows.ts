// How often what is printed with a \u00b1 holds the truth, over simulated founders' years that are typed and read as logs.
// FOUNDERS=n, 60 unless given: a quick look, and its standard error says how quick. All of them: npm run honesty.

import { type Entry, errorAtEdge, heldPercent, promisedPercent } from "../honesty/ledger.ts";
import { foundersYears } from "../honesty/run.ts";
import type { Row } from "./row.ts";

const founders = Number(process.env.FOUNDERS ?? 60);

/** The parts that the target names: fineness, moisture with aims and chances, rebond and season. */
const years = ["sands", "moisture", "heap"] as const;

export function yearRows(): Row[] {
  return years.flatMap((part) => foundersYears(part, founders).entries().map(rowOf));
}

/**
 * Out only where three standard errors do not reach back to what is promised: among so many rows one in twenty would
 * be out of two by chance. "At least" is a lower bound of the ±, which may hold less: told, not judged.
 */
function rowOf(entry: Entry): Row {
  const promised = promisedPercent(entry);
  const [low, high] = [promised - entry.within, Math.min(99.9, promised + entry.within)];
  const [spare, above] = [3 * errorAtEdge(entry, low), 3 * errorAtEdge(entry, high)];
  const round = (percent: number): number => Number(percent.toFixed(1));
  const told = {
    work: `${entry.notebook}, ${entry.figure}: ${founders} founders' years`,
    measured: `${heldPercent(entry).toFixed(1)} % of ${entry.asked}`,
    against: `promised ${promised.toFixed(1)} %; three standard errors ${spare.toFixed(1)}`,
  };
  if (entry.figure.endsWith("at least")) return told;
  const target = {
    least: round(Math.max(0, low - spare)),
    most: round(Math.min(100, high + above)),
    unit: "%",
  };
  return { ...told, of: "coverage", figure: round(heldPercent(entry)), target };
}
