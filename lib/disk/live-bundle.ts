// The scripts that a live page carries, packed.

import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { toBase91 } from "../live/base91.ts";
import type { LiveScripts, PackedScript } from "../page/live-html.ts";
import { ownNotebookScript } from "./live-script.ts";
import { packageFolder } from "./package-folder.ts";
import type { Refusal } from "./refusal.ts";

const folder = join(packageFolder, "dist", "live");
const kept = new Map<string, PackedScript>();

/** For one of our own notebooks, by its name. */
export function liveScripts(name: string): LiveScripts {
  return { boot: text("boot"), runtime: ours("base"), notebook: ours(`notebooks/${name}`) };
}

/** For a founder's script: bundled now, with what it imports of its own. */
export async function ownLiveScripts(path: string): Promise<LiveScripts | Refusal> {
  try {
    const { text: notebook } = await ownNotebookScript(resolve(path), resolve("."));
    return {
      boot: text("boot"),
      runtime: ours(makesSpecs(notebook) ? "whole" : "plain"),
      notebook: packed(notebook),
    };
  } catch (error) {
    const [first] = (error as { readonly errors?: readonly BundleFault[] }).errors ?? [];
    if (!first) throw error;
    const { location } = first;
    const place = location ? `${location.file}:${location.line}:${location.column + 1}` : path;
    return {
      refused: `${place}: ${first.text}.`,
      remedy:
        'A notebook for a live page imports "mullbook", files of its own, and packages that need no disk.',
    };
  }
}

/**
 * A chart has to have a property called so: a script that never says it makes none of its own, and gets all of its charts
 * from the library's functions, which draw without Vega. In a comment that was kept or a text it says it as well, which
 * costs the page its size alone.
 */
const makesSpecs = (notebook: string): boolean => /\bspec\b/.test(notebook);

interface BundleFault {
  readonly text: string;
  readonly location: { readonly file: string; readonly line: number; readonly column: number } | null;
}

function text(name: string): string {
  return readFileSync(join(folder, `${name}.js`), "utf8");
}

function ours(name: string): PackedScript {
  const script = kept.get(name) ?? packed(text(name));
  kept.set(name, script);
  return script;
}

function packed(script: string): PackedScript {
  return {
    packed: toBase91(gzipSync(script, { level: 9, memLevel: 9 })),
    hash: createHash("sha256").update(script).digest("base64"),
  };
}
