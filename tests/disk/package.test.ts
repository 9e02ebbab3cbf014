// What is published, and whether others can use it.

import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { beforeAll, expect, test } from "vitest";
import { notebookNamed, notebookNames } from "../../lib/disk/known-notebooks.ts";
import { packageFolders, thirdPartyLicences } from "../../lib/disk/licences.ts";
import { built, root, temporaryFolder } from "../cli/mullbook.ts";

beforeAll(built, 180_000);

test("the package holds dist, demo data and licence, and nothing else", () => {
  const run = spawnSync("npm", ["pack", "--dry-run", "--json", "--ignore-scripts"], {
    cwd: root,
    encoding: "utf8",
  });
  const report = JSON.parse(run.stdout) as readonly { files: readonly { path: string }[]; size: number }[];
  const paths = report[0]!.files.map(({ path }) => path);
  expect(paths).toEqual(
    expect.arrayContaining([
      "LICENSE",
      "package.json",
      "data-demo/README.md",
      "dist/main.js",
      "dist/index.js",
      "dist/types/index.d.ts",
      "dist/notebooks/grain-fineness.js",
      "dist/THIRD-PARTY-LICENSES.txt",
    ]),
  );
  const known =
    /^(LICENSE|README\.md|package\.json|data-demo\/.+\.(yaml|csv|md|ts)|dist\/(types\/.+\.d\.ts|.+\.js|THIRD-PARTY-LICENSES\.txt))$/;
  expect(paths.filter((path) => !known.test(path))).toEqual([]);
  // Two thirds of it are the scripts of live pages.
  expect(report[0]!.size).toBeLessThan(3_200_000);
});

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

test("a stranger's project finds the library and its types under its name", () => {
  const project = temporaryFolder();
  mkdirSync(join(project, "node_modules"));
  symlinkSync(root, join(project, "node_modules", "mullbook"));
  writeFileSync(join(project, "package.json"), '{ "type": "module" }');
  writeFileSync(
    join(project, "tsconfig.json"),
    JSON.stringify({
      compilerOptions: {
        module: "nodenext",
        target: "es2022",
        lib: ["es2023"],
        types: [],
        strict: true,
        noEmit: true,
      },
      files: ["use.ts"],
    }),
  );
  const lines = [
    'import { grainFineness, type Log, notebook } from "mullbook";',
    "export const n: number | undefined = grainFineness({ retained: { pan: 1 } }).gfn;",
    "// @ts-expect-error: a number is no text",
    "export const s: string = n;",
    'export default notebook("x", (log: Log) => ({ question: "a?", answer: [log.file], sections: [] }));',
  ];
  writeFileSync(join(project, "use.ts"), lines.join("\n"));
  const tsc = spawnSync(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "-p", project], {
    encoding: "utf8",
  });
  expect(tsc.stdout).toBe("");
  expect(tsc.status).toBe(0);

  const script = 'const { grainFineness } = await import("mullbook"); console.log(typeof grainFineness);';
  const node = spawnSync(process.execPath, ["--input-type=module", "-e", script], {
    cwd: project,
    encoding: "utf8",
  });
  expect(node).toMatchObject({ status: 0, stdout: "function\n" });
});

test("the licences of all that is bundled go with it", () => {
  const text = readFileSync(join(root, "dist", "THIRD-PARTY-LICENSES.txt"), "utf8");
  for (const name of ["yaml", "vega", "vega-lite", "d3-array", "@stdlib/[a-z0-9-]+"]) {
    expect(text).toMatch(new RegExp(`^${name} \\d`, "m"));
  }
  expect(text).toContain("Permission to use, copy, modify, and/or distribute");
  expect(text).toContain("Apache License");
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
