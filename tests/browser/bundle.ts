// Bundles a file for a browser, as a script that keeps its exports under a global name.

import { join } from "node:path";
import { build, type Metafile } from "esbuild";

const root = join(import.meta.dirname, "..", "..");
export const globalName = "bundled";

export interface Bundle {
  readonly script: string;
  readonly metafile: Metafile;
}

/** file: from the project's root. The drawing library is left out: it is loaded when a chart is drawn. */
export async function bundle(file: string): Promise<Bundle> {
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: [file],
    bundle: true,
    format: "iife",
    globalName,
    platform: "browser",
    external: ["vega", "vega-lite"],
    target: "es2023",
    minify: true,
    write: false,
    metafile: true,
    logLevel: "silent",
  });
  return { script: outputFiles[0]!.text, metafile };
}
