// What a bench card holds, before it is laid out.

import type { TestName } from "../log/batch.ts";

/** A reading to write in: its key in the log, its unit, and what it is. */
export interface CardBox {
  readonly key: string;
  readonly unit: string;
  readonly says: string;
}

export interface Hazard {
  /** The hazard first: "Ten to twenty kilograms come down at once when the specimen breaks." */
  readonly text: string;
  /** What of the procedure brings it up: "because you load a specimen until it breaks". */
  readonly trigger: string;
  readonly points: readonly string[];
}

export interface Card {
  /** As it is asked for: "moisture", "permeability-aspirator". */
  readonly name: string;
  readonly title: string;
  /** One line for a list. */
  readonly does: string;
  readonly hazard: Hazard;
  /** A sentence that shows the rig; the drawing is markup of our own, with none of a founder's text in it. */
  readonly rig: string;
  readonly drawing?: string;
  readonly steps: readonly string[];
  /** How the number is worked out, in plain signs. */
  readonly formula?: string;
  /** Of the test, for fields in the order and with the keys of the log. */
  readonly test?: { readonly name: TestName; readonly method?: string };
  /** Lines above the boxes to fill in once: scale, tare, rig, time. */
  readonly once: readonly CardBox[];
  /** A table to fill in that no test's fields make: columns and how many rows, or the names of its rows. */
  readonly table?: {
    readonly columns: readonly string[];
    readonly rows: number | readonly string[];
  };
  /** The log's lines; blanks are written as ____ and stand where the founder writes. */
  readonly yaml?: string;
}
