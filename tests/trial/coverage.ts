// How often the trial's intervals hold the truth, and whether a chance of 70 % comes true in 70 of 100.

import { type AimedCurve, aimFor, bestPlace, gridOver } from "../../lib/trial/aim.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";
import { type Founder, founderOf } from "./founders.ts";

export interface Tally {
  /** Pairs of [covered, asked]. */
  readonly curve: [number, number];
  readonly newBatch: [number, number];
  readonly aim: [number, number];
  readonly aimWidths: number[];
  /** Promised chance against what came true, for chances of 60 to 80 %. */
  readonly chance: { promised: number; kept: number; asked: number };
}

export function curvesOf({ x, y, truths }: Founder): AimedCurve[] {
  return truths.map((truth, k) => ({
    name: truth.name,
    low: truth.low,
    high: truth.high,
    curve: responseCurve({ x, y: y[k]! }, { peaked: truth.peaked }),
  }));
}

export function tryFounders(count: number, batches: number, first = 0, draws = 1024): Tally {
  const tally: Tally = {
    curve: [0, 0],
    newBatch: [0, 0],
    aim: [0, 0],
    aimWidths: [],
    chance: { promised: 0, kept: 0, asked: 0 },
  };
  for (let n = 0; n < count; n++) tryOne(founderOf(first + n, batches), tally, draws);
  return tally;
}

function tryOne(founder: Founder, tally: Tally, draws: number): void {
  const curves = curvesOf(founder);
  const { truths, random } = founder;
  const where = random.uniform(Math.min(...founder.x), Math.max(...founder.x));
  const fresh = founder.fresh(where);
  curves.forEach(({ curve }, k) => {
    const value = curve.at(where);
    if (!value) return;
    const truth = truths[k]!.at(where);
    tally.curve[1]++;
    if (truth >= value.low && truth <= value.high) tally.curve[0]++;
    tally.newBatch[1]++;
    if (fresh[k]! >= value.newLow && fresh[k]! <= value.newHigh) tally.newBatch[0]++;
  });
  if (curves.some(({ curve }) => curve.form === "points only")) return;
  const result = aimFor(curves, draws);
  const from = Math.min(...founder.x);
  const to = Math.max(...founder.x);
  const grid = gridOver(from, to);
  // The same place by the true curves, with the scatter that the founder sees.
  const truth = bestPlace(curves, grid, (k, row) => truths[k]!.at(grid[row]!));
  const step = (to - from) / 160;
  tally.aim[1]++;
  tally.aimWidths.push(result.aim.high - result.aim.low);
  if (truth >= result.aim.low - step && truth <= result.aim.high + step) tally.aim[0]++;
  // One place a founder, or those with a flat curve would count most.
  const promising = result.chances.filter(({ all }) => all >= 0.6 && all <= 0.8);
  if (promising.length === 0) return;
  const { x, all } = random.pick(promising);
  for (let k = 0; k < 4; k++) {
    const batch = founder.fresh(x);
    tally.chance.asked++;
    tally.chance.promised += all;
    if (batch.every((value, i) => value >= truths[i]!.low && value <= truths[i]!.high)) tally.chance.kept++;
  }
}

export const percent = ([covered, asked]: readonly [number, number]): number => (100 * covered) / asked;
