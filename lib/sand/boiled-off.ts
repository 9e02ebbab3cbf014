// Water that hot sand and metal drive off.

import type { MetalHeat } from "./moulding-heat.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";

/** kJ/(kg K) of water and of dry sand, and heat of boiling at 100 °C, kJ/kg (steam tables, from memory). */
const WATER = 4.19;
const SAND = 1.0;
const BOILING = 2257;

/**
 * Water that is warmed and boiled off while sand cools, kg: sand c (from − to)/(cw (boil − water) + L).
 *
 * sandKg: > 0, or a rate (kg a minute), then so is the answer. fromC above toC, toC 100 °C unless given; waterC: 0 to 100.
 * sandKJKgK, latentKJKg: > 0. Else RangeError. Takes all water to leave as steam; it scalds.
 * Source: heat balance; the trade article "Effectively cooling molding sands" works it so.
 * @example
 * waterBoiledOffKg({ sandKg: 907.2, fromC: 150, toC: 100, waterC: 21.1, sandKJKgK: 0.837, latentKJKg: 2265 })
 * // 14.6, which is 32.2 lb
 */
export function waterBoiledOffKg({
  sandKg,
  fromC,
  toC = 100,
  waterC = 20,
  sandKJKgK = SAND,
  latentKJKg = BOILING,
}: {
  readonly sandKg: number;
  readonly fromC: number;
  readonly toC?: number;
  readonly waterC?: number;
  readonly sandKJKgK?: number;
  readonly latentKJKg?: number;
}): number {
  requireAboveZero("waterBoiledOffKg", { sandKg, sandKJKgK, latentKJKg, cooling: fromC - toC });
  requireFromZero("waterBoiledOffKg", { waterC, toBoil: 100 - waterC });
  return (sandKg * sandKJKgK * (fromC - toC)) / (WATER * (100 - waterC) + latentKJKg);
}

/**
 * The most water that a kilogram of poured metal can drive off by its heat down to 100 °C, kg: each kg of sand that is
 * brought to 100 °C and loses its water takes c ΔT + w (cw ΔT + L).
 *
 * pouredC above freezing; moistureOfDampPercent: above 0, below 100; sandC: 0 to below 100. Else RangeError.
 * An upper bound: most of the heat leaves by other ways, and steam condenses again in the cold sand behind.
 * Source: heat balance on properties from memory.
 * @example
 * mostWaterPerKgMetal({ metal: metalHeats.aluminium[0]!, pouredC: 720, moistureOfDampPercent: 3.5 }) // 0.23
 */
export function mostWaterPerKgMetal({
  metal,
  pouredC = metal.pouredC,
  moistureOfDampPercent,
  sandC = 20,
}: {
  readonly metal: MetalHeat;
  readonly pouredC?: number;
  readonly moistureOfDampPercent: number;
  readonly sandC?: number;
}): number {
  requireAboveZero("mostWaterPerKgMetal", {
    aboveFreezing: pouredC - metal.freezesC,
    moistureOfDampPercent,
    drySandPercent: 100 - moistureOfDampPercent,
    toBoil: 100 - sandC,
  });
  const metalKJ =
    (metal.liquidJKgK * (pouredC - metal.freezesC) + metal.solidJKgK * (metal.freezesC - 100)) / 1000 +
    metal.latentKJKg;
  const water = moistureOfDampPercent / 100;
  const perKgSand = SAND * (1 - water) * (100 - sandC) + water * (WATER * (100 - sandC) + BOILING);
  return (water * metalKJ) / perKgSand;
}
