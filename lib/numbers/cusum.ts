// The sum of what values lie off a target: it climbs when the mean has moved, and shows since when.

import { invariant } from "../issue.ts";

export interface Cusum {
  /** Sᵢ⁺ and Sᵢ⁻, one of each for every value, both from 0 up, in the unit of the values. */
  readonly above: readonly number[];
  readonly below: readonly number[];
  /** Places, from 0, at which a sum lies above the limit; since: the place at which that sum began to climb from 0. */
  readonly signals: readonly {
    readonly at: number;
    readonly since: number;
    readonly side: "above" | "below";
  }[];
}

/**
 * Two one-sided sums of departures: Sᵢ⁺ = max(0, Sᵢ₋₁⁺ + xᵢ − target − slack), Sᵢ⁻ = max(0, Sᵢ₋₁⁻ + target − slack − xᵢ),
 * both from 0; a signal is a sum above the limit.
 * values: in order, finite. target, slack (0 or more) and limit (above 0) in the unit of the values; else it throws.
 * With slack 0.5 and limit 4 standard deviations, values that only scatter give a signal once in 168; with limit 5 once in 465.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.3 (its example); 168 and 465: D. C. Montgomery,
 * Introduction to Statistical Quality Control (from memory; by simulation in tests/reference/control.test.ts).
 * @example cusum([1, 3, 3], { target: 1, slack: 0.5, limit: 2 }).signals // [{ at: 2, since: 1, side: "above" }]
 */
export function cusum(
  values: readonly number[],
  { target, slack, limit }: { readonly target: number; readonly slack: number; readonly limit: number },
): Cusum {
  invariant(values.every(Number.isFinite), "every value of a sum of departures is a finite number");
  invariant(Number.isFinite(target), "the target of a sum of departures is a finite number");
  invariant(slack >= 0 && limit > 0, "slack is 0 or more, and the limit above 0");
  const up = climb(values.map((value) => value - target - slack));
  const down = climb(values.map((value) => target - slack - value));
  const signals = values.flatMap((_, at) => [
    ...(up.sums[at]! > limit ? [{ at, since: up.since[at]!, side: "above" as const }] : []),
    ...(down.sums[at]! > limit ? [{ at, since: down.since[at]!, side: "below" as const }] : []),
  ]);
  return { above: up.sums, below: down.sums, signals };
}

function climb(steps: readonly number[]): { sums: number[]; since: number[] } {
  const sums: number[] = [];
  const since: number[] = [];
  let sum = 0;
  let start = 0;
  for (const [i, step] of steps.entries()) {
    if (sum === 0) start = i;
    sum = Math.max(0, sum + step);
    sums.push(sum);
    since.push(start);
  }
  return { sums, since };
}
