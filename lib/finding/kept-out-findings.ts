// What a trial says of the batches that its log leaves out: why, and what the aim would be with them.

import type { Phrase } from "../phrase.ts";
import { printNumber } from "../quantity/print.ts";
import type { KeptOut } from "../trial/kept-out.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import * as say from "./kept-out-messages.ts";
import { axisInWords, axisPlaces, placeText } from "./trial-axis.ts";

/** Each more would be worked out alone, a whole trial each time. */
const mostAlone = 3;

/** One for each batch with what the aim would be with it alone put back; one for all of them where there are many. */
export function keptOutFindings(report: TrialReport): readonly Finding[] {
  const { keptOut } = report;
  if (keptOut.length === 0) return [];
  const groups = keptOut.length <= mostAlone ? keptOut.map((one) => [one]) : [keptOut];
  return groups.map((group) => {
    const names = group.map(({ row }) => row.batch.name);
    const many = names.length > 1;
    return say.keptOut(listed(names), many, reasons(group), withThem(report, names, many));
  });
}

/**
 * "This is without W3, left out by the log: the tube was wet."; undefined where the log leaves none out.
 * @example keptOutAnswer({ keptOut: [] }) === undefined // true
 */
export function keptOutAnswer({ keptOut }: Pick<TrialReport, "keptOut">): Phrase | undefined {
  if (keptOut.length === 0) return undefined;
  return say.answeredWithout(listed(keptOut.map(({ row }) => row.batch.name)), reasons(keptOut));
}

/** Each reason once; the sentence has its own full stop. */
function reasons(of: readonly KeptOut[]): string {
  return [...new Set(of.map(({ why }) => why.replace(/[\s.]+$/, "")))].join("; ");
}

function withThem(report: TrialReport, names: readonly string[], many: boolean): Phrase {
  const counted = report.counting(names);
  const unit = axisInWords(report);
  const [then, now] = [aimText(counted), aimText(report)];
  if (then !== undefined && now !== undefined) return say.aimOtherwise(many, then, now, unit);
  if (then !== undefined) return say.aimOnlyWith(many, then, unit);
  return now === undefined ? say.aimNeither(many) : say.aimOnlyWithout(many);
}

/** The aim as its own report prints it; one at an end of what was tried has no interval. */
function aimText(report: TrialReport): string | undefined {
  const { result } = report;
  if (!result?.window) return undefined;
  const { aim } = result;
  if (!aim.open.low && !aim.open.high) return placeText(aim, report, report.atLeast);
  return `about ${printNumber(aim.x, axisPlaces(report))}`;
}
