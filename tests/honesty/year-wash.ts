// Clay by wash of a heap: portions dried, washed and weighed once more.

import { batchFigures } from "../../lib/log/batch-figures.ts";
import { trialData } from "../../lib/page/trial-data.ts";
import type { Seeded } from "../seeded.ts";
import { tableRows } from "./blocks.ts";
import { foundersScale } from "./instruments.ts";
import type { Ledger } from "./ledger.ts";
import { endsIn } from "./printed.ts";
import { head, logOf } from "./read.ts";

export function washOfTheYear(random: Seeded, founder: number, { note }: Ledger): void {
  const scale = foundersScale(random, "pocket scale", {
    stepG: random.pick([0.05, 0.1]),
    withinG: random.pick([0.1, 0.2]),
    capacityG: 200,
    flat: random.uniform() < 0.5,
  });
  // What one portion differs by from the next: grain that went with the water, clay that stayed.
  const scatter = random.uniform(0.1, 0.4);
  const heaps = Array.from({ length: 4 }, (_, k) => {
    const clay = random.uniform(5, 12);
    const portions = Array.from({ length: random.integer(1, 4) }, () => {
      const dry = random.uniform(48, 52);
      const grain = dry * (1 - (clay + scatter * random.normal()) / 100);
      return `      - { dry: ${scale.weigh(dry)} g, grain: ${scale.weigh(grain)} g, scale: ${scale.name} }\n`;
    });
    const text = `  week ${k + 1}:\n    date: 2026-05-0${k + 1}\n    clay by wash:\n${portions.join("")}`;
    return { clay, portions: portions.length, text };
  });
  const log = logOf(
    `${head("Wash")}scales:\n${scale.line}\nbatches:\n${heaps.map(({ text }) => text).join("")}`,
  );
  const rows = tableRows(trialData(batchFigures(log).figures).blocks, "tests");
  heaps.forEach(({ clay, portions }, k) => {
    const cell = Object.entries(rows[k] ?? {}).find(([name]) => name.startsWith("Clay by wash"))?.[1];
    note({
      founder,
      notebook: "home rigs",
      figure: "clay by wash",
      ends: endsIn(cell ?? ""),
      truth: clay,
      naiveSd: scatter / Math.sqrt(portions),
    });
  });
}
