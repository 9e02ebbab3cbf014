// Several questions of one set of data: what each p is worth together with the others.

import { invariant } from "../issue.ts";

/**
 * Holm's adjusted p: sorted from the smallest, p₍ᵢ₎·(m − i + 1), never below the one before, 1 at most; given back in the
 * order of the list. Held against 0.05 they let a wrong "yes" pass in at most 5 of 100 such sets of questions.
 * ps: each from 0 to 1, else throws; an empty list gives an empty list.
 * Source: S. Holm, Scandinavian Journal of Statistics 6 (1979) 65–70 (from memory).
 * @example holm([0.01, 0.04, 0.03]) // [0.03, 0.06, 0.06]
 */
export function holm(ps: readonly number[]): number[] {
  invariant(
    ps.every((p) => p >= 0 && p <= 1),
    "Holm's p are from 0 to 1",
  );
  const order = ps.map((_, i) => i).sort((i, j) => ps[i]! - ps[j]!);
  const adjusted = ps.map(() => 1);
  let before = 0;
  for (const [place, i] of order.entries()) {
    before = Math.max(before, Math.min(1, ps[i]! * (ps.length - place)));
    adjusted[i] = before;
  }
  return adjusted;
}
