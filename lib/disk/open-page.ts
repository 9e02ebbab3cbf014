// One notebook's page of an opened log.

import type { Issue } from "../issue.ts";
import type { Log, LogText } from "../log/types.ts";
import type { Page } from "../page/blocks.ts";
import { writeHtml } from "../page/html.ts";
import { issuesInUnits } from "../page/issue-units.ts";
import { type LiveScripts, writeLiveHtml } from "../page/live-html.ts";
import type { LiveKeep } from "../page/live-setup.ts";
import type { Notebook } from "../page/notebook.ts";

export interface PageToOpen {
  readonly notebook: Notebook;
  readonly log: Log;
  readonly issues: readonly Issue[];
  readonly texts: readonly LogText[];
  readonly keep: LiveKeep;
  readonly scripts: LiveScripts | undefined;
}

/** Live; as written where there are no scripts to make it so. */
export async function openedPage(opened: PageToOpen): Promise<string> {
  const { notebook, log, issues, texts, keep, scripts } = opened;
  const page = notebook.run(log);
  const whole: Page = { ...page, issues: [...issuesInUnits(issues, log), ...page.issues] };
  if (!scripts) return writeHtml(whole);
  return writeLiveHtml(whole, { setup: { texts, notebook: notebook.name, keep }, scripts });
}

/** In place of a page that cannot be made: why, with the places in the files. */
export function noPage(title: string, says: readonly string[], issues: readonly Issue[]): Promise<string> {
  const page: Page = {
    title,
    question: "Why is there no page?",
    answer: says,
    sections: [],
    sources: [],
    colophon: [],
    issues,
    figures: {},
  };
  return writeHtml(page);
}
