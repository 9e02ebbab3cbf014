// What an edit of a log may be, and what comes of it.

import type { Issue, Place } from "../issue.ts";
import type { LogText } from "./types.ts";

/** Keys as typed, items of a list by index from 0: ["batches", "W1", "moisture", "damp"]; a row of a CSV file: ["swelling.csv", 3, "dry"]. */
export type LogPath = readonly (string | number)[];

export type LogEdit =
  /** The value (or name) at the place becomes the text. */
  | { readonly kind: "write"; readonly at: Place; readonly text: string }
  /** A row, a named entry, or keys, at an index or at the end. */
  | {
      readonly kind: "add";
      readonly to: LogPath;
      readonly name?: string;
      readonly entries: { readonly [key: string]: string };
      readonly at?: number;
    }
  /** A row, a named entry or a key. */
  | { readonly kind: "remove"; readonly path: LogPath };

export interface Edited {
  /** Not there where the edit was refused: the issues say why. */
  readonly texts?: readonly LogText[];
  readonly issues: readonly Issue[];
  /** Where the new text stands. */
  readonly changed?: Place;
}

/** One file edited. */
export interface EditedText {
  readonly text?: string;
  readonly issues: readonly Issue[];
  readonly changed?: Place;
}
