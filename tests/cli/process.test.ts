// Pipes that close, faults of our own, and what a command loads.

import { spawn, spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { logWith, soundRows } from "./logs.ts";
import { built, main, mullbookProcess, root, temporaryFolder } from "./mullbook.ts";

beforeAll(built, 180_000);

test("exit codes, results and messages are those of the call", () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "sound.yaml"), logWith(...soundRows));
  writeFileSync(join(cwd, "bad.yaml"), logWith(...soundRows.with(1, "No. 50: 12,60")));
  const sound = mullbookProcess(["check", "sound.yaml"], { cwd });
  expect(sound).toMatchObject({ code: 0, err: "", out: expect.stringContaining("nothing wrong") });
  const bad = mullbookProcess(["write", "grain-fineness", "bad.yaml", "--as", "json"], { cwd });
  expect(bad).toMatchObject({ code: 1, out: "bad-grain-fineness.json\n" });
  expect(bad.err).toContain("bad.yaml:15:");
  expect(mullbookProcess(["chek"], { cwd })).toMatchObject({ code: 2, out: "" });
  const page = mullbookProcess(["write", "grain-fineness", "sound.yaml"], { cwd });
  expect(page).toMatchObject({ code: 0, out: "sound-grain-fineness.html\n" });
  expect(readFileSync(join(cwd, page.out.trim()), "utf8")).toMatch(
    /^<!doctype html>[\s\S]*<svg[\s\S]*<\/html>\n$/,
  );
});

test("a reader that closes the pipe gets no complaint", async () => {
  const cwd = temporaryFolder();
  const rows = Array.from({ length: 90 }, (_, i) => `${" ".repeat(4)}odd ${i}: 1\n`).join("");
  writeFileSync(join(cwd, "log.yaml"), `format: 1\nsands:\n  Dune sand:\n    state: new\n${rows.repeat(3)}`);
  const child = spawn(process.execPath, [main, "check", "log.yaml"], {
    cwd,
    stdio: ["ignore", "pipe", "pipe"],
  });
  let err = "";
  child.stderr.on("data", (bytes) => {
    err += bytes;
  });
  child.stdout.destroy();
  const code = await new Promise((resolve) => child.on("close", resolve));
  expect(err).toBe("");
  // The log has errors, and whoever closes the pipe may still ask.
  expect(code).toBe(1);
});

test("a disk that is full takes not all that is printed: said in words, and no report asked for", ({
  skip,
}) => {
  if (!existsSync("/dev/full")) return skip("there is no /dev/full");
  const run = spawnSync("sh", ["-c", '"$0" "$1" list > /dev/full', process.execPath, main], {
    encoding: "utf8",
  });
  expect(run.status).toBe(2);
  expect(run.stderr).toMatch(/disk is full[\s\S]*Make room/);
  expect(run.stderr).not.toMatch(/report|^ +at /m);
});

test("a fault of our own is one line that asks for a report; the stack only on demand", () => {
  // A package without its notebooks stands for any fault that nobody thought of.
  const folder = temporaryFolder();
  const copied = spawnSync("cp", ["-r", join(root, "dist"), join(root, "package.json"), folder]);
  expect(copied.status).toBe(0);
  spawnSync("rm", ["-r", join(folder, "dist", "notebooks")]);
  const run = (env: NodeJS.ProcessEnv) =>
    spawnSync(process.execPath, [join(folder, "dist", "main.js"), "list"], {
      encoding: "utf8",
      env: { ...process.env, ...env },
    });
  const quiet = run({});
  expect(quiet.status).toBe(2);
  expect(quiet.stdout).toBe("");
  expect(quiet.stderr).toMatch(/^mullbook: this should not have happened \(.*\)\. Please report it[^\n]*\n$/);
  expect(run({ MULLBOOK_DEBUG: "1" }).stderr).toMatch(/^ +at /m);
});

/** Files that node must read before a file runs. */
function loadedWith(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, path] of readFileSync(file, "utf8").matchAll(/(?:from|import)\s*"(\.[^"]+)"/g))
    loadedWith(join(dirname(file), path!), seen);
  return seen;
}
const kilobytes = (files: ReadonlySet<string>) =>
  [...files].reduce((sum, file) => sum + statSync(file).size, 0) / 1000;
const part = (name: string) => {
  const folder = join(root, "dist", "parts");
  return join(folder, readdirSync(folder).find((file) => file.startsWith(`${name}-`))!);
};

test("checking a log loads no drawing library; the public door loads it only for a drawing", () => {
  const vega = part("vega.module");
  expect(kilobytes(loadedWith(vega))).toBeGreaterThan(400);
  expect(loadedWith(main)).not.toContain(vega);
  const check = loadedWith(part("check"), loadedWith(main));
  expect(check).not.toContain(vega);
  // Of which the reader of YAML is 98 KB, and what there is to say of a log's writing grows.
  expect(kilobytes(check)).toBeLessThan(480);
  expect(loadedWith(join(root, "dist", "index.js"))).not.toContain(vega);
});
