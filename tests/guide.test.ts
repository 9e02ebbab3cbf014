// Every command of the README and of the guide's page runs, in the order in which a new founder would type them.

import { readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { guideStages } from "../lib/finding/guide-held.ts";
import { guideCommands } from "../lib/page/guide-stages.ts";
import { built, mullbook, mullbookProcess, root, temporaryFolder } from "./cli/mullbook.ts";
import { openedAndStopped } from "./cli/opened.ts";

beforeAll(built, 300_000);

const readme = readFileSync(join(root, "README.md"), "utf8");

/** Lines of the README's indented blocks, without what is said beside them. */
const indented = [...readme.replace(/^```[\s\S]*?^```$/gm, "").matchAll(/^(?: {4}| {7})(\S.*)$/gm)].map(
  ([, line]) => line!.split(/ +# /)[0]!.trim(),
);
const commands = indented.flatMap((line) => /^(?:npm run )?mullbook (?:-- )?(.*)$/.exec(line)?.[1] ?? []);

test("every indented line of the README is a command of the program, or one of npm's that is there", () => {
  const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
    readonly scripts: { readonly [name: string]: string };
  };
  const others = indented.filter((line) => !/^(npm run )?mullbook /.test(line));
  expect(others).toEqual(["npm ci && npm start", "npm ci && npm test", "npm install -g ."]);
  expect(Object.keys(scripts)).toEqual(expect.arrayContaining(["start", "test", "mullbook"]));
  expect(commands.length).toBeGreaterThan(20);
});

test("from nothing: the README's commands run one after the other in an empty folder", async () => {
  const cwd = temporaryFolder();
  symlinkSync(join(root, "data-demo"), join(cwd, "data-demo"));
  for (const command of commands) {
    const [name = "", ...words] = command.split(" ");
    // A notebook of one's own is loaded in a process of its own; a log stays open until it is told to stop.
    const run = command.includes(".ts ") ? mullbookProcess : mullbook;
    const ran = name === "open" ? openedAndStopped(words, { cwd }) : run([name, ...words], { cwd });
    const { code, err } = await ran;
    expect({ command, code }, err).toEqual({ command, code: 0 });
  }
}, 180_000);

test("it takes six to ten steps", () => {
  const [, steps] = /## From nothing\n([\s\S]*?)\n## /.exec(readme)!;
  const count = steps!.match(/^\d+\. /gm)!.length;
  expect(count).toBeGreaterThanOrEqual(6);
  expect(count).toBeLessThanOrEqual(10);
});

test("every command of the guide's page runs in a folder with the log", async () => {
  const cwd = temporaryFolder();
  expect((await mullbook(["begin", "yard.yaml"], { cwd })).code).toBe(0);
  const all = new Set(guideStages.flatMap((stage) => guideCommands(stage, "yard.yaml")));
  expect(all.size).toBeGreaterThan(20);
  for (const command of all) {
    const [program, ...words] = command.split(" ");
    expect(program).toBe("mullbook");
    const { code, err } = await mullbook(words, { cwd });
    expect({ command, code }, err).toEqual({ command, code: 0 });
  }
}, 180_000);
