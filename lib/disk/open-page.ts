// One notebook's page of an opened log.

import type { Issue } from "../issue.ts";
import type { Log } from "../log/types.ts";
import type { Page } from "../page/blocks.ts";
import { writeHtml } from "../page/html.ts";
import type { Notebook } from "../page/notebook.ts";

export interface PageToOpen {
  readonly notebook: Notebook;
  readonly log: Log;
  readonly issues: readonly Issue[];
}

export async function openedPage({ notebook, log, issues }: PageToOpen): Promise<string> {
  const page = notebook.run(log);
  return writeHtml({ ...page, issues: [...issues, ...page.issues] });
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
