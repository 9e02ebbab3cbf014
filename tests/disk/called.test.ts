// The words before a printed command, by how the program was called.

import { expect, test } from "vitest";
import { asCalled, calledAs, shellWord } from "../../lib/disk/called.ts";

const npm = {
  npm_package_name: "mullbook",
  npm_package_json: "/home/ada/mullbook/package.json",
  npm_lifecycle_event: "mullbook",
};
const main = "/home/ada/mullbook/dist/main.js";

test("run by npm in the repository, in a folder of it, and from elsewhere", () => {
  const run = (cwd: string, env = npm) => calledAs({ file: main, cwd, env });
  expect(run("/home/ada/mullbook")).toBe("npm run mullbook --");
  expect(run("/home/ada/mullbook/logs/..yard")).toBe("npm run mullbook --");
  expect(run("/home/ada/mullbook", { ...npm, npm_lifecycle_event: "start" })).toBe("npm run mullbook --");
  expect(run("/home/ada/logs")).toBe("npm --prefix ../mullbook run mullbook --");
  expect(run("/")).toBe("npm --prefix home/ada/mullbook run mullbook --");
});

test("by its own name where the shell finds it, else by the way to it", () => {
  const env = { PATH: "/usr/bin:/home/ada/bin" };
  expect(calledAs({ file: "/home/ada/bin/mullbook", cwd: "/tmp", env })).toBe("mullbook");
  expect(calledAs({ file: "/home/ada/my tools/mullbook", cwd: "/home/ada", env })).toBe(
    '"my tools/mullbook"',
  );
  expect(calledAs({ file: "/home/ada/mullbook", cwd: "/home/ada", env })).toBe("./mullbook");
  expect(
    calledAs({
      file: "/home/ada/p/node_modules/.bin/mullbook",
      cwd: "/home/ada/p",
      env: { npm_command: "exec" },
    }),
  ).toBe("npx --no mullbook");
});

test("by node, with the shorter way to the file", () => {
  const run = (cwd: string) => calledAs({ file: main, cwd, env: {} });
  expect(run("/home/ada/mullbook")).toBe("node dist/main.js");
  expect(run("/home/ada/logs")).toBe("node ../mullbook/dist/main.js");
  expect(run("/mnt/a/very/deep/folder/of/somebody")).toBe(`node ${main}`);
});

test("only commands are turned, and what is turned already stays", () => {
  const call = "npm run mullbook --";
  expect(asCalled("next: mullbook check a.yaml", call)).toBe("next: npm run mullbook -- check a.yaml");
  expect(asCalled("`mullbook card` lists; see (mullbook help)", call)).toBe(
    "`npm run mullbook -- card` lists; see (npm run mullbook -- help)",
  );
  for (const text of ["mullbook: no", "from mullbook checkers", "a/mullbook check", 'import "mullbook"'])
    expect(asCalled(text, call)).toBe(text);
  const once = asCalled("mullbook write x", call);
  expect(asCalled(once, call)).toBe(once);
});

test("a path is one word", () => {
  expect(shellWord("a/b-c.yaml")).toBe("a/b-c.yaml");
  expect(shellWord("My sands.yaml")).toBe('"My sands.yaml"');
  expect(shellWord('a"$b')).toBe('"a\\"\\$b"');
});
