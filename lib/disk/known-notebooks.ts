// The notebooks that come with the library.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Notebook } from "../page/notebook.ts";
import { packageFolder } from "./package-folder.ts";

const folder = join(packageFolder, "dist", "notebooks");

/** Their names, in alphabetical order: a notebook's file is called what the notebook is called. */
export function notebookNames(): string[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(".js"))
    .map((file) => file.slice(0, -3))
    .sort();
}

export async function notebookNamed(name: string): Promise<Notebook> {
  const module = (await import(pathToFileURL(join(folder, `${name}.js`)).href)) as {
    readonly default: Notebook;
  };
  return module.default;
}
