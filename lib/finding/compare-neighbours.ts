// Many sands: sorted by fineness, each is held against the one before it.

import { onceFor } from "../quantity/once-for.ts";
import { neighboursNotToldApart } from "./compare-messages.ts";
import { compareSands, type SandComparison } from "./compare-sands.ts";
import type { Finding } from "./finding.ts";
import type { SandReport } from "./sand-report.ts";

/**
 * From five sands on a table tells more than a sentence for each.
 * @example manySands(sandReports(log)) // false
 */
export function manySands(reports: readonly SandReport[]): boolean {
  return reports.length > 4;
}

/**
 * Coarse to fine, those without a fineness number last.
 * @example byFineness(sandReports(log)).map(({ sand }) => sand.name)
 */
export function byFineness(reports: readonly SandReport[]): readonly SandReport[] {
  const without = ({ printed, trusted }: SandReport): number => (printed && trusted ? 0 : 1);
  return [...reports].sort(
    (a, b) => without(a) - without(b) || a.fineness.figure.value - b.fineness.figure.value,
  );
}

/**
 * Each sand that has a number against the next coarser one, by the finer sand's name.
 * @example neighbours(sandReports(log)).size
 */
export function neighbours(reports: readonly SandReport[]): ReadonlyMap<string, SandComparison> {
  return compared(reports);
}

/** The answer, the table and the findings ask for them. */
const compared = onceFor((reports: readonly SandReport[]): ReadonlyMap<string, SandComparison> => {
  const sorted = byFineness(reports);
  return new Map(
    sorted.flatMap((report, k): [string, SandComparison][] => {
      const found = k > 0 ? compareSands(sorted[k - 1]!, report) : undefined;
      return found ? [[report.sand.name, found]] : [];
    }),
  );
});

/**
 * Which neighbours the sievings do not tell apart; none where they part all of them.
 * @example neighbourFindings(sandReports(log)).length
 */
export function neighbourFindings(reports: readonly SandReport[]): readonly Finding[] {
  const all = [...neighbours(reports).values()];
  const alike = all.filter(({ difference: { low, high } }) => low <= 0 && high >= 0);
  if (alike.length === 0) return [];
  const pairs = alike.map(({ first, second }) => `${first.sand.name} and ${second.sand.name}`);
  return [neighboursNotToldApart(pairs, String(all.length))];
}
