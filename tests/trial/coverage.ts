// How often the trial's intervals hold the truth, and whether a chance of 70 % comes true in 70 of 100.

import { quantilesInPlace } from "../../lib/numbers/quantile.ts";
import { spread } from "../../lib/quantity/spread-of.ts";
import { firstDoseKg } from "../../lib/sand/first-dose.ts";
import { waterNeedKg } from "../../lib/sand/water-to-add.ts";
import { type AimResult, aimFor, gridOver } from "../../lib/trial/aim.ts";
import { type AimedCurve, bestPlace } from "../../lib/trial/best-place.ts";
import { drawCurves } from "../../lib/trial/curve-draws.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";
import { type Founder, type FounderSpec, founderOf } from "./founders.ts";

/** [came true, asked] */
export type Share = [number, number];

export interface Tally {
  /** The mean as the founder's own rigs read it: the curve's printed interval. */
  readonly curve: Share;
  /** The true mean, by the drawn curves, which hold the rigs' declared bias. */
  readonly trueCurve: Share;
  /**
   * A new batch read by the same rigs: on another day where the interval says that it holds for one, else on days like
   * these. otherDay: on another day always.
   */
  readonly newBatch: Share;
  readonly otherDay: Share;
  /** Every aim, and those that a page prints with a ±: with a window, and not open. */
  readonly aim: Share;
  readonly printedAim: Share;
  /** The water in all of a first dose, and whether the first part is not too much. */
  readonly dose: Share;
  readonly notTooMuch: Share;
  readonly aimWidths: number[];
  /** Promised chance against what came true, for chances of 60 to 80 %. */
  readonly chance: { promised: number; kept: number; asked: number };
}

export function noTally(): Tally {
  return {
    curve: [0, 0],
    trueCurve: [0, 0],
    newBatch: [0, 0],
    otherDay: [0, 0],
    aim: [0, 0],
    printedAim: [0, 0],
    dose: [0, 0],
    notTooMuch: [0, 0],
    aimWidths: [],
    chance: { promised: 0, kept: 0, asked: 0 },
  };
}

export function curvesOf({ x, y, truths, blocks, biases }: Founder): AimedCurve[] {
  return truths.map(({ name, low, high, peaked }, k) => {
    const bias = biases[k];
    return {
      name,
      low,
      high,
      curve: responseCurve({ x, y: y[k]!, blocks }, { peaked }),
      ...(bias ? { bias } : {}),
    };
  });
}

export interface Tried extends FounderSpec {
  readonly batches: number;
  readonly founders: number;
  /** Only the curves, which cost little; else also what is drawn: true curve, aim, dose, chance. */
  readonly drawn: boolean;
  readonly first?: number;
  readonly draws?: number;
}

export function tryFounders({ founders, batches, first = 0, drawn, draws = 512, ...spec }: Tried): Tally {
  const tally = noTally();
  for (let n = 0; n < founders; n++) {
    const founder = founderOf(first + n, batches, spec);
    const curves = curvesOf(founder);
    tryCurves(founder, curves, tally, drawn ? draws : 0);
    if (!drawn || curves.some(({ curve }) => curve.form === "points only")) continue;
    const result = aimFor(curves, draws);
    tryAim(founder, curves, result, tally);
    tryChance(founder, result, tally);
  }
  return tally;
}

function count(share: Share, come: boolean): void {
  share[1]++;
  if (come) share[0]++;
}

function tryCurves(founder: Founder, curves: readonly AimedCurve[], tally: Tally, draws: number): void {
  const where = founder.random.uniform(Math.min(...founder.x), Math.max(...founder.x));
  const fresh = founder.fresh(where);
  const another = founder.fresh(where, "another");
  curves.forEach((one, k) => {
    const value = one.curve.at(where);
    if (!value) return;
    const { low, high, newLow, newHigh } = value;
    const truth = founder.read(k, where);
    const off = truth - founder.mean(k, where);
    count(tally.curve, truth >= low && truth <= high);
    const within = (value: number): boolean => value + off >= newLow && value + off <= newHigh;
    count(tally.newBatch, within(one.curve.newBlock ? another[k]! : fresh[k]!));
    count(tally.otherDay, within(another[k]!));
    if (draws === 0) return;
    const { coefficients } = drawCurves([one], draws).with(0)[0]!;
    const row = one.curve.row(where);
    const means = Float64Array.from({ length: draws }, (_, i) =>
      row.reduce((all, power, j) => all + power * coefficients[j]![i]!, 0),
    );
    const [from, to] = quantilesInPlace(means, [0.025, 0.975]) as [number, number];
    const mean = founder.mean(k, where);
    count(tally.trueCurve, mean >= from && mean <= to);
  });
}

function tryAim(founder: Founder, curves: readonly AimedCurve[], result: AimResult, tally: Tally): void {
  const { aim, window } = result;
  const from = Math.min(...founder.x);
  const to = Math.max(...founder.x);
  const grid = gridOver(from, to);
  // The same place by the true curves, with the scatter that the founder sees.
  const truth = bestPlace(curves, grid, (k, row) => founder.mean(k, grid[row]!));
  const step = (to - from) / 160;
  const held = truth >= aim.low - step && truth <= aim.high + step;
  count(tally.aim, held);
  tally.aimWidths.push(aim.high - aim.low);
  if (!window || aim.open.low || aim.open.high) return;
  count(tally.printedAim, held);
  tryDose(founder, aim, truth, tally);
}

/** A heap of 100 kg a point or so below the aim, its moisture tested as the batches' was; the dose as a page works it out. */
function tryDose({ random, scaleSd }: Founder, aim: AimResult["aim"], truth: number, tally: Tally): void {
  const heap = aim.x - random.uniform(0.5, 2);
  const sd = Math.max(scaleSd, 0.03);
  const source = "moisture of the heap";
  const dose = firstDoseKg(
    {
      heapKg: 100,
      fromOfDampPercent: spread({ mean: heap + sd * random.normal(), sd, source }),
      toOfDampPercent: spread({
        mean: aim.x,
        halfWidth: (aim.high - aim.low) / 2,
        kind: "normal",
        source: "the aim",
      }),
    },
    { draws: 256 },
  );
  if (dose.verdict !== "add") return;
  const need = waterNeedKg({ heapKg: 100, fromOfDampPercent: heap, toOfDampPercent: truth });
  count(tally.dose, need >= dose.inAllKg.low && need <= dose.inAllKg.high);
  count(tally.notTooMuch, dose.nowKg <= need);
}

function tryChance(founder: Founder, { chances }: AimResult, tally: Tally): void {
  // One place a founder, or those with a flat curve would count most.
  const promising = chances.filter(({ all }) => all >= 0.6 && all <= 0.8);
  if (promising.length === 0) return;
  const { x, all } = founder.random.pick(promising);
  for (let k = 0; k < 4; k++) {
    tally.chance.asked++;
    tally.chance.promised += all;
    const met = founder
      .fresh(x)
      .every((value, i) => value >= founder.truths[i]!.low && value <= founder.truths[i]!.high);
    if (met) tally.chance.kept++;
  }
}

export function together(tallies: readonly Tally[]): Tally {
  const all = noTally();
  for (const tally of tallies) {
    for (const name of shareNames) {
      all[name][0] += tally[name][0];
      all[name][1] += tally[name][1];
    }
    all.aimWidths.push(...tally.aimWidths);
    all.chance.promised += tally.chance.promised;
    all.chance.kept += tally.chance.kept;
    all.chance.asked += tally.chance.asked;
  }
  return all;
}

export const shareNames = [
  "curve",
  "trueCurve",
  "newBatch",
  "otherDay",
  "aim",
  "printedAim",
  "dose",
  "notTooMuch",
] as const;

export const percent = ([come, asked]: readonly [number, number]): number => (100 * come) / asked;

/** How often the interval of one property's curve, straight through the batches or curved, holds the true mean. */
export function tryProperty(property: number, { founders, batches, first = 0, ...spec }: Tried): Share {
  const share: Share = [0, 0];
  for (let n = 0; n < founders; n++) {
    const founder = founderOf(first + n, batches, spec);
    const { curve } = curvesOf(founder)[property]!;
    const where = founder.random.uniform(curve.from, curve.to);
    const value = curve.at(where);
    if (!value) continue;
    const truth = founder.read(property, where);
    count(share, truth >= value.low && truth <= value.high);
  }
  return share;
}
