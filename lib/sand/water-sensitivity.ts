// How much water it takes to move compactability.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { requireNumber } from "./require.ts";

interface TwoMixes {
  /** Moisture of each mix, % of damp mass. */
  readonly moistureA: number;
  readonly moistureB: number;
  /** Compactability of each mix, % of height. */
  readonly compactabilityA: number;
  readonly compactabilityB: number;
}

/**
 * Water sensitivity: points of moisture (% of damp mass) that move compactability by 10 points,
 * 10 (mA − mB) / (cA − cB).
 *
 * All finite, and the compactabilities not equal, else RangeError: ask waterSensitivityIssues before.
 * Below zero is possible in the figures and impossible in a sand: compactability rises with water until it levels off.
 * Source: TJFS-109: about 1 % of water between the two, each mulled 10 minutes.
 * @example
 * waterSensitivity({ moistureA: 3.0, compactabilityA: 38, moistureB: 4.0, compactabilityB: 58 }) // 0.5
 */
export function waterSensitivity(mixes: TwoMixes): number {
  const { moistureA, compactabilityA, moistureB, compactabilityB } = mixes;
  requireNumber("waterSensitivity", { moistureA, compactabilityA, moistureB, compactabilityB });
  if (compactabilityA === compactabilityB)
    throw new RangeError("waterSensitivity: the two compactabilities must differ");
  return (10 * (moistureA - moistureB)) / (compactabilityA - compactabilityB);
}

/** Less than this apart in compactability, and ± 2 points of each reading swamp the figure (our own). */
const LEAST_COMPACTABILITY_STEP = 6;

/**
 * What is wrong with two mixes as a measure of water sensitivity; empty when nothing is.
 * All finite, else RangeError. Source: the limit of 6 points is our own, three times the ± 2 of one reading.
 * Example: equal compactabilities give "sand/sensitivity-no-figure", an error.
 */
export function waterSensitivityIssues(mixes: TwoMixes): readonly Issue[] {
  const { moistureA, compactabilityA, moistureB, compactabilityB } = mixes;
  requireNumber("waterSensitivityIssues", { moistureA, compactabilityA, moistureB, compactabilityB });
  const water = moistureA - moistureB;
  const step = compactabilityA - compactabilityB;
  if (step === 0 || water === 0) return [sameMixes(step === 0 ? "compactability" : "moisture")];
  if (water * step < 0) return [wetterLessCompactable()];
  if (Math.abs(step) < LEAST_COMPACTABILITY_STEP) return [mixesTooClose()];
  return [];
}

const twoMixes = "Make two mixes about 1 % of water apart and mull each for ten minutes.";

export const sameMixes = issueMessage("sand/sensitivity-no-figure", "error", (property: string) => ({
  message: `The two mixes have the same ${property}, so they do not show how one moves the other.`,
  remedy: twoMixes,
}));

export const wetterLessCompactable = issueMessage("sand/sensitivity-backwards", "error", () => ({
  message: "The wetter of the two mixes is the less compactable, which a sand short of sodden is not.",
  remedy:
    "Look whether the readings were swapped, whether one mix stood and dried, or whether it is over-wet.",
}));

export const mixesTooClose = issueMessage("sand/sensitivity-small-step", "warning", () => ({
  message: "The two mixes are so close in compactability that the doubt of the readings swamps the figure.",
  remedy: twoMixes,
}));
