// A fault of castings, with what it is usually put down to.

import type { Metal } from "./metals.ts";

/** How the link of a fault with its cause was come by. */
export type CauseTag = "read" | "from memory" | "common practice";

/** Tests of the sand that a cause can be held against; each has its own name in a log. */
export type CauseProperty =
  | "moisture"
  | "compactability"
  | "green compression"
  | "permeability"
  | "fineness"
  | "live clay";

export interface SandCause {
  /** "moisture high", "hard ramming": what it is in the sand or in the mould. */
  readonly says: string;
  /** Undefined: no home test of a log tells it. */
  readonly test?: { readonly property: CauseProperty; readonly side: "high" | "low" };
  /** Undefined: for any metal. */
  readonly metal?: Metal;
  readonly source: string;
  readonly tag: CauseTag;
}

export interface FaultRow {
  /** What else founders call it, lower case. */
  readonly alias: readonly string[];
  /** What the eye tells it by. */
  readonly looks: string;
  /** Causes outside the sand, which are looked at first: metal, pouring, gating, pattern. Common practice throughout. */
  readonly first: readonly string[];
  /** Of the sand, and of the mould as it is rammed. */
  readonly sand: readonly SandCause[];
}

/** True where the link was read in a source: only such a one may decide a finding. */
export function causeDecides({ tag }: SandCause): boolean {
  return tag === "read";
}
