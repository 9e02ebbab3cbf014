// A figure of the log, and the scale that it was weighed on: what sievings and batches share.

import type { Place } from "../issue.ts";
import type { Quantity } from "../quantity/quantity.ts";

/** A figure of the log: converted to the field's own unit, as typed, and where it stands. */
export interface Measured {
  /** In the unit that the field's name ends in, e.g. g for startG. */
  readonly value: number;
  /** ± in the same unit, only if the founder wrote one. */
  readonly plusMinus?: Quantity["plusMinus"];
  readonly text: string;
  readonly place: Place;
}

/** Kitchen scales and what they read to. */
export interface Scale {
  readonly name: string;
  /** Smallest step of the display, g. */
  readonly stepG: number;
  /** Surely right within this many g, after the founder's own check with known weights; undefined: never checked. */
  readonly withinG?: number;
  readonly place: Place;
}
