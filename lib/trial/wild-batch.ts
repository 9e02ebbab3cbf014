// A single batch that lies further off its curve than chance puts one.

import type { TestName } from "../log/batch.ts";

export interface WildBatch {
  readonly test: TestName;
  readonly batch: string;
  /** Residual over its standard error with that batch left out: Student's t. */
  readonly t: number;
  readonly df: number;
  /** Two-sided, times the number of batches (Bonferroni), at most 1. */
  readonly p: number;
  /** How far the figure lies above the curve through the others, in the property's unit. */
  readonly off: number;
}
