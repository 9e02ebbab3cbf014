// Available and working bond: how much clay could bind, and how much does.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { requireAboveZero } from "./require.ts";
import { short } from "./short-figure.ts";

export const KPA_PER_PSI = 6.894757293;

/** Outside these the relations were not seen to hold: our judgement, for no range was printed. */
const RANGES = {
  moistureOfDampPercent: { low: 2, high: 5, words: "a moisture", unit: "% of damp mass" },
  compactabilityPercent: { low: 30, high: 55, words: "a compactability", unit: "% of height" },
  strengthPsi: { low: 5, high: 35, words: "a green compression strength", unit: "psi" },
} as const;

interface State {
  readonly strengthKPa: number;
  readonly moistureOfDampPercent: number;
  readonly compactabilityPercent: number;
}

export interface BondState {
  /** Clay that could take up water and bind, % of the dry sand; null outside the range. */
  readonly availableBondPercent: number | null;
  /** Clay that does bind, %; null outside the range. */
  readonly workingBondPercent: number | null;
  /** 100 × working / available; null outside the range. */
  readonly mullerEfficiencyPercent: number | null;
  readonly inRange: boolean;
  readonly issues: readonly Issue[];
}

/**
 * The three relations without a look at their range: for draws about a state that was checked with bondState.
 * available = 0.105 s + 1.316 m, working = 15.29 s / (132.1 − c), efficiency = 100 working / available; s in psi.
 * strengthKPa, moistureOfDampPercent, compactabilityPercent: finite, compactability below 132.1; not looked at here.
 * Source and example: as bondState.
 */
export function bondRelations({ strengthKPa, moistureOfDampPercent, compactabilityPercent }: State): {
  readonly availableBondPercent: number;
  readonly workingBondPercent: number;
  readonly mullerEfficiencyPercent: number;
} {
  const psi = strengthKPa / KPA_PER_PSI;
  const availableBondPercent = 0.105 * psi + 1.316 * moistureOfDampPercent;
  const workingBondPercent = (15.29 * psi) / (132.1 - compactabilityPercent);
  return {
    availableBondPercent,
    workingBondPercent,
    mullerEfficiencyPercent: (100 * workingBondPercent) / availableBondPercent,
  };
}

/**
 * Bond state of a bentonite-bonded sand: available bond 0.105 s + 1.316 m, working bond 15.29 s / (132.1 − c), muller
 * efficiency 100 working / available; s green compression strength in psi (given here in kPa), m moisture, c
 * compactability.
 *
 * strengthKPa: 34.5 to 241 kPa (5 to 35 psi); moistureOfDampPercent: 2 to 5 % of damp mass; compactabilityPercent: 30
 * to 55 % of height. Outside any of them: nulls, inRange false, and an issue for each that says why; the range is our
 * judgement, since none was printed. Zero, negative or not a number: RangeError.
 * The curves behind it are for new clay and silica sand; natural-bonded sands have no bond state by this.
 * Source: ICRI Report 610 (2003), Heine–Green parameters; S. Honeyman, Modern Casting, Dec 2014. Both print the same
 * constants. A form 3.65 s / (120 − c) that goes round was found in neither, and is a quarter of it.
 * @example
 * bondState({ strengthKPa: 137.9, moistureOfDampPercent: 3.5, compactabilityPercent: 45 })
 * // { availableBondPercent: 6.706, workingBondPercent: 3.511, mullerEfficiencyPercent: 52.4 }
 */
export function bondState(state: State): BondState {
  const { strengthKPa, moistureOfDampPercent, compactabilityPercent } = state;
  requireAboveZero("bondState", { strengthKPa, moistureOfDampPercent, compactabilityPercent });
  const values = { moistureOfDampPercent, compactabilityPercent, strengthPsi: strengthKPa / KPA_PER_PSI };
  const issues = (Object.keys(RANGES) as (keyof typeof RANGES)[])
    .filter((name) => {
      const { low, high } = RANGES[name];
      return values[name] < low - 1e-9 || values[name] > high + 1e-9;
    })
    .map((name) => bondOutOfRange(name, values[name]));
  if (issues.length > 0)
    return {
      availableBondPercent: null,
      workingBondPercent: null,
      mullerEfficiencyPercent: null,
      inRange: false,
      issues,
    };
  return { ...bondRelations(state), inRange: true, issues };
}

function bondOutOfRange(name: keyof typeof RANGES, value: number): Issue {
  const { low, high, words, unit } = RANGES[name];
  const given =
    name === "strengthPsi"
      ? `${short(value * KPA_PER_PSI)} kPa (${short(value)} psi)`
      : `${short(value)} ${unit}`;
  const range = `${low} to ${high} ${unit}`;
  const inKPa = [low, high].map((psi) => Math.round(psi * KPA_PER_PSI)).join(" to ");
  return noBondState(
    words,
    name === "strengthPsi" ? `${inKPa} kPa (${range})` : range,
    given,
    name === "moistureOfDampPercent",
  );
}

export const noBondState = issueMessage(
  "sand/bond-state-range",
  "note",
  (property: string, range: string, given: string, byWater: boolean) => ({
    message: `No bond state is given: the relations are used for ${property} of ${range}, and this sand has ${given}.`,
    remedy: byWater
      ? "Water alone would count as bond there. Bring the sand to temper and test again."
      : "Bring the sand to temper, mull it, and test again.",
  }),
);
