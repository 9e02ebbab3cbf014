// The founder's log, as the rest may rely on it: every figure read, every name known, every place kept.

import type { Place } from "../issue.ts";
import type { Sieve } from "../sand/sieve.ts";
import type { Aim, Batch, Rig, TrialAxis } from "./batch.ts";
import type { ExperimentRecord } from "./experiment-record.ts";
import type { Measured, Scale } from "./figure-types.ts";
import type { HeapKg } from "./heap.ts";
import type { HeapSections } from "./heap-record.ts";
import type { LoggedSheet } from "./logged-sheet.ts";

/** Grams, millimetres, kilopascals; or ounces, inches, pounds per square inch, in US measures. */
export type UnitSystem = "metric" | "US";

export type { Measured, Scale } from "./figure-types.ts";

/** A set of sieves that is used as one: two sievings on one stack share its tolerance. */
export interface SieveSet {
  readonly name: string;
  /** Inside diameter of the frame, mm. */
  readonly frameMm?: number;
  /** True if the openings were checked against a certified set. */
  readonly checked: boolean;
  readonly place: Place;
}

export interface RetainedEntry {
  /** As typed: "No. 40". */
  readonly label: string;
  /** Undefined for the pan. */
  readonly sieve?: Sieve;
  /** In g, or in percent of the sample where the sieving is in percent. */
  readonly mass: Measured;
  readonly place: Place;
}

export interface Sieving {
  /** From the sand's name, the date and the portion; never from its position. */
  readonly id: string;
  /** ISO date as typed, undefined if none was given. */
  readonly date?: string;
  /** Name of the portion: "A", "B"; repeats of one sand differ in it. */
  readonly portion?: string;
  /** split: portions riffled from one sample. grab: samples taken anew from the bag or heap. */
  readonly repeatOf?: "split" | "grab";
  /** Dry mass put on the top sieve. */
  readonly startG?: Measured;
  readonly unit: "g" | "percent";
  /** Coarse to fine, the pan last. */
  readonly retained: readonly RetainedEntry[];
  readonly scale?: Scale;
  readonly set?: SieveSet;
  readonly minutes?: number;
  /** Clay washed out and the grain dried before sieving. */
  readonly washed?: boolean;
  readonly note?: string;
  readonly place: Place;
  /** False when an error makes the sieving useless; the issues say why. */
  readonly usable: boolean;
}

export interface Sand {
  readonly name: string;
  /** new: as bought. used: has been in a heap with clay. */
  readonly state: "new" | "used";
  /** False where the log does not say it, so that the cautious reading stands: used. */
  readonly stateSaid: boolean;
  readonly note?: string;
  readonly sievings: readonly Sieving[];
  readonly place: Place;
}

export interface Log extends HeapSections {
  readonly format: 1;
  readonly file: string;
  readonly title?: string;
  readonly founder?: string;
  readonly note?: string;
  /** True where the log says that it is invented. */
  readonly invented: boolean;
  /** One of the metals that sand/bands knows, e.g. "aluminium". */
  readonly metal?: string;
  /** "bentonite" or "natural". */
  readonly bond?: string;
  /** What pages are to be printed in; undefined: each test as it was typed. */
  readonly units?: UnitSystem;
  readonly scales: readonly Scale[];
  readonly sets: readonly SieveSet[];
  readonly sands: readonly Sand[];
  readonly rigs: readonly Rig[];
  readonly aims: readonly Aim[];
  /** What the trial varies; undefined: not said. */
  readonly axis?: TrialAxis;
  /** Of the heap that is to be tempered or rebonded. */
  readonly heapKg?: HeapKg;
  /** In the log's order, those of a CSV file after the others. */
  readonly batches: readonly Batch[];
  /** The founder's own sheets as typed; logSheets() works them out. */
  readonly sheets: readonly LoggedSheet[];
  /** What the founder says of the experiment that the batches belong to. */
  readonly experiment?: ExperimentRecord;
  /** Eight hex digits of the log's text, so that page and data can be matched. */
  readonly fingerprint: string;
  /** The log's own text first, then those of the CSV files that it names, as they were typed: what a page may hand on. */
  readonly texts: readonly LogText[];
}

/** A file of the founder's, as it was typed. */
export interface LogText {
  readonly name: string;
  readonly text: string;
}
