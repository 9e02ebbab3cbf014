// The season of a log's plan: what the heap comes to, when to rebond, what to buy, and what if.

import type { Log } from "../log/types.ts";
import { contentOf } from "../quantity/content.ts";
import { type Kept, kept } from "../quantity/kept.ts";
import { copyOfHeaps, dryKgAt, type HeapColumns } from "../sand/heap-columns.ts";
import { heapSteadyState } from "../sand/heap-steady-state.ts";
import {
  poursToFloor,
  type SeasonColumns,
  type SeasonPlan,
  type SeasonPoint,
  seasonColumns,
  seasonOf,
} from "../sand/season.ts";
import { type Band, bandOf } from "../sand/season-bands.ts";
import type { OwnBurnOut } from "../trial/own-burn-out.ts";
import { dryingUnderCovers } from "./heap-covers.ts";
import { clayOfDryMix } from "./heap-history.ts";

export interface WhatIf {
  readonly name: string;
  readonly clayKg: Band;
  readonly newSandKg: Band;
  /** Made up between pours: what dried, and what left with the sand, less what clay and sand bring. */
  readonly waterKg: Band;
  /** Settled, % of the dry mix. */
  readonly deadClayPercent: Band;
  /** Pours until live clay is below the floor, from the heap once mended, no clay put in. */
  readonly toFloor: Band;
  /** Clay and sand for a thousand kilograms of metal; undefined without their prices. */
  readonly cost: Band | undefined;
}

export interface HeapSeason {
  readonly plan: SeasonPlan;
  readonly alone: { readonly points: readonly SeasonPoint[] };
  readonly mended: { readonly points: readonly SeasonPoint[] };
  readonly floorPercent: number;
  readonly toFloor: Band;
  /** The first is the plan as it is; amounts are for a thousand kilograms of metal, as weighed. */
  readonly whatIf: readonly WhatIf[];
  readonly halfWayPours: number;
  readonly currency: string;
}

/** Undefined without a plan of pours and their metal. */
export function heapSeason(log: Log, burnOut: OwnBurnOut): HeapSeason | undefined {
  const { planned } = log;
  const metalKg = planned?.metalKg?.value;
  const pours = planned?.pours?.value;
  if (!planned || metalKg === undefined || pours === undefined) return undefined;
  const wantedMoisture = log.wanted?.moisturePercent?.value ?? log.recipe?.moisturePercent?.value ?? 3.3;
  const plan: SeasonPlan = {
    pours: Math.min(500, Math.round(pours)),
    metalKg,
    mend: "every pour",
    toLiveClayOfDryMixPercent: wantedClay(log, wantedMoisture, burnOut),
    toMoistureOfDampPercent: wantedMoisture,
    clayMoisturePercent: log.recipe?.clayMoisturePercent?.value ?? 10,
    clayLivePercent: 100,
    newSandMoisturePercent: log.recipe?.sandMoisturePercent?.value ?? 0,
    betweenPours: 0.2,
  };
  const asked = {
    plan,
    lostKg: planned.lostKg?.value,
    covers: dryingUnderCovers(log, burnOut),
    perKg: { clay: priceOf(log, "bentonite", "clay"), sand: priceOf(log, "sand") },
    currency: log.prices?.currency ?? "",
  };
  return keptFor(burnOut, asked);
}

/** All that a season hangs on beside the burn-out. */
interface Asked {
  readonly plan: SeasonPlan;
  readonly lostKg: number | undefined;
  readonly covers: readonly { readonly name: string; readonly driedKg: Float64Array }[];
  readonly perKg: Readonly<Record<"clay" | "sand", number | undefined>>;
  readonly currency: string;
}

/** The burn-out of a record is one object from run to run while the record is the same. */
const seasons = new WeakMap<OwnBurnOut, Kept<HeapSeason>>();

function keptFor(burnOut: OwnBurnOut, asked: Asked): HeapSeason {
  const of = seasons.get(burnOut) ?? kept<HeapSeason>(400_000, () => 50_000);
  seasons.set(burnOut, of);
  const covers = asked.covers.map(({ name, driedKg }) => [name, driedKg.join()]);
  const key = contentOf({ ...asked, covers });
  const before = key === undefined ? undefined : of.get(key);
  if (before) return before;
  const made = workedOut(burnOut, asked);
  if (key !== undefined) of.set(key, made);
  return made;
}

function workedOut(burnOut: OwnBurnOut, asked: Asked): HeapSeason {
  const { plan, covers, lostKg } = asked;
  const recorded = seasonColumns(burnOut.now);
  const now = lostKg ? { ...recorded, lostKg: recorded.lostKg.map(() => lostKg) } : recorded;
  const floorPercent = 0.9 * plan.toLiveClayOfDryMixPercent;
  const alone = seasonOf(now, { ...plan, mend: "none" }, burnOut.scores);
  const mended = seasonOf(now, plan, burnOut.scores);
  const halves = { ...now, heaps: scaled(now.heaps, 0.5) };
  const doubled = { ...now, lostKg: now.lostKg.map((kg) => 2 * kg) };
  const cheaper = { ...plan, clayLivePercent: 75 };
  const whatIf = (name: string, draws: SeasonColumns, own: SeasonPlan): WhatIf =>
    outcome(name, asked, draws, own, floorPercent, burnOut);
  const lost = now.lostKg.reduce((all, kg, i) => all + kg / dryKgAt(now.heaps, i), 0) / now.lostKg.length;
  return {
    plan,
    alone: { points: alone.points },
    mended: { points: mended.points },
    floorPercent,
    toFloor: poursToFloor(alone, floorPercent),
    whatIf: [
      whatIf("as planned", now, plan),
      whatIf("clay three quarters as live", now, cheaper),
      whatIf("half the heap", halves, plan),
      whatIf("twice the sand lost", doubled, plan),
      ...covers.map(({ name, driedKg }) => whatIf(name, { ...now, driedKg }, plan)),
    ],
    halfWayPours: lost > 0 ? Math.LN2 / -Math.log1p(-Math.min(0.99, lost)) : Number.POSITIVE_INFINITY,
    currency: asked.currency,
  };
}

function priceOf({ prices }: Log, ...names: string[]): number | undefined {
  const one = prices?.of.find((each) => names.includes(each.name.toLowerCase()));
  return one && one.cost.value / one.forKg.value;
}

function wantedClay({ wanted }: Log, moisture: number, burnOut: OwnBurnOut): number {
  if (wanted?.liveClay) return clayOfDryMix(wanted.liveClay, moisture);
  return burnOut.course()[0]!.liveClayOfDryMixPercent.value;
}

function scaled(heaps: HeapColumns, factor: number): HeapColumns {
  const half = copyOfHeaps(heaps);
  for (const column of Object.values(half)) for (let i = 0; i < column.length; i++) column[i]! *= factor;
  return half;
}

/** Heaps with clay put in to the share that is wanted; as they are where they have that. */
function atLeastClay(heaps: HeapColumns, percent: number): HeapColumns {
  const liveClayKg = heaps.liveClayKg.map((kg, i) => {
    const others = dryKgAt(heaps, i) - kg;
    return Math.max(kg, (others * percent) / (100 - percent));
  });
  return { ...heaps, liveClayKg };
}

/** Settled amounts of every draw, from the steady state: what a long season comes to. */
function outcome(
  name: string,
  { perKg }: Asked,
  draws: SeasonColumns,
  plan: SeasonPlan,
  floorPercent: number,
  burnOut: OwnBurnOut,
): WhatIf {
  const perTon = 1000 / plan.metalKg;
  const settled = Array.from(draws.lostKg, (lostKg, i) => {
    const dryKg = dryKgAt(draws.heaps, i);
    const share = (kg: number): number => Math.min(99, (100 * kg) / dryKg);
    const steady = heapSteadyState({
      dryKg,
      liveClayKg: (dryKg * plan.toLiveClayOfDryMixPercent) / 100,
      burntPercent: share(plan.metalKg * draws.burntKgPerKg[i]!),
      lostPercent: share(lostKg),
      clayLivePercent: plan.clayLivePercent,
    });
    return { steady, dryKg };
  });
  const of = (pick: (one: (typeof settled)[number]) => number): Band =>
    bandOf(Float64Array.from(settled, pick));
  const clay = ({ steady }: (typeof settled)[number]): number =>
    (perTon * steady.clayKg) / (1 - plan.clayMoisturePercent / 100);
  const sand = ({ steady }: (typeof settled)[number]): number =>
    (perTon * Math.max(0, steady.newSandKg)) / (1 - plan.newSandMoisturePercent / 100);
  const brought = (kg: number, percent: number): number => (kg * percent) / (100 - percent);
  const water = Float64Array.from(settled, ({ steady }, i) => {
    const leaves = draws.driedKg[i]! + brought(draws.lostKg[i]!, plan.toMoistureOfDampPercent);
    const comes =
      brought(steady.clayKg, plan.clayMoisturePercent) +
      brought(Math.max(0, steady.newSandKg), plan.newSandMoisturePercent);
    return perTon * Math.max(0, leaves - comes);
  });
  const mended = { ...draws, heaps: atLeastClay(draws.heaps, plan.toLiveClayOfDryMixPercent) };
  const alone = seasonOf(mended, { ...plan, mend: "none" }, burnOut.scores, { points: false });
  const { clay: clayPrice, sand: sandPrice } = perKg;
  return {
    name,
    clayKg: of(clay),
    newSandKg: of(sand),
    waterKg: bandOf(water),
    deadClayPercent: of(
      ({ steady, dryKg }) => (100 * (steady.deadClayKg ?? Number.POSITIVE_INFINITY)) / dryKg,
    ),
    toFloor: poursToFloor(alone, floorPercent),
    cost:
      clayPrice === undefined || sandPrice === undefined
        ? undefined
        : of((one) => clay(one) * clayPrice + sand(one) * sandPrice),
  };
}
