// A log, right or wrong: it is answered, with complaints that can be found; what is accepted is edited, written, read again
// and gives the same page.

import { type Log, type Notebook, readLog } from "../../lib/index.ts";
import { hasError } from "../../lib/issue.ts";
import { checkedIssues, readTexts } from "../../lib/live/read-texts.ts";
import { claim, type Step } from "./claim.ts";
import { editHolds } from "./holds-edit.ts";
import { issuesHold } from "./holds-issues.ts";
import { pageHolds } from "./holds-page.ts";
import { hostile } from "./make-scalars.ts";
import type { Texts } from "./texts.ts";

/** What is done with every so manieth log; 0: with none. */
export interface Often {
  /** Read a second time. */
  readonly again: number;
  readonly edit: number;
  readonly page: number;
  /** Of the pages. */
  readonly drawn: number;
}

export interface Tally {
  logs: number;
  accepted: number;
  edits: number;
  pages: number;
}

export const noTally = (): Tally => ({ logs: 0, accepted: 0, edits: 0, pages: 0 });

export function logProperty(notebooks: readonly Notebook[], often: Often, tally: Tally) {
  return async (texts: Texts, step: Step): Promise<void> => {
    step("read");
    const read = readTexts(texts);
    step("check");
    const issues = checkedIssues(read);
    issuesHold(issues, texts);
    claim(read.log !== undefined || hasError(issues), "no log and no error");
    tally.logs++;
    // The same numbers for the same text, so that a case can be repeated and made smaller.
    const pick = numberOf(texts);
    const { log } = read;
    if (log && every(often.again, pick >>> 2)) againHolds(log, read.readIssues, texts, step);
    if (!hasError(issues)) tally.accepted++;
    if (every(often.edit, pick)) {
      step("edit");
      tally.edits++;
      editHolds(texts, pick >>> 8, hostile[(pick >>> 4) % hostile.length]!);
    }
    if (!log || !every(often.page, pick >>> 3)) return;
    const notebook = notebooks[(pick >>> 7) % notebooks.length]!;
    tally.pages++;
    const drawn = every(often.drawn, pick >>> 11);
    const json = await pageHolds(notebook, log, drawn, step);
    if (!drawn && !every(3, pick >>> 13)) return;
    step("page again");
    const again = readTexts(log.texts).log;
    claim(again, "a log's own texts are no log");
    const second = await pageHolds(notebook, again, false, step);
    claim(second === json, "a log written and read again gives another page");
  };
}

/** Read from what a page would hand on: the same log and the same complaints. */
function againHolds(log: Log, issues: readonly unknown[], texts: Texts, step: Step): void {
  step("read again");
  const [own, ...beside] = log.texts;
  claim(own!.text === texts[0]!.text, "a log's own text is another");
  const files = Object.fromEntries(beside.map(({ name, text }) => [name, text]));
  const { value, issues: second } = readLog(own!.text, { name: own!.name, files });
  // Names of files that lie beside the log and are in no use of it may be proposed.
  if (beside.length === texts.length - 1)
    claim(JSON.stringify(second) === JSON.stringify(issues), "read twice, the complaints are others");
  claim(JSON.stringify(value) === JSON.stringify(log), "read twice, the log is another");
}

const every = (count: number, pick: number): boolean => count > 0 && pick % count === 0;

/** FNV-1a over the texts. */
function numberOf(texts: Texts): number {
  let hash = 0x811c9dc5;
  for (const { text } of texts)
    for (let k = 0; k < text.length; k++) hash = Math.imul(hash ^ text.charCodeAt(k), 0x01000193);
  return hash >>> 0;
}
