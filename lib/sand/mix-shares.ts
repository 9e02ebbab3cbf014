// What a recipe is in percent, on every basis, with the water that sand and clay bring themselves.

import { requireAboveZero, requireBelow100, requireFromZero } from "./require.ts";

export interface MixShares {
  /** Dry clay, parts per 100 of dry sand. */
  readonly clayOfSandPercent: number;
  /** Dry clay, % of sand + clay + additive, all dry. */
  readonly clayOfDryMixPercent: number;
  /** Dry clay, % of the whole damp mix. */
  readonly clayOfDampPercent: number;
  /** All water, % of the whole damp mix. */
  readonly moistureOfDampPercent: number;
  /** All water, % of the dry mix: not the trade's basis, shown so that it is not mistaken for it. */
  readonly moistureOfDryPercent: number;
  /** Additive, % of the dry mix. */
  readonly additiveOfDryMixPercent: number;
  /** All water ÷ dry clay; null without clay. */
  readonly waterPerClay: number | null;
  readonly drySandKg: number;
  readonly dryClayKg: number;
  readonly allWaterKg: number;
}

/**
 * Shares of a mix. Dry sand S = sand (1 − m/100), dry clay B likewise, water W = water poured + what both held;
 * clay of sand 100 B/S, of dry mix 100 B/(S + B + additive), of damp mix 100 B/(S + B + additive + W); moisture
 * 100 W/(S + B + additive + W); water per clay W/B.
 *
 * sandKg > 0, clayKg, waterKg, additiveKg (0 unless given, taken as dry) 0 or more: as weighed in, kg or any one unit.
 * sandMoisturePercent, clayMoisturePercent: water held already, % of their own damp mass, 0 to below 100, 0 unless
 * given (bagged bentonite holds up to 10 to 15, supplier sheets). Else RangeError.
 * "Clay" is clay added: neither clay by wash nor live clay, and it never fills in for them.
 * Source: mass balance.
 * @example
 * mixShares({ sandKg: 10, clayKg: 0.8, waterKg: 0.5 })
 * // { clayOfDryMixPercent: 7.41, moistureOfDampPercent: 4.42, waterPerClay: 0.625 }
 */
export function mixShares(recipe: {
  readonly sandKg: number;
  readonly clayKg: number;
  readonly waterKg: number;
  readonly additiveKg?: number;
  readonly sandMoisturePercent?: number;
  readonly clayMoisturePercent?: number;
}): MixShares {
  const { sandKg, clayKg, waterKg, additiveKg = 0 } = recipe;
  const { sandMoisturePercent = 0, clayMoisturePercent = 0 } = recipe;
  requireAboveZero("mixShares", { sandKg });
  requireFromZero("mixShares", { clayKg, waterKg, additiveKg, sandMoisturePercent, clayMoisturePercent });
  requireBelow100("mixShares", { sandMoisturePercent, clayMoisturePercent });
  return mixSharesUnchecked({
    sandKg,
    clayKg,
    waterKg,
    additiveKg,
    sandMoisturePercent,
    clayMoisturePercent,
  });
}

/** mixShares without a look at its arguments: for draws about a recipe that was checked. */
export function mixSharesUnchecked({
  sandKg,
  clayKg,
  waterKg,
  additiveKg,
  sandMoisturePercent,
  clayMoisturePercent,
}: {
  readonly sandKg: number;
  readonly clayKg: number;
  readonly waterKg: number;
  readonly additiveKg: number;
  readonly sandMoisturePercent: number;
  readonly clayMoisturePercent: number;
}): MixShares {
  const drySandKg = sandKg * (1 - sandMoisturePercent / 100);
  const dryClayKg = clayKg * (1 - clayMoisturePercent / 100);
  const allWaterKg = waterKg + (sandKg * sandMoisturePercent) / 100 + (clayKg * clayMoisturePercent) / 100;
  const dryKg = drySandKg + dryClayKg + additiveKg;
  const dampKg = dryKg + allWaterKg;
  return {
    clayOfSandPercent: (100 * dryClayKg) / drySandKg,
    clayOfDryMixPercent: (100 * dryClayKg) / dryKg,
    clayOfDampPercent: (100 * dryClayKg) / dampKg,
    moistureOfDampPercent: (100 * allWaterKg) / dampKg,
    moistureOfDryPercent: (100 * allWaterKg) / dryKg,
    additiveOfDryMixPercent: (100 * additiveKg) / dryKg,
    waterPerClay: dryClayKg === 0 ? null : allWaterKg / dryClayKg,
    drySandKg,
    dryClayKg,
    allWaterKg,
  };
}

/**
 * Parts of clay per 100 of sand as % of sand + clay: 100 p / (100 + p). p: 0 or more, else RangeError.
 * Source: algebra. Example: clayOfSandToDryMixPercent(10) is 9.09.
 */
export function clayOfSandToDryMixPercent(clayOfSandPercent: number): number {
  requireFromZero("clayOfSandToDryMixPercent", { clayOfSandPercent });
  return (100 * clayOfSandPercent) / (100 + clayOfSandPercent);
}

/**
 * Clay as % of sand + clay turned into parts per 100 of sand: 100 c / (100 − c). c: 0 to below 100, else RangeError.
 * Source: algebra. Example: clayOfDryMixToSandPercent(8) is 8.696.
 */
export function clayOfDryMixToSandPercent(clayOfDryMixPercent: number): number {
  requireFromZero("clayOfDryMixToSandPercent", { clayOfDryMixPercent });
  requireBelow100("clayOfDryMixToSandPercent", { clayOfDryMixPercent });
  return (100 * clayOfDryMixPercent) / (100 - clayOfDryMixPercent);
}

/**
 * What to weigh from the bag for a mass of dry clay, and the water that comes with it, kg: dry / (1 − m/100).
 * dryClayKg: 0 or more; clayMoisturePercent: water of the bagged clay, % of its damp mass, 0 to below 100. Else
 * RangeError. Bentonite dust is fine silica too: scoop it low, with a mask on.
 * Source: mass balance. Example: clayToWeighKg({ dryClayKg: 8, clayMoisturePercent: 10 }) is { weighKg: 8.889, waterKg: 0.889 }.
 */
export function clayToWeighKg({
  dryClayKg,
  clayMoisturePercent,
}: {
  readonly dryClayKg: number;
  readonly clayMoisturePercent: number;
}): { readonly weighKg: number; readonly waterKg: number } {
  requireFromZero("clayToWeighKg", { dryClayKg, clayMoisturePercent });
  requireBelow100("clayToWeighKg", { clayMoisturePercent });
  const weighKg = dryClayKg / (1 - clayMoisturePercent / 100);
  return { weighKg, waterKg: weighKg - dryClayKg };
}
