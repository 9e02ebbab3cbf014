// What happened to a heap, day by day, as a log says it.

import type { Place } from "../issue.ts";
import type { Measured } from "./figure-types.ts";
import type { HeapState } from "./heap-state.ts";

interface Dated {
  readonly date: string;
  readonly note?: string;
  readonly place: Place;
}

export interface PourEvent extends Dated {
  readonly kind: "pour";
  readonly metalKg?: Measured;
  readonly alloy?: string;
  readonly atC?: Measured;
  readonly sectionMm?: Measured;
  readonly scrapSharePercent?: Measured;
  /** Undefined: not said. */
  readonly degassed?: boolean;
}

/** Swept up or thrown out. */
export interface LostEvent extends Dated {
  readonly kind: "lost";
  readonly massKg: Measured;
  /** Dry unless the log says damp. */
  readonly as: "dry" | "damp";
}

/** Clay as weighed from the bag. */
export interface RebondEvent extends Dated {
  readonly kind: "rebond";
  readonly clayKg: Measured;
  readonly clayMoisturePercent?: Measured;
}

/** Sand as weighed. */
export interface NewSandEvent extends Dated {
  readonly kind: "new sand";
  readonly massKg: Measured;
  readonly moisturePercent?: Measured;
}

export interface WaterEvent extends Dated {
  readonly kind: "water";
  readonly massKg: Measured;
}

export interface TestedEvent extends Dated {
  readonly kind: "tested";
  readonly state: HeapState;
}

/** What happened to the heap, in the order of the log, which is that of the dates. */
export type HeapEvent = PourEvent | LostEvent | RebondEvent | NewSandEvent | WaterEvent | TestedEvent;

/** What a founder remarks of a day, such as its weather: it marks a diary and changes no mass. */
export interface LoggedRemark {
  readonly date: string;
  readonly text: string;
  readonly place: Place;
}
