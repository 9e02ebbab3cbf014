// Live clay from strength and compactability: between what binds and what could.

import { bondRelations, bondState } from "./bond-state.ts";

interface Bench {
  readonly strengthKPa: number;
  readonly moistureOfDampPercent: number;
  readonly compactabilityPercent: number;
}

/**
 * Live clay of a bentonite sand, % of the dry sand, as a range: no less than the working bond, which binds already,
 * and no more than the available bond, in which dead clay counts too. The middle is no better than the ends.
 * Arguments and their limits as bondState; outside its range null.
 * Source: ICRI Report 610 (2003) for both relations; that they bound the live clay is our own reading.
 * @example
 * liveClayByBondPercent({ strengthKPa: 137.9, moistureOfDampPercent: 3.5, compactabilityPercent: 45 })
 * // { low: 3.51, high: 6.71 }
 */
export function liveClayByBondPercent(bench: Bench): { readonly low: number; readonly high: number } | null {
  if (!bondState(bench).inRange) return null;
  const { workingBondPercent, availableBondPercent } = bondRelations(bench);
  return {
    low: Math.min(workingBondPercent, availableBondPercent),
    high: Math.max(workingBondPercent, availableBondPercent),
  };
}
