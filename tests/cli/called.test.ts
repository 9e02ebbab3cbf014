// Every command that is printed runs as it stands, however the program was called.

import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { asFounder, built, main, root, temporaryFolder } from "./mullbook.ts";

beforeAll(built, 180_000);

/** What a shell does with a line. */
function shell(line: string, cwd: string, path = "") {
  const env = { ...asFounder(), PATH: `${path}${process.env.PATH}` };
  const run = spawnSync("sh", ["-c", line], { cwd, env, encoding: "utf8", timeout: 60_000 });
  return { code: run.status, out: run.stdout, err: run.stderr };
}

/** Begins a log, runs the command that is proposed then, and one from help. */
function follow(call: string, cwd: string, path = ""): string {
  const begun = shell(`${call} begin "my sands"`, cwd, path);
  expect(begun).toMatchObject({ code: 0 });
  const next = /^ {4}(\S.* check .*)$/m.exec(begun.err)![1]!;
  const checked = shell(next, cwd, path);
  expect(checked.out).toContain("my sands.yaml: nothing wrong");
  expect(checked.code).toBe(0);
  const help = shell(`${call} help`, cwd, path).out;
  const list = /^ {4}(\S.* list)$/m.exec(help)![1]!;
  expect(shell(list, cwd, path).out).toContain("grain-fineness");
  // No other command is meant either.
  const words = next.slice(0, next.indexOf(" check"));
  const bare = help.match(/\S*mullbook (?:--|begin|check|card|demo|help|list|open|reference|write)\b/g) ?? [];
  expect(bare.filter((one) => !words.includes(one.split(" ")[0]!))).toEqual([]);
  return words;
}

test("by node, from a folder of the founder's", () => {
  const cwd = temporaryFolder();
  const words = follow(`node ${relative(cwd, main)}`, cwd);
  expect(words).toMatch(/^node \S*dist\/main\.js$/);
}, 60_000);

test("by npm, from a folder of the repository and from elsewhere", () => {
  const inside = join(root, "node_modules", ".mullbook-called");
  mkdirSync(inside, { recursive: true });
  try {
    expect(follow("npm run --silent mullbook --", inside)).toBe("npm run mullbook --");
  } finally {
    rmSync(inside, { recursive: true });
  }
  const outside = temporaryFolder();
  expect(follow(`npm --prefix ${root} run --silent mullbook --`, outside)).toMatch(
    /^npm --prefix \S+ run mullbook --$/,
  );
}, 120_000);

test("installed as the README says, by its name from any folder", () => {
  const line = /^ {4}(npm install -g \.)/m.exec(readFileSync(join(root, "README.md"), "utf8"))![1]!;
  const prefix = temporaryFolder();
  // Into a folder of the test's own, and without asking a registry.
  const installed = shell(`${line} --prefix ${prefix} --offline --ignore-scripts --no-audit --no-fund`, root);
  expect(installed).toMatchObject({ code: 0 });
  const cwd = temporaryFolder();
  expect(follow("mullbook", cwd, `${join(prefix, "bin")}:`)).toBe("mullbook");
  expect(shell(`${join(prefix, "bin", "mullbook")} chek x`, cwd).err).toMatch(
    /Did you mean: \S*\/?bin\/mullbook check/,
  );
}, 120_000);

test("the remedies of a log name commands that run", () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "empty.yaml"), "");
  const call = `node ${relative(cwd, main)}`;
  const { out } = shell(`${call} check empty.yaml`, cwd);
  const remedy = /\((.*begin my-log\.yaml)\)/.exec(out)![1]!;
  expect(shell(remedy, cwd)).toMatchObject({ code: 0, out: "my-log.yaml\n" });
}, 60_000);
