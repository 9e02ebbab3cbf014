// Pressure of water vapour over water that it is in balance with.

/** Critical point of water: K and Pa (IAPWS). */
const CRITICAL_K = 647.096;
const CRITICAL_PA = 22.064e6;
/** Coefficients and exponents of IAPWS SR1-86(1992), from memory; its two check points are met. */
const TERMS = [
  [-7.85951783, 1],
  [1.84408259, 1.5],
  [-11.7866497, 3],
  [22.6807411, 3.5],
  [-15.9618719, 4],
  [1.80122502, 7.5],
] as const;

/**
 * Saturation pressure of water vapour over liquid water, Pa:
 * ln(p/pc) = (Tc/T) Σ aᵢ θ^bᵢ, θ = 1 − T/Tc, T in kelvin.
 *
 * celsius: 0 to 370 °C, else RangeError (over ice it is another curve; the 0.01 °C below the triple point is no matter).
 * Source: W. Wagner & A. Pruss, IAPWS SR1-86(1992), coefficients from memory. Check points: 273.16 K, 611.657 Pa;
 * 373.1243 K, 0.101325 MPa. Within 0.01 % of IAPWS-95 from 0 to 40 °C.
 * Example: saturationPressurePa(20) is 2339.2.
 */
export function saturationPressurePa(celsius: number): number {
  if (!(celsius >= 0 && celsius <= 370))
    throw new RangeError(`saturationPressurePa: celsius must be 0 to 370, got ${celsius}`);
  const kelvin = celsius + 273.15;
  const theta = 1 - kelvin / CRITICAL_K;
  const inside = TERMS.reduce((sum, [a, b]) => sum + a * theta ** b, 0);
  return CRITICAL_PA * Math.exp((CRITICAL_K / kelvin) * inside);
}
