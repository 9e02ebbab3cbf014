// How often a curve through three batches of compactability holds the truth, and how wide it is against a plain line.
// npx tsx tests/bench/few-batches.ts [founders]

import { curveSlope } from "../../lib/finding/curve-slope.ts";
import { figure } from "../../lib/quantity/figure.ts";
import { publishedWaterSensitivity } from "../../lib/sand/published-water-sensitivity.ts";
import { publishedSlope } from "../../lib/trial/published-slopes.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";
import { type FewFounders, fewFounders } from "../trial/few-founders.ts";

const founders = Number(process.argv[2] ?? 1000);
const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;
const percent = (share: number): string => (100 * share).toFixed(1).padStart(5);
const { low, high } = publishedWaterSensitivity;

for (const batches of [3, 4])
  for (const span of [1, 2.5])
    for (const scatter of [
      [0.8, 2],
      [2, 4],
    ] as const)
      for (const roundTo of [0, 1]) {
        const asked: FewFounders = { seed: 5, founders, batches, span, scatter, roundTo };
        const [held, fresh, widths, plain, slopes, beyond] = [[], [], [], [], [], []] as number[][];
        for (const { x, y, at, truth, newBatch, slope } of fewFounders(asked)) {
          const curve = responseCurve(
            { x, y },
            { peaked: false, published: (a, b) => publishedSlope("compactability", "moisture", a, b) },
          );
          const value = curve.at(at)!;
          const line = responseCurve({ x, y }, { peaked: false }).at(at)!;
          held!.push(Number(value.low <= truth && truth <= value.high));
          fresh!.push(Number(value.newLow <= newBatch && newBatch <= value.newHigh));
          widths!.push(value.high - value.low);
          plain!.push(line.high - line.low);
          const steep = figure(curveSlope(curve, undefined)!);
          slopes!.push(Number(steep.low <= slope && slope <= steep.high));
          beyond!.push(Number(slope > steep.quantile(0.9)));
        }
        const share = (of: readonly number[]): number => of.reduce((a, b) => a + b, 0) / of.length;
        console.log(
          `${batches} batches over ${span} %, scatter ${scatter.join(" to ")}, rounded to ${roundTo}: mean ${percent(share(held!))} %, new batch ${percent(share(fresh!))} %, slope ${percent(share(slopes!))} %, steeper than its 90 % quantile ${percent(share(beyond!))} %; median width ${median(widths!).toFixed(1)} of ${median(plain!).toFixed(1)}`,
        );
      }
console.log(
  `true slopes evenly from ${(10 / high).toFixed(0)} to ${(10 / low).toFixed(0)} points for 1 % of water`,
);
