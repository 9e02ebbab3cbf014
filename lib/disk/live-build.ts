// The scripts of live pages, as the build makes them: the page's own, a base that all share, each notebook with the
// rest of the library that it uses, and the whole library, with and without Vega, for notebooks that are not ours.

import { readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, join, relative } from "node:path";
import type { Metafile, Plugin } from "./bundler.ts";
import { liveScript, type Script } from "./live-script.ts";

export interface LiveFiles {
  /** By name within dist. */
  readonly texts: ReadonlyMap<string, string>;
  readonly metafiles: readonly Metafile[];
}

export async function liveFiles(root: string): Promise<LiveFiles> {
  const scripts = new Map<string, Script>();
  scripts.set("boot", await liveScript({ root, entry: "lib/live/boot.ts" }));
  const door = "lib/live/whole.ts";
  scripts.set("whole", await liveScript({ root, entry: door, plugins: [withoutMaps] }));
  scripts.set("plain", await liveScript({ root, entry: door, plugins: [withoutVega] }));
  const { script, parts } = await base(root);
  scripts.set("base", script);
  for (const file of readdirSync(join(root, "notebooks")).filter((name) => name.endsWith(".ts"))) {
    const plugins = [fromBase(root, parts)];
    const entry = `notebooks/${file}`;
    scripts.set(
      `notebooks/${basename(file, ".ts")}`,
      await liveScript({ root, entry, plugins, globalName: "mullbookNotebook" }),
    );
  }
  return {
    texts: new Map([...scripts].map(([name, { text }]) => [`live/${name}.js`, text])),
    metafiles: [...scripts.values()].map(({ metafile }) => metafile),
  };
}

/**
 * The live part with all of the library that it reaches, each file by its name in globalThis.mullbookParts, so that a
 * notebook shares it. A file that is handed on whole may reach further ones; these are handed on as well.
 */
async function base(root: string): Promise<{ readonly script: Script; readonly parts: ReadonlySet<string> }> {
  let parts: readonly string[] = [];
  for (;;) {
    const script = await liveScript({ root, text: baseEntry(parts), plugins: [withoutVega] });
    const found = libraryIn(script.metafile);
    if (found.every((file) => parts.includes(file))) return { script, parts: new Set(parts) };
    parts = [...new Set([...parts, ...found])].sort();
  }
}

function baseEntry(parts: readonly string[]): string {
  return [
    'import { offerLive } from "./lib/live/main.ts";',
    "offerLive();",
    ...parts.map((file, i) => `import * as part${i} from "./${file}";`),
    `globalThis.mullbookParts = { ${parts.map((file, i) => `"${file}": part${i}`).join(", ")} };`,
  ].join("\n");
}

/** Files of the library that left something in the bundle. The door is none: it would hand on everything. */
function libraryIn({ outputs }: Metafile): string[] {
  return Object.values(outputs)
    .flatMap(({ inputs }) => Object.entries(inputs))
    .filter(([file, { bytesInOutput }]) => bytesInOutput > 0 && /^lib\/(?!live\/|index\.ts$)/.test(file))
    .map(([file]) => file);
}

/** What the base has is taken from there. */
const fromBase = (root: string, parts: ReadonlySet<string>): Plugin => ({
  name: "from-base",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^\.{1,2}\/.*\.ts$/ }, ({ path, resolveDir }) => {
      const file = relative(root, join(resolveDir, path)).replaceAll("\\", "/");
      return parts.has(file) ? { path: file, namespace: "base", sideEffects: false } : undefined;
    });
    onLoad({ filter: /.*/, namespace: "base" }, ({ path }) => ({
      contents: `module.exports = globalThis.mullbookParts[${JSON.stringify(path)}]`,
    }));
  },
});

/**
 * Charts of the library's own functions are plain ones (lib/chart/plain-svg.ts), so a page that has no others does
 * without the drawing library. A chart that is not plain after all says so in its place, and in no other.
 */
const withoutVega: Plugin = {
  name: "without-vega",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^vega(-lite|-interpreter)?$/ }, ({ path }) => ({ path, namespace: "no-vega" }));
    onLoad({ filter: /.*/, namespace: "no-vega" }, () => ({ contents: NO_VEGA }));
  },
};
/** Fails at each use: a script that throws while it is loaded would throw the first time only. */
const NO_VEGA = `exports.textMetrics = { canvas() { throw new Error("it asks for more than this page can draw"); } }`;

/**
 * Parts of the drawing library that no chart of a log needs: maps of the earth, force layouts, trees, cells around
 * points, clouds of words, filters by the mouse. A spec that asks for them is not drawn in a live page.
 */
const withoutMaps: Plugin = {
  name: "without-maps",
  setup({ onResolve, onLoad }) {
    const expression = createRequire(import.meta.url).resolve("vega-expression");
    const left =
      /^(vega-(geo|projection|force|hierarchy|label|voronoi|wordcloud|crossfilter)|d3-(geo|geo-projection|delaunay|force|hierarchy)|topojson-client)$/;
    // vega-lite brings an older one of its own, which reads the same expressions.
    onResolve({ filter: /^vega-expression$/ }, () => ({ path: expression }));
    onResolve({ filter: left }, ({ path }) => ({ path, namespace: "left-out", sideEffects: false }));
    onLoad({ filter: /.*/, namespace: "left-out" }, () => ({ contents: "module.exports = {}" }));
  },
};
