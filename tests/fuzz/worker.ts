// The thread that runs the cases; the runner watches it and ends it where it hangs.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { parentPort, workerData } from "node:worker_threads";
import { notebookOf } from "../demos.ts";
import { fuzzKinds } from "./kinds.ts";
import { type Batch, type Failure, runBatch } from "./run-kind.ts";
import type { Texts } from "./texts.ts";
import { boardOn, noteOn } from "./watch.ts";

export interface WorkerData {
  readonly memory: SharedArrayBuffer;
  readonly kind: string;
  readonly batches: readonly Batch[];
}

export type FromWorker =
  | {
      readonly is: "batch";
      readonly done: number;
      readonly cases: number;
      readonly told: string;
      readonly slowest: { readonly ms: number; readonly step: string; readonly texts: Texts };
      readonly failure?: Failure;
    }
  | { readonly is: "end" };

const { memory, kind: name, batches } = workerData as WorkerData;
const names = readdirSync(join(import.meta.dirname, "../../notebooks")).map((file) =>
  file.replace(".ts", ""),
);
const notebooks = await Promise.all(names.sort().map(notebookOf));
const kinds = fuzzKinds({ notebooks, often: { again: 4, edit: 100, page: 400, drawn: 25 } });
const kind = kinds.find((one) => one.name === name)!;
const note = noteOn(boardOn(memory));
const say = (message: FromWorker): void => parentPort!.postMessage(message);
const ms = (): number => process.cpuUsage().user / 1000;

for (const [done, batch] of batches.entries()) {
  let cases = 0;
  let slowest = { ms: 0, step: "", texts: [] as Texts };
  let running: { step: string; texts: Texts; since: number } | undefined;
  const stopped = (): void => {
    if (!running) return;
    const took = ms() - running.since;
    if (took > slowest.ms) slowest = { ms: took, step: running.step, texts: running.texts };
    running = undefined;
  };
  const failure = await runBatch(kind, batch, {
    step(step, texts) {
      stopped();
      note(step, texts);
      running = { step, texts, since: ms() };
    },
    over() {
      stopped();
      cases++;
    },
  });
  say({ is: "batch", done, cases, told: kind.told(), slowest, ...(failure ? { failure } : {}) });
}
for (const { done } of kinds) done?.();
say({ is: "end" });
