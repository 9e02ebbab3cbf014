// The packed file, installed into an empty project: the program, the library, its types, and a notebook of one's own.

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { EXAMPLE_NOTEBOOK } from "../../lib/disk/example-notebook.ts";
import { notebookNames } from "../../lib/disk/known-notebooks.ts";
import { referenceEntries } from "../../lib/disk/reference-entries.ts";
import { root } from "../cli/mullbook.ts";
import { exampleScript } from "./example-script.ts";
import { whole } from "./packed.ts";
import { type Stranger, stranger } from "./stranger.ts";
import { consumer, script } from "./stranger-scripts.ts";

let project: Stranger;
beforeAll(async () => {
  project = await stranger({ scripts: false });
}, 180_000);

const text = (name: string): string => readFileSync(join(project.folder, name), "utf8");

/** Runs the program, which must end well; no warning of node's and no fault of ours may be seen. */
function well(...args: readonly string[]): string {
  const { status, stdout, stderr } = project.mullbook(args);
  expect({ args, status, stderr }).toMatchObject({ args, status: 0 });
  expect(stderr).not.toMatch(/Warning:|should not have happened|^ +at /m);
  return stdout;
}

test("the program lists its notebooks, begins a log, checks it, writes its page and a card", () => {
  expect(well("list").match(/^[a-z-]+/gm)).toEqual(notebookNames());
  const begun = project.mullbook(["begin", "my-sand.yaml", "--for", "sieving"]);
  // Told as they can be run in this project.
  expect(begun.stderr).toContain(`${join("node_modules", ".bin", "mullbook")} check my-sand.yaml`);
  expect(well("check", "my-sand.yaml")).toMatch(/^my-sand\.yaml: nothing wrong.*1 sand/);
  expect(well("write", "grain-fineness", "my-sand.yaml")).toBe("my-sand-grain-fineness.html\n");
  expect(text("my-sand-grain-fineness.html")).toMatch(/<svg[\s\S]*fineness number/i);
  expect(well("write", "grain-fineness", "my-sand.yaml", "--live")).toBe(
    "my-sand-grain-fineness-live.html\n",
  );
  expect(text("my-sand-grain-fineness-live.html").length).toBeGreaterThan(200_000);
  expect(well("card", "sieving")).toBe("card-sieving.html\n");
  expect(well("reference", "grainFineness")).toMatch(/^function grainFineness/);
});

test("a script imports the library", () => {
  writeFileSync(join(project.folder, "script.js"), script);
  expect(project.node(["script.js"])).toMatchObject({ status: 0, stderr: "", stdout: "40 5.00 1\n" });
});

test("so does one that npm's usual package.json makes a CommonJS module", () => {
  writeFileSync(
    join(project.folder, "script.cjs"),
    script.replace(/^import (\{.*?\}) from "mullbook";$/m, 'const $1 = require("mullbook");'),
  );
  expect(project.node(["script.cjs"])).toMatchObject({ status: 0, stdout: "40 5.00 1\n" });
});

test("strict TypeScript accepts its types, library files and all, and every example of a comment", () => {
  writeFileSync(join(project.folder, "consumer.ts"), consumer);
  const entries = referenceEntries(join(project.folder, "node_modules", "mullbook", "dist", "types"))!;
  writeFileSync(join(project.folder, "examples.ts"), exampleScript(entries));
  const compilerOptions = {
    ...{ module: "nodenext", target: "es2022", lib: ["es2023"], types: [] },
    ...{ strict: true, noUncheckedIndexedAccess: true, exactOptionalPropertyTypes: true },
    ...{ skipLibCheck: false, noEmit: true },
  };
  writeFileSync(
    join(project.folder, "tsconfig.json"),
    JSON.stringify({ compilerOptions, files: ["consumer.ts", "examples.ts"] }),
  );
  const tsc = project.node([join(root, "node_modules", "typescript", "bin", "tsc"), "-p", project.folder]);
  expect(tsc).toEqual({ status: 0, stdout: "", stderr: "" });
});

test("a notebook of one's own in TypeScript gives a page, and a live one", () => {
  writeFileSync(join(project.folder, "mine.ts"), EXAMPLE_NOTEBOOK);
  well("begin", "own.yaml", "--for", "sieving");
  const [page] = well("write", "./mine.ts", "own.yaml").split("\n");
  expect(text(page!)).toContain("Lime Kiln sand (invented): 2</p>");
  const [live] = well("write", "./mine.ts", "own.yaml", "--live").split("\n");
  expect(text(live!).length).toBeGreaterThan(200_000);
});

test("no script of ours runs when the package is installed, and none has to", () => {
  const { scripts = {} } = JSON.parse(text("node_modules/mullbook/package.json")) as { scripts?: object };
  expect(Object.keys(scripts).filter((name) => /^(pre|post)?install$/.test(name))).toEqual([]);
  // What it brings along works with its own scripts refused: the tests above ran so.
  expect(project.installed).not.toMatch(/postinstall\s*\n\s*> node/);
});

test.runIf(whole)("with the scripts of other packages allowed, the same page comes out", async () => {
  const other = await stranger({ scripts: true });
  expect(other.installed).toMatch(/esbuild@.* postinstall/);
  expect(other.installed).not.toMatch(/> mullbook@/);
  writeFileSync(join(other.folder, "own.yaml"), text("own.yaml"));
  writeFileSync(join(other.folder, "mine.ts"), EXAMPLE_NOTEBOOK);
  const { status, stdout } = other.mullbook(["write", "./mine.ts", "own.yaml"]);
  expect(status).toBe(0);
  const page = stdout.trim();
  expect(readFileSync(join(other.folder, page), "utf8")).toBe(text(page));
});
