// A founder's own notebook: a script in any folder, in TypeScript or JavaScript.

import { statSync } from "node:fs";
import * as module from "node:module";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Notebook } from "../page/notebook.ts";
import { EXAMPLE_NOTEBOOK } from "./example-notebook.ts";
import { packageFolder } from "./package-folder.ts";
import { fileRefusal, type Refusal } from "./refusal.ts";
import { scriptRefusal } from "./script-fault.ts";
import { DOOR_HOOK, MODULES_HOOK } from "./script-hooks.ts";

/**
 * Runs the script and takes the notebook that it exports by default. `import … from "mullbook"` finds this very
 * library from any folder, installed there or not, so that script and command line are of one version.
 */
export async function ownNotebook(path: string): Promise<Notebook | Refusal> {
  try {
    if (!statSync(path).isFile())
      return { refused: `${path} is a folder, not a script.`, remedy: "Name the file in it." };
  } catch (error) {
    return fileRefusal(error, path, "read");
  }
  // Without it lines are those of what tsx makes of the script.
  process.setSourceMapsEnabled(true);
  const { register } = await import("tsx/esm/api");
  // The hook that is registered last is asked first.
  module.register(MODULES_HOOK);
  const scripts = register({ namespace: "own-notebook" });
  module.register(DOOR_HOOK, { data: pathToFileURL(join(packageFolder, "dist", "index.js")).href });
  try {
    const url = pathToFileURL(resolve(path)).href;
    const exported = notebookIn(await scripts.import(url, import.meta.url));
    return exported ?? noNotebook(path);
  } catch (error) {
    return scriptRefusal(error, path);
  }
}

/** A script that is no module comes with its default wrapped once more. */
function notebookIn(exports: unknown): Notebook | undefined {
  let value = exports;
  for (let depth = 0; depth < 3 && typeof value === "object" && value !== null; depth++) {
    if ("run" in value && "title" in value && typeof value.run === "function") return value as Notebook;
    value = (value as { readonly default?: unknown }).default;
  }
  return undefined;
}

function noNotebook(path: string): Refusal {
  return {
    refused: `${path} runs, but exports no notebook by default.`,
    remedy: `A notebook of your own looks like this:\n\n${EXAMPLE_NOTEBOOK}`,
  };
}
