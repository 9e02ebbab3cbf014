// Ways to write one edit.

import type { Issue } from "../issue.ts";
import type { Change } from "./edit-plain.ts";
import type { Splice } from "./edit-splice.ts";

export interface Try {
  readonly splices: readonly Splice[];
  /** What must have changed, and nothing else, when the text is read again. */
  readonly change: Change;
  /** Which of the splices holds the new text, and where in it. */
  readonly shown?: { readonly splice: Splice; readonly from: number; readonly length: number };
}

/** The best first; or why there is none. */
export type Tries =
  | { readonly tries: readonly Try[]; readonly notes: readonly Issue[]; readonly what: string }
  | { readonly refused: Issue };
