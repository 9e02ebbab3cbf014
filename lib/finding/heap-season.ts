// The season of a log's plan: what the heap comes to, when to rebond, what to buy, and what if.

import type { LoggedPlan } from "../log/heap-record.ts";
import type { Log } from "../log/types.ts";
import { dryHeapKg } from "../sand/heap-balance.ts";
import { heapSteadyState } from "../sand/heap-steady-state.ts";
import {
  type Band,
  bandOf,
  forecastSeason,
  poursToFloor,
  type Season,
  type SeasonDraw,
  type SeasonPlan,
} from "../sand/season.ts";
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
  readonly alone: Season;
  readonly mended: Season;
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
  const now = burnOut.now.map((draw) => withPlan(draw, planned));
  const floorPercent = 0.9 * plan.toLiveClayOfDryMixPercent;
  const alone = forecastSeason(now, { ...plan, mend: "none" }, burnOut.scores);
  const mended = forecastSeason(now, plan, burnOut.scores);
  const halves = now.map((draw) => ({ ...draw, heap: scaled(draw.heap, 0.5), lostKg: draw.lostKg }));
  const doubled = now.map((draw) => ({ ...draw, lostKg: 2 * draw.lostKg }));
  const cheaper = { ...plan, clayLivePercent: 75 };
  const whatIf = (name: string, draws: readonly SeasonDraw[], own: SeasonPlan): WhatIf =>
    outcome(name, log, draws, own, floorPercent, burnOut);
  const lost = now.reduce((all, draw) => all + draw.lostKg / dryHeapKg(draw.heap), 0) / now.length;
  return {
    plan,
    alone,
    mended,
    floorPercent,
    toFloor: poursToFloor(alone, floorPercent),
    whatIf: [
      whatIf("as planned", now, plan),
      whatIf("clay three quarters as live", now, cheaper),
      whatIf("half the heap", halves, plan),
      whatIf("twice the sand lost", doubled, plan),
      ...dryingUnderCovers(log, now, burnOut).map(({ name, draws }) => whatIf(name, draws, plan)),
    ],
    halfWayPours: lost > 0 ? Math.LN2 / -Math.log1p(-Math.min(0.99, lost)) : Number.POSITIVE_INFINITY,
    currency: log.prices?.currency ?? "",
  };
}

function wantedClay({ wanted }: Log, moisture: number, burnOut: OwnBurnOut): number {
  if (wanted?.liveClay) return clayOfDryMix(wanted.liveClay, moisture);
  return burnOut.course()[0]!.liveClayOfDryMixPercent.value;
}

const withPlan = (draw: SeasonDraw, { lostKg }: LoggedPlan): SeasonDraw =>
  lostKg ? { ...draw, lostKg: lostKg.value } : draw;

function scaled(heap: SeasonDraw["heap"], factor: number): SeasonDraw["heap"] {
  return Object.fromEntries(
    Object.entries(heap).map(([part, kg]) => [part, kg * factor]),
  ) as unknown as SeasonDraw["heap"];
}

/** The heap with clay put in to the share that is wanted; as it is where it has that. */
function atLeastClay(heap: SeasonDraw["heap"], percent: number): SeasonDraw["heap"] {
  const others = dryHeapKg(heap) - heap.liveClayKg;
  return { ...heap, liveClayKg: Math.max(heap.liveClayKg, (others * percent) / (100 - percent)) };
}

/** Settled amounts of every draw, from the steady state: what a long season comes to. */
function outcome(
  name: string,
  log: Log,
  draws: readonly SeasonDraw[],
  plan: SeasonPlan,
  floorPercent: number,
  burnOut: OwnBurnOut,
): WhatIf {
  const perTon = 1000 / plan.metalKg;
  const settled = draws.map((draw) => {
    const dryKg = dryHeapKg(draw.heap);
    const share = (kg: number): number => Math.min(99, (100 * kg) / dryKg);
    const steady = heapSteadyState({
      dryKg,
      liveClayKg: (dryKg * plan.toLiveClayOfDryMixPercent) / 100,
      burntPercent: share(plan.metalKg * draw.burntKgPerKg),
      lostPercent: share(draw.lostKg),
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
    const { driedKg, lostKg } = draws[i]!;
    const leaves = driedKg + brought(lostKg, plan.toMoistureOfDampPercent);
    const comes =
      brought(steady.clayKg, plan.clayMoisturePercent) +
      brought(Math.max(0, steady.newSandKg), plan.newSandMoisturePercent);
    return perTon * Math.max(0, leaves - comes);
  });
  const price = (...names: string[]): number | undefined => {
    const one = log.prices?.of.find((each) => names.includes(each.name.toLowerCase()));
    return one && one.cost.value / one.forKg.value;
  };
  const [clayPrice, sandPrice] = [price("bentonite", "clay"), price("sand")];
  const mended = draws.map((draw) => ({
    ...draw,
    heap: atLeastClay(draw.heap, plan.toLiveClayOfDryMixPercent),
  }));
  const alone = forecastSeason(mended, { ...plan, mend: "none" }, burnOut.scores, { points: false });
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
