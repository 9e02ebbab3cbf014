// From words to a call.

import { expect, test } from "vitest";
import { readArguments } from "../../lib/disk/arguments.ts";
import { COMMANDS } from "../../lib/disk/commands.ts";
import { isRefusal } from "../../lib/disk/refusal.ts";

test("words and options, in any order", () => {
  const calls = [
    ["write", "n", "log.yaml", "--to", "out", "--as", "csv"],
    ["write", "--to", "out", "n", "--as=csv", "log.yaml"],
    ["--to=out", "--as", "csv", "write", "n", "log.yaml"],
  ].map(readArguments);
  for (const call of calls)
    expect(call).toMatchObject({ asks: "command", words: ["n", "log.yaml"], to: "out", as: "csv" });
});

test("what follows -- is a name, whatever it looks like", () => {
  expect(readArguments(["check", "--", "--log.yaml"])).toMatchObject({ words: ["--log.yaml"] });
});

test("a name that begins with a hyphen is no bundle of options, and is told how to be written", () => {
  expect(readArguments(["check", "-dash.yaml"])).toMatchObject({
    refused: '"mullbook check" knows no -dash.yaml.',
    remedy: expect.stringContaining("./-dash.yaml"),
  });
  expect(readArguments(["check", "--", "-dash.yaml"])).toMatchObject({ words: ["-dash.yaml"] });
  expect(readArguments(["write", "n", "log.yaml", "-to", "x"])).toMatchObject({
    remedy: expect.stringContaining("Did you mean --to?"),
  });
});

test("help and version are asked for without any command's words", () => {
  expect(readArguments([])).toEqual({ asks: "help" });
  expect(readArguments(["--version"])).toEqual({ asks: "version" });
  expect(readArguments(["check", "-h"])).toMatchObject({ asks: "help", about: { name: "check" } });
});

test("every example of the help is a call that is understood", () => {
  const examples = COMMANDS.flatMap((command) => command.examples.map(([call]) => call.split(" | ")[0]!));
  expect(examples.length).toBeGreaterThan(8);
  for (const example of examples) {
    const [program, ...words] = example.split(" ");
    expect(program).toBe("mullbook");
    expect(isRefusal(readArguments(words))).toBe(false);
  }
});

test("names of objects are no commands and no options", () => {
  for (const words of [
    ["constructor"],
    ["__proto__"],
    ["check", "x", "--constructor"],
    ["check", "x", "--__proto__=1"],
  ])
    expect(isRefusal(readArguments(words))).toBe(true);
});
