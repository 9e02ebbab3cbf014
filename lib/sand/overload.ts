// How much sand one sieve may hold before it keeps back what should pass.

import type { Issue } from "../issue.ts";
import { QUARTZ_KG_M3 } from "./quartz.ts";
import { grams, short } from "./short-figure.ts";
import { areaLoadExceeded, fiveLayersExceeded } from "./weighing-issues.ts";

/** Area of a round frame, m². */
const frameArea = (frameMm: number): number => (Math.PI / 4) * (frameMm / 1000) ** 2;
const PACKING = 0.6;
const LAYERS = 5;
/** Sieves from this opening on have a limit that grows with the opening, mm. */
const COARSE_MM = 4.75;

function positive(name: string, figures: Readonly<Record<string, number>>): void {
  for (const [argument, figure] of Object.entries(figures))
    if (!(figure > 0 && Number.isFinite(figure)))
      throw new RangeError(`${name}: ${argument} must be above 0, got ${figure}`);
}

/**
 * Mass of five layers of grains on a sieve: 5 d × 0.60 × ρ × area, g. 0.60 is the share of the volume that loose
 * grains fill, our own choice.
 * grainMm: size of the grains, mm; frameMm: inside diameter of the frame, mm; grainKgM3: default 2650. All > 0, else
 * RangeError.
 * Source: five layers, McManus 1965, J. Sediment. Petrol. 35(4) 792 (fine sand, 3 in sieves, 10 min).
 * Example: fiveLayersG(0.25, 200) is 62.4.
 */
export function fiveLayersG(grainMm: number, frameMm: number, grainKgM3 = QUARTZ_KG_M3): number {
  positive("fiveLayersG", { grainMm, frameMm, grainKgM3 });
  return LAYERS * grainMm * PACKING * grainKgM3 * frameArea(frameMm);
}

/**
 * Most that a sieve may hold by its area, g: 7 kg/m² below 4.75 mm, 2.5 kg/m² for each mm of opening from there on.
 * openingMm, frameMm (inside diameter that sieves; on an 8 in frame 190.5 mm): > 0, else RangeError.
 * Source: ASTM C136. Far too kind to fine sieves: 200 g on a No. 200 are many layers.
 * Example: areaLoadG(0.3, 190.5) is 199.5.
 */
export function areaLoadG(openingMm: number, frameMm: number): number {
  positive("areaLoadG", { openingMm, frameMm });
  return 1000 * frameArea(frameMm) * (openingMm < COARSE_MM ? 7 : 2.5 * openingMm);
}

export interface Overload {
  /** Five layers of grains, g (McManus 1965). */
  readonly fiveLayersG: number;
  /** By area, g (ASTM C136). */
  readonly areaG: number;
  /** How many grains deep the sand lies. */
  readonly layers: number;
  /** good: within both limits; crowded: above five layers; overloaded: above the limit by area. */
  readonly verdict: "good" | "crowded" | "overloaded";
  readonly issues: readonly Issue[];
}

/**
 * Whether one sieve holds too much. The grains on it are taken to be of one size: the geometric middle of its
 * opening and the one above, or opening × 1.19 (⁴√2, sieves a factor √2 apart) if that is not given.
 *
 * openingMm, frameMm (inside), massG, nextOpeningMm (the sieve above), grainKgM3: mm, mm, g, mm, kg/m³; massG ≥ 0,
 * the others > 0, nextOpeningMm > openingMm; else RangeError. A pan has no opening and cannot be overloaded.
 * From 4.75 mm on only the limit by area is judged, since the five layers were found for sand.
 * Sources: fiveLayersG, areaLoadG.
 * @example overload({ openingMm: 0.075, frameMm: 200, massG: 40 }) // { fiveLayersG: 22.3, verdict: "crowded" }
 */
export function overload(load: {
  readonly openingMm: number;
  readonly frameMm: number;
  readonly massG: number;
  readonly nextOpeningMm?: number;
  readonly grainKgM3?: number;
}): Overload {
  const {
    openingMm,
    frameMm,
    massG,
    nextOpeningMm = openingMm * Math.SQRT2,
    grainKgM3 = QUARTZ_KG_M3,
  } = load;
  positive("overload", { openingMm, frameMm, nextOpeningMm, grainKgM3 });
  if (!(massG >= 0 && Number.isFinite(massG)))
    throw new RangeError(`overload: massG must not be negative, got ${massG}`);
  if (!(nextOpeningMm > openingMm))
    throw new RangeError(`overload: nextOpeningMm must be above openingMm, got ${nextOpeningMm}`);
  const five = fiveLayersG(Math.sqrt(openingMm * nextOpeningMm), frameMm, grainKgM3);
  const areaG = areaLoadG(openingMm, frameMm);
  const layers = (LAYERS * massG) / five;
  const base = { fiveLayersG: five, areaG, layers };
  if (massG > areaG)
    return { ...base, verdict: "overloaded", issues: [areaLoadExceeded(grams(massG), grams(areaG))] };
  if (massG > five && openingMm < COARSE_MM)
    return {
      ...base,
      verdict: "crowded",
      issues: [fiveLayersExceeded(grams(massG), grams(five), short(layers))],
    };
  return { ...base, verdict: "good", issues: [] };
}
