// Whole calls of the command line, from start to exit, against a node that does nothing; and every page of a season.

import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { trueHeap } from "../honesty/heap-log.ts";
import { seeded } from "../seeded.ts";
import { used } from "./child.ts";
import { type Row, skipped } from "./row.ts";
import type { Target } from "./targets.ts";
import { median } from "./timing.ts";

const root = join(import.meta.dirname, "..", "..");
const main = join(root, "dist", "main.js");
const log = join(root, "data-demo", "grain-fineness", "five-sieves.yaml");
const POURS = 60;

export function processRows(): Row[] {
  if (!existsSync(main))
    return (["check", "write", "season"] as const).map((of) =>
      skipped("command line", "no dist: npm run build", of),
    );
  const folder = mkdtempSync(join(tmpdir(), "mullbook-bench-"));
  try {
    return [...callRows(folder), ...seasonRows(folder)];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** In turn, so that a machine that drifts drifts for all of them. */
function callRows(folder: string): Row[] {
  const calls: { readonly [name: string]: readonly string[] } = {
    nothing: ["-e", "0"],
    check: [main, "check", log],
    write: [main, "write", "grain-fineness", log, "--to", folder],
  };
  const times = new Map(
    Object.keys(calls).map((name) => [name, { ms: [] as number[], wall: [] as number[] }]),
  );
  for (let round = -2; round < 21; round++) {
    for (const [name, args] of Object.entries(calls)) {
      const { ms, wallMs } = used(args);
      if (round < 0) continue;
      times.get(name)!.ms.push(ms);
      times.get(name)!.wall.push(wallMs);
    }
  }
  const nothing = times.get("nothing")!;
  const row = (of: Target, work: string, most: number): Row => {
    const { ms, wall } = times.get(of)!;
    const byClock = median(wall.map((one, round) => one / nothing.wall[round]!));
    return {
      of,
      work: `${work}, processor time`,
      measured: `${median(ms).toFixed(0)} ms`,
      against: `node -e 0: ${median(nothing.ms).toFixed(0)} ms (by the clock ${byClock.toFixed(1)} ×)`,
      figure: median(ms) / median(nothing.ms),
      target: { most, unit: "×" },
    };
  };
  return [row("check", "mullbook check, a small log", 3), row("write", "mullbook write, one notebook", 12)];
}

function seasonRows(folder: string): Row[] {
  const path = join(folder, "season.yaml");
  writeFileSync(path, trueHeap(seeded(POURS), POURS).text);
  const notebooks = readdirSync(join(root, "dist", "notebooks")).map((file) => file.replace(/\.js$/, ""));
  const pages = notebooks
    .map((notebook) => ({ notebook, ...used([main, "write", notebook, path, "--to", folder]) }))
    .sort((a, b) => b.ms - a.ms);
  const [slowest, ...rest] = pages;
  const seconds = (ms: number): string => `${(ms / 1000).toFixed(2)} s`;
  return [
    {
      of: "season",
      work: `a season of ${POURS} pours, the slowest of ${pages.length} pages from dist: ${slowest!.notebook}, processor time`,
      measured: `${seconds(slowest!.ms)}, ${slowest!.mb.toFixed(0)} MB`,
      against: `next: ${rest[0]!.notebook} ${seconds(rest[0]!.ms)}; all ${pages.length}: ${seconds(pages.reduce((sum, { ms }) => sum + ms, 0))}`,
      figure: slowest!.ms / 1000,
      target: { most: 2, unit: "s" },
    },
  ];
}
