// One edit of a CSV file, as it would be made.

import type { Splice } from "./edit-splice.ts";

/** A splice, and the cells that must be read from the file when it is made. */
export interface CsvTry {
  readonly splice: Splice;
  readonly wanted: readonly (readonly string[])[];
  /** Where in the splice the new text stands; not there where something was removed. */
  readonly shown?: { readonly from: number; readonly length: number };
  readonly what: string;
}
