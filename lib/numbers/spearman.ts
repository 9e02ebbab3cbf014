// Whether two lists rise together: correlation of their ranks.

import { invariant } from "../issue.ts";
import { studentTCumulative } from "./distributions.ts";
import { ranks } from "./ranks.ts";
import { sum } from "./sum.ts";

/** Up to so many pairs every order is counted: 9! = 362,880. */
const countedPairs = 9;

/**
 * Spearman's ρ, the correlation of the ranks (equal values share the mean rank), and its two-sided p: the share of all
 * orders in which |ρ| would be at least as large. Up to 9 pairs p is exact, by counting every order, with equal values as
 * they are; from 10 on t = ρ√((n − 2)/(1 − ρ²)) is taken as Student's t with n − 2 degrees, which is within 0.005 there.
 * x, y: one length, else throws. Fewer than two pairs, a list without any rise, any NaN: NaN.
 * Source: M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973) 8.5 (from memory).
 * @example spearman([1, 2, 3, 4], [2, 1, 4, 3]) // { rho: 0.6, p: 0.4166... }
 */
export function spearman(x: readonly number[], y: readonly number[]): { rho: number; p: number } {
  invariant(x.length === y.length, "a rank correlation needs an x for each y");
  const n = x.length;
  // Twice the rank less its mean: whole numbers, so that sums of products compare exactly.
  const a = ranks(x).map((rank) => 2 * rank - (n + 1));
  const b = ranks(y).map((rank) => 2 * rank - (n + 1));
  const product = sum(a.map((v, i) => v * b[i]!));
  const rho = product / Math.sqrt(sum(a.map((v) => v * v)) * sum(b.map((v) => v * v)));
  if (Number.isNaN(rho)) return { rho, p: Number.NaN };
  if (n <= countedPairs) return { rho, p: shareOfOrders(a, b, Math.abs(product)) };
  const t = Math.abs(rho) * Math.sqrt((n - 2) / (1 - rho * rho));
  return { rho, p: 2 * studentTCumulative(-t, n - 2) };
}

/** Shares by what they hang on; nearly all lists without equal values have the same ranks. The oldest are let go. */
const known = new Map<string, number>();
const mostKnown = 2000;

/** Share of all orders of b in which |Σ aᵢbᵢ| reaches the limit: of whole numbers, so that the order given does not count. */
function shareOfOrders(a: readonly number[], b: readonly number[], limit: number): number {
  const upward = (ranks: readonly number[]) => ranks.toSorted((one, other) => one - other);
  const [first, second] = [upward(a), upward(b)];
  const key = `${first};${second};${limit}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const share = countedShare(first, second, limit);
  if (known.size >= mostKnown) known.delete(known.keys().next().value!);
  known.set(key, share);
  return share;
}

function countedShare(a: readonly number[], b: readonly number[], limit: number): number {
  let orders = 0;
  let reached = 0;
  const place = (i: number, used: number, total: number): void => {
    if (i === a.length) {
      orders++;
      if (Math.abs(total) >= limit) reached++;
      return;
    }
    for (let k = 0; k < b.length; k++) {
      if ((used & (1 << k)) === 0) place(i + 1, used | (1 << k), total + a[i]! * b[k]!);
    }
  };
  place(0, 0, 0);
  return reached / orders;
}
