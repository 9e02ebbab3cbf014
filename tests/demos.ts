// The demo logs with the CSV files that they name, and their notebooks.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { filesNamedIn, type Notebook, readLog } from "../lib/index.ts";

const root = join(import.meta.dirname, "..");

/** Notebook and file. */
export const demos: readonly (readonly [string, string])[] = readdirSync(join(root, "notebooks"))
  .map((file) => file.replace(".ts", ""))
  .filter((name) => existsSync(join(root, "data-demo", name)))
  .flatMap((name) =>
    readdirSync(join(root, "data-demo", name))
      .filter((file) => file.endsWith(".yaml"))
      .map((file) => [name, file] as const),
  );

export async function notebookOf(name: string): Promise<Notebook> {
  return ((await import(`../notebooks/${name}.ts`)) as { default: Notebook }).default;
}

/** The log as it stands, or with its text changed before it is read. */
export function readDemo(name: string, file: string, change = (text: string): string => text) {
  const read = (one: string): string => readFileSync(join(root, "data-demo", name, one), "utf8");
  const text = change(read(file));
  const files = Object.fromEntries(filesNamedIn(text).map((one) => [one, read(one)]));
  return readLog(text, { name: file, files });
}
