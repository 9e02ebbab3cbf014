// npm run bench [-- parts]: prints a Markdown table, and leaves it in out/bench.md and, for a script, out/bench.json.
// Seeds are fixed; times stand beside a peer's from the same run. A part may be named by its beginning: "live".

import { mkdirSync, writeFileSync } from "node:fs";
import { availableParallelism, loadavg } from "node:os";
import { join } from "node:path";
import { isBuilt } from "../../lib/disk/source-hash.ts";
import { coverageRows } from "./coverage-rows.ts";
import { fileRows } from "./file-rows.ts";
import { finenessRows } from "./fineness-rows.ts";
import { formulaRows } from "./formula-rows.ts";
import { growthRows } from "./growth-rows.ts";
import { liveParts } from "./live.ts";
import { logRows } from "./log-rows.ts";
import { pageRows } from "./page-rows.ts";
import { processRows } from "./process-rows.ts";
import { isMet, markdownTable, type Row } from "./row.ts";
import { runRows } from "./run-rows.ts";
import { sheetRows } from "./sheet-rows.ts";
import { summary } from "./summary.ts";
import { yearRows } from "./year-rows.ts";

const root = join(import.meta.dirname, "..", "..");
const parts: { readonly [name: string]: () => readonly Row[] | Promise<readonly Row[]> } = {
  fineness: finenessRows,
  log: logRows,
  process: processRows,
  page: pageRows,
  ...liveParts,
  run: runRows,
  sheet: sheetRows,
  formula: formulaRows,
  growth: growthRows,
  coverage: coverageRows,
  years: yearRows,
  files: fileRows,
};

const asked = process.argv.slice(2);
for (const name of asked) {
  if (!Object.keys(parts).some((part) => part.startsWith(name)))
    throw new Error(`there is no part "${name}"; there are ${Object.keys(parts).join(", ")}`);
}
const wanted = (part: string): boolean => asked.length === 0 || asked.some((name) => part.startsWith(name));
const said = [machineLine(), distLine()];
const rows: Row[] = [];
for (const [name, part] of Object.entries(parts)) {
  if (!wanted(name)) continue;
  const started = performance.now();
  rows.push(...(await measured(name, part)));
  keep();
  console.error(`${name}: ${((performance.now() - started) / 1000).toFixed(0)} s, load ${load()}`);
}

console.log(text());

/** The other parts are done all the same; the run ends with 1. */
async function measured(name: string, part: (typeof parts)[string]): Promise<readonly Row[]> {
  try {
    return await part();
  } catch (error) {
    process.exitCode = 1;
    console.error(error);
    const [what] = String(error instanceof Error ? error.message : error).split("\n");
    return [{ work: name, measured: `FAILED: ${what}`, against: "" }];
  }
}

function text(): string {
  return `${said.join("\n")}\n\n${summary(rows)}\n\n${markdownTable(rows)}\n`;
}

/** After each part: a run that is stopped leaves what it has. */
function keep(): void {
  const out = join(root, "out");
  mkdirSync(out, { recursive: true });
  writeFileSync(join(out, "bench.md"), text());
  const told = rows.map((row) => ({ ...row, met: isMet(row) }));
  writeFileSync(join(out, "bench.json"), `${JSON.stringify({ said, rows: told }, undefined, 1)}\n`);
}

function machineLine(): string {
  return `node ${process.version}, ${process.platform} ${process.arch}, ${availableParallelism()} cores, load ${load()} at the start (quiet: below 1).`;
}

function load(): string {
  return loadavg()[0]!.toFixed(1);
}

function distLine(): string {
  return isBuilt(root)
    ? "dist is built from this source."
    : "dist is older than this source: npm run build first.";
}
