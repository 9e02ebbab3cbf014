// Sheets: 200 rows of 8 formulas with a ± on every input, 10,000 rows, and how near the ± that is not drawn comes.

import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { type Sheet, sheet } from "../../lib/index.ts";
import { seeded } from "../seeded.ts";
import { type Miss, missOf } from "../sheet/random-formulas.ts";
import type { Row } from "./row.ts";
import { readAll, scales, specOf } from "./sheet-specimens.ts";
import { median, processorMs } from "./timing.ts";

export function sheetRows(): Row[] {
  const spec = specOf(200);
  const times = { read: [] as number[], values: [] as number[], ends: [] as number[] };
  for (let round = -30; round < 40; round++) {
    let made: Sheet | undefined;
    const read = processorMs(() => {
      made = sheet(spec, { scales });
    });
    const values = processorMs(() => readAll(made!, false));
    const ends = processorMs(() => readAll(made!, true));
    if (round < 0) continue;
    times.read.push(read);
    times.values.push(values);
    times.ends.push(ends);
  }
  const frame = "one frame at 60 Hz, 16.7 ms";
  const row = (work: string, ms: number, target?: number): Row => ({
    work: `sheet, 200 rows × 8 formulas, ± on every input, warm: ${work}`,
    measured: `${ms.toFixed(1)} ms`,
    against: target === undefined ? "" : frame,
    ...(target === undefined
      ? {}
      : { of: "sheet" as const, figure: ms, target: { most: target, unit: "ms" } }),
  });
  return [
    row("all intervals", median(times.ends), 16.7),
    row("all intervals, quickest round", Math.min(...times.ends)),
    row("values only", median(times.values)),
    row("read from text and worked out, no ± yet", median(times.read)),
    manyRows(),
    ...misses(),
  ];
}

/** In a process of its own: the most memory that it ever held, node and tsx with it. */
function manyRows(): Row {
  const script = join(import.meta.dirname, "sheet-memory.ts");
  const printed = execFileSync(process.execPath, ["--import", "tsx", script], { encoding: "utf8" });
  const { megabytes, seconds } = JSON.parse(printed) as { megabytes: number; seconds: number };
  return {
    work: "sheet, 10,000 rows × 8 formulas with all intervals, two feet and their shares: memory of the process",
    measured: `${megabytes.toFixed(0)} MB, ${seconds.toFixed(1)} s of processor time`,
    against: "",
    figure: megabytes,
    target: { most: 400, unit: "MB" },
  };
}

function misses(): Row[] {
  const random = seeded(7);
  const found: Miss[] = [];
  while (found.length < 100) {
    const miss = missOf(random, 1 << 18);
    if (miss) found.push(miss);
  }
  const sorted = found.sort((a, b) => b.percent - a.percent);
  const worst = sorted[0]!;
  return [
    {
      work: `intervals of 100 random formulas that were not drawn, worst end: ${worst.formula}`,
      measured: `${worst.percent.toFixed(2)} % of the half-width; the middle one ${sorted[50]!.percent.toFixed(2)} %`,
      against: "262,144 draws",
      figure: worst.percent,
      target: { most: 1, unit: "%" },
    },
  ];
}
