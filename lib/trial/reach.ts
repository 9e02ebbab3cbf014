// Aims that no place tried meets, and aims that are each met but never together.

import type { TestName } from "../log/batch.ts";

export interface Unreachable {
  readonly test: TestName;
  /** The mean that comes nearest to the range, and where. */
  readonly best: number;
  readonly at: number;
  /** How far outside the range it is, with its 95 % interval; low may be below 0: then it may be met. */
  readonly short: { readonly value: number; readonly low: number; readonly high: number };
  readonly side: "too low" | "too high";
  /** True where all other aims can be met together: only this one stands in the way. */
  readonly onlyThis: boolean;
}

export interface ApartAims {
  readonly tests: readonly [TestName, TestName];
  /** From the first to the last place where the mean of each lies in its range. */
  readonly aAt: { readonly low: number; readonly high: number };
  readonly bAt: { readonly low: number; readonly high: number };
}
