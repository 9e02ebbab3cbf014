// The error function, its complement and the inverse of that, by way of the normal distribution.

import { normalCumulative, normalQuantile } from "./normal.ts";

/**
 * Error function erf x = (2/√π) ∫₀ˣ e^(−t²) dt = 2 Φ(x√2) − 1. Any x; NaN for NaN.
 * Good to 1e-14 absolutely; for a small x use it no further than that.
 * @example erf(0.5) // 0.520499877813
 */
export function erf(x: number): number {
  return 2 * normalCumulative(x * Math.SQRT2) - 1;
}

/**
 * Complement erfc x = 1 − erf x = 2 Φ(−x√2), without loss of digits where it is small. Any x; NaN for NaN.
 * @example erfc(2) // 0.004677734981
 */
export function erfc(x: number): number {
  return 2 * normalCumulative(-x * Math.SQRT2);
}

/**
 * The x whose erfc is p: −Φ⁻¹(p/2)/√2. p from 0 (∞) to 2 (−∞), else NaN.
 * @example inverseErfc(0.5) // 0.476936276204
 */
export function inverseErfc(p: number): number {
  return -normalQuantile(p / 2) / Math.SQRT2;
}
