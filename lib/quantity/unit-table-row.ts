// One row of the unit tables.

import type { Dimension } from "./unit.ts";

/** A unit without a "/" in it. */
export interface UnitRow {
  /** In the library's spelling. */
  readonly text: string;
  readonly names: readonly string[];
  readonly dimension: Dimension;
  /** Numerator and denominator of the factor to SI, whole numbers where that can be: products then stay exact. */
  readonly ratio: readonly [over: number, under: number];
  readonly offset?: number;
  readonly kind?: "temperature" | "temperature difference";
  /** Status of the size: every one here is exact by definition unless it says common practice. */
  readonly source: string;
}
