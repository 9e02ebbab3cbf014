// A live page made from a demo log or any text, as a file in the browser, for the tests that change it.

import { createHash } from "node:crypto";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { liveFiles } from "../../lib/disk/live-build.ts";
import { type LogText, type Notebook, readLog } from "../../lib/index.ts";
import { writeLiveHtml } from "../../lib/page/live-html.ts";
import type { LiveKeep } from "../../lib/page/live-setup.ts";

const root = join(import.meta.dirname, "..", "..");
let bundled: ReturnType<typeof liveFiles> | undefined;

/** From the source as it is, bundled once for all tests of a worker. */
async function scripts(notebook: string) {
  bundled ??= liveFiles(root);
  const { texts } = await bundled;
  const packed = (name: string) => {
    const script = texts.get(`live/${name}.js`)!;
    return {
      packed: gzipSync(script).toString("base64"),
      hash: createHash("sha256").update(script).digest("base64"),
    };
  };
  return {
    boot: texts.get("live/boot.js")!,
    runtime: packed("base"),
    notebook: packed(`notebooks/${notebook}`),
  };
}

export async function livePage(
  name: string,
  texts: readonly LogText[],
  keep: LiveKeep = { kind: "copy" },
): Promise<string> {
  const path = pathToFileURL(join(root, "notebooks", `${name}.ts`)).href;
  const { default: notebook } = (await import(path)) as { readonly default: Notebook };
  const [log, ...csv] = texts;
  const files = Object.fromEntries(csv.map((file) => [file.name, file.text]));
  const { value, issues } = readLog(log!.text, { name: log!.name, files });
  const page = notebook.run(value!);
  return writeLiveHtml(
    { ...page, issues: [...issues, ...page.issues] },
    { setup: { texts, notebook: name, keep }, scripts: await scripts(name) },
  );
}
