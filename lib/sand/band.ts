// A typical range of one property, with everything that it holds for.

import type { Bond, Metal } from "./metals.ts";

export type BandProperty =
  | "fineness"
  | "moisture"
  | "clay"
  | "compactability"
  | "green compression"
  | "density"
  | "permeability";

/** How the figures were come by. */
export type BandTag = "read" | "from memory" | "derived" | "common practice" | "our own";

export interface Band {
  readonly property: BandProperty;
  readonly metal: Metal;
  readonly bond: Bond;
  /** Section or way of working: "light, squeezer", "medium, floor". */
  readonly practice?: string;
  /** "AFS grain fineness number", "%", "kPa". */
  readonly unit: string;
  /** For a percentage, of what: "damp mass". */
  readonly basis?: string;
  /** For clay: what is counted. The three are different things and never fill in for each other. */
  readonly clayIs?: "live bentonite" | "bentonite added" | "AFS clay";
  /** For permeability: the fineness numbers that the range goes with; finer sand lets less through. */
  readonly goesWithFineness?: { readonly low: number; readonly high: number };
  /** The source names no metal (or no bond): the row stands for each. */
  readonly anyMetal?: true;
  readonly low: number;
  readonly high: number;
  /**
   * recommended: the source says to stay within. worked: the source reports sands that served; others outside
   * may serve as well.
   */
  readonly claim: "recommended" | "worked";
  /** Author, year, table; with what the source leaves open. */
  readonly source: string;
  readonly tag: BandTag;
  /** What the source does not say and was taken by us, e.g. "bond": such a range does not decide. */
  readonly takenAs?: string;
}

/**
 * True where a band may decide a finding by itself: its figures were read in a source, or follow from such, and
 * the source recommends them. Others may be drawn, with their tag, and no more.
 * @example bands({ metal: "aluminium", bond: "bentonite", property: "clay" }).some(decides) // true
 */
export function decides(band: Band): boolean {
  return (
    band.claim === "recommended" &&
    band.takenAs === undefined &&
    (band.tag === "read" || band.tag === "derived")
  );
}
