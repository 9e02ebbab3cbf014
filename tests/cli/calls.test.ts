// Calls, right and wrong: what is said, where, and the exit code.

import { readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { demoRun } from "../browser/demo-run.ts";
import { built, mullbook, mullbookProcess, root, temporaryFolder } from "./mullbook.ts";

beforeAll(built, 180_000);

test("help teaches by example, however it is asked for", async () => {
  const asked = await mullbook(["help"]);
  expect(asked.code).toBe(0);
  expect(asked.err).toBe("");
  for (const example of [
    "mullbook begin my-sands.yaml",
    "mullbook check my-sands.yaml",
    "mullbook write grain-fineness my-sands.yaml",
  ]) {
    expect(asked.out).toContain(example);
  }
  for (const args of [[], ["--help"], ["-h"]])
    expect(await mullbook(args)).toMatchObject({ code: 0, out: asked.out });
});

test("every line of help fits a terminal", async () => {
  for (const args of [
    ["help"],
    ...["begin", "check", "list", "write", "demo", "help"].map((name) => [name, "--help"]),
  ]) {
    const { code, out } = await mullbook(args);
    expect(code).toBe(0);
    expect(out.split("\n").filter((line) => line.length > 110)).toEqual([]);
  }
});

test("help on one command is the same by either road", async () => {
  const { out } = await mullbook(["help", "write"]);
  expect(out).toContain("mullbook write <notebook> <log> [--to DIR] [--as html|markdown|csv|json|vega-lite]");
  expect((await mullbook(["write", "--help"])).out).toBe(out);
});

test("the version is that of the package", async () => {
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
  expect(await mullbook(["--version"])).toMatchObject({ code: 0, out: `${version}\n`, err: "" });
});

test("a wrong call says what would be right, on stderr, with exit code 2", async () => {
  const cases: readonly (readonly [args: readonly string[], says: RegExp])[] = [
    [["chek", "x.yaml"], /no command "chek"[\s\S]*mullbook check/],
    [["xylophone"], /no command "xylophone"[\s\S]*mullbook help/],
    [["help", "wirte"], /no command "wirte"[\s\S]*mullbook write/],
    [["check"], /wants a log after it; none is given[\s\S]*mullbook check my-sands.yaml/],
    [["check", "a.yaml", "b.yaml"], /given: a.yaml, b.yaml[\s\S]*One at a time/],
    [["version"], /no command "version"[\s\S]*--version/],
    [["check", "-"], /not from what is piped in/],
    [["begin", "."], /ends in \.yaml; "\." does not/],
    [["begin", "tests/.."], /ends in \.yaml/],
    [["write", "grain-fineness"], /a notebook and a log/],
    [["write", "grain-finenes", "x.yaml"], /no notebook "grain-finenes"[\s\S]*Did you mean: grain-fineness/],
    [["write", "x.yaml", "grain-fineness"], /notebook comes first[\s\S]*grain-fineness x.yaml/],
    [["write", "grain-fineness", "x.yaml", "--as", "htm"], /as "htm"[\s\S]*--as html/],
    [["write", "grain-fineness", "x.yaml", "--as", "md"], /--as markdown/],
    [["write", "grain-fineness", "x.yaml", "--as"], /--as wants a word/],
    [["write", "grain-fineness", "x.yaml", "--to", "--as", "csv"], /--to wants a word/],
    [["write", "grain-fineness", "x.yaml", "--to", "a", "--to", "b"], /--to is given twice/],
    [["check", "x.yaml", "--too", "y"], /"mullbook check" knows no --too/],
    [["write", "grain-fineness", "x.yaml", "--too", "y"], /Did you mean --to\?/],
    [["check", "x.yaml", "-v"], /knows no -v/],
    [["--to", "x"], /No command is given/],
    [["check", "there-is-none.yaml"], /no file there-is-none.yaml/],
    [["check", "tests"], /tests is a folder/],
    [["check", "/dev/zero"], /not a plain file/],
    [["check", "package.json/log.yaml"], /a part of the path is a file/],
    [["check", `${"x".repeat(300)}.yaml`], /longer than a name may be/],
  ];
  for (const [args, says] of cases) {
    const { code, out, err } = await mullbook(args);
    expect({ args, code, out }).toEqual({ args, code: 2, out: "" });
    expect(err).toMatch(says);
  }
});

test("what list names can be written, and each name says what it answers", async () => {
  const { code, out } = await mullbook(["list"]);
  expect(code).toBe(0);
  const lines = out.trimEnd().split("\n");
  expect(lines.length).toBeGreaterThan(0);
  for (const line of lines) expect(line).toMatch(/^[a-z0-9-]+ {3,}.*\?$/);
});

test("demo writes a page for each invented log and says where; no progress where there is no terminal", async () => {
  const { code, out, err, folder } = await demoRun();
  expect(code).toBe(0);
  const pages = out.trimEnd().split("\n");
  expect(pages).toContain(join(relative(root, folder), "full-stack-grain-fineness.html"));
  for (const page of pages)
    expect(readFileSync(join(root, page), "utf8")).toMatch(/^<!doctype html>[\s\S]*invented/);
  expect(err).toContain("invented");
  expect(out + err).not.toContain("\r");
});

test("npm run mullbook takes file names from the folder that the founder is in", () => {
  const folder = temporaryFolder();
  const env = { npm_lifecycle_event: "mullbook", npm_package_name: "mullbook", INIT_CWD: folder };
  expect(mullbookProcess(["begin", "log.yaml"], { cwd: root, env }).code).toBe(0);
  expect(readFileSync(join(folder, "log.yaml"), "utf8")).toContain("format: 1");
});
