// Whether one small group lies higher than another, by counting every way of parting the ranks.

import { invariant } from "../issue.ts";
import { ranks } from "./ranks.ts";
import { median } from "./summary.ts";

export interface MannWhitneyExact {
  /** Pairs in which the first group's value is the higher; equal ones count a half. */
  readonly u: number;
  /** Twice the smaller tail, 1 at most. */
  readonly p: number;
  /** The smallest p that groups of these sizes and ties could give. */
  readonly least: number;
  /** Middle of all differences, first less second. */
  readonly shift: number;
  /** Ends of an interval that holds the shift in at least 95 of 100 cases; undefined where the groups are too small. */
  readonly interval?: { readonly low: number; readonly high: number };
}

/** Up to so many values in all every parting is counted. */
export const mostValues = 100;

/**
 * The exact Mann–Whitney (Wilcoxon rank-sum) test. Ranks are shared out to groups of m and n in all C(m + n, m) ways;
 * p is twice the share of ways whose rank sum is as far out on the side of the one that was found. Equal values share
 * their mean rank and are counted as they are. With it the Hodges–Lehmann shift, the median of the m·n differences, and
 * its interval by the k-th smallest and largest of them, k the largest for which P(U < k) is at most 0.025; k comes from
 * the distribution without ties, so with many ties the interval is approximate.
 * a, b: finite, one value each at least, 100 together at most, else throws.
 * Source: M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973) 4.1 to 4.3 (from memory); checked
 * against SciPy.
 * @example mannWhitneyExact([4, 5, 6], [1, 2, 3]).p // 0.1, 2 of 20
 */
export function mannWhitneyExact(a: readonly number[], b: readonly number[]): MannWhitneyExact {
  invariant(
    a.length > 0 && b.length > 0 && a.length + b.length <= mostValues,
    `a Mann–Whitney test needs two groups, ${mostValues} values together at most`,
  );
  invariant([...a, ...b].every(Number.isFinite), "a Mann–Whitney test needs finite values");
  // Twice the ranks: whole numbers, so that sums compare exactly.
  const doubled = ranks([...a, ...b]).map((rank) => 2 * rank);
  const found = doubled.slice(0, a.length).reduce((sum, rank) => sum + rank, 0);
  const shares = sumShares(doubled, a.length);
  const tail = (at: number) => {
    const below = shares.reduce((sum, share, s) => (s <= at ? sum + share : sum), 0);
    const above = shares.reduce((sum, share, s) => (s >= at ? sum + share : sum), 0);
    return Math.min(1, 2 * Math.min(below, above));
  };
  const sums = shares.flatMap((share, s) => (share > 0 ? [s] : []));
  const differences = a.flatMap((x) => b.map((y) => x - y)).sort((x, y) => x - y);
  const k = fromEachEnd(a.length, b.length);
  return {
    u: (found - a.length * (a.length + 1)) / 2,
    p: tail(found),
    least: Math.min(tail(sums[0]!), tail(sums.at(-1)!)),
    shift: median(differences),
    ...(k > 0 ? { interval: { low: differences[k - 1]!, high: differences.at(-k)! } } : {}),
  };
}

/** Share of all choices of `count` of the weights that come to each sum. */
function sumShares(weights: readonly number[], count: number): number[] {
  const most = weights.reduce((sum, weight) => sum + weight, 0);
  const ways = Array.from({ length: count + 1 }, () => new Float64Array(most + 1));
  ways[0]![0] = 1;
  for (const [i, weight] of weights.entries()) {
    for (let k = Math.min(count, i + 1); k > 0; k--) {
      const [to, from] = [ways[k]!, ways[k - 1]!];
      for (let s = weight; s <= most; s++) to[s]! += from[s - weight]!;
    }
  }
  const all = ways[count]!.reduce((sum, way) => sum + way, 0);
  return Array.from(ways[count]!, (way) => way / all);
}

/** How many differences are cut off at each end: 0 where even the whole run of them holds less than 95 %. */
function fromEachEnd(m: number, n: number): number {
  const untied = sumShares(
    Array.from({ length: m + n }, (_, i) => i + 1),
    m,
  ).slice((m * (m + 1)) / 2);
  let below = 0;
  for (const [k, share] of untied.entries()) {
    below += share;
    if (below > 0.025 * (1 + 1e-12)) return k;
  }
  return 0;
}
