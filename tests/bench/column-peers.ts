// Peers that work on whole columns: looked for, never required.

import { spawnSync } from "node:child_process";
import { median, processorMs } from "./timing.ts";

interface Table {
  derive(columns: object): Table;
  array(name: string): ArrayLike<number>;
}
interface Arquero {
  table(columns: object): Table;
}

/** Milliseconds of one run; undefined where it is not installed. Throws where its figures are others. */
export async function arqueroMs(
  wet: Float64Array,
  dry: Float64Array,
  right: Float64Array,
): Promise<number | undefined> {
  const name = "arquero";
  const arquero = (await import(name).catch(() => undefined)) as Arquero | undefined;
  if (!arquero) return undefined;
  const table = arquero.table({ wet, dry });
  const run = () =>
    table
      .derive({ loss: (d: { wet: number; dry: number }) => ((d.wet - d.dry) / d.wet) * 100 })
      .array("loss");
  const figures = run();
  if (right.some((figure, i) => figures[i] !== figure)) throw new Error("arquero works out other figures");
  return median(Array.from({ length: 9 }, () => processorMs(run)).slice(2));
}

/** By R's own vectors, in a process of its own that has warmed up; undefined where there is no Rscript. */
export function rMs(rows: number): number | undefined {
  const code = `i <- 0:${rows - 1}; wet <- 150 + (i %% 70) / 10; dry <- wet - (i %% 50) / 10
for (k in 1:3) out <- (wet - dry) / wet * 100
took <- sapply(1:9, function(k) { t <- proc.time(); for (j in 1:10) out <- (wet - dry) / wet * 100; sum((proc.time() - t)[1:2]) })
cat(median(took) * 100)`;
  const { status, stdout } = spawnSync("Rscript", ["--vanilla", "-e", code], { encoding: "utf8" });
  return status === 0 ? Number(stdout) : undefined;
}
