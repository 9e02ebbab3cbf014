// Sand whose clay a pour burns, for each kilogram of metal: a wide range until the founder's own record narrows it.

import { lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import { spread } from "../quantity/spread-of.ts";
import type { BandTag } from "./band.ts";
import type { Metal } from "./metals.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";

export type BurntClay = "sodium bentonite" | "calcium bentonite";

/** Temperatures at which bentonite in moulding sand has lost its bond, °C, as published; it suffers well before. Source: Vingas & Zrimsek, Thermal stability of bentonites in foundry molding sand, 1180 and 600 °F. */
export const bondLostC: { readonly [clay in BurntClay]: number } = Object.freeze({
  "sodium bentonite": 638,
  "calcium bentonite": 316,
});

interface Ends {
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly tag: BandTag;
}

const plate =
  "our own: heat from a plate into sand (three published sands, properties of the metal from memory)";
const ends = (low: number, high: number, tag: BandTag, source: string): Ends => ({ low, high, tag, source });
const wearFactor =
  'Giesserei Lexikon, "Wear factor": 0.25 to 0.40 of bentonite, for iron; its kind is not said';
const limitAt = (from: number, to: number): string => `${plate}, loss of bond taken as ${from} to ${to} °C`;

/** kg of sand whose clay is wholly burnt, for each kg of metal. tests/sand/burn-out holds them against the plate. */
const RANGES: { readonly [metal in Metal]: { readonly [clay in BurntClay]: Ends } } = Object.freeze({
  aluminium: {
    "sodium bentonite": ends(0.02, 0.25, "our own", limitAt(500, 638)),
    "calcium bentonite": ends(0.1, 0.9, "our own", limitAt(300, 550)),
  },
  "brass and bronze": {
    "sodium bentonite": ends(0.1, 0.3, "our own", limitAt(500, 700)),
    "calcium bentonite": ends(0.2, 0.75, "our own", limitAt(300, 600)),
  },
  "copper-nickel": {
    "sodium bentonite": ends(0.17, 0.42, "our own", limitAt(500, 700)),
    "calcium bentonite": ends(0.28, 0.95, "our own", limitAt(300, 600)),
  },
  "grey iron": {
    "sodium bentonite": ends(0.25, 0.4, "read", wearFactor),
    "calcium bentonite": ends(0.25, 1.3, "our own", `${wearFactor}; upper end ${limitAt(316, 316)}`),
  },
  "malleable iron": {
    "sodium bentonite": ends(0.25, 0.4, "read", wearFactor),
    "calcium bentonite": ends(0.25, 1.3, "our own", `${wearFactor}; upper end ${limitAt(316, 316)}`),
  },
  steel: {
    "sodium bentonite": ends(0.3, 0.7, "our own", limitAt(500, 700)),
    "calcium bentonite": ends(0.45, 1.5, "our own", limitAt(300, 600)),
  },
});

export interface BurntPerKg {
  /** Ends of the 95 % range that is taken before the founder's own record is looked at. */
  readonly low: number;
  readonly high: number;
  /** Lognormal, median √(low × high); one "model" source for each clay and metal, so that all pours move together. */
  readonly spread: Figure;
  readonly source: string;
  /** "read" for iron alone; one that is our own may be drawn and does not decide. */
  readonly tag: BandTag;
}

interface Question {
  readonly metal: Metal;
  /** Undefined: not known, which spans both. */
  readonly clayKind?: BurntClay | undefined;
}

/**
 * Sand whose clay is wholly burnt, kg for each kg of metal. The section does not come into it: heat and way grow alike,
 * as long as the metal cools in the mould. Partly burnt sand counts by its share.
 *
 * Iron: the published wear factor, which says the same (kg of clay per 100 kg of iron for each 1 % of clay in the
 * sand). Aluminium: nothing is published; 0.02 to 0.25 with sodium bentonite, several times that with calcium bentonite
 * if its limit is taken literally. The other metals: our own, from the same model.
 * clayKind left out: from the lower end of sodium to the upper of calcium bentonite.
 * A gap at the face, water in the sand and early shake-out burn less; cores, corners and thick sections in thin sand more.
 * Source: iron by Giesserei Lexikon, "Wear factor"; the others by plateHeatedDepths, our own.
 * @example
 * burntSandPerKgMetal({ metal: "grey iron", clayKind: "sodium bentonite" }) // { low: 0.25, high: 0.40 }
 */
export function burntSandPerKgMetal({ metal, clayKind }: Question): BurntPerKg {
  const of = RANGES[metal];
  const [sodium, calcium] = [of["sodium bentonite"], of["calcium bentonite"]];
  const chosen: Ends =
    clayKind === undefined
      ? {
          low: sodium.low,
          high: calcium.high,
          tag: calcium.tag,
          source: `${sodium.source}; ${calcium.source}`,
        }
      : of[clayKind];
  const { low, high, source, tag } = chosen;
  const off = spread({
    mean: 0,
    halfWidth: Math.log(high / low) / 2,
    kind: "normal",
    doubt: "model",
    source: `burn-out of ${clayKind ?? "bentonite of unknown kind"} by ${metal}`,
    says: `how much clay ${metal} burns`,
  });
  const middle = Math.sqrt(low * high);
  return { low, high, source, tag, spread: figure(lift(({ x }) => middle * Math.exp(x), { x: off })) };
}

/**
 * Live clay burnt, kg for each kg of metal: burntSandPerKgMetal × clay/100. liveClayPercent: of the dry mix, 0 to 100, else
 * RangeError.
 * Source: that of burntSandPerKgMetal.
 * @example
 * clayBurntPerKgMetal({ metal: "aluminium", clayKind: "sodium bentonite", liveClayPercent: 8 })
 * // { low: 0.0016, high: 0.020 }
 */
export function clayBurntPerKgMetal({
  liveClayPercent,
  ...question
}: Question & { readonly liveClayPercent: number }): BurntPerKg {
  requireFromZero("clayBurntPerKgMetal", { liveClayPercent, toHundred: 100 - liveClayPercent });
  const { low, high, spread: sand, ...rest } = burntSandPerKgMetal(question);
  const share = liveClayPercent / 100;
  return {
    ...rest,
    low: low * share,
    high: high * share,
    spread: figure(lift(({ x }) => x * share, { x: sand })),
  };
}

/**
 * Share of the live clay that one pour burns, 0 to 1: f/R, with f the burnt sand and R the sand of the mould, both for
 * each kg of metal.
 * Both > 0, else RangeError; never more than 1.
 * Source: mass balance.
 * @example burntShare({ burntSandPerKg: 0.4, sandToMetal: 3 }) // 0.133
 */
export function burntShare({
  burntSandPerKg,
  sandToMetal,
}: {
  readonly burntSandPerKg: number;
  readonly sandToMetal: number;
}): number {
  requireAboveZero("burntShare", { burntSandPerKg, sandToMetal });
  return Math.min(1, burntSandPerKg / sandToMetal);
}

/**
 * Sand in the mould for each kg of casting: ρ (flask − casting)/mass. flaskL above castingL; metalKg > 0;
 * sandGCm3: rammed damp sand, 1.6 unless given. Else RangeError. Runner and riser belong to casting and mass.
 * Source: mass balance.
 * @example sandToMetal({ flaskL: 14, castingL: 0.9, metalKg: 2.4 }) // 8.73
 */
export function sandToMetal({
  flaskL,
  castingL,
  metalKg,
  sandGCm3 = 1.6,
}: {
  readonly flaskL: number;
  readonly castingL: number;
  readonly metalKg: number;
  readonly sandGCm3?: number;
}): number {
  requireAboveZero("sandToMetal", { castingL, metalKg, sandGCm3, sandL: flaskL - castingL });
  return (sandGCm3 * (flaskL - castingL)) / metalKg;
}

/**
 * Clay that a batch needs again after one cycle, kg: f c (batch/R)/100, f the wear factor (kg of clay destroyed per 100
 * kg of metal for each 1 % of it in the sand), c the clay that is wanted, % of the dry mix, R sand to metal by mass.
 * All > 0, else RangeError. The dose is of dry clay.
 * Source: Giesserei Lexikon, "Wear factor".
 * @example
 * wearFactorDoseKg({ wearFactor: 0.4, clayPercent: 8, batchKg: 1000, sandToMetal: 3 })
 * // 10.67, and the source says "approx. 11 kg"
 */
export function wearFactorDoseKg({
  wearFactor: factor,
  clayPercent,
  batchKg,
  sandToMetal: ratio,
}: {
  readonly wearFactor: number;
  readonly clayPercent: number;
  readonly batchKg: number;
  readonly sandToMetal: number;
}): number {
  requireAboveZero("wearFactorDoseKg", { wearFactor: factor, clayPercent, batchKg, sandToMetal: ratio });
  return (factor * clayPercent * (batchKg / ratio)) / 100;
}
