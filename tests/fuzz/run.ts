// npm run fuzz: many cases of every kind with a new seed, a watch over each, what failed made small and written down.
//   FUZZ_SEED=n repeats a run; FUZZ=n makes n times as many cases; FUZZ_KIND="formulas" runs one kind.

import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Worker } from "node:worker_threads";
import type { Batch, Failure } from "./run-kind.ts";
import type { Texts } from "./texts.ts";
import { boardOn, newBoard, noted } from "./watch.ts";
import type { FromWorker, WorkerData } from "./worker.ts";

/** Cases of each kind: 100,000 logs in all, and as many formulas. */
const COUNTS: readonly (readonly [kind: string, cases: number])[] = [
  ["formulas", 100_000],
  ["formulas of plain numbers", 20_000],
  ["quantities", 100_000],
  ["sieves", 50_000],
  ["logs from the grammar", 38_000],
  ["logs of words", 40_000],
  ["logs with CSV files", 9_000],
  ["logs from the demos", 6_000],
  ["logs with other line ends", 3_500],
  ["logs that choke", 1_500],
  ["files of any bytes", 2_000],
];
/** Seconds of the clock for one step of one case, a page drawn among them, on a machine that does other work too. */
const HANGS_AFTER = 30;
const CASES_OF_BATCH = 250;

/** A thread does not take over the reader of TypeScript that this one runs by. */
const START = `import("tsx/esm/api").then(({ register }) => {
  register();
  return import(${JSON.stringify(new URL("./worker.ts", import.meta.url).href)});
});`;

const seed = Number(process.env.FUZZ_SEED ?? Date.now() % 2 ** 31);
const times = Number(process.env.FUZZ ?? 1);
const only = process.env.FUZZ_KIND?.split(",");
const out = join(import.meta.dirname, "../../out/fuzz");
mkdirSync(out, { recursive: true });
console.log(`seed ${seed}; FUZZ_SEED=${seed} npm run fuzz repeats it; what fails is written to out/fuzz`);

let failed = 0;
const seen = new Map<string, number>();
for (const [kind, count] of COUNTS.filter(([kind]) => only === undefined || only.includes(kind))) {
  const batches = Array.from({ length: Math.ceil((count * times) / CASES_OF_BATCH) }, (_, k) => ({
    seed: (seed + k * 7919) | 0,
    cases: Math.min(CASES_OF_BATCH, Math.round(count * times) - k * CASES_OF_BATCH),
  }));
  await runKind(kind, batches);
}
console.log(failed === 0 ? "nothing failed" : `${failed} failures of ${seen.size} sorts, in out/fuzz`);
process.exitCode = failed === 0 ? 0 : 1;

async function runKind(kind: string, batches: readonly Batch[]): Promise<void> {
  const began = Date.now();
  const sum = { cases: 0, told: "", slowest: { ms: 0, step: "", texts: [] as Texts } };
  let from = 0;
  while (from < batches.length) from += await runWorker(kind, batches.slice(from), sum);
  const seconds = (Date.now() - began) / 1000;
  const { ms, step, texts } = sum.slowest;
  const size = texts.reduce((all, { text }) => all + text.length, 0);
  console.log(
    `${kind}: ${sum.cases} cases (${sum.told}), ${Math.round(sum.cases / seconds)} a second; slowest step ${Math.round(ms)} ms of processor time (${step}, ${size} characters)`,
  );
  writeFileSync(join(out, `slowest ${kind}.json`), JSON.stringify({ ms, step, texts }, undefined, 1));
}

/** How many batches are over, with the one that hung. */
function runWorker(
  kind: string,
  batches: readonly Batch[],
  sum: { cases: number; told: string; slowest: { ms: number; step: string; texts: Texts } },
): Promise<number> {
  return new Promise((resolve, reject) => {
    const memory = newBoard();
    const board = boardOn(memory);
    const workerData: WorkerData = { memory, kind, batches };
    const worker = new Worker(START, { eval: true, workerData });
    let done = 0;
    let ticks = -1;
    let since = Date.now();
    const watch = setInterval(() => {
      if (board.ticks[0] !== ticks) {
        ticks = board.ticks[0]!;
        since = Date.now();
      } else if (ticks > 0 && Date.now() - since > HANGS_AFTER * 1000) {
        const { step, texts } = JSON.parse(noted(board)) as { step: string; texts: Texts };
        tell({ kind, seed: batches[done]!.seed, step, message: "hangs", texts });
        end(done + 1);
      }
    }, 500);
    const end = (count: number): void => {
      clearInterval(watch);
      worker.terminate().then(() => resolve(count), reject);
    };
    worker.on("message", (message: FromWorker) => {
      if (message.is === "end") return end(batches.length);
      done = message.done + 1;
      sum.cases += message.cases;
      sum.told = message.told;
      // So that a run that is cut short says how far it came.
      if (done % 20 === 0) writeFileSync(join(out, `${kind}.txt`), `${sum.cases} cases (${sum.told})\n`);
      if (message.slowest.ms > sum.slowest.ms) sum.slowest = message.slowest;
      if (message.failure) tell(message.failure);
    });
    worker.on("error", (error) => {
      clearInterval(watch);
      reject(error);
    });
  });
}

/** One file and one line for each sort of failure; the others of the sort are counted. */
function tell(failure: Failure): void {
  failed++;
  const sort = `${failure.step.replace(/^.*: /, "")} ${failure.message.replace(/\d+|"[^"]*"|“[^”]*”/g, "…").slice(0, 160)}`;
  const before = seen.get(sort) ?? 0;
  seen.set(sort, before + 1);
  if (before > 0) return;
  const file = `failure ${seen.size}.json`;
  writeFileSync(join(out, file), JSON.stringify(failure, undefined, 1));
  console.log(`FAILED ${file}: ${failure.kind}, seed ${failure.seed}, ${failure.step}: ${failure.message}`);
  for (const { name, text } of failure.texts) console.log(`  ${name}: ${JSON.stringify(text).slice(0, 600)}`);
}
