// How much water air holds and could still take up.

import { requireAboveZero } from "./require.ts";
import { saturationPressurePa } from "./saturation-pressure.ts";

/** Gas constants of water vapour and of dry air, J/(kg K); their ratio is 0.622. */
const VAPOUR_J_KG_K = 461.52;
const DRY_AIR_J_KG_K = 287.055;
const USUAL_PRESSURE_PA = 101_325;

/** Weather that the formulas are used for: 0 to 60 °C, 0 to 100 %. */
export interface Air {
  readonly airC: number;
  /** % of saturation at the air's temperature. */
  readonly relativeHumidityPercent: number;
}

export function requireAir(name: string, { airC, relativeHumidityPercent }: Air): void {
  requireWarm(name, "airC", airC);
  if (!(relativeHumidityPercent >= 0 && relativeHumidityPercent <= 100))
    throw new RangeError(`${name}: relativeHumidityPercent must be 0 to 100, got ${relativeHumidityPercent}`);
}

export function requireWarm(name: string, argument: string, celsius: number): void {
  if (!(celsius >= 0 && celsius <= 60))
    throw new RangeError(`${name}: ${argument} must be 0 to 60 °C, got ${celsius}`);
}

/**
 * Pressure of the vapour in air, Pa: RH/100 × saturation pressure at the air's temperature.
 * airC: 0 to 60 °C; relativeHumidityPercent: 0 to 100. Else RangeError. Source: definition; IAPWS SR1-86(1992).
 * Example: vapourPressurePa({ airC: 20, relativeHumidityPercent: 50 }) is 1169.6.
 */
export function vapourPressurePa(air: Air): number {
  requireAir("vapourPressurePa", air);
  return (air.relativeHumidityPercent / 100) * saturationPressurePa(air.airC);
}

/** Mass of vapour in a volume, kg/m³: p/(R T) with R = 461.52 J/(kg K). pressurePa ≥ 0; celsius. Example: 1169.6 Pa at 20 °C: 0.00864. */
export function vapourDensityKgM3(pressurePa: number, celsius: number): number {
  return pressurePa / (VAPOUR_J_KG_K * (celsius + 273.15));
}

/**
 * Dry air in a cubic metre of damp air, kg/m³: (P − p)/(R T); and its humidity ratio, kg of vapour for each kg of dry
 * air: 0.622 p/(P − p). vapourPa: 0 to below pressurePa. Example: saturated at 28 °C: 1.128 and 0.0241.
 */
export function dampAir(
  vapourPa: number,
  celsius: number,
  pressurePa = USUAL_PRESSURE_PA,
): { readonly dryAirKgM3: number; readonly humidityRatio: number } {
  const dryPa = pressurePa - vapourPa;
  return {
    dryAirKgM3: dryPa / (DRY_AIR_J_KG_K * (celsius + 273.15)),
    humidityRatio: ((DRY_AIR_J_KG_K / VAPOUR_J_KG_K) * vapourPa) / dryPa,
  };
}

/**
 * Heat that evaporates a kilogram of water, kJ/kg: 2501 − 2.361 t. celsius: 0 to 60, else RangeError.
 * Source: FAO-56 (Allen et al. 1998), annex, from memory; within 0.05 % of the IAPWS values from 0 to 40 °C.
 * Example: latentHeatKJKg(20) is 2453.8.
 */
export function latentHeatKJKg(celsius: number): number {
  requireWarm("latentHeatKJKg", "celsius", celsius);
  return 2501 - 2.361 * celsius;
}

/**
 * Air pressure at a height above the sea, Pa: 101 300 ((293 − 0.0065 z)/293)^5.26.
 * altitudeM: −400 to 5000 m, else RangeError. Source: FAO-56, equation 7. Example: pressureAtPa(1800) is 81756, and the source prints 81.8 kPa.
 */
export function pressureAtPa(altitudeM: number): number {
  if (!(altitudeM >= -400 && altitudeM <= 5000))
    throw new RangeError(`pressureAtPa: altitudeM must be −400 to 5000, got ${altitudeM}`);
  return 101_300 * ((293 - 0.0065 * altitudeM) / 293) ** 5.26;
}

/** Psychrometer coefficients, 1/K: an aspirated wet bulb, one in a natural breeze, one in still indoor air (FAO-56, equation 16). */
const psychrometer = { ventilated: 0.000662, natural: 0.0008, still: 0.0012 } as const;

/**
 * Pressure of the vapour in air from a dry and a wet thermometer, Pa: es(wet) − a P (dry − wet).
 * dryC, wetC: 0 to 60 °C, wet no warmer than dry. pressurePa: > 0. coefficient: one of psychrometer. Else RangeError.
 * Below zero the pair cannot be: RangeError too. Source: FAO-56, equation 15.
 * @example vapourPressureByWetBulbPa({ dryC: 25.6, wetC: 19.5, pressurePa: 87900 }) // 1913
 */
export function vapourPressureByWetBulbPa({
  dryC,
  wetC,
  pressurePa = USUAL_PRESSURE_PA,
  coefficient = psychrometer.ventilated,
}: {
  readonly dryC: number;
  readonly wetC: number;
  readonly pressurePa?: number;
  readonly coefficient?: number;
}): number {
  requireWarm("vapourPressureByWetBulbPa", "dryC", dryC);
  requireAboveZero("vapourPressureByWetBulbPa", { pressurePa, coefficient });
  if (!(wetC <= dryC))
    throw new RangeError(
      `vapourPressureByWetBulbPa: wetC must be no warmer than dryC, got ${wetC} and ${dryC}`,
    );
  const pa = saturationPressurePa(wetC) - coefficient * pressurePa * (dryC - wetC);
  if (!(pa >= 0)) throw new RangeError("vapourPressureByWetBulbPa: so dry a pair of readings cannot be");
  return pa;
}

/**
 * Temperature that a wet surface in a breeze comes down to, °C: the wet bulb whose psychrometer equation gives the
 * air's own vapour pressure, found by halving. Air as vapourPressurePa; where it would lie below 0 °C: 0.
 * Source: that of vapourPressureByWetBulbPa.
 * Example: wetBulbCelsius({ airC: 20, relativeHumidityPercent: 50 }) is 13.8.
 */
export function wetBulbCelsius(air: Air): number {
  const pa = vapourPressurePa(air);
  const short = (wetC: number): boolean =>
    saturationPressurePa(wetC) - psychrometer.ventilated * USUAL_PRESSURE_PA * (air.airC - wetC) < pa;
  let [low, high] = [0, air.airC];
  if (!short(low)) return low;
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2;
    if (short(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Wind at 2 m from wind at another height, m/s: u 4.87/ln(67.8 z − 5.42).
 * windMS: 0 or more; heightM: 0.5 to 100 m. Else RangeError. Over short grass; close to the ground of a yard it is far less.
 * Source: FAO-56, equation 47. Example: windAt2M({ windMS: 3.2, heightM: 10 }) is 2.39.
 */
export function windAt2M({ windMS, heightM }: { readonly windMS: number; readonly heightM: number }): number {
  if (!(windMS >= 0 && heightM >= 0.5 && heightM <= 100))
    throw new RangeError(`windAt2M: wind 0 or more at 0.5 to 100 m, got ${windMS} at ${heightM}`);
  return (windMS * 4.87) / Math.log(67.8 * heightM - 5.42);
}
