// The log that a set of texts makes, with everything that reading it brings up.

import type { Issue } from "../issue.ts";
import { inFileOrder } from "../log/issue-list.ts";
import { checkIssues } from "../log/page-issues.ts";
import { logReader } from "../log/read-log.ts";
import type { Log, LogText } from "../log/types.ts";
import { logSheets } from "../sheet/log-sheets.ts";

export interface ReadTexts {
  readonly log: Log | undefined;
  /** What the reader alone says: what a written page shows beside its own. */
  readonly readIssues: readonly Issue[];
}

/** Remembers the last log alone: of an edit only what changed is read. */
const readLog = logReader();

/** texts: the log first, then the CSV files beside it. */
export function readTexts([log, ...beside]: readonly LogText[]): ReadTexts {
  const files = Object.fromEntries(beside.map(({ name, text }) => [name, text]));
  const { value, issues } = readLog(log?.text ?? "", { name: log?.name ?? "", files });
  return { log: value, readIssues: issues };
}

/** All that a check of the log tells, in the order of its files. */
export function checkedIssues({ log, readIssues }: ReadTexts): readonly Issue[] {
  if (log === undefined) return readIssues;
  const sheets = log.sheets.length === 0 ? [] : logSheets(log).flatMap(({ issues }) => issues);
  return inFileOrder([...readIssues, ...checkIssues(log), ...sheets], log.file);
}
