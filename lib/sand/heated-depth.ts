// Heat that runs into deep sand whose face is held at a temperature.

import { erf, erfc, inverseErfc } from "../numbers/error-function.ts";
import { requireAboveZero, requireFromZero, requireNumber } from "./require.ts";

interface HeldFace {
  /** Temperature at which the face is held. */
  readonly faceC: number;
  /** Temperature of the sand before. */
  readonly startC: number;
  readonly seconds: number;
  /** k/(ρ c), m²/s. */
  readonly diffusivityM2S: number;
}

function requireHeld(name: string, { faceC, startC, seconds, diffusivityM2S }: HeldFace): void {
  requireNumber(name, { faceC, startC });
  requireFromZero(name, { seconds });
  requireAboveZero(name, { diffusivityM2S });
  if (faceC === startC) throw new RangeError(`${name}: faceC must differ from startC, got ${faceC} for both`);
}

/**
 * Depth to which sand has passed a temperature, mm: x = 2 √(α t) erfc⁻¹((T − T₀)/(Tf − T₀)), for a face held at Tf from
 * time 0 on deep sand of T₀.
 *
 * faceC, startC: °C, not alike; targetC: between them, else 0 where the sand never needed it or the face does not reach
 * it: at startC or beyond every depth is past it (∞), at faceC or beyond none is (0). seconds: 0 or more.
 * diffusivityM2S: > 0, see moulding sands. Else RangeError. Cooling works alike (frost in soil).
 * Perfect contact, dry sand of constant properties, a flat face: mostly an upper bound while the face is that hot, and
 * it says nothing of when a mould may be opened.
 * Source: semi-infinite conduction (Carslaw & Jaeger; Flemings, Solidification Processing; from memory); the water-main
 * example of Incropera & DeWitt is met.
 * @example
 * heatedDepthMm({ faceC: 660, startC: 20, targetC: 600, seconds: 171.5, diffusivityM2S: 3.6e-7 }) // 1.31
 */
export function heatedDepthMm(heat: HeldFace & { readonly targetC: number }): number {
  const { faceC, startC, targetC, seconds, diffusivityM2S } = heat;
  requireHeld("heatedDepthMm", heat);
  requireNumber("heatedDepthMm", { targetC });
  const share = (targetC - startC) / (faceC - startC);
  if (share >= 1 || seconds === 0) return 0;
  if (share <= 0) return Number.POSITIVE_INFINITY;
  return 2000 * Math.sqrt(diffusivityM2S * seconds) * inverseErfc(share);
}

/**
 * Temperature at a depth, °C: Tf + (T₀ − Tf) erf(x/(2 √(α t))). depthMm: 0 or more; the rest as heatedDepthMm, seconds > 0.
 * Source: that of heatedDepthMm.
 * @example
 * sandTemperatureC({ faceC: -15, startC: 20, seconds: 60 * 86400, diffusivityM2S: 1.38e-7, depthMm: 677 })
 * // 0.0
 */
export function sandTemperatureC(heat: HeldFace & { readonly depthMm: number }): number {
  const { faceC, startC, seconds, diffusivityM2S, depthMm } = heat;
  requireHeld("sandTemperatureC", heat);
  requireAboveZero("sandTemperatureC", { seconds });
  requireFromZero("sandTemperatureC", { depthMm });
  const eta = depthMm / 1000 / (2 * Math.sqrt(diffusivityM2S * seconds));
  return faceC + (startC - faceC) * erf(eta);
}

/**
 * Temperature at a depth where heat must cross a gap at the face, °C:
 * T₀ + (T∞ − T₀)(erfc ξ − exp(h x/k + h² α t/k²) erfc(ξ + h √(α t)/k)), ξ = x/(2 √(α t)).
 *
 * bodyC: metal or air on the other side, held. gapWM2K: heat that crosses for each m² and degree, > 0. conductivityWMK:
 * of the sand, > 0. depthMm: 0 (the face itself) or more. seconds: > 0. Else RangeError.
 * Aluminium 6061 in green sand: 74 to 132 W/(m² K) was published, so the face of a thin section lags far behind.
 * Source: Carslaw & Jaeger (from memory); the freezing-ground example of Geankoplis 5.3-1 is met.
 * @example
 * behindGapC({ bodyC: -17.8, startC: 15.6, seconds: 5 * 3600, diffusivityM2S: 4.65e-7,
 *   gapWM2K: 11.36, conductivityWMK: 0.865, depthMm: 0 }) // -5.2
 */
export function behindGapC({
  bodyC,
  startC,
  seconds,
  diffusivityM2S,
  gapWM2K,
  conductivityWMK,
  depthMm,
}: {
  readonly bodyC: number;
  readonly startC: number;
  readonly seconds: number;
  readonly diffusivityM2S: number;
  readonly gapWM2K: number;
  readonly conductivityWMK: number;
  readonly depthMm: number;
}): number {
  requireNumber("behindGapC", { bodyC, startC });
  requireAboveZero("behindGapC", { seconds, diffusivityM2S, gapWM2K, conductivityWMK });
  requireFromZero("behindGapC", { depthMm });
  const reachM = Math.sqrt(diffusivityM2S * seconds);
  const xi = depthMm / 1000 / (2 * reachM);
  const eta = (gapWM2K * reachM) / conductivityWMK;
  const share = erfc(xi) - scaledErfc(2 * xi * eta + eta ** 2, xi + eta);
  return startC + (bodyC - startC) * share;
}

/** e^power erfc z, where power ≤ z²: for a large z by the first terms of its series, since the factors overflow apart. */
function scaledErfc(power: number, z: number): number {
  if (z < 5) return Math.exp(power) * erfc(z);
  const series = 1 - 1 / (2 * z ** 2) + 3 / (4 * z ** 4) - 15 / (8 * z ** 6);
  return (Math.exp(power - z ** 2) / (z * Math.sqrt(Math.PI))) * series;
}

/**
 * Heat that has gone into a square metre of face, kJ/m²: (2/√π) √(kρc) (Tf − T₀) √t, less than zero where it came out.
 * effusivity: √(kρc), J/(m² K √s), > 0; the rest as heatedDepthMm. Source: as there.
 * @example heatIntoSandKJM2({ faceC: 660, startC: 20, effusivity: 1017, seconds: 100 }) // 7344
 */
export function heatIntoSandKJM2({
  faceC,
  startC,
  effusivity,
  seconds,
}: {
  readonly faceC: number;
  readonly startC: number;
  readonly effusivity: number;
  readonly seconds: number;
}): number {
  requireNumber("heatIntoSandKJM2", { faceC, startC });
  requireAboveZero("heatIntoSandKJM2", { effusivity });
  requireFromZero("heatIntoSandKJM2", { seconds });
  return ((2 / Math.sqrt(Math.PI)) * effusivity * (faceC - startC) * Math.sqrt(seconds)) / 1000;
}

/**
 * Temperature at which two deep bodies touch, °C: (e₁T₁ + e₂T₂)/(e₁ + e₂), e = √(kρc). Effusivities > 0, else RangeError.
 * Source: semi-infinite conduction (Carslaw & Jaeger, from memory).
 * @example contactC({ metalC: 720, metalEffusivity: 15660, sandC: 20, sandEffusivity: 1017 }) // 677
 */
export function contactC({
  metalC,
  metalEffusivity,
  sandC,
  sandEffusivity,
}: {
  readonly metalC: number;
  readonly metalEffusivity: number;
  readonly sandC: number;
  readonly sandEffusivity: number;
}): number {
  requireNumber("contactC", { metalC, sandC });
  requireAboveZero("contactC", { metalEffusivity, sandEffusivity });
  return (metalEffusivity * metalC + sandEffusivity * sandC) / (metalEffusivity + sandEffusivity);
}
