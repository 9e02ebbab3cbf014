// Theoretical specific surface from what a founder weighed.

import { readGrading } from "./read-grading.ts";
import { type SpecificSurface, type SurfaceOptions, specificSurface } from "./specific-surface.ts";

interface Sieved extends SurfaceOptions {
  readonly retained: Readonly<Record<string, number>>;
}

/**
 * Theoretical specific surface of a sieved sand with its parts, cm²/g: grains taken as smooth spheres. See
 * specificSurface for the equation.
 *
 * retained: mass on each sieve by its label, and in the pan, g or % (any one unit).
 * mean: "geometric" (default), "arithmetic" or "log-mean". grainKgM3: > 0, default 2650 (quartz).
 * Faulty labels or masses: figures undefined, and the issues say why.
 * Source: that of specificSurface.
 * @example
 * theoreticalSurface({ retained: { "No. 70": 20, "No. 100": 28, "No. 140": 2, pan: 0 } }).sauterMm // 0.2087
 */
export function theoreticalSurface(input: Sieved): SpecificSurface {
  const { value, issues } = readGrading(input.retained);
  if (!value)
    return {
      cm2G: undefined,
      sauterMm: undefined,
      byClass: [],
      panSharePercent: 0,
      panBounds: undefined,
      issues,
    };
  const surface = specificSurface(value, input);
  return { ...surface, issues: [...issues, ...surface.issues] };
}

/**
 * Theoretical specific surface of a sieved sand, cm²/g: the number of theoreticalSurface, whose arguments it takes.
 * Undefined where that gives none; its issues say why. Source: that of specificSurface.
 * @example
 * theoreticalSurfaceCm2G({ retained: { "No. 30": 0.05, "No. 40": 0.15, "No. 50": 0.65, "No. 70": 16.55,
 *  "No. 100": 25.05, "No. 140": 5.75, "No. 200": 0.85, "No. 270": 0.2, pan: 0.25 } }) // 125.4, and the source of that sieving prints 125.5
 */
export function theoreticalSurfaceCm2G(input: Sieved): number | undefined {
  return theoreticalSurface(input).cm2G;
}
