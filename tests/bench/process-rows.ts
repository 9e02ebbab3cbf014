// Whole calls of the command line, from start to exit, against a node that does nothing.

import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Row, skipped } from "./row.ts";
import { interleaved } from "./timing.ts";

const root = join(import.meta.dirname, "..", "..");
const main = join(root, "dist", "main.js");
const log = join(root, "data-demo", "grain-fineness", "five-sieves.yaml");

function run(...args: readonly string[]): number {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(`node ${args.join(" ")} ended with ${status}: ${stderr}`);
  return performance.now() - start;
}

export async function processRows(): Promise<Row[]> {
  if (!existsSync(main)) return [skipped("command line", "no dist: npm run build")];
  const folder = mkdtempSync(join(tmpdir(), "mullbook-bench-"));
  try {
    const { nothing, check, write } = await interleaved(
      {
        nothing: () => run("-e", "0"),
        check: () => run(main, "check", log),
        write: () => run(main, "write", "grain-fineness", log, "--to", folder),
      },
      { rounds: 21 },
    );
    const row = (work: string, ms: number, most: number): Row => ({
      work,
      measured: `${ms.toFixed(0)} ms`,
      against: `node -e 0: ${nothing.toFixed(0)} ms`,
      figure: ms / nothing,
      target: { most, unit: "×" },
    });
    return [row("mullbook check, a small log", check, 3), row("mullbook write, one notebook", write, 12)];
  } finally {
    rmSync(folder, { recursive: true });
  }
}
