// One size of one work in a process of its own: node --import tsx tests/bench/growth-once.ts formula 1000; size 0 loads
// everything, warms up and does nothing. Prints the milliseconds of processor time of one run, warm.

import { batchFigures } from "../../lib/log/batch-figures.ts";
import { pageIssues } from "../../lib/log/page-issues.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { batchLog } from "./batch-log.ts";
import { byHand, columns, readBench } from "./formula-bench.ts";
import { median, processorMs } from "./timing.ts";

const [kind, count] = [process.argv[2], Number(process.argv[3])];
const works: { readonly [kind: string]: (size: number) => number } = { formula, hand, log };
const ms = works[kind ?? ""]?.(count);
if (ms === undefined)
  throw new Error(`there is no work "${kind}"; there are ${Object.keys(works).join(", ")}`);
console.log(ms);

function formula(size: number): number {
  const read = readBench();
  const { wet, dry, out } = columns(size);
  return size === 0 ? 0 : perRun(size, () => read.run([wet, dry], out));
}

function hand(size: number): number {
  const { wet, dry, out } = columns(size);
  return size === 0 ? 0 : perRun(size, () => byHand[0]!(wet, dry, out));
}

/** So often that the clock can tell, after as much again to warm up. */
function perRun(size: number, run: () => unknown): number {
  const times = Math.ceil(5e6 / size);
  const rounds = Array.from({ length: 12 }, () =>
    processorMs(() => {
      for (let k = 0; k < times; k++) run();
    }),
  );
  return median(rounds.slice(4)) / times;
}

/**
 * Read, checked, and every figure. What is warmed up on is another log: pieces that were read before are remembered.
 * A second of warming up, since a founder's program that has just begun would hide how the work grows.
 */
function log(size: number): number {
  const text = batchLog(size);
  for (let spent = 0, k = 0; spent < 1500; k++)
    spent += processorMs(() => work(batchLog(60).replaceAll("150.0 g", `150.${k + 1} g`)));
  return size === 0 ? 0 : processorMs(() => work(text));
}

function work(text: string): number {
  const { value } = readLog(text, { name: "many.yaml" });
  if (!value) throw new Error("the log cannot be read");
  if (pageIssues(value).length > 0) throw new Error("the log has a faulty figure");
  return batchFigures(value).figures.length;
}
