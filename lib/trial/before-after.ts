// Did a change help? Two groups of figures, the drift looked at first.

import { spearman } from "../numbers/spearman.ts";
import { mean } from "../numbers/summary.ts";
import { welch } from "../numbers/welch.ts";

export interface BeforeAfter {
  /** After less before. */
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly p: number;
  readonly df: number;
  /** A group that went up or down by itself over its days: |Spearman's ρ with order| ≥ 0.8 of four or more. */
  readonly drift: { readonly before: boolean; readonly after: boolean };
  /** Lag-one autocorrelation of the figures about their group's mean; above 0.5 the interval is too narrow. */
  readonly autocorrelation: number;
}

/**
 * Welch's comparison of the figures before and after a change, in the order in which they were taken; at least two
 * in each group, else throws. The interval is for the difference of the means, 95 %.
 * It does not say that the change was the cause: whatever else changed on that day is in it.
 * Source: Welch 1947; lag-one autocorrelation, NIST/SEMATECH e-Handbook 1.3.5.12.
 */
export function beforeAfter(before: readonly number[], after: readonly number[]): BeforeAfter {
  const { low, high, p, df } = welch(after, before);
  return {
    difference: mean(after) - mean(before),
    low,
    high,
    p,
    df,
    drift: { before: drifts(before), after: drifts(after) },
    autocorrelation: autocorrelation([before, after]),
  };
}

function drifts(values: readonly number[]): boolean {
  if (values.length < 4 || new Set(values).size < 2) return false;
  return (
    Math.abs(
      spearman(
        values.map((_, i) => i),
        values,
      ).rho,
    ) >= 0.8
  );
}

function autocorrelation(groups: readonly (readonly number[])[]): number {
  let [products, squares] = [0, 0];
  for (const group of groups) {
    const middle = mean(group);
    group.forEach((value, i) => {
      squares += (value - middle) ** 2;
      if (i > 0) products += (value - middle) * (group[i - 1]! - middle);
    });
  }
  return squares === 0 ? 0 : products / squares;
}
