// Same sand or another? Two sands against each other, with what they share cancelled.

import type { Phrase } from "../phrase.ts";
import { combine } from "../quantity/combine.ts";
import type { Figure } from "../quantity/figure.ts";
import { type PrintedFigure, printFigure } from "../quantity/print.ts";
import type { MissingDoubt } from "../sand/fineness-figure.ts";
import { sameSieve } from "../sand/same-sieve.ts";
import * as say from "./compare-messages.ts";
import type { Finding } from "./finding.ts";
import type { SandReport } from "./sand-report.ts";

export interface SandComparison {
  readonly first: SandReport;
  readonly second: SandReport;
  /** Second less first: above 0 where the second is finer. */
  readonly difference: Figure;
  readonly printed: PrintedFigure;
  readonly missing: readonly MissingDoubt[];
  /** Where the two curves lie furthest apart, on an opening that both stacks have. */
  readonly widest:
    | { readonly label: string; readonly firstPercent: number; readonly secondPercent: number }
    | undefined;
  readonly finding: Finding;
}

/**
 * Undefined where either has no figure to compare.
 * @example
 * const [first, second] = sandReports(log);
 * compareSands(first!, second!)?.finding.text
 */
export function compareSands(first: SandReport, second: SandReport): SandComparison | undefined {
  if (!first.printed || !second.printed || !first.trusted || !second.trusted) return undefined;
  const difference = combine((v) => v[1]! - v[0]!, [first.fineness.figure, second.fineness.figure], {
    as: "second less first",
  });
  const missing = [...new Set([...first.fineness.missing, ...second.fineness.missing])];
  const { value, low, high } = difference;
  const printed = printFigure({ value, low, high, atLeast: missing.length > 0 });
  const widest = widestApart(first, second);
  const finding = judge(first, second, difference, missing, furthest(first, second, widest));
  return { first, second, difference, printed, missing, widest, finding };
}

function judge(
  first: SandReport,
  second: SandReport,
  difference: Figure,
  missing: readonly MissingDoubt[],
  apart: readonly Phrase[],
): Finding {
  const { value, low, high } = difference;
  const [a, b] = [first.sand.name, second.sand.name];
  const size = printFigure({
    value: Math.abs(value),
    low: value < 0 ? -high : low,
    high: value < 0 ? -low : high,
    atLeast: missing.length > 0,
  }).text;
  if (low <= 0 && high >= 0) {
    return say.notToldApart(a, b, size, Math.max(Math.abs(low), Math.abs(high)).toFixed(1), apart);
  }
  const finer = value > 0 ? b : a;
  const other = value > 0 ? a : b;
  if (missing.includes("repeats") || missing.includes("grabs"))
    return say.apartButUnrepeated([{ finer, other, size, widest: apart }]);
  return say.another([{ finer, other, size, widest: apart }]);
}

function furthest(
  { sand: one }: SandReport,
  { sand: other }: SandReport,
  widest: SandComparison["widest"],
): readonly Phrase[] {
  if (!widest) return [];
  const { label, firstPercent, secondPercent } = widest;
  const places = firstPercent.toFixed(0) === secondPercent.toFixed(0) ? 1 : 0;
  const [of, ofOther] = [firstPercent.toFixed(places), secondPercent.toFixed(places)];
  return [say.furthestApart(label, one.name, of, other.name, ofOther)];
}

function widestApart({ curve: a }: SandReport, { curve: b }: SandReport): SandComparison["widest"] {
  let found: SandComparison["widest"];
  for (const point of a.points) {
    const twin = b.points.find(({ openingMm }) => sameSieve(openingMm, point.openingMm));
    if (!twin) continue;
    const gap = Math.abs(point.passingPercent - twin.passingPercent);
    if (found && Math.abs(found.firstPercent - found.secondPercent) >= gap) continue;
    found = { label: point.label, firstPercent: point.passingPercent, secondPercent: twin.passingPercent };
  }
  return found;
}
