// The packed file under the newest node, against the node that runs these tests: npm run package.

import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { beforeAll, expect, type TestContext, test } from "vitest";
import { asFounder, root } from "../cli/mullbook.ts";
import { type Newest, newestNode } from "./newest-node.ts";
import { whole } from "./packed.ts";
import { type Stranger, stranger } from "./stranger.ts";

let newest: Newest = { missing: "asked for by npm run package alone" };
let project: Stranger;
beforeAll(async () => {
  if (!whole) return;
  newest = newestNode();
  project = await stranger({ scripts: false });
  if ("node" in newest) console.log(`The newest node: ${newest.version}; beside it ${process.version}.`);
}, 360_000);

function nodeOr(skip: TestContext["skip"]): string {
  return "node" in newest ? newest.node : skip(newest.missing);
}

test("every page of the demo logs comes out the same, byte for byte", ({ skip }) => {
  const node = nodeOr(skip);
  for (const [to, program] of Object.entries({ newest: node, here: process.execPath })) {
    const { status, stderr } = project.mullbook(["demo", "--to", to], program);
    expect({ status, stderr }).toMatchObject({ status: 0 });
    expect(stderr).not.toMatch(/Warning:/);
  }
  const pages = (to: string) => readdirSync(join(project.folder, to)).sort();
  expect(pages("newest")).toEqual(pages("here"));
  expect(pages("here").length).toBeGreaterThan(15);
  const text = (to: string, page: string) => readFileSync(join(project.folder, to, page), "utf8");
  expect(pages("here").filter((page) => text("newest", page) !== text("here", page))).toEqual([]);
}, 900_000);

test("a log is begun, checked twice, the second time from what was kept compiled, and put into a live page", ({
  skip,
}) => {
  const node = nodeOr(skip);
  expect(project.mullbook(["begin", "my-sand.yaml", "--for", "sieving"], node)).toMatchObject({ status: 0 });
  const [first, again] = [0, 1].map(() => project.mullbook(["check", "my-sand.yaml"], node));
  expect(again).toEqual(first);
  expect(first).toMatchObject({ status: 0, stderr: "" });
  expect(readdirSync(join(project.folder, "node_modules", "mullbook", "dist", ".compiled"))).not.toEqual([]);
  const live = project.mullbook(["write", "grain-fineness", "my-sand.yaml", "--live"], node);
  expect(live).toMatchObject({ status: 0 });
});

test("tests of numbers and quantities pass", ({ skip }) => {
  const node = nodeOr(skip);
  const env = { ...asFounder(), PATH: `${dirname(node)}${delimiter}${process.env.PATH}` };
  const vitest = join(root, "node_modules", "vitest", "vitest.mjs");
  const args = [vitest, "run", "--config", "tests/vitest.config.ts", "tests/numbers", "tests/quantity"];
  const { status, stdout } = spawnSync(node, args, { cwd: root, env, encoding: "utf8" });
  expect({ status, stdout }).toMatchObject({ status: 0 });
  expect(stdout).toMatch(/^\d{3,} passed, 0 failed/m);
});
