// How work grows with its size: the exponent of a power law through times or memory, with its ±.

import { fitPolynomial } from "../../lib/index.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";

export interface Growth {
  readonly exponent: number;
  /** Half of the 95 % interval: how far the points stray from a power, not how the machine wobbles. */
  readonly half: number;
}

/** Least squares through the logarithms; at least three sizes. */
export function growth(sizes: readonly number[], values: readonly number[]): Growth {
  const { coefficients, standardErrors, degreesOfFreedom } = fitPolynomial(
    sizes.map(Math.log),
    values.map(Math.log),
    1,
  );
  return { exponent: coefficients[1]!, half: standardErrors[1]! * studentTQuantile(0.975, degreesOfFreedom) };
}
