// The founder's own notebook of data-demo: thirty lines at most, type-checked, run by its path, and the page last read.

import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { built, mullbook, root, temporaryFolder } from "../cli/mullbook.ts";
import { promisesIn } from "../forbidden-words.ts";
import { expectGolden } from "../golden.ts";

const folder = join(root, "data-demo/own-notebook");
const script = readFileSync(join(folder, "moisture-by-tube.ts"), "utf8");

beforeAll(built, 180_000);

test("it has thirty lines at most, none of them long, and needs nothing but the public door", () => {
  const lines = script.trimEnd().split("\n");
  expect(lines.length).toBeLessThanOrEqual(30);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(110);
  expect([...script.matchAll(/from "([^"]+)"/g)].map(([, from]) => from)).toEqual(["mullbook"]);
});

test("README and the contributors' guide show it as it stands, or lead to it", () => {
  const guide = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
  const readme = readFileSync(join(root, "README.md"), "utf8");
  expect(guide).toContain(script);
  expect(readme).toContain("data-demo/own-notebook/moisture-by-tube.ts");
});

test("it type-checks under strict against the types that are handed on", () => {
  const project = temporaryFolder();
  mkdirSync(join(project, "node_modules"));
  symlinkSync(root, join(project, "node_modules/mullbook"));
  const compilerOptions = {
    module: "nodenext",
    target: "es2022",
    lib: ["es2023"],
    types: [],
    strict: true,
    noUncheckedIndexedAccess: true,
    exactOptionalPropertyTypes: true,
    noUnusedLocals: true,
    noEmit: true,
  };
  writeFileSync(join(project, "package.json"), '{ "type": "module" }');
  writeFileSync(join(project, "tsconfig.json"), JSON.stringify({ compilerOptions, files: ["own.ts"] }));
  const check = (text: string) => {
    writeFileSync(join(project, "own.ts"), text);
    return spawnSync(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "-p", project], {
      encoding: "utf8",
    });
  };
  expect(check(script)).toMatchObject({ status: 0, stdout: "" });
  expect(check(script.replace("curve.at(tube.value)", "curve.at(tube)")).stdout).toMatch(/own\.ts\(12,\d+\)/);
  const guide = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
  const charts = [...guide.matchAll(/```ts\n([\s\S]*?)```/g)].find(([, text]) =>
    text!.includes("trialCharts"),
  )!;
  expect(check(`declare const text: string;\n${charts[1]}export { spec, svg };\n`).stdout).toBe("");
}, 60_000);

test("run by its path it gives a page, with the figure that stands on the curve", async () => {
  const to = temporaryFolder();
  const run = await mullbook(
    ["write", "moisture-by-tube.ts", "tube-and-oven.yaml", "--as", "markdown", "--to", to],
    {
      cwd: folder,
    },
  );
  expect(run).toMatchObject({ code: 0, err: "" });
  const page = join(to, "tube-and-oven-moisture-by-tube");
  expect(readdirSync(page).sort()).toEqual(["tube-and-oven-moisture-by-tube.md", "tube-and-oven.svg"]);
  const markdown = readFileSync(join(page, "tube-and-oven-moisture-by-tube.md"), "utf8");
  expect(promisesIn(markdown)).toEqual([]);
  expectGolden("own-notebook/tube-and-oven.md", markdown);
  // numpy.polyfit of the six dried batches, degree 2, at 43.0: 3.3439; s = 0.0571 at 3 degrees of freedom; t = 3.1824;
  // 3.1824 * 0.0571 * sqrt(1 + v (XᵀX)⁻¹ vᵀ) = 0.2146.
  expect(markdown).toContain("3.34 ± at least 0.21 % of damp mass: so much water tonight holds");
});
