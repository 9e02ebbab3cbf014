// Whether batches at one level agree with each other better than with the curve.

import type { TestName } from "../log/batch.ts";

export interface LackOfFit {
  readonly test: TestName;
  /** Small where the curve's form does not follow the batches. */
  readonly p: number;
  readonly f: number;
  /** Degrees of freedom of the misfit and of the scatter within levels. */
  readonly df: readonly [number, number];
}
