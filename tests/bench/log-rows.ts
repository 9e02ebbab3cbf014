// A log of 2,000 batches against one of 200: read, checked, every figure worked out.

import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import { pageIssues } from "../../lib/log/page-issues.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { batchLog } from "./batch-log.ts";
import type { Row } from "./row.ts";
import { median, processorMs } from "./timing.ts";

const root = join(import.meta.dirname, "..", "..");

export function logRows(): Row[] {
  const [few, many] = [batchLog(200), batchLog(2000)];
  const work = (text: string) => () => {
    const { value } = readLog(text, { name: "many.yaml" });
    if (!value) throw new Error("the log cannot be read");
    if (pageIssues(value).length > 0) throw new Error("the log has a faulty figure");
    return batchFigures(value).figures.length;
  };
  processorMs(work(few));
  const small = median([0, 1, 2].map(() => processorMs(work(few))));
  const large = processorMs(work(many));
  const peakMB = peakOf(many);
  const seconds = (ms: number) => `${(ms / 1000).toFixed(2)} s`;
  return [
    {
      of: "long log, time",
      work: "a log of 2,000 batches: read, checked, every figure",
      measured: seconds(large),
      against: `200 batches: ${seconds(small)}`,
      figure: large / small,
      target: { most: 12, unit: "×" },
    },
    {
      of: "long log, memory",
      work: "the same log, peak memory of a script of a founder's own",
      measured: `${peakMB.toFixed(0)} MB`,
      against: "",
      figure: peakMB,
      target: { most: 400, unit: "MB" },
    },
  ];
}

/** Of a node of its own, with the library as it is built. */
function peakOf(text: string): number {
  const script = `import { readFileSync } from "node:fs";
    import { batchFigures, readLog } from ${JSON.stringify(pathToFileURL(join(root, "dist", "index.js")).href)};
    const { value } = readLog(readFileSync(0, "utf8"), { name: "many.yaml" });
    if (batchFigures(value).figures.length !== 2000) throw new Error("figures are missing");
    console.log(process.resourceUsage().maxRSS / 1000);`;
  const { status, stdout, stderr } = spawnSync(process.execPath, ["--input-type=module", "-e", script], {
    encoding: "utf8",
    input: text,
  });
  if (status !== 0) throw new Error(`the script ended with ${status}: ${stderr}`);
  return Number(stdout);
}
