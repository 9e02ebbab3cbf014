// How much sand to sieve: enough for the scale and for chance, not too much for the sieves.

import type { Issue } from "../issue.ts";
import { QUARTZ_KG_M3 } from "./quartz.ts";
import { grams } from "./short-figure.ts";
import { portionBelowScale, portionTooLarge, portionTooSmall } from "./weighing-issues.ts";

/** The trade's portions on a 200 mm frame, g: 50 (AFS), 100 (CEMP-081; SFSA 12-61). */
const STANDARD = { frameMm: 200, lowG: 50, highG: 100 };
/** So near to an end is as good as there, for 8 in is 203 mm and nobody pours to the gram: our own. */
const NEAR = 0.05;
/** Steps of the scale that each main sieve should hold: our own, 5 % of the reading for one step. */
const STEPS = 20;
/** What a main sieve holds at least, % of the sand, as for the screen count. */
const MAIN_PERCENT = 10;

export interface PortionAdvice {
  /** What suits the frame, g. */
  readonly lowG: number;
  readonly highG: number;
  /** Least that suits the scale, g; undefined without stepG. */
  readonly scaleLowG: number | undefined;
  readonly verdict: "too little" | "good" | "too much";
  readonly issues: readonly Issue[];
}

/**
 * Whether a portion suits the sieves: 50 to 100 g on a 200 mm frame, scaled by area, (frame / 200)², and 5 % beyond.
 * With stepG also whether it suits the scale (smallestPortionG with a main sieve of 10 %). Where the scale asks for
 * more than the frame takes, sieve several portions and add them up; the verdict then stays that of the frame.
 *
 * frameMm: inside diameter of the frame; portionG; stepG: smallest step of the scale. All > 0, else RangeError.
 * Source: 50 g AFS (EngineeringNotes text; AFS 1105 from memory), 100 g SFSA 12-61; scaling by area our own.
 * @example portionAdvice({ frameMm: 100, portionG: 50 }) // { lowG: 12.5, highG: 25, verdict: "too much" }
 */
export function portionAdvice(portion: {
  readonly frameMm: number;
  readonly portionG: number;
  readonly stepG?: number;
}): PortionAdvice {
  const { frameMm, portionG, stepG } = portion;
  if (!(frameMm > 0 && portionG > 0))
    throw new RangeError(`portionAdvice: frame and portion must be above 0, got ${frameMm} and ${portionG}`);
  const scale = (frameMm / STANDARD.frameMm) ** 2;
  const lowG = STANDARD.lowG * scale;
  const highG = STANDARD.highG * scale;
  const scaleLowG = stepG === undefined ? undefined : smallestPortionG({ mainPercent: MAIN_PERCENT, stepG });
  const verdict =
    portionG < lowG * (1 - NEAR) ? "too little" : portionG > highG * (1 + NEAR) ? "too much" : "good";
  const issues: Issue[] = [];
  if (verdict === "too little") issues.push(portionTooSmall(grams(portionG), grams(lowG)));
  if (verdict === "too much") issues.push(portionTooLarge(grams(portionG), grams(highG)));
  if (stepG !== undefined && scaleLowG !== undefined && portionG < scaleLowG * (1 - 1e-9))
    issues.push(portionBelowScale(grams(portionG), grams(stepG), grams(scaleLowG)));
  return { lowG, highG, scaleLowG, verdict, issues };
}

/**
 * Smallest portion for a scale, g: the leanest main sieve should hold at least 20 steps, step × 20 / share.
 * mainPercent: what that sieve holds, % of the sand, above 0 to 100; stepG > 0; steps > 0 (default 20). Else RangeError.
 * Source: our own.
 * @example smallestPortionG({ mainPercent: 10, stepG: 0.1 }) // 20
 */
export function smallestPortionG(wanted: {
  readonly mainPercent: number;
  readonly stepG: number;
  readonly steps?: number;
}): number {
  const { mainPercent, stepG, steps = STEPS } = wanted;
  if (!(mainPercent > 0 && mainPercent <= 100 && stepG > 0 && steps > 0))
    throw new RangeError(
      `smallestPortionG: share 0 to 100, step and steps above 0, got ${mainPercent}, ${stepG}, ${steps}`,
    );
  return (steps * stepG * 100) / mainPercent;
}

/**
 * Number of grains in a mass: m / (ρ π d³ / 6), spheres of one size.
 * massG ≥ 0; grainMm, grainKgM3 > 0 (default 2650); else RangeError. Source: geometry.
 * Example: 1 g of 0.25 mm quartz: about 46,100 grains; of 3.35 to 6.7 mm (4.74 mm): 7.
 */
export function grainCount(massG: number, grainMm: number, grainKgM3 = QUARTZ_KG_M3): number {
  if (!(massG >= 0 && grainMm > 0 && grainKgM3 > 0))
    throw new RangeError(
      `grainCount: mass from 0, size and density above 0, got ${massG}, ${grainMm}, ${grainKgM3}`,
    );
  return (massG * 1e6) / ((grainKgM3 * Math.PI * grainMm ** 3) / 6);
}

/**
 * Chance scatter of what a sieve holds, % of it, one standard deviation: 100 / √n, n grains falling into the portion
 * independently (Poisson). A riffled portion of a well mixed sand can do no better.
 * massG on the sieve, > 0, and the rest as grainCount. Source: Poisson count.
 * Example: 0.5 g of 4.74 mm grains: n = 3.4, 54 %; 0.5 g of 0.25 mm: 0.66 %.
 */
export function countingScatterPercent(massG: number, grainMm: number, grainKgM3 = QUARTZ_KG_M3): number {
  const grains = grainCount(massG, grainMm, grainKgM3);
  if (!(grains > 0)) throw new RangeError(`countingScatterPercent: massG must be above 0, got ${massG}`);
  return 100 / Math.sqrt(grains);
}
