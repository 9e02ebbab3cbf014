// Two ways of going on with a trial: by the advice of where the next batch tells most, and evenly.

import { aimFor } from "../../lib/trial/aim.ts";
import { nextTrial } from "../../lib/trial/next-trial.ts";
import { curvesOf } from "./coverage.ts";
import { founderOf } from "./founders.ts";

const first = 5;
/** No trial goes on for longer. */
const most = 14;
/** Width of the aim's 95 % interval at which a trial ends, points of moisture. */
export const wantedWidth = 0.3;

/** Between 2.6 and 4.8 % in the order that fills gaps evenly: halves, quarters, eighths. */
const even = [3.15, 4.25, 2.875, 3.425, 3.975, 4.525, 2.74, 3.29, 3.84];

export type Way = "advised" | "evenly";

/** Batches made until the aim's interval is narrow enough, 14 at most; undefined where the aims cannot be met. */
export function batchesNeeded(seed: number, way: Way, draws = 512): number | undefined {
  const founder = founderOf(seed, first);
  const x = [...founder.x];
  const y = founder.y.map((row) => [...row]);
  for (;;) {
    const curves = curvesOf({ ...founder, x, y, blocks: x.map(() => "one day") });
    const { aim, window } = aimFor(curves, draws);
    if (x.length === first && !window) return undefined;
    if (aim.high - aim.low <= wantedWidth || x.length >= most) return x.length;
    const at = way === "advised" ? nextTrial(curves).candidates[0]!.x : even[x.length - first]!;
    x.push(at);
    founder.fresh(at).forEach((value, k) => {
      y[k]!.push(value);
    });
  }
}

/** How many more batches a founder needs evenly than advised, for each of count founders who can meet their aims. */
export function batchesSaved(
  from: number,
  count: number,
  draws?: number,
): { readonly advised: number; readonly evenly: number }[] {
  const found: { readonly advised: number; readonly evenly: number }[] = [];
  for (let seed = from; found.length < count; seed++) {
    const advised = batchesNeeded(seed, "advised", draws);
    if (advised === undefined) continue;
    found.push({ advised, evenly: batchesNeeded(seed, "evenly", draws)! });
  }
  return found;
}
