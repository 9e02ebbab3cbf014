// Two means compared without assuming that both groups scatter alike.

import { studentTCumulative, studentTQuantile } from "./distributions.ts";
import { mean, sampleStandardDeviation } from "./summary.ts";

export interface WelchResult {
  /** mean(a) − mean(b) */
  readonly difference: number;
  readonly t: number;
  readonly df: number;
  /** Two-sided. */
  readonly p: number;
  /** Ends of the interval of the difference. */
  readonly low: number;
  readonly high: number;
}

/**
 * t = (ā − b̄)/√(s_a²/n_a + s_b²/n_b) with df = (v_a + v_b)²/(v_a²/(n_a − 1) + v_b²/(n_b − 1)), v = s²/n.
 * a, b: independent values in one unit. level: of the interval, 0.95 for 95 %, between 0 and 1, else throws. Fewer than two
 * values in a group, or no scatter in either: only the difference, the rest NaN, for then nothing is known of the scatter.
 * Source: B. L. Welch, Biometrika 34 (1947) 28–35; NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.3.
 * @example welch([1, 2, 3], [4, 5, 6]).t // -3.674...
 */
export function welch(a: readonly number[], b: readonly number[], level = 0.95): WelchResult {
  return welchOf(summaryOf(a), summaryOf(b), level);
}

/** One group by its figures: mean, standard deviation of a sample (n − 1), and how many independent values tell of the mean. */
export interface GroupSummary {
  readonly mean: number;
  readonly sd: number;
  readonly count: number;
}

/**
 * The same from means, standard deviations and counts. count: above 1, fractions allowed: fewer than there are values
 * where neighbours go together (effectiveCount).
 * Source: that of welch.
 * @example welchOf({ mean: 5, sd: 1, count: 3 }, { mean: 2, sd: 1, count: 3 }).t // 3.674...
 */
export function welchOf(a: GroupSummary, b: GroupSummary, level = 0.95): WelchResult {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, as 0.95, not ${level}`);
  const difference = a.mean - b.mean;
  const va = a.sd ** 2 / a.count;
  const vb = b.sd ** 2 / b.count;
  const df = (va + vb) ** 2 / (va ** 2 / (a.count - 1) + vb ** 2 / (b.count - 1));
  const se = df > 0 ? Math.sqrt(va + vb) : Number.NaN;
  const t = difference / se;
  const reach = studentTQuantile((1 + level) / 2, df) * se;
  return {
    difference,
    t,
    df,
    p: 2 * studentTCumulative(-Math.abs(t), df),
    low: difference - reach,
    high: difference + reach,
  };
}

function summaryOf(values: readonly number[]): GroupSummary {
  return { mean: mean(values), sd: sampleStandardDeviation(values), count: values.length };
}
