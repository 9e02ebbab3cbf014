// Permeability with what a shed has: a falling water column, a bleeding vessel, a draining bottle, a floating can.

import { heightOverArea, MOST_WATER_MM, permeabilityNumber, requireMildPressure } from "./permeability.ts";
import { requireAboveZero } from "./require.ts";

/** 1 hPa in gf/cm². */
const GF_CM2_PER_HPA = 100 / 98.0665;

interface Falling {
  readonly heightMm: number;
  readonly diameterMm: number;
  /** Pressure at the start and at the end, mm of water. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly seconds: number;
}

function requireFall(name: string, { fromMm, toMm, seconds }: Falling): void {
  requireMildPressure(name, { fromMm, toMm });
  requireAboveZero(name, { seconds });
  if (!(fromMm > toMm)) throw new RangeError(`${name}: fromMm must be above toMm, got ${fromMm} and ${toMm}`);
}

/**
 * No more than 100 gf/cm², 1 m of water.
 *
 * Permeability number by a falling water column that drives the air: (a H / (A t)) ln(from / to), t in minutes.
 * columnCm2: area of the column, > 0; for two levels that both move take movingLevelsCm2. heightMm, diameterMm:
 * specimen, > 0. fromMm above toMm: difference of the levels, mm, > 0 to 1000. seconds: > 0. Else RangeError.
 * Source: Darcy with a falling head.
 * @example
 * fallingColumnPermeability({ columnCm2: 100, heightMm: 50.8, diameterMm: 50.8, fromMm: 200, toMm: 100, seconds: 20.8 })
 * // 50
 */
export function fallingColumnPermeability(test: Falling & { readonly columnCm2: number }): number {
  const { columnCm2, fromMm, toMm, seconds } = test;
  requireFall("fallingColumnPermeability", test);
  requireAboveZero("fallingColumnPermeability", { columnCm2 });
  return (columnCm2 * heightOverArea(test) * Math.log(fromMm / toMm)) / (seconds / 60);
}

/**
 * The area that stands for two water levels that move against each other, cm²: a1 a2 / (a1 + a2).
 * Both > 0, cm², else RangeError. Source: the levels close by v / a1 + v / a2.
 * @example movingLevelsCm2(100, 100) // 50
 */
export function movingLevelsCm2(firstCm2: number, secondCm2: number): number {
  requireAboveZero("movingLevelsCm2", { firstCm2, secondCm2 });
  return (firstCm2 * secondCm2) / (firstCm2 + secondCm2);
}

/**
 * No more than 100 gf/cm²: a vessel under air pressure bursts, and a bottle made for pressure is no measure of volume.
 *
 * Permeability number by a rigid vessel that bleeds through the specimen: V0 H ln(from / to) / (A t p0), t in minutes.
 * vesselMl: volume of air in it, > 0, cm³. fromMm above toMm: gauge pressure, mm of water, > 0 to 1000. airHPa: air
 * pressure of the day at the place (not reduced to sea level), 600 to 1100, 1013.25 unless given. Else RangeError.
 * The temperature is taken to stay: pump up and wait half a minute. A vessel that gives (a plastic bottle) reads low.
 * Source: ideal gas and Darcy, for gauge pressures small against the air's (up to 5 % at 100 gf/cm²).
 * @example
 * bleedingVesselPermeability({ vesselMl: 20000, heightMm: 50.8, diameterMm: 50.8, fromMm: 100, toMm: 50, seconds: 4.03 })
 * // 50
 */
export function bleedingVesselPermeability(
  test: Falling & { readonly vesselMl: number; readonly airHPa?: number },
): number {
  const { vesselMl, fromMm, toMm, seconds, airHPa = 1013.25 } = test;
  requireFall("bleedingVesselPermeability", test);
  requireAboveZero("bleedingVesselPermeability", { vesselMl });
  if (!(airHPa >= 600 && airHPa <= 1100))
    throw new RangeError(`bleedingVesselPermeability: airHPa must be 600 to 1100, got ${airHPa}`);
  const top = vesselMl * heightOverArea(test) * Math.log(fromMm / toMm);
  return top / ((seconds / 60) * airHPa * GF_CM2_PER_HPA);
}

/**
 * Permeability number by a closed bottle that drains and draws air through the specimen: as permeabilityNumber, with
 * waterOutMl (water caught, mL, the volume of air drawn) and suctionMm (held steady, mm of water).
 * Limits as permeabilityNumber: > 0, suction to 1000 mm. Else RangeError.
 * Source: the same definition.
 * @example
 * aspiratorPermeability({ waterOutMl: 500, heightMm: 50.8, diameterMm: 50.8, suctionMm: 50, seconds: 30 })
 * // 50.1
 */
export function aspiratorPermeability(test: {
  readonly waterOutMl: number;
  readonly heightMm: number;
  readonly diameterMm: number;
  readonly suctionMm: number;
  readonly seconds: number;
}): number {
  return permeabilityNumber({ ...test, airMl: test.waterOutMl, waterMm: test.suctionMm });
}

/**
 * Pressure under a floating inverted can, mm of water: net weight / area. netG: weight of the can less what it gains
 * by buoyancy of its walls, > 0, g. canCm2: area inside, > 0, cm². Above 1000 mm: RangeError.
 * Source: p = F / A; 1 gf/cm² is 10 mm of water.
 * @example floatingCanMm({ netG: 785, canCm2: 78.5 }) // 100
 */
export function floatingCanMm({ netG, canCm2 }: { readonly netG: number; readonly canCm2: number }): number {
  requireAboveZero("floatingCanMm", { netG, canCm2 });
  const waterMm = (10 * netG) / canCm2;
  if (waterMm > MOST_WATER_MM)
    throw new RangeError(`floatingCanMm: ${waterMm} mm of water is above 100 gf/cm²: vessels burst`);
  return waterMm;
}
