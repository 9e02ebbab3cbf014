// mullbook write: a page from a notebook and a log.

import { hasError, type Issue, issueText } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import type { Notebook } from "../page/notebook.ts";
import { placedFrom, tally } from "./check.ts";
import type { Format } from "./commands.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { isScript } from "./is-script.ts";
import { notebookNamed, notebookNames } from "./known-notebooks.ts";
import { readLogFile } from "./read-log-file.ts";
import { isRefusal, type Refusal } from "./refusal.ts";
import { writePage } from "./write-page.ts";

export interface WriteOptions {
  readonly to?: string;
  readonly as?: Format;
}

export async function write(
  word: string,
  path: string,
  { to = ".", as = "html" }: WriteOptions,
  console: Console,
): Promise<ExitCode> {
  const script = isScript(word);
  const notebook = await notebookFor(word, script);
  if (isRefusal(notebook)) return refuse(console, notebook);
  const read = readLogFile(path);
  if (isRefusal(read)) return refuse(console, read);
  const { log } = read;
  if (log === undefined) {
    sayErrors(console, path, read.issues);
    console.say(`No page is written: ${path} cannot be read as a log.`);
    return 1;
  }
  console.progress(`Writing ${notebook.title} ...`);
  const written = await writePage({ notebook, path, read: { ...read, log }, to, as }).catch(async (error) => {
    if (!script) throw error;
    return (await import("./script-fault.ts")).scriptRefusal(error, word);
  });
  console.progress("");
  if (isRefusal(written)) return refuse(console, written);
  sayErrors(console, path, written.issues);
  for (const file of written.paths) console.result(file);
  return hasError(written.issues) ? 1 : 0;
}

async function notebookFor(word: string, script: boolean): Promise<Notebook | Refusal> {
  if (script) return (await import("./own-notebook.ts")).ownNotebook(word);
  const names = notebookNames();
  if (names.includes(word)) return notebookNamed(word);
  if (/\.(ya?ml|csv|txt)$/i.test(word)) {
    return {
      refused: `"${word}" stands where the notebook belongs.`,
      remedy: `The notebook comes first, then the log: mullbook write ${names[0]} ${word}`,
    };
  }
  const near = nearest(word, names);
  return {
    refused: `There is no notebook "${word}".`,
    remedy:
      near === undefined
        ? `There are: ${names.join(", ")}. One of your own ends in .ts, .js or .mjs.`
        : `Did you mean: ${near}`,
  };
}

/** Errors in full, the rest by number: the page and "check" tell all. */
function sayErrors(console: Console, path: string, issues: readonly Issue[]): void {
  if (issues.length === 0) return;
  for (const issue of issues) {
    if (issue.severity === "error") console.say(issueText(placedFrom(path, issue)));
  }
  console.say(`${path}: ${tally(issues)}; all of them with: mullbook check ${path}`);
}
