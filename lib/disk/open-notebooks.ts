// The notebooks that an opened log is shown with.

import { nearest } from "../numbers/nearest.ts";
import type { LiveScripts } from "../page/live-html.ts";
import type { Notebook } from "../page/notebook.ts";
import { shellWord } from "./called.ts";
import { isScript } from "./is-script.ts";
import { notebookNamed, notebookNames } from "./known-notebooks.ts";
import { liveScripts, ownLiveScripts } from "./live-bundle.ts";
import { isRefusal, type Refusal } from "./refusal.ts";

export interface Opened {
  readonly notebooks: readonly Notebook[];
  /** The one that was asked for. */
  readonly asked?: Notebook;
  /** What makes a page live; undefined where it can only be read. */
  scriptsOf(notebook: Notebook): LiveScripts | undefined;
  /** Why the founder's own notebook can only be read. */
  readonly readOnly?: Refusal;
  /** In words, why a notebook threw. */
  failed(notebook: Notebook, error: unknown): Refusal;
}

/** All that come with the library; a founder's own is put before them and takes the place of one of its name. */
export async function notebooksToOpen(word: string, log: string): Promise<Opened | Refusal> {
  const names = notebookNames();
  if (isScript(word)) return withOwn(word, names);
  if (word !== "" && !names.includes(word)) return unknown(word, log, names);
  const notebooks = await Promise.all(names.map(notebookNamed));
  const asked = notebooks.find(({ name }) => name === word);
  return {
    notebooks,
    ...(asked ? { asked } : {}),
    scriptsOf: ({ name }) => liveScripts(name),
    failed: (_, error) => ours(error),
  };
}

async function withOwn(path: string, names: readonly string[]): Promise<Opened | Refusal> {
  const own = await (await import("./own-notebook.ts")).ownNotebook(path);
  if (isRefusal(own)) return own;
  const { scriptRefusal } = await import("./script-fault.ts");
  const others = await Promise.all(names.filter((name) => name !== own.name).map(notebookNamed));
  const scripts = await ownLiveScripts(path);
  const readOnly = isRefusal(scripts) ? scripts : undefined;
  const ownScripts = isRefusal(scripts) ? undefined : scripts;
  return {
    notebooks: [own, ...others],
    asked: own,
    scriptsOf: (notebook) => (notebook === own ? ownScripts : liveScripts(notebook.name)),
    ...(readOnly ? { readOnly } : {}),
    failed: (notebook, error) => (notebook === own ? scriptRefusal(error, path) : ours(error)),
  };
}

function ours(error: unknown): Refusal {
  const what = error instanceof Error ? error.message : String(error);
  return {
    refused: `This should not have happened (${what}).`,
    remedy: "Please report it, with the log if you can.",
  };
}

function unknown(word: string, log: string, names: readonly string[]): Refusal {
  if (/\.(ya?ml|csv|txt)$/i.test(word)) {
    return {
      refused: `"${word}" stands where the notebook belongs.`,
      remedy: `The log comes first, then the notebook: mullbook open ${shellWord(word)}${names.includes(log) ? ` ${log}` : ""}`,
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
