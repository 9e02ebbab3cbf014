// A quantity as a founder writes it: a number, its unit, and perhaps a ±.

import type { Unit } from "./unit.ts";

/**
 * What the ± after a figure means. "surely": within, rectangular (the default when nothing is said);
 * "sd": one standard deviation, written (sd); "95 %": half-width of a 95 % interval, written (95 %).
 */
export type PlusMinusMeaning = "surely" | "sd" | "95 %";

export interface Quantity {
  readonly value: number;
  /** Undefined: a bare number; the reader of the field decides what it counts. */
  readonly unit?: Unit;
  readonly plusMinus?: { readonly size: number; readonly meaning: PlusMinusMeaning };
  /** As typed. */
  readonly text: string;
}
