// A heap's record as numbers with their doubt: what was there, what happened to it, what was tested.

import type { Spread } from "../quantity/spread.ts";

/** One event, in the order in which they came. Masses in kg. */
export type HistoryEvent =
  | {
      readonly kind: "pour";
      /** From the date and what was poured, so that the scatter of this pour is its own. */
      readonly id: string;
      readonly date: string;
      readonly metalKg: Spread;
    }
  | { readonly kind: "lost"; readonly date: string; readonly dryKg: Spread }
  | {
      readonly kind: "clay";
      readonly date: string;
      readonly weighedKg: Spread;
      readonly moisturePercent: Spread;
    }
  | {
      readonly kind: "new sand";
      readonly date: string;
      readonly weighedKg: Spread;
      readonly moisturePercent: Spread;
    }
  | { readonly kind: "water"; readonly date: string; readonly kg: Spread }
  | {
      readonly kind: "tested";
      readonly date: string;
      readonly strengthKPa: number;
      readonly compactabilityPercent: number;
    }
  /** Live clay by methylene blue or the like, % of the dry mix, and the sd of that figure. */
  | { readonly kind: "live clay"; readonly date: string; readonly percent: number; readonly sd: number }
  /** The dry heap on the scales, and the sd of that figure. */
  | { readonly kind: "weighed"; readonly date: string; readonly dryKg: number; readonly sd: number };

export interface HeapHistory {
  /** Before the first event. */
  readonly start: {
    readonly dryKg: Spread;
    readonly moistureOfDampPercent: Spread;
    readonly liveClayOfDryMixPercent: Spread;
    readonly deadClayOfDryMixPercent: Spread;
    readonly finesOfGrainPercent: Spread;
    readonly otherOfDryMixPercent: Spread;
  };
  readonly events: readonly HistoryEvent[];
  /** Burnt sand for each kg of metal, before the record is looked at: ends of 95 % of a lognormal, kg/kg. */
  readonly burntKgPerKg: { readonly low: number; readonly high: number };
  /** Lost with each pour and not written down, % of the dry heap. */
  readonly unwrittenLossPercent: Spread;
  readonly newSandFinesPercent: Spread;
  /** How much burnt sand differs from pour to pour: a factor of about 1 ± this (sd). */
  readonly betweenPours: number;
  /** % of damp mass at the end; undefined where it was not measured: water that dried is then not known. */
  readonly moistureNowOfDampPercent?: Spread;
}
