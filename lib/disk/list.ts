// mullbook list: the notebooks, one line each.

import type { Console, ExitCode } from "./console.ts";
import { notebookNamed, notebookNames } from "./known-notebooks.ts";

export async function list(console: Console): Promise<ExitCode> {
  const notebooks = await Promise.all(notebookNames().map(notebookNamed));
  const width = Math.max(...notebooks.map(({ name }) => name.length));
  for (const { name, title, question } of notebooks)
    console.result(`${name.padEnd(width)}   ${question ?? title}`);
  return 0;
}
