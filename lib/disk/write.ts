// mullbook write: a page from a notebook and a log.

import { hasError, type Issue, issueText } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import type { LiveScripts } from "../page/live-html.ts";
import type { Notebook } from "../page/notebook.ts";
import { shellWord } from "./called.ts";
import { everyIssue, placedFrom, tally } from "./check.ts";
import type { Format } from "./commands.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { isScript } from "./is-script.ts";
import { notebookNamed, notebookNames } from "./known-notebooks.ts";
import { type ReadLogFile, readLogFile } from "./read-log-file.ts";
import { isRefusal, type Refusal } from "./refusal.ts";
import { writePage } from "./write-page.ts";

export interface WriteOptions {
  readonly to?: string;
  readonly as?: Format;
  readonly live?: true;
}

export async function write(
  word: string,
  path: string,
  { to = ".", as = "html", live }: WriteOptions,
  console: Console,
): Promise<ExitCode> {
  if (live && as !== "html") {
    return refuse(console, {
      refused: `--live makes an HTML page, and --as ${as} asks for something else.`,
      remedy: "Leave one of them out.",
    });
  }
  const script = isScript(word);
  const notebook = await notebookFor(word, path, script);
  if (isRefusal(notebook)) return refuse(console, notebook);
  const read = readLogFile(path);
  if (isRefusal(read)) return refuse(console, read);
  const { log } = read;
  if (log === undefined) {
    await sayIssues(console, path, read, []);
    console.say(`No page is written: ${path} cannot be read as a log.`);
    return 1;
  }
  const scripts = live ? await scriptsFor(word, script) : undefined;
  if (scripts && isRefusal(scripts)) return refuse(console, scripts);
  console.progress(`Writing ${notebook.title} ...`);
  const written = await writePage({
    notebook,
    path,
    read: { ...read, log },
    to,
    as,
    ...(scripts ? { live: scripts } : {}),
  }).catch(async (error) => {
    if (!script) throw error;
    return (await import("./script-fault.ts")).scriptRefusal(error, word);
  });
  console.progress("");
  if (isRefusal(written)) return refuse(console, written);
  const issues = await sayIssues(console, path, read, written.issues);
  for (const file of written.paths) console.result(file);
  return hasError(issues) ? 1 : 0;
}

async function scriptsFor(word: string, script: boolean): Promise<LiveScripts | Refusal> {
  const { liveScripts, ownLiveScripts } = await import("./live-bundle.ts");
  return script ? ownLiveScripts(word) : liveScripts(word);
}

async function notebookFor(word: string, second: string, script: boolean): Promise<Notebook | Refusal> {
  if (script) return (await import("./own-notebook.ts")).ownNotebook(word);
  const names = notebookNames();
  if (names.includes(word)) return notebookNamed(word);
  if (/\.(ya?ml|csv|txt)$/i.test(word)) {
    return {
      refused: `"${word}" stands where the notebook belongs.`,
      remedy: `The notebook comes first, then the log: mullbook write ${names.includes(second) ? second : names[0]} ${shellWord(word)}`,
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

/**
 * Errors in full, and whatever only this page complains of, since "check" cannot tell it; the rest by number.
 * Returns all of them.
 */
async function sayIssues(
  console: Console,
  path: string,
  read: ReadLogFile,
  ofPage: readonly Issue[],
): Promise<readonly Issue[]> {
  const checked = await everyIssue(read);
  const key = ({ code, message, place }: Issue) =>
    JSON.stringify([code, message, place?.file, place?.offset]);
  const known = new Set(checked.map(key));
  const only = ofPage.filter((issue) => !known.has(key(issue)));
  const say = (issue: Issue) => console.say(issueText(placedFrom(path, issue)));
  for (const issue of checked.filter(({ severity }) => severity === "error")) say(issue);
  for (const issue of only) say(issue);
  if (checked.length > 0) {
    console.say(`${path}: ${tally(checked)}; all of them with: mullbook check ${shellWord(path)}`);
  }
  return [...checked, ...only];
}
