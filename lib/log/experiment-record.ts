// What a founder writes down of an experiment, besides its figures, so that somebody else can repeat it.

import type { Place } from "../issue.ts";

/** A line of the founder's own words. */
export interface LoggedLine {
  readonly text: string;
  readonly place: Place;
}

export interface ExperimentRecord {
  /** What was asked, as typed. */
  readonly question?: LoggedLine;
  /** What was expected beforehand. */
  readonly expected: readonly LoggedLine[];
  readonly changed: readonly LoggedLine[];
  readonly held: readonly LoggedLine[];
  /** How it was made and measured, step by step. */
  readonly measured: readonly LoggedLine[];
  /** Where it did not go as planned. */
  readonly departures: readonly LoggedLine[];
  /** Readings or batches that were left out of the log, and why. */
  readonly leftOut: readonly LoggedLine[];
  readonly open: readonly LoggedLine[];
  /** Who looked it over, and what was said. */
  readonly review: readonly LoggedLine[];
  readonly by?: LoggedLine;
  readonly where?: LoggedLine;
  /** ISO dates; from is never after to. */
  readonly from?: string;
  readonly to?: string;
  readonly version?: LoggedLine;
  readonly place: Place;
}
