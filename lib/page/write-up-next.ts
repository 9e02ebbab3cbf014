// The next trial, in what to weigh and in which order.

import { nextAfter } from "../finding/write-up-messages.ts";
import type { WriteUp } from "../finding/write-up-record.ts";
import { randomOrder } from "../trial/confounding.ts";
import { leastBatches } from "../trial/trial-report.ts";
import type { Section } from "./blocks.ts";
import type { ShownUnits } from "./shown-units.ts";
import { nextBatchWords } from "./trial-water.ts";

/** The batch that helps most, then the whole trial again in an order that is shuffled anew, always the same. */
export function writeUpNext({ report, rows }: WriteUp, units: ShownUnits): Section {
  const { confounded, levels, result } = report;
  // Of two blocks the one that meets the ranges more surely.
  const [best] = [...report.blockAims].sort((a, b) => b.result.chanceAtAim - a.result.chanceAtAim);
  const next = nextBatchWords(best ? { ...report, result: best.result } : report, units);
  const names = rows.map(({ batch }) => batch.name);
  const thin = report.rows.length < leastBatches || levels < 3;
  const apart = confounded.some(({ companion }) => companion !== "density");
  return {
    role: "next",
    title: "The next trial",
    blocks: [
      {
        kind: "list",
        items: [
          ...(rows.length === 0 ? [nextAfter.first] : []),
          ...(next ? [`${next} ${best ? nextAfter.likeBlock(best.block) : nextAfter.likeOthers}`] : []),
          ...(rows.length > 0 && thin ? [nextAfter.thin] : []),
          ...(result?.window && !next ? [nextAfter.confirm] : []),
          ...(apart ? [nextAfter.unconfound] : []),
          ...(names.length > 2 ? [nextAfter.again(randomOrder(names, "write-up").join(", "))] : []),
        ],
      },
    ],
  };
}
