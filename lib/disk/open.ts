// mullbook open: the pages of a log on this machine, saved into the log itself.

import { basename } from "node:path";
import { issueText } from "../issue.ts";
import { placedFrom } from "./check.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { filesAt, withLinked } from "./open-files.ts";
import { notebooksToOpen } from "./open-notebooks.ts";
import { pageAddress, siteOf } from "./open-site.ts";
import { isRefusal } from "./refusal.ts";
import { beforeName } from "./save-replace.ts";
import { serve } from "./serve.ts";
import { portOf } from "./serve-port.ts";
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
  const { notebooks, asked, scriptsOf, failed, readOnly } = opened;
  if (readOnly) {
    console.say(`${readOnly.refused} So the page of ${word} can be read here and not be changed.`);
    if (readOnly.remedy) console.say(`    ${readOnly.remedy}`);
  }
  const site = siteOf({ path, files, notebooks, root: () => root, failed, scriptsOf });
  const server = await serve(site.handle, {
    port: portOf(path),
    onFault: (error) => console.say(`A page failed: ${error}`),
  });
  root = server.root;
  site.prepare();
  const watcher = watchFiles(() => withLinked(site.paths()), site.lookAgain);
  console.result(`${server.address}${asked ? pageAddress(asked.name) : ""}`);
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
