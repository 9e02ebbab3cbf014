// What the build puts into dist, and what a build without its tools says.

import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { beforeAll, expect, test } from "vitest";
import { notebookNamed, notebookNames } from "../../lib/disk/known-notebooks.ts";
import { packageFolders, thirdPartyLicences } from "../../lib/disk/licences.ts";
import { built, root, temporaryFolder } from "../cli/mullbook.ts";

beforeAll(built, 180_000);

test("every notebook of the repository is in dist, under its own name", async () => {
  const sources = readdirSync(join(root, "notebooks")).map((file) => file.replace(/\.ts$/, ""));
  expect(notebookNames()).toEqual(sources.sort());
  for (const name of sources) expect((await notebookNamed(name)).name).toBe(name);
});

test("no file in dist names a path of the machine that built it", () => {
  const files = readdirSync(join(root, "dist"), { recursive: true, encoding: "utf8" }).filter((file) =>
    /\.(js|ts|txt)$/.test(file),
  );
  expect(files.length).toBeGreaterThan(50);
  expect(files.filter((file) => readFileSync(join(root, "dist", file), "utf8").includes(root))).toEqual([]);
});

test("packages are told from their files, nested and scoped ones too", () => {
  expect(
    packageFolders([
      "node_modules/a/x.js",
      "node_modules/@s/b/l/y.js",
      "node_modules/a/node_modules/c/z.js",
      "lib/d.ts",
    ]),
  ).toEqual(["node_modules/@s/b", "node_modules/a", "node_modules/a/node_modules/c"]);
  const folder = temporaryFolder();
  mkdirSync(join(folder, "node_modules/bare"), { recursive: true });
  writeFileSync(join(folder, "node_modules/bare/package.json"), '{ "name": "bare", "version": "1.0.0" }');
  expect(() => thirdPartyLicences(folder, ["node_modules/bare/x.js"])).toThrow(/bare does not say/);
});

test("an install without development tools does not fail for the build that it did not ask for", () => {
  // The same script in a folder where nothing is installed but what runs it.
  const folder = temporaryFolder();
  spawnSync("cp", ["-r", join(root, "lib"), join(root, "package.json"), folder]);
  const tsx = pathToFileURL(join(root, "node_modules/tsx/dist/loader.mjs")).href;
  const run = (...more: readonly string[]) =>
    spawnSync(process.execPath, ["--import", tsx, join(folder, "lib/disk/build.ts"), ...more], {
      encoding: "utf8",
    });
  expect(run("--if-possible")).toMatchObject({ status: 0 });
  const asked = run();
  expect(asked.status).toBe(1);
  expect(asked.stderr).toMatch(/^dist is not built: esbuild, typescript, .* not installed\..*npm ci/);
  expect(existsSync(join(folder, "dist"))).toBe(false);
});
