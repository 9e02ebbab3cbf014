// A notebook run for the first time, and run again after one reading of its log was changed.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Log, type Notebook, readLog } from "../../lib/index.ts";
import { batchLog } from "./batch-log.ts";
import type { Row } from "./row.ts";
import { median, processorMs } from "./timing.ts";

const root = join(import.meta.dirname, "..", "..");
const demo = (path: string) => readFileSync(join(root, "data-demo", path), "utf8");

const runs: readonly { readonly notebook: string; readonly name: string; readonly text: () => string }[] = [
  ["grain-fineness", "two-bags.yaml"],
  ["blend", "like-the-old-sand.yaml"],
  ["moisture-trial", "seven-waters.yaml"],
  ["clay-trial", "two-clays.yaml"],
  ["clay-trial", "three-clays-three-waters.yaml"],
  ["write-up", "two-mullings.yaml"],
  ["diary", "one-heap.yaml"],
  ["home-rigs", "three-batches.yaml"],
  ["heap", "summer-of-pours.yaml"],
].map(([notebook, name]) => ({
  notebook: notebook!,
  name: name!,
  text: () => demo(`${notebook}/${name}`),
}));
const long = { notebook: "moisture-trial", name: "200 batches", text: () => batchLog(200) };

/** Each of another figure: none was seen before, so that nothing of it is kept. */
const edits = Array.from({ length: 9 }, (_, edit) => edit);

/** Processor time, so that what else the machine does counts little. */
export async function runRows(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const { notebook, name, text } of [...runs, long]) {
    const path = pathToFileURL(join(root, "notebooks", `${notebook}.ts`)).href;
    const { run } = ((await import(path)) as { readonly default: Notebook }).default;
    const typed = text();
    const timed = (changed: string): number => {
      const log = logOf(changed);
      return processorMs(() => run(log));
    };
    const first = timed(typed);
    const again = median(edits.map((edit) => timed(edited(typed, edit))));
    rows.push({
      work: `${notebook}, ${name}: run after an edit of one reading`,
      measured: `${again.toFixed(0)} ms`,
      against: `first run: ${first.toFixed(0)} ms`,
      figure: again,
      target: name === long.name ? { most: 3000, unit: "ms" } : { most: 50, unit: "ms" },
    });
  }
  return rows;
}

function logOf(text: string): Log {
  const { value } = readLog(text, { name: "bench.yaml" });
  if (!value) throw new Error("the log cannot be read");
  return value;
}

/** The log with the last digit of one of its weights or lengths moved: another one for each edit. */
function edited(text: string, edit: number): string {
  const found = [...text.matchAll(/\d+\.\d+(?= (?:g|mm)\b|,)/g)];
  const { 0: typed, index } = found[Math.floor(found.length * (((edit + 1) * 0.618034) % 1))]!;
  const digits = typed.split(".")[1]!.length;
  const moved = (Number(typed) + 10 ** -digits).toFixed(digits);
  return text.slice(0, index) + moved + text.slice(index + typed.length);
}
