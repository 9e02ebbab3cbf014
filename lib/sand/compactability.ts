// Compactability: how far loose sand goes down. Two definitions that are not the same figure.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { isAboveZero, requireAboveZero, requireNumber } from "./require.ts";

/**
 * Compactability by ramming, % of the filled height: 100 (filled − rammed) / filled.
 *
 * filledMm: height of the tube, riddled full and struck off, 120 mm usually; rammedMm: after three rams. Both > 0, mm,
 * else RangeError. Rammed above filled gives a negative figure, so that draws can be worked through;
 * compactabilityIssues tells the founder.
 * Source: AFS 2220, rammer method (named in Honeyman, Modern Casting, Dec 2014); tube and 6 mm riddle from memory.
 * Clean and lightly oiled tube: a dry one reads high (M. Ring, trade article).
 * Example: compactabilityPercent({ filledMm: 120, rammedMm: 66 }) is 45.
 */
export function compactabilityPercent({
  filledMm,
  rammedMm,
}: {
  readonly filledMm: number;
  readonly rammedMm: number;
}): number {
  if (!(isAboveZero(filledMm) && isAboveZero(rammedMm)))
    requireAboveZero("compactabilityPercent", { filledMm, rammedMm });
  return (100 * (filledMm - rammedMm)) / filledMm;
}

/**
 * The same figure by two weighings of one vessel: 100 (1 − loose / rammed). The same volume is filled once loose
 * (riddled and struck off) and once rammed as a specimen is; the masses, or the densities, stand for the heights.
 *
 * looseG, rammedG: sand in the same volume, > 0, g (or both in g/cm³). Else RangeError.
 * Source: follows from the definition, for the mass stays while the height goes down.
 * Example: compactabilityByWeighingPercent({ looseG: 0.8, rammedG: 1.486 }) is 46.2.
 */
export function compactabilityByWeighingPercent({
  looseG,
  rammedG,
}: {
  readonly looseG: number;
  readonly rammedG: number;
}): number {
  requireAboveZero("compactabilityByWeighingPercent", { looseG, rammedG });
  return 100 * (1 - looseG / rammedG);
}

/**
 * Compactability by pressing, % of the filled height: 100 (filled − pressed) / filled, the tube 100 mm high and 50 mm
 * wide, pressed at 100 N/cm². Another definition than by ramming: the two never stand on one curve.
 * pressedMm; filledMm, 100 unless given: > 0, mm, else RangeError.
 * Source: Giesserei-Lexikon, "Verdichtbarkeitsprüfung". 100 N/cm² on 50 mm is about 1,960 N, 200 kg: for a press.
 * Example: pressedCompactabilityPercent({ pressedMm: 55 }) is 45.
 */
export function pressedCompactabilityPercent({
  filledMm = 100,
  pressedMm,
}: {
  readonly filledMm?: number;
  readonly pressedMm: number;
}): number {
  requireAboveZero("pressedCompactabilityPercent", { filledMm, pressedMm });
  return (100 * (filledMm - pressedMm)) / filledMm;
}

/** Our own: below and above these a moulding sand hardly goes; a typing slip is likelier. */
const USUAL = { low: 15, high: 75 };

/**
 * What is wrong with a compactability, in % of height; empty when nothing is. Not a number: RangeError.
 * Source: 0 to below 100 by definition; 15 to 75 % our own (published range of working sands 30 to 55).
 * Example: compactabilityIssues(104)[0]?.code is "sand/compactability-impossible".
 */
export function compactabilityIssues(percent: number): readonly Issue[] {
  requireNumber("compactabilityIssues", { percent });
  const shown = `${Number(percent.toPrecision(3))} %`;
  if (percent < 0 || percent >= 100) return [compactabilityImpossible(shown)];
  return percent < USUAL.low || percent > USUAL.high ? [compactabilityUnusual(shown)] : [];
}

export const compactabilityImpossible = issueMessage(
  "sand/compactability-impossible",
  "error",
  (percent: string) => ({
    message: `A compactability of ${percent} cannot be: sand goes down by some of its height, never by all of it, nor up.`,
    remedy:
      "Look whether filled and rammed were swapped, or whether a height was written for the percentage.",
  }),
);

export const compactabilityUnusual = issueMessage(
  "sand/compactability-unusual",
  "warning",
  (percent: string) => ({
    message: `A compactability of ${percent} is outside what moulding sand shows, ${USUAL.low} to ${USUAL.high} %.`,
    remedy:
      "Look whether the distance rammed down was written for the height left, and whether the tube was full.",
  }),
);
