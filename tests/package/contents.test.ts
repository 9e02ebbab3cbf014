// What is packed: everything that somebody can reach, and nothing else.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { root } from "../cli/mullbook.ts";
import { packed } from "./packed.ts";
import { reached } from "./reached.ts";

const notebooks = readdirSync(join(root, "notebooks")).map((file) => file.replace(/\.ts$/, ""));

/** The demo logs with their tables, and what is told of them; pictures of pages stay in the repository. */
const demos = readdirSync(join(root, "data-demo"), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && !entry.name.endsWith(".png"))
  .map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1));

test("the package holds what can be reached from its doors, the demo logs, and what it says of itself", async () => {
  const { names, bytes } = await packed();
  const doors = ["dist/main.js", "dist/index.js", ...notebooks.map((name) => `dist/notebooks/${name}.js`)];
  const live = ["boot", "base", "whole", "plain", ...notebooks.map((name) => `notebooks/${name}`)];
  const wanted = [
    ...["LICENSE", "README.md", "package.json", "dist/THIRD-PARTY-LICENSES.txt"],
    ...demos,
    ...reached(root, doors),
    ...reached(root, ["dist/types/index.d.ts"]),
    ...live.map((name) => `dist/live/${name}.js`),
  ];
  expect(wanted.filter((name) => !names.includes(name))).toEqual([]);
  expect(names.filter((name) => !wanted.includes(name))).toEqual([]);
  // A fifth more than it is: two thirds of it are the scripts of live pages.
  expect(bytes).toBeLessThan(3_300_000);
});

test("demo logs are among them, at least one for each notebook", async () => {
  const { names } = await packed();
  for (const name of notebooks)
    expect(
      names.filter((file) => file.startsWith(`data-demo/${name}/`) && file.endsWith(".yaml")),
    ).not.toEqual([]);
});
