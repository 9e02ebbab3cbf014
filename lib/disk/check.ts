// mullbook check: everything that is wrong with a log.

import { dirname, join } from "node:path";
import { hasError, type Issue, issueText, type Severity } from "../issue.ts";
import { inFileOrder } from "../log/issue-list.ts";
import { checkIssues } from "../log/page-issues.ts";
import type { Log } from "../log/types.ts";
import { shownUnits } from "../page/shown-units.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { type ReadLogFile, readLogFile } from "./read-log-file.ts";
import { isRefusal } from "./refusal.ts";

export async function check(path: string, console: Console): Promise<ExitCode> {
  const read = readLogFile(path);
  if (isRefusal(read)) return refuse(console, read);
  const issues = (await everyIssue(read)).map((issue) => placedFrom(path, issue));
  for (const issue of issues) console.result(issueText(issue));
  const sands = read.log?.sands ?? [];
  const sievings = sands.reduce((sum, sand) => sum + sand.sievings.length, 0);
  const batches = read.log?.batches.length ?? 0;
  const parts = [
    [sands.length, "sand", "sands"],
    [sievings, "sieving", "sievings"],
    [batches, "batch", "batches"],
    [read.log?.sheets.length ?? 0, "sheet", "sheets"],
    [read.log?.recipe ? 1 : 0, "recipe", "recipes"],
    [read.log?.events.length ?? 0, "event of the heap", "events of the heap"],
    [read.log?.measured.length ?? 0, "state of the heap", "states of the heap"],
    [read.log?.castings.length ?? 0, "casting", "castings"],
    [read.log?.mulling.length ?? 0, "mulling trial", "mulling trials"],
  ] as const;
  const holds = parts.flatMap(([count, one, more]) =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : more}`],
  );
  const notes = issues.every(({ severity }) => severity === "note");
  const seen = notes ? ["nothing wrong", ...(issues.length === 0 ? [] : [tally(issues)])] : [tally(issues)];
  // Every page names the fingerprint of the files that it was made from.
  const told = [seen.join(", "), ...(notes ? [holds.join(", ")] : []), ...fingerprintOf(read)];
  console.result(`${path}: ${told.join("; ")}.`);
  return hasError(issues) ? 1 : 0;
}

function fingerprintOf({ log }: ReadLogFile): string[] {
  return log ? [`fingerprint ${log.fingerprint}`] : [];
}

/** What reading the log brought up and what its pages complain of, in the order of the files. */
export async function everyIssue({ log, issues }: ReadLogFile): Promise<readonly Issue[]> {
  if (log === undefined) return issues;
  const all = [...issues, ...checkIssues(log), ...(await sheetIssues(log))];
  return inFileOrder(await inUnitsOf(log, all), log.file);
}

/** The list of all messages is loaded only for a log in US measures. */
async function inUnitsOf(log: Log, issues: readonly Issue[]): Promise<readonly Issue[]> {
  if (issues.length === 0 || (log.units ?? shownUnits(log).recipe) !== "US") return issues;
  return (await import("../page/issue-units.ts")).issuesInUnits(issues, log);
}

/** The reader of formulas is loaded only where a log has sheets. */
async function sheetIssues(log: Log): Promise<readonly Issue[]> {
  if (log.sheets.length === 0) return [];
  const { logSheets } = await import("../sheet/log-sheets.ts");
  return logSheets(log).flatMap(({ issues }) => issues);
}

/** Places as seen from where the call is made, so that a terminal or an editor can follow them. */
export function placedFrom(log: string, issue: Issue): Issue {
  if (!issue.place) return issue;
  return { ...issue, place: { ...issue.place, file: join(dirname(log), issue.place.file) } };
}

/** "2 errors, 1 warning" */
export function tally(issues: readonly Issue[]): string {
  const kinds: readonly Severity[] = ["error", "warning", "note"];
  return kinds
    .map((kind) => [kind, issues.filter(({ severity }) => severity === kind).length] as const)
    .filter(([, count]) => count > 0)
    .map(([kind, count]) => counted(count, kind))
    .join(", ");
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}
