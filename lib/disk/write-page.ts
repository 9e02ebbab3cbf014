// One notebook, one log, one page on the disk.

import { existsSync } from "node:fs";
import { basename, extname } from "node:path";
import type { Issue } from "../issue.ts";
import type { Log } from "../log/types.ts";
import type { Page } from "../page/blocks.ts";
import { pageStem } from "../page/file-name.ts";
import { issuesInUnits } from "../page/issue-units.ts";
import type { LiveScripts } from "../page/live-html.ts";
import type { Notebook } from "../page/notebook.ts";
import type { Format } from "./commands.ts";
import { pageFiles } from "./page-files.ts";
import type { ReadLogFile } from "./read-log-file.ts";
import type { Refusal } from "./refusal.ts";
import { type FileTexts, writeFiles } from "./write-files.ts";

export interface PageToWrite {
  readonly notebook: Notebook;
  /** Path of the log. */
  readonly path: string;
  readonly read: ReadLogFile & { readonly log: NonNullable<ReadLogFile["log"]> };
  readonly to: string;
  readonly as: Format;
  /** Packed scripts make it a page in which figures can be changed. */
  readonly live?: LiveScripts;
}

export interface WrittenPage {
  /** The page itself first, then what stands beside it. */
  readonly paths: readonly string[];
  /** What the page itself complains of. */
  readonly issues: readonly Issue[];
}

/** Named for the log and the notebook, "my-sands-grain-fineness.html", so that two logs never share a page. */
export async function writePage({
  notebook,
  path,
  read,
  to,
  as,
  live,
}: PageToWrite): Promise<WrittenPage | Refusal> {
  const page = notebook.run(read.log);
  const whole: Page = { ...page, issues: [...issuesInUnits(read.issues, read.log), ...page.issues] };
  const stem = `${pageStem(ownNameOf(path))}-${notebook.name}`;
  const files = live
    ? await livePageFile(whole, { stem, live, notebook, log: read.log })
    : await pageFiles(whole, as, stem);
  if (Object.keys(files).length === 0) {
    const what = as === "csv" ? "tables, so there is no CSV file" : "charts, so there is no spec";
    return { refused: `The page has no ${what} to write.`, remedy: "Try --as html." };
  }
  const written = writeFiles(to, files, read.paths);
  return "paths" in written ? { paths: written.paths, issues: page.issues } : written;
}

/** The log's name without .yaml; with its ending where two logs differ in nothing else, "sands.yaml" and "sands.yml". */
function ownNameOf(path: string): string {
  const name = basename(path);
  const ending = extname(name);
  if (!/^\.ya?ml$/i.test(ending)) return name;
  const bare = path.slice(0, -ending.length);
  const other = ending !== ".yaml" && existsSync(`${bare}.yaml`);
  return other ? name : name.slice(0, -ending.length);
}

interface LiveParts {
  readonly stem: string;
  readonly live: LiveScripts;
  readonly notebook: Notebook;
  readonly log: Log;
}

async function livePageFile(page: Page, { stem, live, notebook, log }: LiveParts): Promise<FileTexts> {
  const { writeLiveHtml } = await import("../page/live-html.ts");
  const setup = { texts: log.texts, notebook: notebook.name, keep: { kind: "copy" } } as const;
  return { [`${stem}-live.html`]: await writeLiveHtml(page, { setup, scripts: live }) };
}
