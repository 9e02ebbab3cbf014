// The notebooks that an opened log is shown with.

import { nearest } from "../numbers/nearest.ts";
import type { Notebook } from "../page/notebook.ts";
import { shellWord } from "./called.ts";
import { isScript } from "./is-script.ts";
import { notebookNamed, notebookNames } from "./known-notebooks.ts";
import { isRefusal, type Refusal } from "./refusal.ts";

export interface Opened {
  readonly notebooks: readonly Notebook[];
  /** The one that was asked for. */
  readonly asked?: Notebook;
}

/** All that come with the library; a founder's own is put before them and takes the place of one of its name. */
export async function notebooksToOpen(word: string, log: string): Promise<Opened | Refusal> {
  const names = notebookNames();
  if (isScript(word)) {
    const own = await (await import("./own-notebook.ts")).ownNotebook(word);
    if (isRefusal(own)) return own;
    const others = await Promise.all(names.filter((name) => name !== own.name).map(notebookNamed));
    return { notebooks: [own, ...others], asked: own };
  }
  if (word !== "" && !names.includes(word)) return unknown(word, log, names);
  const notebooks = await Promise.all(names.map(notebookNamed));
  const asked = notebooks.find(({ name }) => name === word);
  return { notebooks, ...(asked ? { asked } : {}) };
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
