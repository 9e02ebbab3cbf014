// mullbook demo: every notebook from the invented logs in the folder of its name.

import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { notebookNamed, notebookNames } from "./known-notebooks.ts";
import { packageFolder } from "./package-folder.ts";
import { readLogFile } from "./read-log-file.ts";
import { isRefusal } from "./refusal.ts";
import { writePage } from "./write-page.ts";

/** Faults in the invented logs are part of the show: the exit code is 0 once the pages are written. */
export async function demo({ to = "." }: { readonly to?: string }, console: Console): Promise<ExitCode> {
  const folder = join(packageFolder, "data-demo");
  for (const name of notebookNames()) {
    const notebook = await notebookNamed(name);
    for (const file of logsFor(join(folder, name))) {
      const path = join(folder, name, file);
      const read = readLogFile(path);
      if (isRefusal(read)) return refuse(console, read);
      const { log } = read;
      if (log === undefined) continue;
      console.progress(`${notebook.title}: ${file} ...`);
      const written = await writePage({ notebook, path, read: { ...read, log }, to, as: "html" });
      console.progress("");
      if (isRefusal(written)) return refuse(console, written);
      for (const page of written.paths) console.result(page);
    }
  }
  console.say("Open a page in a browser. Its founder, sands and figures are invented.");
  console.say(`The logs that it was made from are in ${folder}; next: mullbook begin my-sands.yaml`);
  return 0;
}

function logsFor(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((file) => file.endsWith(".yaml"))
    .sort();
}
