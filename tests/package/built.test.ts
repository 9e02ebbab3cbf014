// What the build puts into dist, and what a build without its tools says.

import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { beforeAll, expect, test } from "vitest";
import { notebookNamed, notebookNames } from "../../lib/disk/known-notebooks.ts";
import { packageFolders, thirdPartyLicences } from "../../lib/disk/licences.ts";
import { HASH_FILE, sourceHash } from "../../lib/disk/source-hash.ts";
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

/** The build's script in a folder where nothing is installed but what runs it. */
function alone(): {
  folder: string;
  build(...more: readonly string[]): { status: number | null; stderr: string };
} {
  const folder = temporaryFolder();
  const parts = ["lib", "notebooks", "package.json", "package-lock.json", "tsconfig.json"];
  spawnSync("cp", ["-r", ...parts.map((part) => join(root, part)), folder]);
  const tsx = pathToFileURL(join(root, "node_modules/tsx/dist/loader.mjs")).href;
  const script = ["--import", tsx, join(folder, "lib/disk/build.ts")];
  return {
    folder,
    build: (...more) => spawnSync(process.execPath, [...script, ...more], { encoding: "utf8" }),
  };
}

test("an install without development tools does not fail for the build that it did not ask for", () => {
  const { folder, build } = alone();
  expect(build("--if-possible")).toMatchObject({ status: 0 });
  const asked = build();
  expect(asked.status).toBe(1);
  expect(asked.stderr).toMatch(/^dist is not built: esbuild, typescript, .* not installed\..*npm ci/);
  expect(existsSync(join(folder, "dist"))).toBe(false);
});

test("npm start builds what was not built from the source as it is, and leaves alone what was", () => {
  const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
    readonly scripts: { readonly [name: string]: string };
  };
  expect(scripts.prestart).toBe("tsx lib/disk/build.ts --unless-built");
  const { folder, build } = alone();
  mkdirSync(join(folder, "dist"));
  writeFileSync(join(folder, "dist", HASH_FILE), sourceHash(folder));
  expect(build("--unless-built")).toMatchObject({ status: 0, stderr: "" });
  writeFileSync(join(folder, "notebooks", "mine.ts"), "export default 1;\n");
  expect(build("--unless-built").status).toBe(1);
});
