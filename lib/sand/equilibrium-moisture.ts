// Moisture that a fully mulled sand has at a compactability, by its live clay.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { requireAboveZero } from "./require.ts";

/** Live clay by methylene blue for which the relation was printed, %. */
const CLAY = { low: 7, high: 11 };
/** Compactability, %: our judgement, that of the bond state. */
const COMPACTABILITY = { low: 30, high: 55 };
/** Where one branch takes over from the other; the two miss each other there by 0.3 %. */
const JOINT = 47.5;

interface Question {
  /** Live clay by methylene blue, % of the dried sand: not clay added, not clay by wash. */
  readonly liveClayPercent: number;
  /** % of height. */
  readonly compactabilityPercent: number;
}

/** The relation without a look at its range, for draws about a state that was checked. Example: as below. */
export function equilibriumRelation({ liveClayPercent, compactabilityPercent }: Question): number {
  const bottom =
    compactabilityPercent > JOINT
      ? 3.213 - 0.02525 * compactabilityPercent
      : 2.583 - 0.01185 * compactabilityPercent;
  return liveClayPercent / bottom;
}

/**
 * Equilibrium moisture, % of damp mass: live clay / (2.583 − 0.01185 c) up to a compactability c of 47.5 %, live clay
 * / (3.213 − 0.02525 c) above. A sand that holds more water than this at its compactability is not fully mulled.
 *
 * liveClayPercent: 7 to 11 %; compactabilityPercent: 30 to 55 % (our judgement). Outside: null, and
 * equilibriumMoistureIssues says why. Zero, negative or not a number: RangeError.
 * For system sands of iron foundries, with fines and coal; a clean home sand may need less water.
 * Source: ICRI Report 610 (2003), Heine–Green.
 * @example equilibriumMoisturePercent({ liveClayPercent: 8, compactabilityPercent: 45 }) // 3.903
 */
export function equilibriumMoisturePercent(question: Question): number | null {
  return equilibriumMoistureIssues(question).length > 0 ? null : equilibriumRelation(question);
}

/** Why no equilibrium moisture is given; empty where it is. Arguments and limits as equilibriumMoisturePercent. */
export function equilibriumMoistureIssues({
  liveClayPercent,
  compactabilityPercent,
}: Question): readonly Issue[] {
  requireAboveZero("equilibriumMoisturePercent", { liveClayPercent, compactabilityPercent });
  return [
    ...(outside(liveClayPercent, CLAY) ? [outOfRange("a live clay", liveClayPercent, CLAY)] : []),
    ...(outside(compactabilityPercent, COMPACTABILITY)
      ? [outOfRange("a compactability", compactabilityPercent, COMPACTABILITY)]
      : []),
  ];
}

/**
 * Compactability at which a sand of this live clay and moisture would be fully mulled, %: the relation turned round,
 * (2.583 − clay/m) / 0.01185 up to 47.5 %, else (3.213 − clay/m) / 0.02525.
 *
 * liveClayPercent: 7 to 11; moistureOfDampPercent: > 0. Null outside, and where the result leaves 30 to 55 %. In the
 * narrow gap between the branches it is 47.5. Zero, negative or not a number: RangeError.
 * Source: ICRI Report 610 (upper branch); the lower by algebra.
 * @example equilibriumCompactabilityPercent({ liveClayPercent: 8, moistureOfDampPercent: 3.903 }) // 45.0
 */
export function equilibriumCompactabilityPercent({
  liveClayPercent,
  moistureOfDampPercent,
}: {
  readonly liveClayPercent: number;
  readonly moistureOfDampPercent: number;
}): number | null {
  requireAboveZero("equilibriumCompactabilityPercent", { liveClayPercent, moistureOfDampPercent });
  const ratio = liveClayPercent / moistureOfDampPercent;
  const lower = (2.583 - ratio) / 0.01185;
  const upper = (3.213 - ratio) / 0.02525;
  const percent = lower <= JOINT ? lower : Math.max(JOINT, upper);
  return outside(liveClayPercent, CLAY) || outside(percent, COMPACTABILITY) ? null : percent;
}

const outside = (value: number, { low, high }: { readonly low: number; readonly high: number }): boolean =>
  value < low - 1e-9 || value > high + 1e-9;

function outOfRange(words: string, value: number, { low, high }: { low: number; high: number }): Issue {
  return noEquilibriumMoisture(words, `${low} to ${high} %`, `${Number(value.toPrecision(3))} %`);
}

export const noEquilibriumMoisture = issueMessage(
  "sand/equilibrium-moisture-range",
  "note",
  (property: string, range: string, given: string) => ({
    message: `No equilibrium moisture is given: the relation is used for ${property} of ${range}, and this sand has ${given}.`,
    remedy: "Temper by compactability and by your own trial instead.",
  }),
);
