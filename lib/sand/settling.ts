// Grains that fall through still water, by Stokes.

import { QUARTZ_KG_M3 } from "./quartz.ts";
import { waterDensityKgM3, waterViscosityMPaS } from "./water.ts";

/** Standard gravity, m/s². */
const GRAVITY = 9.80665;
/** Stokes' law is used up to this Reynolds number. */
const STOKES_LIMIT = 0.5;

interface Fall {
  /** Diameter of the grain, µm. */
  readonly grainUm: number;
  /** Temperature of the water, 0 to 100 °C. */
  readonly celsius: number;
  /** Density of the grain, kg/m³; quartz, 2650, unless given. */
  readonly grainKgM3?: number;
}

function water(name: string, celsius: number, grainKgM3: number): { lift: number; rho: number; mu: number } {
  const rho = waterDensityKgM3(celsius);
  if (!(grainKgM3 > rho && Number.isFinite(grainKgM3)))
    throw new RangeError(`${name}: grainKgM3 must be above that of water, got ${grainKgM3}`);
  return { rho, mu: waterViscosityMPaS(celsius) / 1000, lift: GRAVITY * (grainKgM3 - rho) };
}

/** Speed and Reynolds number by Stokes' law, whether it holds or not. */
function fall(
  name: string,
  { grainUm, celsius, grainKgM3 = QUARTZ_KG_M3 }: Fall,
): { ms: number; re: number } {
  if (!(grainUm > 0 && Number.isFinite(grainUm)))
    throw new RangeError(`${name}: grainUm must be above 0, got ${grainUm}`);
  const { lift, rho, mu } = water(name, celsius, grainKgM3);
  const d = grainUm * 1e-6;
  const ms = (lift * d ** 2) / (18 * mu);
  return { ms, re: (rho * ms * d) / mu };
}

function stokesOnly(name: string, re: number): void {
  if (re > STOKES_LIMIT)
    throw new RangeError(
      `${name}: Stokes' law does not hold here, Reynolds number ${re.toPrecision(2)} is above ${STOKES_LIMIT}; quartz in water at 20 °C may be up to about 82 µm`,
    );
}

/**
 * Reynolds number of a grain that falls at Stokes' speed: Re = ρw v d / µ. Above about 0.5 to 1 the law fails.
 * Arguments as settlingSeconds, without the limit on Re.
 * Source: its definition.
 * Example: stokesReynolds({ grainUm: 20, celsius: 20 }) is 0.0072.
 */
export function stokesReynolds(grain: Fall): number {
  return fall("stokesReynolds", grain).re;
}

/**
 * Speed of a grain in still water: v = g (ρs − ρw) d² / (18 µ), mm/s. Arguments and limits as settlingSeconds.
 * Example: stokesVelocityMmS({ grainUm: 20, celsius: 20 }) is 0.359.
 */
export function stokesVelocityMmS(grain: Fall): number {
  const { ms, re } = fall("stokesVelocityMmS", grain);
  stokesOnly("stokesVelocityMmS", re);
  return ms * 1000;
}

/**
 * Time that a grain takes to fall through a depth of still water, s: depth × 18 µ / (g (ρs − ρw) d²).
 *
 * grainUm: > 0, µm. depthMm: > 0, mm. celsius: 0 to 100 °C. grainKgM3: above water, default 2650 (quartz).
 * Else RangeError, as where the Reynolds number is above 0.5 (stokesReynolds gives it).
 * Taken as one smooth sphere in still water of one temperature; a thick suspension settles more slowly, and swollen
 * clay flocs are far lighter than the mineral.
 * Source: Stokes; water by Pátek et al. 2009 and Kell 1975; g standard.
 * Example: settlingSeconds({ grainUm: 20, depthMm: 127, celsius: 20 }) is 353.
 */
export function settlingSeconds(grain: Fall & { readonly depthMm: number }): number {
  if (!(grain.depthMm > 0 && Number.isFinite(grain.depthMm)))
    throw new RangeError(`settlingSeconds: depthMm must be above 0, got ${grain.depthMm}`);
  const { ms, re } = fall("settlingSeconds", grain);
  stokesOnly("settlingSeconds", re);
  return grain.depthMm / 1000 / ms;
}

/**
 * Size of the grain that just falls through a depth in a time, µm: d = √(18 µ v / (g (ρs − ρw))). Coarser grains
 * have settled; finer ones from the top are still above that depth and go with the siphon.
 *
 * depthMm, seconds: > 0. celsius: 0 to 100 °C. grainKgM3: above water, default 2650. Else RangeError, as where the
 * Reynolds number is above 0.5.
 * Source: Stokes' law, that of settlingSeconds.
 * Example: settlingCutUm({ depthMm: 127, seconds: 300, celsius: 20 }) is 21.7.
 */
export function settlingCutUm(siphon: {
  readonly depthMm: number;
  readonly seconds: number;
  readonly celsius: number;
  readonly grainKgM3?: number;
}): number {
  const { depthMm, seconds, celsius, grainKgM3 = QUARTZ_KG_M3 } = siphon;
  if (!(depthMm > 0 && seconds > 0 && Number.isFinite(depthMm / seconds)))
    throw new RangeError(`settlingCutUm: depthMm and seconds must be above 0, got ${depthMm} and ${seconds}`);
  const { lift, mu } = water("settlingCutUm", celsius, grainKgM3);
  const grainUm = Math.sqrt((18 * mu * (depthMm / 1000 / seconds)) / lift) * 1e6;
  stokesOnly("settlingCutUm", stokesReynolds({ grainUm, celsius, grainKgM3 }));
  return grainUm;
}
