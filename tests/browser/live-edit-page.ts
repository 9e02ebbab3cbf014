// A live page made from a demo log or any text, as a file in the browser, for the tests that change it.

import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { liveScripts } from "../../lib/disk/live-bundle.ts";
import { type LogText, type Notebook, readLog } from "../../lib/index.ts";
import { writeLiveHtml } from "../../lib/page/live-html.ts";
import type { LiveKeep } from "../../lib/page/live-setup.ts";
import { built } from "../cli/mullbook.ts";

const root = join(import.meta.dirname, "..", "..");

export async function livePage(
  name: string,
  texts: readonly LogText[],
  keep: LiveKeep = { kind: "copy" },
): Promise<string> {
  await built();
  const path = pathToFileURL(join(root, "notebooks", `${name}.ts`)).href;
  const { default: notebook } = (await import(path)) as { readonly default: Notebook };
  const [log, ...csv] = texts;
  const files = Object.fromEntries(csv.map((file) => [file.name, file.text]));
  const { value, issues } = readLog(log!.text, { name: log!.name, files });
  const page = notebook.run(value!);
  return writeLiveHtml(
    { ...page, issues: [...issues, ...page.issues] },
    { setup: { texts, notebook: name, keep }, scripts: liveScripts(name) },
  );
}
