// How well the limits of a control chart are known, from how many values they are.

import { invariant } from "../issue.ts";
import { d2OfTwo } from "./individuals-chart.ts";
import { studentTQuantile } from "./student-t.ts";

/**
 * Half-width of the 95 % interval of the mean and of a limit x̄ ± 3·MR̄/d2 of an individuals chart, in the unit of MR̄:
 * t·σ̂/√n and t·σ̂·√(1/n + 9·v), with σ̂ = MR̄/d2, v the variance of σ̂ over σ²:
 * v = ((n − 1)(π/2 − 1) + 2(n − 2)(√3/2 + π/12 − 1))/(n − 1)², about 0.83/(n − 1), and t of 1/(2v) degrees of freedom.
 * For independent values that scatter normally. count: values of the baseline, a whole number from 3; else it throws.
 * Source: J. D. Cryer and T. P. Ryan, Journal of Quality Technology 22 (1990) 187–192 (v, from memory; by hand from the
 * moments of |d| of neighbouring differences); coverage by simulation in tests/numbers/control.test.ts.
 * @example limitDoubt(1.128, 20).limit // 1.45..., in units of one standard deviation
 */
export function limitDoubt(
  meanMovingRange: number,
  count: number,
): { readonly mean: number; readonly limit: number } {
  invariant(Number.isInteger(count) && count >= 3, `limits need three values or more, not ${count}`);
  const n = count;
  const neighbours = Math.sqrt(3) / 2 + Math.PI / 12 - 1;
  const v = ((n - 1) * (Math.PI / 2 - 1) + 2 * (n - 2) * neighbours) / (n - 1) ** 2;
  const sd = meanMovingRange / d2OfTwo;
  const t = studentTQuantile(0.975, 1 / (2 * v));
  return { mean: (t * sd) / Math.sqrt(n), limit: t * sd * Math.sqrt(1 / n + 9 * v) };
}
