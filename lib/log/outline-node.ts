// The parts of an outline.

import type { Place } from "../issue.ts";
import type { LogPath } from "./edit-types.ts";

export type OutlineNode =
  | {
      readonly kind: "value";
      readonly path: LogPath;
      readonly label: string;
      /** As YAML or CSV reads it: without its quotes. */
      readonly text: string;
      /** Of the value, as an edit wants it. */
      readonly place: Place;
    }
  | {
      readonly kind: "group";
      readonly path: LogPath;
      readonly label: string;
      /** Of its name; of an item without a name, its own. */
      readonly place: Place;
      readonly parts: readonly OutlineNode[];
    }
  | {
      readonly kind: "rows";
      readonly path: LogPath;
      readonly label: string;
      readonly place: Place;
      readonly columns: readonly string[];
      /** A cell for each column; undefined where the row has none. */
      readonly rows: readonly (readonly (OutlineNode | undefined)[])[];
      /** Of the rows, where they are entries with names. */
      readonly names?: readonly string[];
    };
