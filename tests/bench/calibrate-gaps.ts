// Fits the scatter of the gaps (lib/sand/gap-scatter.ts) anew and prints the constants. About a minute.

import { gapsOf } from "../../lib/sand/gap.ts";
import { gapFeatures, gapScatterDf, logit, roughness } from "../../lib/sand/gap-scatter.ts";
import { homeStack, least, most, pointsOf } from "../../lib/sand/home-stack.ts";
import { afsClasses } from "../../lib/sand/multipliers.ts";
import { gradingOfShares } from "../sand/home-stack-coverage.ts";
import {
  homeStack as homeOpenings,
  type Passing,
  plausibleSand,
  sievedShares,
} from "../sand/plausible-sands.ts";
import { seeded } from "../seeded.ts";

interface Row {
  readonly miss: number;
  readonly weight: number;
  readonly features: readonly number[];
}

const rows: { top: Row[]; pan: Row[]; between: Row[] } = { top: [], pan: [], between: [] };
const random = seeded(20_260);
for (let n = 0; n < 15_000; n++) {
  const { passing } = plausibleSand(random);
  const openings = homeOpenings(random);
  const grading = gradingOfShares(openings, sievedShares(passing, openings));
  const stack = homeStack(grading);
  if (!stack.canEstimate) continue;
  const gaps = gapsOf(grading);
  const rough = roughness(pointsOf(gaps));
  stack.gaps.forEach((gap, k) => {
    if (gap.scatter === 0 || gap.share < 0.0005) return;
    const range = most(gap) - least(gap);
    const neighbours = Math.min(gaps[k - 1]?.share ?? 9, gaps[k + 1]?.share ?? 9);
    const truth = logit((trueMultiplier(passing, gap.lowerMm, gap.upperMm) - least(gap)) / range);
    rows[gap.place].push({
      miss: truth - logit((gap.multiplier - least(gap)) / range),
      weight: gap.share * range,
      features: gapFeatures(gap, rough, neighbours),
    });
  });
}

for (const place of ["top", "pan", "between"] as const) {
  const own = rows[place];
  const meanWeight = own.reduce((all, { weight }) => all + weight, 0) / own.length;
  const loss = (beta: readonly number[]): number =>
    own.reduce((all, { miss, weight, features }) => {
      const log = features.reduce((sum, feature, i) => sum + feature * beta[i]!, 0);
      const t = ((gapScatterDf + 1) / 2) * Math.log1p((miss / Math.exp(log)) ** 2 / gapScatterDf);
      return all + Math.min(3, weight / meanWeight) * (log + t);
    }, 0) / own.length;
  const best = descend(loss, [-0.8, 0.6, 1, 0.8, -0.2].slice(0, own[0]!.features.length));
  console.log(`${place}: [${best.map((b) => b.toFixed(3)).join(", ")}]  (${own.length} gaps)`);
}

/** Mean multiplier of the grains between two openings. */
function trueMultiplier(passing: Passing, lowerMm: number, upperMm: number): number {
  let held = 0;
  let products = 0;
  afsClasses.forEach(({ openingMm, multiplier }, k) => {
    const top = Math.min(upperMm, k === 0 ? Number.POSITIVE_INFINITY : afsClasses[k - 1]!.openingMm);
    const bottom = Math.max(lowerMm, openingMm);
    if (top <= bottom) return;
    const share =
      (top === Number.POSITIVE_INFINITY ? 1 : passing(top)) - (bottom === 0 ? 0 : passing(bottom));
    held += share;
    products += share * multiplier;
  });
  return products / held;
}

/** Coordinate search with shrinking steps: slow, sure, and good to a thousandth. */
function descend(loss: (beta: readonly number[]) => number, start: readonly number[]): number[] {
  let best = [...start];
  let lowest = loss(best);
  for (let step = 0.3; step > 0.001; ) {
    let moved = false;
    for (let i = 0; i < best.length; i++) {
      for (const sign of [1, -1]) {
        const next = best.map((b, j) => (j === i ? b + sign * step : b));
        const value = loss(next);
        if (value < lowest) [best, lowest, moved] = [next, value, true];
      }
    }
    if (!moved) step /= 2;
  }
  return best;
}
