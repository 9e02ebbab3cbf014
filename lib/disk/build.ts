// Builds dist: the command line, the public door, the notebooks, their types and the licences of what is bundled.

import { chmodSync, mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join, relative } from "node:path";
import { buildTypes } from "./build-types.ts";
import { bundler, type Metafile } from "./bundler.ts";
import { thirdPartyLicences } from "./licences.ts";
import { liveFiles } from "./live-build.ts";
import { packageFolder as root } from "./package-folder.ts";
import { HASH_FILE, isBuilt, sourceHash } from "./source-hash.ts";

const dist = join(root, "dist");
const require = createRequire(import.meta.url);

// npm start asks so: an install without scripts has built nothing, and the source may have changed since.
if (process.argv.includes("--unless-built") && isBuilt(root)) {
  process.exitCode = 0;
} else if (missingTools().length > 0) {
  const what = `dist is not built: ${missingTools().join(", ")} not installed.`;
  console.error(`${what} For a build: npm ci (without --omit=dev).`);
  // An install without development tools has asked for no build and must not fail for it.
  process.exitCode = process.argv.includes("--if-possible") ? 0 : 1;
} else {
  process.exitCode = await build();
}

async function build(): Promise<number> {
  const started = Date.now();
  const hash = sourceHash(root);
  const { files, metafile } = await bundle();
  const live = await liveFiles(root);
  const licences = thirdPartyLicences(root, bundledInputs([metafile, ...live.metafiles]));
  const written = new Map([
    ...files,
    ...[...live.texts].map(([name, text]) => [name, Buffer.from(text)] as const),
    ["THIRD-PARTY-LICENSES.txt", Buffer.from(licences)],
  ]);
  for (const [name, bytes] of written) put(join(dist, name), bytes);
  sweep(new Set(written.keys()));
  chmodSync(join(dist, "main.js"), 0o755);

  if (!buildTypes(root)) return 1;
  put(join(dist, HASH_FILE), Buffer.from(hash));
  console.error(`dist: ${written.size} files in ${((Date.now() - started) / 1000).toFixed(1)} s`);
  return 0;
}

/**
 * One build for all, so that they share their parts. For node's own modules and tsx the file that needs them is
 * asked when it runs; all else is bundled, in the form meant for browsers: the public door reaches nothing of node.
 */
async function bundle(): Promise<{ files: Map<string, Uint8Array>; metafile: Metafile }> {
  const { build } = await bundler();
  const notebooks = readdirSync(join(root, "notebooks")).filter((file) => file.endsWith(".ts"));
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: [
      { in: "lib/main.ts", out: "main" },
      { in: "lib/index.ts", out: "index" },
      ...notebooks.map((file) => ({ in: `notebooks/${file}`, out: `notebooks/${file.slice(0, -3)}` })),
    ],
    outdir: dist,
    chunkNames: "parts/[name]-[hash]",
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "browser",
    external: ["node:*", "tsx", "tsx/*"],
    target: "node20",
    minify: true,
    legalComments: "none",
    write: false,
    metafile: true,
    logLevel: "warning",
  });
  return {
    files: new Map(
      outputFiles.map(({ path, contents }) => [relative(dist, path).replaceAll("\\", "/"), contents]),
    ),
    metafile,
  };
}

/** Only what left something in the output: what was read and then dropped is not handed on. */
function bundledInputs(metafiles: readonly Metafile[]): Set<string> {
  const inputs = metafiles
    .flatMap(({ outputs }) => Object.values(outputs))
    .flatMap((output) => Object.entries(output.inputs));
  return new Set(inputs.flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : [])));
}

/** A program that runs meanwhile sees the old file or the new one, never half of it. */
function put(path: string, bytes: Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  const fresh = `${path}.${process.pid}.tmp`;
  writeFileSync(fresh, bytes);
  renameSync(fresh, path);
}

/** Removes what an earlier build left, but for the types, which are swept by themselves. */
function sweep(kept: ReadonlySet<string>): void {
  for (const entry of readdirSync(dist, { recursive: true, withFileTypes: true })) {
    const name = relative(dist, join(entry.parentPath, entry.name)).replaceAll("\\", "/");
    if (entry.isFile() && !kept.has(name) && !name.startsWith("types/")) rmSync(join(dist, name));
  }
}

function missingTools(): string[] {
  return ["esbuild", "typescript", "yaml", "vega", "vega-lite", "vega-interpreter", "morphdom"].filter(
    (name) => {
      try {
        return require.resolve(`${name}/package.json`) === "";
      } catch (error) {
        // A package may keep its package.json to itself and be there all the same.
        return (error as NodeJS.ErrnoException).code === "MODULE_NOT_FOUND";
      }
    },
  );
}
