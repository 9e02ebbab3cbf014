// The permeability number: air through a specimen at a steady pressure.

import { requireAboveZero } from "./require.ts";
import { faceAreaCm2 } from "./specimen.ts";

/** Above this, 100 gf/cm², a home vessel may burst: refused. */
export const MOST_WATER_MM = 1000;

/** The pressure is above 0 and no more than 1000 mm of water; vessels burst above. Else RangeError. */
export function requireMildPressure(name: string, values: { readonly [argument: string]: number }): void {
  requireAboveZero(name, values);
  for (const argument in values)
    if (values[argument]! > MOST_WATER_MM)
      throw new RangeError(
        `${name}: ${argument} is ${values[argument]} mm of water, above 100 gf/cm²: vessels burst, no figure is given`,
      );
}

interface Specimen {
  readonly heightMm: number;
  readonly diameterMm: number;
}

/**
 * Height over area of a specimen, 1/cm. heightMm, diameterMm: > 0, else RangeError. Example: 50.8 × 50.8 mm: 0.25064.
 */
export function heightOverArea({ heightMm, diameterMm }: Specimen): number {
  requireAboveZero("heightOverArea", { heightMm });
  return heightMm / 10 / faceAreaCm2(diameterMm);
}

/**
 * What pressure × minutes is divided into, for one specimen and volume of air: V H / A, cm³/cm. 501.275 for 2,000 cm³
 * and the 2 in specimen, 509.296 for the 50 mm one; × 60 for seconds (30 076.5 and 30 557.7).
 * airMl: > 0, cm³; heightMm, diameterMm: > 0, mm. Else RangeError. Source: definition of the number.
 * Example: permeabilityConstant({ airMl: 2000, heightMm: 50, diameterMm: 50 }) is 509.296.
 */
export function permeabilityConstant({ airMl, heightMm, diameterMm }: Specimen & { airMl: number }): number {
  requireAboveZero("permeabilityConstant", { airMl });
  return airMl * heightOverArea({ heightMm, diameterMm });
}

/**
 * No more than 100 gf/cm², 1 m of water: a vessel under air pressure bursts.
 *
 * Permeability number: V H / (p A t), cm³ of air a minute through 1 cm² and 1 cm at 1 gf/cm².
 * airMl: air that went through, > 0, cm³. heightMm, diameterMm: specimen, > 0, mm. waterMm: pressure across it, mm of
 * water, > 0 to 1000. seconds: > 0. Else RangeError; permeabilityIssues tells the founder of doubtful readings.
 * Source: AFS definition (lab manuals); 1 cm of water taken as 1 gf/cm², 0.0 to 0.2 % off for water of 4 to 20 °C.
 * Example: permeabilityNumber({ airMl: 2000, heightMm: 50.8, diameterMm: 50.8, waterMm: 100, seconds: 60 }) is 50.13.
 */
export function permeabilityNumber(test: {
  readonly airMl: number;
  readonly heightMm: number;
  readonly diameterMm: number;
  readonly waterMm: number;
  readonly seconds: number;
}): number {
  const { waterMm, seconds } = test;
  requireMildPressure("permeabilityNumber", { waterMm });
  requireAboveZero("permeabilityNumber", { seconds });
  return permeabilityConstant(test) / ((waterMm / 10) * (seconds / 60));
}

/**
 * The German number Gd, given with the pressure in mbar, as the gf/cm² number: × 0.980665.
 * gd: > 0, else RangeError. The specimen of Gd is 50 × 50 mm; only the unit of pressure is converted here.
 * Source: 1 gf/cm² is 0.980665 mbar; Giesserei-Praxis lexicon, "Gasdurchlässigkeit".
 * @example permeabilityFromGd(100) // 98.07
 */
export function permeabilityFromGd(gd: number): number {
  requireAboveZero("permeabilityFromGd", { gd });
  return gd * 0.980665;
}

/**
 * Intrinsic permeability, m²: 1 number is 1e-4 / 60 / 98.0665 m²/(Pa·s), times the viscosity of the air.
 * permeability: the number, > 0; viscosityUPaS: > 0, of air at 20 °C unless given. Else RangeError.
 * Source: Darcy's law. Example: permeabilityM2(1) is 3.08e-13, 0.312 darcy.
 */
export function permeabilityM2(permeability: number, viscosityUPaS = 18.134): number {
  requireAboveZero("permeabilityM2", { permeability, viscosityUPaS });
  return ((permeability * 1e-4) / 60 / 98.0665) * viscosityUPaS * 1e-6;
}
