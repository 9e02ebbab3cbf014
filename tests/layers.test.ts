// Imports run in one direction, and each outside package has one door.

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { expect, test } from "vitest";
import { importsIn, workedOut } from "./imports-in.ts";

const root = join(import.meta.dirname, "..");
const order = [
  "issue.ts",
  "phrase.ts",
  "message.ts",
  "numbers",
  "quantity",
  "sand",
  "log",
  "sheet",
  "trial",
  "finding",
  "chart",
  "catalogue",
  "page",
  "index.ts",
  "live",
  "disk",
  "main.ts",
];
/** Outside packages and the one file that may import each. */
const doors: { readonly [name: string]: string } = {
  yaml: "lib/log/yaml-document.ts",
  "mathjs/lib/esm/expression/parse.js": "lib/sheet/formula-parser.ts",
  vega: "lib/chart/svg.ts",
  "vega-interpreter": "lib/chart/svg.ts",
  "vega-lite": "lib/chart/svg.ts",
  morphdom: "lib/live/morph.ts",
  "@stdlib/stats-base-dists-normal-cdf": "lib/numbers/normal.ts",
  "@stdlib/stats-base-dists-normal-quantile": "lib/numbers/normal.ts",
  esbuild: "lib/disk/bundler.ts",
  "tsx/esm/api": "lib/disk/own-notebook.ts",
};

function filesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)));
}

interface Import {
  readonly file: string;
  readonly target: string;
}

function importsOf(file: string): Import[] {
  return importsIn(readFileSync(join(root, file), "utf8")).map((target) => ({ file, target }));
}

const libFiles = filesIn("lib");
/** A single file of a package, named by its path, is from outside all the same. */
const all = libFiles
  .flatMap(importsOf)
  .map((one) => ({ ...one, target: one.target.replace(/^(?:\.\.\/)+node_modules\//, "") }));
const inside = all.filter(({ target }) => target.startsWith("."));
const outside = all.filter(({ target }) => !target.startsWith("."));
const resolved = (one: Import): string => relative(root, join(root, dirname(one.file), one.target));
const layerOf = (file: string): number => order.indexOf(file.split("/")[1]!);

test("the scan sees the imports that are there", () => {
  expect(libFiles.length).toBeGreaterThan(60);
  expect(inside.length).toBeGreaterThan(100);
  expect(importsOf("lib/quantity/combine.ts").map(({ target }) => target)).toContain("./figure.ts");
});

test("every way to import is seen, and nothing that only looks like one", () => {
  const script = `
import { a } from "a"; import { b } from 'b';
import {
  type C, // from "no"
  "x-y" as d,
} /* from "no" */ from /* "no" */ "c";
import type { D } from "d";
import "e";
export * from "f";
export * as g from "g";
export type { H } from "h";
import fs = require("i");
type J = import("j").J | typeof import('k');
const plain = await import(
  \`l\`,
);
const options = import("m", { with: { type: "json" } });
const joined = import("no" + "fs");
const inserted = import(\`./\${require("n")}\`);
const fromProcess = process.getBuiltinModule("no:fs");
const glob = "a/*"; export { o } from "o"; const other = "*/b";
// import "no"; /*
import { p } from "p"; // */
const text = "import { a } from 'no'", quotes = /["'\`/]/g, half = 6 / 2, more = /[/"]/.test(")") / 2;
const nested = \`from "no" \${[{ q: \`\${import("q")}\` }].map(({ q }) => q)} import "no"\`;
const own = Array.from("no"), method = own.import("no"), far = scripts.require("no");
import { r } from "r"
`;
  const targets = "a b c d e f g h i j k l m n o p q r".split(" ");
  expect(importsIn(script).sort()).toEqual([...targets, workedOut, workedOut, `node:${workedOut}`].sort());
  expect(() => importsIn("const a = 'open;\nimport 'b';")).toThrow("not closed");
});

test("there is nothing in the library that the scan cannot read, and each package of the list is in use", () => {
  const files = ["lib", "notebooks"].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && !entry.name.endsWith(".ts"))
      .map((entry) => relative(root, join(entry.parentPath, entry.name))),
  );
  expect(files).toEqual(["lib/disk/types.tsconfig.json"]);
  const used = new Set(outside.map(({ target }) => target));
  expect(Object.keys(doors).filter((name) => !used.has(name))).toEqual([]);
});

test("every file belongs to a layer", () => {
  expect(libFiles.filter((file) => layerOf(file) < 0)).toEqual([]);
});

test("a file imports from its own folder and from what stands above it", () => {
  const upward = inside.filter((one) => {
    const [from, to] = [layerOf(one.file), layerOf(resolved(one))];
    return to < 0 || to > from;
  });
  expect(upward.map((one) => `${one.file} imports ${one.target}`)).toEqual([]);
});

test("there is no circle of files", () => {
  const next = new Map<string, string[]>();
  for (const one of inside) next.set(one.file, [...(next.get(one.file) ?? []), resolved(one)]);
  const done = new Set<string>();
  const circles: string[] = [];
  const walk = (file: string, trail: readonly string[]): void => {
    if (trail.includes(file)) {
      circles.push([...trail.slice(trail.indexOf(file)), file].join(" → "));
      return;
    }
    if (done.has(file)) return;
    for (const target of next.get(file) ?? []) walk(target, [...trail, file]);
    done.add(file);
  };
  for (const file of libFiles) walk(file, []);
  expect(circles).toEqual([]);
});

test("an outside package is imported by its one file", () => {
  const strangers = outside.filter(({ file, target }) => {
    if (target.startsWith("node:") || target === workedOut) return !file.startsWith("lib/disk/");
    return doors[target] !== file;
  });
  expect(strangers.map(({ file, target }) => `${file} imports ${target}`)).toEqual([]);
});

test("notebooks import the public door only", () => {
  const notebooks = filesIn("notebooks").flatMap(importsOf);
  expect(notebooks.length).toBeGreaterThan(0);
  expect(
    notebooks
      .filter(({ target }) => target !== "../lib/index.ts")
      .map(({ file, target }) => `${file}: ${target}`),
  ).toEqual([]);
});

test("index.ts reaches nothing of node", () => {
  const reached = new Set<string>();
  const walk = (file: string): void => {
    if (reached.has(file)) return;
    reached.add(file);
    for (const one of inside.filter((candidate) => candidate.file === file)) walk(resolved(one));
  };
  walk("lib/index.ts");
  expect(reached.size).toBeGreaterThan(40);
  const node = outside.filter(({ file, target }) => reached.has(file) && target.startsWith("node:"));
  expect(node).toEqual([]);
});
