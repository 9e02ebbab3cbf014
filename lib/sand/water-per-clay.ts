// Water per clay: the bare ratio, and the moisture that it makes.

import { requireAboveZero, requireBelow100, requireFromZero } from "./require.ts";

/** Where a published series has its peaks, as water ÷ clay by mass. */
export const publishedWaterPerClay = Object.freeze({
  /** Subbarao & Rammohan, J. Indian Inst. Sci. (abstract); 10 : 4 at temper, monograph of 1966, publisher's summary. */
  strengthPeak: 0.4,
  /** Subbarao & Rammohan; permeability peaks and bulk density is least. */
  permeabilityPeak: 0.6,
});

/**
 * Water ÷ clay, by mass: both in % of one and the same mass.
 * moistureOfDampPercent, 0 or more; clayOfDampPercent: dry clay, % of the damp mass, > 0. Else RangeError.
 * Which clay (added, by wash, live) is the caller's to say; the figures differ.
 * Source: definition. Example: waterPerClay({ moistureOfDampPercent: 4.5, clayOfDampPercent: 9 }) is 0.5.
 */
export function waterPerClay({
  moistureOfDampPercent,
  clayOfDampPercent,
}: {
  readonly moistureOfDampPercent: number;
  readonly clayOfDampPercent: number;
}): number {
  requireFromZero("waterPerClay", { moistureOfDampPercent });
  requireAboveZero("waterPerClay", { clayOfDampPercent });
  return moistureOfDampPercent / clayOfDampPercent;
}

/**
 * Moisture that a water-to-clay ratio makes, % of damp mass: 100 r c / (100 + r c).
 * clayOfDryMixPercent c: dry clay, % of the dry mix, 0 to below 100; waterPerClay r: 0 or more. Else RangeError.
 * A bare ratio: published windows of one sand at 4 and 8 % clay fit no single ratio (0.77 to 1.46 against 0.49 to
 * 0.87); an offset with a slope fits both (temper-ways.ts).
 * Source: mass balance. Example: 8 % at 0.4: 3.10.
 */
export function ratioMoisturePercent({
  clayOfDryMixPercent,
  waterPerClay: ratio,
}: {
  readonly clayOfDryMixPercent: number;
  readonly waterPerClay: number;
}): number {
  requireFromZero("ratioMoisturePercent", { clayOfDryMixPercent, waterPerClay: ratio });
  requireBelow100("ratioMoisturePercent", { clayOfDryMixPercent });
  const waterOfDry = ratio * clayOfDryMixPercent;
  return (100 * waterOfDry) / (100 + waterOfDry);
}
