// One figure over the values of all rows; rows without a value are passed over.

import { quantile } from "../numbers/quantile.ts";
import { sum } from "../numbers/sum.ts";
import { mean, median, sampleStandardDeviation } from "../numbers/summary.ts";
import type { AggregateName } from "./formula-type.ts";

/**
 * sum, mean, sd (of a sample), median, count, quantile p (definition 7 of Hyndman & Fan 1996), min or max of the values
 * that are numbers. None: NaN, but count 0; sd of fewer than two: NaN.
 */
export function aggregateOf(fn: AggregateName, p: number, values: Float64Array): number {
  const known = values.filter((value) => !Number.isNaN(value));
  if (fn === "count") return known.length;
  if (known.length === 0) return Number.NaN;
  switch (fn) {
    case "sum":
      return sum(known);
    case "mean":
      return mean(known);
    case "sd":
      return sampleStandardDeviation(known);
    case "median":
      return median(known);
    case "quantile":
      return quantile(known, p);
    case "min":
      return known.reduce((least, value) => Math.min(least, value));
    case "max":
      return known.reduce((most, value) => Math.max(most, value));
  }
}
