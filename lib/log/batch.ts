// Batches of a trial and what was tested on them, as the rest may rely on them.

import type { Place } from "../issue.ts";
import type { Measured, Scale } from "./figure-types.ts";

/** What a home test measures. Units: % of damp mass, % of height, kPa, bare number, g/cm³, step 1 to 5, % of dry mix. */
export type TestName =
  | "moisture"
  | "compactability"
  | "green compression"
  | "green shear"
  | "splitting"
  | "permeability"
  | "density"
  | "clay by wash"
  | "squeeze";

/** An instrument of the founder's own: tube, rammer, disc and pail, air vessel. Its bias is shared by all its readings. */
export interface Rig {
  readonly name: string;
  /** What the log says of it, by field with its unit: boreMm, tubeMm, rammerKg, dropMm, blows, columnMm, vesselMl, blankMm, blankS, rulerMm. */
  readonly fields: { readonly [field: string]: Measured };
  readonly note?: string;
  readonly place: Place;
}

/** What the founder varies from batch to batch. */
export type TrialAxis = "moisture" | "clay" | "compactability";

/** One reading of one test: raw readings of a rig, or a number worked out elsewhere. */
export interface TestReading {
  readonly test: TestName;
  /** "oven", "pan", "microwave"; "falling column", "constant head", "bleeding vessel", "aspirator"; "height", "two weighings", "pressed". */
  readonly method?: string;
  readonly rig?: Rig;
  readonly scale?: Scale;
  /** Raw readings by field: dampG, dryG, loadKg, diameterMm, heightMm, filledMm, rammedMm, seconds … in the unit of the name. */
  readonly raw: { readonly [field: string]: Measured };
  /** The number itself, in the test's own unit, where the founder worked it out or read it off an instrument. */
  readonly worked?: Measured;
  readonly note?: string;
  readonly place: Place;
}

/** What went into a batch, dry masses and the waters they brought. */
export interface Recipe {
  readonly sandKg?: Measured;
  readonly clayKg?: Measured;
  readonly waterKg?: Measured;
  readonly additiveKg?: Measured;
  /** Water that the sand, and the bagged clay, held already, % of their own damp mass. */
  readonly sandMoisturePercent?: Measured;
  readonly clayMoisturePercent?: Measured;
  /** That the masses were weighed on. */
  readonly scale?: Scale;
}

export interface Batch {
  /** From the name and the date, never from its position. */
  readonly id: string;
  readonly name: string;
  readonly date?: string;
  /** In which order the batches were made and tested: 1, 2, 3 … */
  readonly order?: number;
  /** True when this batch is the same heap as the one before, only wetted further. */
  readonly sameHeap: boolean;
  readonly sand?: string;
  readonly recipe?: Recipe;
  readonly mulledMin?: Measured;
  readonly stoodMin?: Measured;
  /** Blocks are compared within, not between: a day, a bag of clay. */
  readonly block?: string;
  /** Repeats of a test stand as several readings of one name. */
  readonly readings: readonly TestReading[];
  /** Tests that were done and written down, of which a reading was left out as faulty: the issues say why. */
  readonly leftOut?: readonly TestName[];
  /** Told by the founder: the batch takes part in no curve, and why. Its figures are shown all the same. */
  readonly keptOut?: { readonly why: string; readonly place: Place };
  readonly note?: string;
  readonly place: Place;
  /** False when a line of it could not be read. A faulty reading is left out and leaves the batch usable. */
  readonly usable: boolean;
}

/** The founder's own aim for a test or for moisture: the range that is wanted. */
export interface Aim {
  readonly test: TestName;
  readonly low: number;
  readonly high: number;
  readonly place: Place;
}
