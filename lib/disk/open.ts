// mullbook open: the pages of a log on this machine, saved into the log itself.

import { basename } from "node:path";
import { issueText } from "../issue.ts";
import type { Notebook } from "../page/notebook.ts";
import { placedFrom } from "./check.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { isScript } from "./is-script.ts";
import { filesAt, withLinked } from "./open-files.ts";
import { notebooksToOpen } from "./open-notebooks.ts";
import { siteOf } from "./open-site.ts";
import { isRefusal, type Refusal } from "./refusal.ts";
import { beforeName } from "./save-replace.ts";
import { serve } from "./serve.ts";
import { watchFiles } from "./watch.ts";

/** Runs until it is told to stop. Opens no browser: the address is printed, for whoever may see this terminal. */
export async function open(path: string, word: string, console: Console): Promise<ExitCode> {
  const opened = await notebooksToOpen(word, path);
  if (isRefusal(opened)) return refuse(console, opened);
  const files = filesAt(path);
  if (isRefusal(files)) return refuse(console, files);
  if (files.log === undefined) {
    for (const issue of files.issues) console.say(issueText(placedFrom(path, issue)));
    console.say(`Nothing is opened: ${path} cannot be read as a log.`);
    return 1;
  }
  const stop = stopSignal();
  let root = "";
  const scriptFault = isScript(word) ? (await import("./script-fault.ts")).scriptRefusal : undefined;
  const failed = (notebook: Notebook, error: unknown): Refusal => {
    if (scriptFault && notebook === opened.asked) return scriptFault(error, word);
    const what = error instanceof Error ? error.message : String(error);
    return {
      refused: `This should not have happened (${what}).`,
      remedy: "Please report it, with the log if you can.",
    };
  };
  const site = siteOf({ path, files, notebooks: opened.notebooks, root: () => root, failed });
  const server = await serve(site.handle, { onFault: (error) => console.say(`A page failed: ${error}`) });
  root = server.root;
  const watcher = watchFiles(() => withLinked(site.paths()), site.lookAgain);
  console.result(`${server.address}${opened.asked ? `pages/${opened.asked.name}` : ""}`);
  const name = basename(path);
  console.say(
    `Open this address in a browser on this machine; who has it can read and change ${name}, so keep it to yourself.`,
  );
  console.say(
    `A save goes into ${name}, and the version before it stays as ${beforeName(name)}. Ctrl+C stops it.`,
  );
  await stop;
  watcher.close();
  site.close();
  await server.close();
  return 0;
}

/** The first signal stops in good order; a second one at once. */
function stopSignal(): Promise<void> {
  const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;
  return new Promise((resolve) => {
    const stop = () => {
      for (const signal of signals) process.off(signal, stop);
      resolve();
    };
    for (const signal of signals) process.on(signal, stop);
  });
}
