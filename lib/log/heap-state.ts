// The state of a heap as a log says it: wanted, or measured on a day.

import type { Place } from "../issue.ts";
import type { Measured } from "./figure-types.ts";

/** Of what a share of clay is: per 100 of dry sand, of the dry mix, or of the whole damp mass. */
export type ShareBasis = "sand" | "dry mix" | "damp mass";

/** A share in percent that says of what. */
export interface BasedShare extends Measured {
  readonly of: ShareBasis;
}

/** State of a heap: wanted, or measured on a day. Moisture is of damp mass, fines of the washed and dried sand. */
export interface HeapState {
  readonly moisturePercent?: Measured;
  readonly liveClay?: BasedShare;
  readonly compactabilityPercent?: Measured;
  readonly greenCompressionKPa?: Measured;
  readonly gfn?: Measured;
  readonly finesPercent?: Measured;
  readonly place: Place;
}

/** By date, the newest last. */
export interface MeasuredState extends HeapState {
  readonly date: string;
}
