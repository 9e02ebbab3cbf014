// What the pours of a log do to sand and clay: depths, freezing for comparison, clay burnt; ranges throughout.

import type { PourEvent } from "../log/heap-events.ts";
import type { Log, Measured } from "../log/types.ts";
import { median } from "../numbers/summary.ts";
import type { BandTag } from "../sand/band.ts";
import { mostWaterPerKgMetal } from "../sand/boiled-off.ts";
import { type BurntClay, type BurntPerKg, burntSandPerKgMetal, sandToMetal } from "../sand/burn-out.ts";
import { freezingConstants, freezingSeconds } from "../sand/freezing.ts";
import { type Metal, metalNamed } from "../sand/metals.ts";
import { clayOfSandToDryMixPercent } from "../sand/mix-shares.ts";
import { type MetalHeat, metalHeats, sandHeats } from "../sand/moulding-heat.ts";
import { plateHeatedDepths } from "../sand/plate-cooling.ts";

/** Temperatures that the clay minds, °C, and what happens there; sources in heat-messages. */
export const clayTemperatures = Object.freeze([316, 500, 638] as const);
export type ClayTemperature = (typeof clayTemperatures)[number];

export interface Ends {
  readonly low: number;
  readonly high: number;
}

export interface HeatSection {
  readonly sectionMm: number;
  /** How many of the log's pours had it; 0 for one that is planned. */
  readonly pours: number;
  readonly planned: boolean;
  /** As a plate, for comparing sections alone. */
  readonly freezing: Ends;
  readonly depthMm: { readonly [celsius in ClayTemperature]: Ends };
}

export interface HeatFigures {
  readonly metal: Metal;
  readonly clayKind?: BurntClay;
  /** Middle of the log's pours, else the metal's usual one. */
  readonly pouredC: number;
  readonly pouredSaid: boolean;
  /** Depth ÷ section thickness; it is the same for every section. */
  readonly perSection: { readonly [celsius in ClayTemperature]: Ends };
  /** Thin to thick. */
  readonly sections: readonly HeatSection[];
  readonly constant: Ends & { readonly source: string };
  readonly burnt: BurntPerKg;
  /** % of the dry mix, and where it is from. */
  readonly liveClay?: { readonly percent: number; readonly from: string };
  readonly pouredKg: number;
  readonly pours: number;
  /** Sand in the mould for each kg of metal. */
  readonly sandToMetal?: number;
  /** The most water that a kilogram drives off, kg. */
  readonly mostWaterKg: number;
  readonly tag: BandTag;
}

type HeatLog = Pick<
  Log,
  "metal" | "heap" | "events" | "planned" | "flask" | "measured" | "wanted" | "recipe"
>;

/**
 * Heat and burn-out of a log's pours and plan. Undefined where nothing is poured or planned, or where the metal is none that
 * is known. Depths: the heated plate over two published sands and, for aluminium, the pure metal and an alloy; constants
 * by theory over three sands. Live clay: the newest measured, else the wanted, else the recipe's.
 * Example: a log of aluminium with pours of 8 mm: 316 °C to about 5 mm, 638 °C to 0.1 to 0.2 mm.
 */
export function heatFigures(log: HeatLog): HeatFigures | undefined {
  const metal = log.metal === undefined ? undefined : metalNamed(log.metal);
  const pours = log.events.filter((event): event is PourEvent => event.kind === "pour");
  if (metal === undefined || (pours.length === 0 && !log.planned)) return undefined;
  const said = pours.flatMap(({ atC }) => (atC ? [atC.value] : []));
  const [heat] = metalHeats[metal];
  const pouredC = Math.max(
    ...metalHeats[metal].map(({ freezesC }) => freezesC + 1),
    said.length > 0 ? median(said) : heat!.pouredC,
  );
  const perSection = depthsPerSection(metalHeats[metal], pouredC);
  const constant = freezingConstants(metal, pouredC);
  const clayKind = log.heap?.clayKind;
  const liveClay = liveClayOf(log);
  const massKg = (one: { readonly metalKg?: Measured }): number => one.metalKg?.value ?? 0;
  const ratio = ratioOf(log, pours);
  return {
    metal,
    ...(clayKind ? { clayKind } : {}),
    pouredC,
    pouredSaid: said.length > 0,
    perSection,
    sections: sectionsOf(pours, log.planned?.sectionMm, perSection, constant),
    constant,
    burnt: burntSandPerKgMetal({ metal, clayKind }),
    ...(liveClay ? { liveClay } : {}),
    pouredKg: pours.reduce((all, pour) => all + massKg(pour), 0),
    pours: pours.length,
    ...(ratio === undefined ? {} : { sandToMetal: ratio }),
    mostWaterKg: mostWaterPerKgMetal({ metal: heat!, pouredC, moistureOfDampPercent: moistureOf(log) }),
    tag: "our own",
  };
}

/** Over the metals and over two sands: the third has the heat of the second, and only that counts here. */
function depthsPerSection(metals: readonly MetalHeat[], pouredC: number): HeatFigures["perSection"] {
  const runs = metals.flatMap((metal) =>
    sandHeats
      .slice(0, 2)
      .map((sand) => plateHeatedDepths({ metal, sand, pouredC, targetsC: clayTemperatures })),
  );
  const endsAt = (i: number): Ends => {
    const depths = runs.map((run) => run[i]!.perHalf / 2);
    return { low: Math.min(...depths), high: Math.max(...depths) };
  };
  return { 316: endsAt(0), 500: endsAt(1), 638: endsAt(2) };
}

function sectionsOf(
  pours: readonly PourEvent[],
  planned: Measured | undefined,
  perSection: HeatFigures["perSection"],
  constant: Ends,
): HeatSection[] {
  const counts = new Map<number, number>();
  for (const { sectionMm } of pours)
    if (sectionMm) counts.set(sectionMm.value, (counts.get(sectionMm.value) ?? 0) + 1);
  if (planned && !counts.has(planned.value)) counts.set(planned.value, 0);
  return [...counts]
    .sort(([a], [b]) => a - b)
    .map(([sectionMm, count]) => {
      const times = (ends: Ends): Ends => ({ low: ends.low * sectionMm, high: ends.high * sectionMm });
      const freeze = (constantSMm2: number) => freezingSeconds({ modulusMm: sectionMm / 2, constantSMm2 });
      return {
        sectionMm,
        pours: count,
        planned: planned?.value === sectionMm,
        freezing: { low: freeze(constant.low), high: freeze(constant.high) },
        depthMm: { 316: times(perSection[316]), 500: times(perSection[500]), 638: times(perSection[638]) },
      };
    });
}

function ratioOf({ flask, planned }: HeatLog, pours: readonly PourEvent[]): number | undefined {
  const [flaskL, castingL] = [flask?.volumeL?.value, flask?.castingVolumeL?.value];
  const masses = pours.flatMap(({ metalKg }) => (metalKg ? [metalKg.value] : []));
  const metalKg = planned?.metalKg?.value ?? (masses.length > 0 ? median(masses) : undefined);
  if (!flaskL || !castingL || !metalKg || castingL >= flaskL) return undefined;
  const density = flask?.densityGCm3?.value;
  return sandToMetal({ flaskL, castingL, metalKg, ...(density ? { sandGCm3: density } : {}) });
}

/** % of the dry mix. A share of the damp mass is turned by its own moisture, else by 3.5 %. */
function liveClayOf(log: HeatLog): HeatFigures["liveClay"] {
  const { measured, wanted, recipe } = log;
  const newest = measured.findLast(({ liveClay }) => liveClay);
  const state = newest ?? wanted;
  const share = state?.liveClay;
  if (share) {
    const dry = 100 - (state?.moisturePercent?.value ?? 3.5);
    const percent =
      share.of === "sand"
        ? clayOfSandToDryMixPercent(share.value)
        : share.of === "dry mix"
          ? share.value
          : (100 * share.value) / dry;
    return { percent, from: newest ? `measured ${newest.date}` : "as wanted" };
  }
  const { basis, clayPercent } = recipe ?? {};
  if (!basis || !clayPercent) return undefined;
  const dry = 100 - (recipe?.moisturePercent?.value ?? 3.5);
  const { value } = clayPercent;
  const percent =
    basis === "sand" ? clayOfSandToDryMixPercent(value) : basis === "dry mix" ? value : (100 * value) / dry;
  return { percent, from: "the recipe's, taken as live" };
}

const moistureOf = ({ measured, wanted }: HeatLog): number =>
  measured.at(-1)?.moisturePercent?.value ?? wanted?.moisturePercent?.value ?? 3.5;
