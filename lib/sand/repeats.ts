// Scatter of a figure between repeats of one sand, and what several sands teach together.

import { mean, pooledStandardDeviation, sampleStandardDeviation } from "../numbers/summary.ts";

export interface RepeatScatter {
  readonly mean: number;
  /** Standard deviation of one sieving, divisor n − 1, in the unit of the figure. */
  readonly sd: number;
  readonly degreesOfFreedom: number;
}

/**
 * Mean and scatter of repeats: s = √(Σ(x − x̄)² / (n − 1)), n − 1 degrees of freedom.
 * values: the same figure of the same sand, finite, else RangeError. Fewer than two: undefined, since one sieving
 * says nothing about scatter. With two or three, s itself is poorly known: pool it.
 * Splits of one sample show the test's scatter only, grabs from the bag that of the sand as well: never mix them.
 * Source: sample standard deviation, GUM 4.2.2.
 * @example repeatScatter([69, 70, 71]) // { mean: 70, sd: 1, degreesOfFreedom: 2 }
 */
export function repeatScatter(values: readonly number[]): RepeatScatter | undefined {
  finite("repeatScatter", values);
  if (values.length < 2) return undefined;
  return { mean: mean(values), sd: sampleStandardDeviation(values), degreesOfFreedom: values.length - 1 };
}

/**
 * One standard deviation from repeats of several sands: s = √(ΣΣ(x − own mean)² / Σ(n − 1)).
 * groups: the repeats of each sand, all finite, else RangeError; a sand sieved once teaches nothing and is passed over.
 * Undefined if no sand was repeated. The scatter must be about alike in all (compare sands of like fineness).
 * Source: GUM 4.2.4.
 * @example pooledRepeatScatter([[1, 3], [10, 12, 14]]) // { sd: 1.826, degreesOfFreedom: 3 }
 */
export function pooledRepeatScatter(
  groups: readonly (readonly number[])[],
): { readonly sd: number; readonly degreesOfFreedom: number } | undefined {
  for (const group of groups) finite("pooledRepeatScatter", group);
  const pooled = pooledStandardDeviation(groups);
  return pooled.degreesOfFreedom > 0 ? pooled : undefined;
}

function finite(name: string, values: readonly number[]): void {
  if (!values.every(Number.isFinite))
    throw new RangeError(`${name}: values must be numbers, got ${values.join(", ")}`);
}
