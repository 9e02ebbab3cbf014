// The door to esbuild: with the development tools, or as tsx brings it along.

import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

export type { BuildOptions, Metafile, Plugin } from "esbuild";

/** Looked for from where tsx lies: a package manager may keep what tsx needs out of everybody else's sight. */
export async function bundler(): Promise<typeof import("esbuild")> {
  const beside = createRequire(createRequire(import.meta.url).resolve("tsx/package.json"));
  const found = await import(pathToFileURL(beside.resolve("esbuild")).href);
  return found.default ?? found;
}
