// Fits the scatter of the gaps (lib/sand/gap-scatter.ts) anew and prints the weights; then how often other sands are held
// by some factors on them, by number of sieves and by kind. About a minute and a half.

import { gapsOf } from "../../lib/sand/gap.ts";
import { gapFeatures, gapScatterDf, gapScatterFactor, logit, roughness } from "../../lib/sand/gap-scatter.ts";
import { homeStack, least, likelyFineness, most, pointsOf } from "../../lib/sand/home-stack.ts";
import { afsClasses } from "../../lib/sand/multipliers.ts";
import { gradingOfShares, trueFineness } from "../sand/home-stack-coverage.ts";
import {
  asBought,
  elevenMm,
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
  const { passing: sand } = plausibleSand(random);
  const openings = homeOpenings(random);
  const passing = asBought(random, sand, openings);
  const grading = gradingOfShares(openings, sievedShares(passing, openings));
  const stack = homeStack(grading);
  if (!stack.canEstimate) continue;
  const gaps = gapsOf(grading);
  const rough = roughness(pointsOf(gaps));
  stack.gaps.forEach((gap) => {
    if (gap.scatter === 0 || gap.share < 0.0005) return;
    const range = most(gap) - least(gap);
    const truth = logit((trueMultiplier(passing, gap.lowerMm, gap.upperMm) - least(gap)) / range);
    rows[gap.place].push({
      miss: truth - logit((gap.multiplier - least(gap)) / range),
      weight: gap.share * range,
      features: gapFeatures(gap, rough),
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
  const best = descend(loss, [0, 0.8, 0, 1, -0.2].slice(0, own[0]!.features.length));
  console.log(`${place}: [${best.map((b) => b.toFixed(3)).join(", ")}]  (${own.length} gaps)`);
}

// The factor, on weights that are in the library already: other sands, of which none was fitted to.
const factors = [1.1, 1.2, 1.25, 1.3, 1.4];
const tried: { readonly of: readonly string[]; readonly held: readonly boolean[] }[] = [];
const others = seeded(4321);
for (let n = 0; n < 10_000; n++) {
  const { kind, passing: sand } = plausibleSand(others);
  const openings = homeOpenings(others);
  const passing = asBought(others, sand, openings);
  const stack = homeStack(gradingOfShares(openings, sievedShares(passing, openings)));
  if (!stack.canEstimate) continue;
  const truth = trueFineness(passing);
  const held = factors.map((factor) => {
    const by = factor / gapScatterFactor;
    const gaps = stack.gaps.map((gap) => ({ ...gap, scatter: by * gap.scatter }));
    const { low, high } = likelyFineness({ ...stack, gaps }, 256)!;
    return truth >= low - 0.05 && truth <= high + 0.05;
  });
  const series = openings.every((mm) => elevenMm.some((one) => one === mm)) ? "some of the eleven" : "others";
  tried.push({ of: ["all", series, `${openings.length} sieves`, kind], held });
}
console.log(`held, %, with the factor: ${factors.join(", ")}`);
for (const name of new Set(tried.flatMap(({ of }) => of).toSorted())) {
  const own = tried.filter(({ of }) => of.includes(name));
  const shares = factors.map((_, k) => (100 * own.filter(({ held }) => held[k]).length) / own.length);
  console.log(`${name} (${own.length}): ${shares.map((share) => share.toFixed(1)).join(", ")}`);
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
