// Which clay a relation for live clay is given: live clay itself is not tested at home.

import type { BatchFigures } from "../log/batch-figures.ts";
import type { Spread } from "../quantity/spread.ts";

export interface ClayMeant {
  /** Dry clay, % of the dry mix. */
  readonly ofDryMixPercent: Spread;
  readonly is: "clay by wash" | "clay added";
  /** For a sentence: which clay it is, and what it is taken as. */
  readonly says: string;
}

/**
 * The clay that stands in for live clay, % of the dry mix: clay by wash where it was tested (silt counts in it, so it
 * is too much), else clay added (dead clay and what the sand held count as nothing gone). Which one is always said.
 * Undefined where neither is known.
 */
export function clayMeant({ tests, recipe }: BatchFigures): ClayMeant | undefined {
  const washed = tests["clay by wash"];
  if (washed) {
    const says = "clay by wash, taken as live though silt counts in it";
    return { ofDryMixPercent: washed.spread, is: "clay by wash", says };
  }
  const added = recipe?.clayOfDryMixPercent;
  if (!added || !(added.value > 0)) return undefined;
  return { ofDryMixPercent: added, is: "clay added", says: "clay added, taken as live" };
}
