// Viscosity and density of water, for settling.

/** a in µPa·s and b of Σ a (T / 300 K)^b. */
const VISCOSITY_TERMS = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
] as const;

/**
 * Viscosity of liquid water at 0.1 MPa, mPa·s: µ = Σ aᵢ (T / 300 K)^bᵢ µPa·s, T in kelvin.
 * celsius: −20.00 to 109.85 °C (253.15 to 383 K), else RangeError; below 0 and above 100 °C the water is undercooled
 * or overheated.
 * Source: Pátek, Hrubý, Klomfar, Součková & Harvey 2009, J. Phys. Chem. Ref. Data 38, 21–29; range from memory.
 * About 1 % at worst there (from memory); within 0.03 % of 1.0016 at 20 °C.
 * Example: waterViscosityMPaS(20) is 1.0016.
 */
export function waterViscosityMPaS(celsius: number): number {
  if (!(celsius >= -20 && celsius <= 109.85))
    throw new RangeError(`waterViscosityMPaS: celsius must be −20 to 109.85, got ${celsius}`);
  const t = (celsius + 273.15) / 300;
  return VISCOSITY_TERMS.reduce((sum, [a, b]) => sum + a * t ** b, 0) / 1000;
}

/**
 * Density of air-free liquid water at 0.1 MPa, kg/m³:
 * (999.83952 + 16.945176 t − 7.9870401e-3 t² − 46.170461e-6 t³ + 105.56302e-9 t⁴ − 280.54253e-12 t⁵)
 * / (1 + 16.879850e-3 t), t in °C.
 * celsius: 0 to 100, else RangeError.
 * Source: Kell 1975, J. Chem. Eng. Data 20, 97, coefficients from memory, checked against Kell's table values.
 * Example: waterDensityKgM3(20) is 998.20.
 */
export function waterDensityKgM3(celsius: number): number {
  if (!(celsius >= 0 && celsius <= 100))
    throw new RangeError(`waterDensityKgM3: celsius must be 0 to 100, got ${celsius}`);
  const t = celsius;
  const top =
    999.83952 +
    t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
  return top / (1 + 16.87985e-3 * t);
}
