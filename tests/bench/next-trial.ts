// How many batches the advice of the next trial saves against going on evenly. About two minutes.

import { type AimedCurve, aimFor } from "../../lib/trial/aim.ts";
import { nextTrial } from "../../lib/trial/next-trial.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";
import { type Founder, founderOf } from "../trial/founders.ts";

const most = 14;
const wanted = 0.3;

/** Between 2.6 and 4.8 % in the order that fills gaps evenly: halves, quarters, eighths. */
const even = [3.15, 4.25, 2.875, 3.425, 3.975, 4.525, 2.74, 3.29, 3.84];

function curvesOf(founder: Founder, x: readonly number[], y: readonly (readonly number[])[]): AimedCurve[] {
  return founder.truths.map(({ name, low, high, peaked }, k) => ({
    name,
    low,
    high,
    curve: responseCurve({ x, y: y[k]! }, { peaked }),
  }));
}

/** Batches made until the aim's interval is narrow enough; undefined where the sand cannot meet the aims. */
function batchesNeeded(
  seed: number,
  choose: (curves: readonly AimedCurve[], made: number) => number,
): number | undefined {
  const founder = founderOf(seed, 5);
  const x = [...founder.x];
  const y = founder.y.map((row) => [...row]);
  for (;;) {
    const curves = curvesOf(founder, x, y);
    const { aim, window } = aimFor(curves, 512);
    if (x.length === 5 && !window) return undefined;
    if (aim.high - aim.low <= wanted || x.length >= most) return x.length;
    const at = choose(curves, x.length);
    x.push(at);
    founder.fresh(at).forEach((value, k) => {
      y[k]!.push(value);
    });
  }
}

let [advised, evenly, count] = [0, 0, 0];
for (let seed = 900; count < Number(process.argv[2] ?? 100); seed++) {
  const a = batchesNeeded(seed, (curves) => nextTrial(curves).candidates[0]!.x);
  const b = batchesNeeded(seed, (_, made) => even[made - 5]!);
  if (a === undefined || b === undefined) continue;
  advised += a;
  evenly += b;
  count++;
}
console.log(
  `batches until the aim is ${wanted} % wide: advised ${(advised / count).toFixed(2)}, evenly ${(evenly / count).toFixed(2)}, over ${count} founders who can meet their aims`,
);
