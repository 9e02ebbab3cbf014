// One script for a live page, bundled.

import { type BuildOptions, bundler, type Metafile, type Plugin } from "./bundler.ts";

export interface Script {
  readonly text: string;
  readonly metafile: Metafile;
}

export interface ScriptToMake {
  /** Folder that the entry and the names in the metafile are of. */
  readonly root: string;
  readonly entry?: string;
  /** In place of a file. */
  readonly text?: string;
  /** Global name of what it exports. */
  readonly globalName?: string;
  readonly plugins?: readonly Plugin[];
}

const COMMON = {
  bundle: true,
  format: "iife",
  platform: "browser",
  target: "es2022",
  minify: true,
  legalComments: "none",
  charset: "ascii",
  write: false,
  metafile: true,
  logLevel: "silent",
} as const satisfies BuildOptions;

/** Throws esbuild's fault, with its places, where something cannot be read or found. */
export async function liveScript({ root, entry, text, globalName, plugins }: ScriptToMake): Promise<Script> {
  const { build } = await bundler();
  const { outputFiles, metafile } = await build({
    ...COMMON,
    absWorkingDir: root,
    ...(entry === undefined ? {} : { entryPoints: [entry] }),
    ...(text === undefined ? {} : { stdin: { contents: text, resolveDir: root, loader: "ts" } }),
    ...(globalName === undefined ? {} : { globalName }),
    plugins: [...(plugins ?? [])],
  });
  return { text: outputFiles[0]!.text, metafile };
}

/**
 * A founder's notebook as a script that leaves it in globalThis.mullbookNotebook.default. "mullbook" is the library
 * that the page has already; files of the founder's own are bundled with it. What is node's is refused: a page has no
 * disk.
 */
export async function ownNotebookScript(path: string, root: string): Promise<Script> {
  return liveScript({ root, entry: path, globalName: "mullbookNotebook", plugins: [fromDoor] });
}

const fromDoor: Plugin = {
  name: "from-door",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^mullbook$/ }, ({ path }) => ({ path, namespace: "door" }));
    onLoad({ filter: /.*/, namespace: "door" }, () => ({ contents: "module.exports = globalThis.mullbook" }));
    onResolve({ filter: NODE }, ({ path }) => ({
      errors: [{ text: `"${path}" is part of node; a live page has no disk, no network and no process` }],
    }));
  },
};
const NODE =
  /^(node:.*|(assert|buffer|child_process|crypto|dgram|dns|events|fs|http|https|net|os|path|process|stream|tls|url|util|worker_threads|zlib)(\/.*)?)$/;
