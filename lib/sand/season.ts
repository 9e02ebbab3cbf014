// A season forecast: pours to come, worked through for every draw of what is not known.

import {
  addClay,
  addNewSand,
  addWater,
  burn,
  columnsOfHeaps,
  copyOfHeaps,
  dryKgAt,
  type HeapColumns,
  type HeapContents,
  lose,
} from "./heap-columns.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";
import { type Band, bandOf, type HeapBands, heapBands, liveShares } from "./season-bands.ts";

/** One draw of what the heap holds and of how it wears. */
export interface SeasonDraw {
  readonly heap: HeapContents;
  /** Burnt sand for each kg of metal: dry mix whose clay is wholly killed, kg/kg. */
  readonly burntKgPerKg: number;
  /** Dry mix lost with each pour, kg. */
  readonly lostKg: number;
  /** Water lost from pour to pour, kg. */
  readonly driedKg: number;
  /** Fines of the new sand, % of its dry mass. */
  readonly newSandFinesPercent: number;
}

export interface SeasonPlan {
  readonly pours: number;
  /** Of one pour. */
  readonly metalKg: number;
  /**
   * none: nothing is put in. every pour: clay to the wanted share, then new sand to the mass that the heap began with.
   */
  readonly mend: "none" | "every pour";
  readonly toLiveClayOfDryMixPercent: number;
  readonly toMoistureOfDampPercent: number;
  readonly clayMoisturePercent: number;
  /** % of the bag's dry clay, against the bag that live clay is counted in. */
  readonly clayLivePercent: number;
  readonly newSandMoisturePercent: number;
  /** How much burnt sand differs from pour to pour, as a share: a factor of about 1 ± this (sd). */
  readonly betweenPours: number;
}

/** After so many pours of the plan, mended where it says so; pour 0 is today. */
export interface SeasonPoint extends HeapBands {
  readonly pour: number;
  /** Put in up to here, as weighed. */
  readonly clayKg: Band;
  readonly newSandKg: Band;
  readonly waterKg: Band;
}

export interface Season {
  readonly points: readonly SeasonPoint[];
  /** Live clay of each draw at each pour, % of dry mix: [pour][draw]. */
  readonly liveClay: readonly Float64Array[];
  /** Clay, new sand and water put in over all pours, of each draw, kg as weighed. */
  readonly used: { readonly clayKg: Float64Array; readonly newSandKg: Float64Array };
}

/** A plain score of mean 0 and sd 1 for a pour, one for each draw. */
export type PourScores = (pour: number) => ArrayLike<number>;

/**
 * The season of a plan with 95 % bands. Each draw is worked through pour by pour: burnt sand metalKg × burntKgPerKg ×
 * (about 1 ± betweenPours), losses, water dried; where the plan mends, clay C′ = (c* (dry) − A)/(π − c*) and as much
 * new sand as keeps the dry mass, then water to the moisture wanted.
 *
 * draws: one or more; masses 0 or more, kg. plan: pours a whole number from 0, metalKg > 0; percentages 0 to below 100,
 * wanted live clay below clayLivePercent. Else RangeError. scores: of pour 1, 2, …
 * points: false leaves the bands out, where live clay of every draw is all that is asked.
 * A mended heap that is richer than wanted gets no clay. Where clay alone is more than what was lost no new sand goes
 * in, and the heap grows. Grains are not broken: the band of fines holds what comes with new sand alone.
 * Source: mass balance; bands are quantiles of the draws (JCGM 101:2008, 7.7).
 * Example: one draw, 100 kg, 8 live, burnt 2 % and 5 kg lost with each pour, mended: heapSteadyState's amounts.
 */
export function forecastSeason(
  draws: readonly SeasonDraw[],
  plan: SeasonPlan,
  scores: PourScores,
  options: { readonly points?: boolean } = {},
): Season {
  requireAboveZero("forecastSeason", { draws: draws.length });
  return seasonOf(seasonColumns(draws), plan, scores, options);
}

/** Draws as columns. */
export interface SeasonColumns {
  readonly heaps: HeapColumns;
  readonly burntKgPerKg: Float64Array;
  readonly lostKg: Float64Array;
  readonly driedKg: Float64Array;
  readonly newSandFinesPercent: Float64Array;
}

export function seasonColumns(draws: readonly SeasonDraw[]): SeasonColumns {
  const column = (of: (draw: SeasonDraw) => number) => Float64Array.from(draws, of);
  return {
    heaps: columnsOfHeaps(draws.map(({ heap }) => heap)),
    burntKgPerKg: column((draw) => draw.burntKgPerKg),
    lostKg: column((draw) => draw.lostKg),
    driedKg: column((draw) => draw.driedKg),
    newSandFinesPercent: column((draw) => draw.newSandFinesPercent),
  };
}

/** forecastSeason of columns, which are left as they are. */
export function seasonOf(
  draws: SeasonColumns,
  plan: SeasonPlan,
  scores: PourScores,
  options: { readonly points?: boolean } = {},
): Season {
  const { points: wanted = true } = options;
  checkPlan(plan);
  const { burntKgPerKg, lostKg, driedKg, newSandFinesPercent } = draws;
  const count = lostKg.length;
  const heaps = copyOfHeaps(draws.heaps);
  const startKg = lostKg.map((_, i) => dryKgAt(heaps, i));
  const used = {
    clayKg: new Float64Array(count),
    newSandKg: new Float64Array(count),
    waterKg: new Float64Array(count),
  };
  const points = wanted ? [pointOf(0, heaps, used)] : [];
  const liveClay = [liveShares(heaps)];
  for (let pour = 1; pour <= plan.pours; pour++) {
    const score = scores(pour);
    for (let i = 0; i < count; i++) {
      const factor = unevenPour(plan.betweenPours, score[i]!);
      burn(heaps, i, plan.metalKg * burntKgPerKg[i]! * factor);
      lose(heaps, i, lostKg[i]!);
      addWater(heaps, i, -driedKg[i]!);
      if (plan.mend === "every pour") mend(heaps, i, newSandFinesPercent[i]!, startKg[i]!, plan, used);
    }
    if (wanted) points.push(pointOf(pour, heaps, used));
    liveClay.push(liveShares(heaps));
  }
  return { points, liveClay, used };
}

/**
 * The first pour after which live clay is below a floor, with its 95 % interval; Infinity where it does not come to
 * that within the plan. floorPercent: % of dry mix.
 * Source: that of forecastSeason.
 * @example
 * poursToFloor({ liveClay: Array.from({ length: 10 }, (_, k) => Float64Array.of(8 * 0.98 ** k)) }, 7).value
 * // 7
 */
export function poursToFloor({ liveClay }: Pick<Season, "liveClay">, floorPercent: number): Band {
  const count = liveClay[0]!.length;
  const first = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  for (let pour = liveClay.length - 1; pour >= 0; pour--) {
    const live = liveClay[pour]!;
    for (let i = 0; i < count; i++) if (live[i]! < floorPercent) first[i] = pour;
  }
  first.sort();
  // A count of pours: the nearest order statistic, since between a pour and never there is nothing.
  const at = (p: number): number => first[Math.min(count - 1, Math.floor(p * count))]!;
  return { low: at(0.025), value: at(0.5), high: at(0.975) };
}

/** exp(s z − s²/2): mean 1, never below zero. */
export function unevenPour(share: number, score: number): number {
  return Math.exp(share * score - (share * share) / 2);
}

function mend(
  heaps: HeapColumns,
  i: number,
  newSandFinesPercent: number,
  startKg: number,
  plan: SeasonPlan,
  used: { clayKg: Float64Array; newSandKg: Float64Array; waterKg: Float64Array },
): void {
  const wanted = plan.toLiveClayOfDryMixPercent / 100;
  const pi = plan.clayLivePercent / 100;
  const missingKg = Math.max(0, startKg - dryKgAt(heaps, i));
  // Clay and sand together fill what is missing: wanted share of the whole heap.
  const toFill = dryKgAt(heaps, i) + missingKg;
  const filling = Math.max(0, (wanted * toFill - heaps.liveClayKg[i]!) / pi);
  const clayKg =
    filling <= missingKg
      ? filling
      : Math.max(0, (wanted * dryKgAt(heaps, i) - heaps.liveClayKg[i]!) / (pi - wanted));
  const sandKg = Math.max(0, missingKg - clayKg);
  const clay = clayKg / (1 - plan.clayMoisturePercent / 100);
  const sand = sandKg / (1 - plan.newSandMoisturePercent / 100);
  addClay(heaps, i, clay, plan.clayMoisturePercent, plan.clayLivePercent);
  addNewSand(heaps, i, sand, plan.newSandMoisturePercent, newSandFinesPercent);
  const perDry = plan.toMoistureOfDampPercent / (100 - plan.toMoistureOfDampPercent);
  const water = Math.max(0, dryKgAt(heaps, i) * perDry - heaps.waterKg[i]!);
  addWater(heaps, i, water);
  used.clayKg[i]! += clay;
  used.newSandKg[i]! += sand;
  used.waterKg[i]! += water;
}

function pointOf(
  pour: number,
  heaps: HeapColumns,
  used: { clayKg: Float64Array; newSandKg: Float64Array; waterKg: Float64Array },
): SeasonPoint {
  return {
    pour,
    ...heapBands(heaps),
    clayKg: bandOf(used.clayKg),
    newSandKg: bandOf(used.newSandKg),
    waterKg: bandOf(used.waterKg),
  };
}

function checkPlan(plan: SeasonPlan): void {
  const { pours, metalKg, mend: _, betweenPours, ...percents } = plan;
  requireAboveZero("forecastSeason", { metalKg, clayLivePercent: plan.clayLivePercent });
  requireFromZero("forecastSeason", { pours, betweenPours, ...percents });
  if (!Number.isInteger(pours)) throw new RangeError(`forecastSeason: pours must be whole, got ${pours}`);
  if (!(plan.toLiveClayOfDryMixPercent < plan.clayLivePercent && plan.clayLivePercent <= 100))
    throw new RangeError("forecastSeason: no clay can bring a heap above its own live share");
  for (const [name, percent] of Object.entries(percents))
    if (name !== "clayLivePercent" && percent >= 100)
      throw new RangeError(`forecastSeason: ${name} must be below 100, got ${percent}`);
}
