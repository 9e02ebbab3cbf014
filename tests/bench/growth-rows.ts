// How time and memory grow with the size of the work, each size in a process of its own.

import { join } from "node:path";
import { used } from "./child.ts";
import { growth } from "./growth.ts";
import type { Row } from "./row.ts";

const script = join(import.meta.dirname, "growth-once.ts");
const once = (kind: string, size: number) => used(["--import", "tsx", script, kind, String(size)]);

/** Memory that a small run needs beside what is loaded cannot be told from the garbage that waits to be swept. */
const LEAST_MB = 8;

export function growthRows(): Row[] {
  return [
    ...rowsOf("formula", [100, 1000, 10_000, 100_000, 300_000, 1_000_000], "rows"),
    ...rowsOf("hand", [100, 1000, 10_000, 100_000, 300_000, 1_000_000], "rows"),
    ...rowsOf("log", [20, 60, 200, 600, 2000], "batches"),
  ];
}

const says: { readonly [kind: string]: string } = {
  formula: "formula, no ±",
  hand: "the loop by hand, the formula's peer",
  log: "a log, read, checked, every figure",
};

function rowsOf(kind: string, sizes: readonly number[], of: string): Row[] {
  const empty = once(kind, 0);
  const runs = sizes.map((size) => {
    const { printed, mb } = once(kind, size);
    return { size, ms: Number(printed), mb: mb - empty.mb };
  });
  const large = runs.filter(({ mb }) => mb >= LEAST_MB);
  const range = `${sizes[0]!.toLocaleString("en")} to ${sizes.at(-1)!.toLocaleString("en")} ${of}`;
  return [
    {
      work: `${says[kind]}, ${range}: how time grows`,
      measured: `size to the power of ${power(runs, ({ ms }) => ms)}`,
      against: runs
        .map(({ size, ms }) => `${size.toLocaleString("en")}: ${Number(ms.toPrecision(3))} ms`)
        .join(", "),
    },
    {
      work: `${says[kind]}, ${range}: how memory grows, over the ${empty.mb.toFixed(0)} MB of a process that has loaded all and warmed up`,
      measured: `${bytesEach(runs.at(-1)!)} bytes for each of ${sizes.at(-1)!.toLocaleString("en")}; ${
        large.length < 3
          ? `fewer than three sizes take ${LEAST_MB} MB, too few for a power`
          : `size to the power of ${power(large, ({ mb }) => mb)}, from ${large[0]!.size.toLocaleString("en")} on`
      }`,
      against: runs.map(({ size, mb }) => `${size.toLocaleString("en")}: ${mb.toFixed(1)} MB`).join(", "),
    },
  ];
}

interface Run {
  readonly size: number;
  readonly ms: number;
  readonly mb: number;
}

const bytesEach = ({ size, mb }: Run): string => ((mb * 2 ** 20) / size).toFixed(0);

function power(runs: readonly Run[], of: (run: Run) => number): string {
  const { exponent, half } = growth(
    runs.map(({ size }) => size),
    runs.map(of),
  );
  return `${exponent.toFixed(2)} ± ${half.toFixed(2)}`;
}
