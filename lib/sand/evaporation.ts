// What open water gives off: an upper bound for damp sand, whose surface does not stay wet.

import { type Air, dampAir, latentHeatKJKg, requireAir, requireWarm, vapourPressurePa } from "./humid-air.ts";
import { requireFromZero } from "./require.ts";
import { saturationPressurePa } from "./saturation-pressure.ts";

export interface OpenWater extends Air {
  /** Temperature of the water's surface, 0 to 60 °C. */
  readonly waterC: number;
}

/**
 * Evaporation from open water in moving air, kg/(m² h): 3600 (0.089 + 0.0782 V) (pw − pa)/Y, with V the air's speed in
 * m/s, pw the saturation pressure at the surface and pa that of the vapour in the air in kPa, Y the latent heat in kJ/kg.
 *
 * waterC, airC: 0 to 60 °C; relativeHumidityPercent: 0 to 100; airMS: 0 to 10 m/s. Else RangeError; 0 where vapour
 * would condense. Undisturbed pools gave off 74 % of it (Smith, Löf & Jones, ASHRAE Trans. 104(1A), 1998), and the
 * coefficients do not carry well from site to site (Singh & Xu 1997): take it as right within a factor of two.
 * Source: W. H. Carrier 1918, in the SI form of ASHRAE HVAC Applications (from memory); the printed form
 * (95 + 0.425 v)(pw − pa)/Y in lb, ft, min, inHg, Btu agrees.
 * @example openWaterKgM2H({ waterC: 20, airC: 20, relativeHumidityPercent: 50, airMS: 0 }) // 0.153
 */
export function openWaterKgM2H(water: OpenWater & { readonly airMS: number }): number {
  const { waterC, airMS } = water;
  requireAir("openWaterKgM2H", water);
  requireWarm("openWaterKgM2H", "waterC", waterC);
  if (!(airMS >= 0 && airMS <= 10))
    throw new RangeError(`openWaterKgM2H: airMS must be 0 to 10, got ${airMS}`);
  return openWaterRelation(saturationPressurePa(waterC) - vapourPressurePa(water), waterC, airMS);
}

/** The relation alone, from the pressure that drives it, Pa: for draws about a state that was checked. */
export function openWaterRelation(missingPa: number, waterC: number, airMS: number): number {
  return Math.max(0, (3.6 * (0.089 + 0.0782 * airMS) * missingPa) / latentHeatKJKg(waterC));
}

/**
 * Evaporation from undisturbed water in still indoor air, kg/(m² h), the larger of 35 ρw (ρr − ρw)^(1/3) (Ww − Wr), by
 * the rise of damp air, and 5e-5 (pw − pr), p in Pa, by the drift of room air. ρ: dry air in a cubic metre, saturated
 * at the water's temperature (w) and in the room (r); W: humidity ratios.
 *
 * waterC, airC: 0 to 60 °C; relativeHumidityPercent: 0 to 100. Else RangeError; 0 where vapour would condense.
 * Source: M. M. Shah 2012, formula from memory; his table at 50 % humidity is met within 0.6 %.
 * @example stillWaterKgM2H({ waterC: 28, airC: 28, relativeHumidityPercent: 50 }) // 0.136
 */
export function stillWaterKgM2H(water: OpenWater): number {
  const { waterC, airC } = water;
  requireAir("stillWaterKgM2H", water);
  requireWarm("stillWaterKgM2H", "waterC", waterC);
  const [overPa, roomPa] = [saturationPressurePa(waterC), vapourPressurePa(water)];
  const [over, room] = [dampAir(overPa, waterC), dampAir(roomPa, airC)];
  const lighter = Math.max(0, room.dryAirKgM3 - over.dryAirKgM3);
  const rising = 35 * over.dryAirKgM3 * Math.cbrt(lighter) * (over.humidityRatio - room.humidityRatio);
  return Math.max(0, rising, 5e-5 * (overPa - roomPa));
}

/**
 * Evaporation from open water outdoors, cm of depth a day: (0.013 + 0.00016 v) es (100 − RH)/100, v in km a day at 2 m,
 * es in mbar.
 * airC: 0 to 60 °C; relativeHumidityPercent: 0 to 100; windKmDay: 0 or more. Else RangeError.
 * Source: Dunne's wind function as worked in San Diego State University's CIVE 445. 1 cm a day is 0.417 kg/(m² h).
 * @example outdoorWaterCmDay({ airC: 15, relativeHumidityPercent: 70, windKmDay: 150 }) // 0.189
 */
export function outdoorWaterCmDay(air: Air & { readonly windKmDay: number }): number {
  requireAir("outdoorWaterCmDay", air);
  requireFromZero("outdoorWaterCmDay", { windKmDay: air.windKmDay });
  const mbar = saturationPressurePa(air.airC) / 100;
  return ((0.013 + 0.00016 * air.windKmDay) * mbar * (100 - air.relativeHumidityPercent)) / 100;
}
