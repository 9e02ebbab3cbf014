// npm run bench: prints a Markdown table. Seeds are fixed; times stand beside a peer's from the same run.

import { existsSync, readFileSync } from "node:fs";
import { availableParallelism, loadavg } from "node:os";
import { join } from "node:path";
import { HASH_FILE, sourceHash } from "../../lib/disk/source-hash.ts";
import { coverageRows } from "./coverage-rows.ts";
import { fileRows } from "./file-rows.ts";
import { finenessRows } from "./fineness-rows.ts";
import { formulaRows } from "./formula-rows.ts";
import { logRows } from "./log-rows.ts";
import { pageRows } from "./page-rows.ts";
import { processRows } from "./process-rows.ts";
import { markdownTable, type Row } from "./row.ts";
import { runRows } from "./run-rows.ts";
import { sheetRows } from "./sheet-rows.ts";

const root = join(import.meta.dirname, "..", "..");
const parts: { readonly [name: string]: () => Row[] | Promise<Row[]> } = {
  fineness: finenessRows,
  log: logRows,
  process: processRows,
  page: pageRows,
  run: runRows,
  sheet: sheetRows,
  coverage: coverageRows,
  formula: formulaRows,
  files: fileRows,
};

const asked = process.argv.slice(2);
const names = asked.length > 0 ? asked : Object.keys(parts);
const rows: Row[] = [];
for (const name of names) {
  const part = parts[name];
  if (!part) throw new Error(`there is no part "${name}"; there are ${Object.keys(parts).join(", ")}`);
  if (process.stderr.isTTY) console.error(`${name} ...`);
  rows.push(...(await part()));
}

console.log(machineLine());
if (names.includes("process")) console.log(distLine());
console.log(`\n${markdownTable(rows)}`);

function machineLine(): string {
  const load = loadavg()[0]!.toFixed(1);
  return `node ${process.version}, ${process.platform} ${process.arch}, ${availableParallelism()} cores, load ${load} (quiet: below 1).`;
}

function distLine(): string {
  const file = join(root, "dist", HASH_FILE);
  const fresh = existsSync(file) && readFileSync(file, "utf8") === sourceHash(root);
  return fresh ? "dist is built from this source." : "dist is older than this source: npm run build first.";
}
