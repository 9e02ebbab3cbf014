// How a heap dries when it is left alone: a dry skin that grows inwards with the root of time.

import { type Air, requireAir, vapourDensityKgM3, vapourPressurePa } from "./humid-air.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";
import { saturationPressurePa } from "./saturation-pressure.ts";

/** Vapour in air at 20 °C, m²/s, and how it grows with kelvin (both from memory). */
const DIFFUSION_M2_S = 2.4e-5;
const DIFFUSION_POWER = 1.75;

/**
 * Diffusivity of vapour through dry sand, m²/s: D ε^(4/3), D = 2.4e-5 (T/293.15 K)^1.75.
 * porosity: share of the volume that is air, above 0 to 1; celsius: 0 to 60. Else RangeError.
 * Source: R. J. Millington & J. P. Quirk 1961 (from memory). Example: porosity 0.45 at 20 °C: 8.28e-6.
 */
export function vapourDiffusivityM2S(porosity: number, celsius: number): number {
  if (!(porosity > 0 && porosity <= 1))
    throw new RangeError(`vapourDiffusivityM2S: porosity must be above 0 and up to 1, got ${porosity}`);
  requireAir("vapourDiffusivityM2S", { airC: celsius, relativeHumidityPercent: 0 });
  return DIFFUSION_M2_S * ((celsius + 273.15) / 293.15) ** DIFFUSION_POWER * porosity ** (4 / 3);
}

/**
 * Depth of the dried skin δ, mm, and the water that left through it, kg for each m² of surface:
 * δ = √(2 De Δρ t/w), loss = w δ, with De the diffusivity in dry sand, Δρ the vapour that saturated air holds more than
 * the air outside, w the water in a cubic metre of the loose sand (loose density × moisture). Both go with √time.
 *
 * airC: 0 to 60 °C; relativeHumidityPercent: 0 to 100; hours: 0 or more; moistureOfDampPercent: above 0, below 100;
 * looseKgM3: damp, loose, > 0; porosity: above 0 to 1. Else RangeError.
 * Sand at the air's temperature, no wind in the pores, no sun: mostly an upper bound. A heap that is turned starts anew.
 * The skin holds no end: the caller must see that it stays thin beside the heap.
 * Source: a receding front, as Navarri & Andrieu 1993 (Chem. Eng. Process. 32) fitted to wet sand; De by Millington &
 * Quirk. Sand of 50 to 150 mesh leaves the steady rate of open water below about 5 % (Perry, from memory), where
 * green sand begins.
 * @example
 * dryingFront({ airC: 20, relativeHumidityPercent: 50, hours: 24, moistureOfDampPercent: 4,
 *   looseKgM3: 1100, porosity: 0.45 }) // { frontMm: 16.8, lossKgM2: 0.74 }
 */
export function dryingFront(
  skin: Air & {
    readonly hours: number;
    readonly moistureOfDampPercent: number;
    readonly looseKgM3: number;
    readonly porosity: number;
  },
): { readonly frontMm: number; readonly lossKgM2: number } {
  const { airC, hours, moistureOfDampPercent, looseKgM3 } = skin;
  requireAir("dryingFront", skin);
  requireFromZero("dryingFront", { hours });
  requireAboveZero("dryingFront", { moistureOfDampPercent, looseKgM3 });
  return dryingFrontRelation({ ...skin, missingPa: saturationPressurePa(airC) - vapourPressurePa(skin) });
}

/** The relation alone, from the vapour pressure that the air still lacks, Pa: for draws about a state that was checked. */
export function dryingFrontRelation({
  missingPa,
  airC,
  hours,
  moistureOfDampPercent,
  looseKgM3,
  porosity,
}: {
  readonly missingPa: number;
  readonly airC: number;
  readonly hours: number;
  readonly moistureOfDampPercent: number;
  readonly looseKgM3: number;
  readonly porosity: number;
}): { readonly frontMm: number; readonly lossKgM2: number } {
  const waterKgM3 = (looseKgM3 * moistureOfDampPercent) / 100;
  const flow = vapourDiffusivityM2S(porosity, airC) * vapourDensityKgM3(missingPa, airC);
  const frontM = Math.sqrt((2 * flow * hours * 3600) / waterKgM3);
  return { frontMm: 1000 * frontM, lossKgM2: waterKgM3 * frontM };
}
