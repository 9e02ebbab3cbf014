// Viscosity of air, for what permeability reads on a cold or hot day.

/**
 * Viscosity of air at about 1 atm, µPa·s: 1.458 T^1.5 / (T + 110.4), T in kelvin (Sutherland).
 * celsius: −20 to 60 °C here, else RangeError.
 * Source: Sutherland's law with the constants of the U.S. Standard Atmosphere 1976 (from memory).
 * Example: airViscosityUPaS(20) is 18.13.
 */
export function airViscosityUPaS(celsius: number): number {
  if (!(celsius >= -20 && celsius <= 60))
    throw new RangeError(`airViscosityUPaS: celsius must be −20 to 60, got ${celsius}`);
  const kelvin = celsius + 273.15;
  return (1.458 * kelvin ** 1.5) / (kelvin + 110.4);
}

const viscosityAt20 = airViscosityUPaS(20);

/**
 * Permeability as it would read in air of 20 °C: number × µ(celsius) / µ(20). Warm air is the more viscous and goes through more slowly.
 * permeability: as measured, finite; celsius as airViscosityUPaS, else RangeError.
 * Source: flow in pores goes with 1 / µ (Darcy). Example: permeabilityAt20({ permeability: 50, celsius: 10 }) is 48.7.
 */
export function permeabilityAt20({
  permeability,
  celsius,
}: {
  readonly permeability: number;
  readonly celsius: number;
}): number {
  if (!Number.isFinite(permeability))
    throw new RangeError(`permeabilityAt20: permeability must be a number, got ${permeability}`);
  return (permeability * airViscosityUPaS(celsius)) / viscosityAt20;
}
