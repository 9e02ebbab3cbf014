// The weighted mean of a row of values in which the newest count most: it sees a slow drift that single values hide.

import { invariant } from "../issue.ts";

export interface Ewma {
  /** One for each value. */
  readonly smoothed: readonly number[];
  /** Limits at each value: narrow at first, soon as wide as in the end. */
  readonly upper: readonly number[];
  readonly lower: readonly number[];
  /** Limits after many values: target ± width·sd·√(weight/(2 − weight)). */
  readonly upperInTheEnd: number;
  readonly lowerInTheEnd: number;
  /** Places, from 0, at which the weighted mean lies outside its limits. */
  readonly signals: readonly { readonly at: number; readonly side: "above" | "below" }[];
}

/**
 * Exponentially weighted moving average zᵢ = λxᵢ + (1 − λ)zᵢ₋₁ with z₀ = target, and its limits
 * target ± L·sd·√(λ/(2 − λ)·(1 − (1 − λ)²ⁱ)).
 * values: in order, finite. target, sd: of values that only scatter, same unit, sd above 0. weight λ: above 0 to 1, 0.2 by
 * default. width L: above 0; 2.962 by default, which with λ = 0.2 gives a false alarm once in 500. Else it throws.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.4 (limits in the end, its example); limits at each value
 * and 2.962: J. M. Lucas and M. S. Saccucci, Technometrics 32 (1990) 1–12 (from memory; held by integral equation and
 * simulation in tests/reference/control.test.ts).
 * @example ewma([52, 47], { target: 50, sd: 2.0539, weight: 0.3, width: 3 }).smoothed // [50.6, 49.52]
 */
export function ewma(
  values: readonly number[],
  {
    target,
    sd,
    weight = 0.2,
    width = 2.962,
  }: { readonly target: number; readonly sd: number; readonly weight?: number; readonly width?: number },
): Ewma {
  invariant(values.every(Number.isFinite), "every value of a weighted mean is a finite number");
  invariant(Number.isFinite(target), "the target of a weighted mean is a finite number");
  invariant(sd > 0 && width > 0, "sd and width of a weighted mean are above 0");
  invariant(
    weight > 0 && weight <= 1,
    `the weight of the newest value is above 0 and at most 1, not ${weight}`,
  );
  const reach = width * sd * Math.sqrt(weight / (2 - weight));
  const smoothed: number[] = [];
  const half: number[] = [];
  let before = target;
  for (const [i, value] of values.entries()) {
    before = weight * value + (1 - weight) * before;
    smoothed.push(before);
    half.push(reach * Math.sqrt(1 - (1 - weight) ** (2 * (i + 1))));
  }
  return {
    smoothed,
    upper: half.map((each) => target + each),
    lower: half.map((each) => target - each),
    upperInTheEnd: target + reach,
    lowerInTheEnd: target - reach,
    signals: smoothed.flatMap((each, at) =>
      Math.abs(each - target) > half[at]! ? [{ at, side: each > target ? "above" : "below" } as const] : [],
    ),
  };
}
