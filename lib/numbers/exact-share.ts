// A share counted in few cases, and between what it may lie.

import { invariant } from "../issue.ts";

/**
 * The exact 95 % interval of a share of which `hits` in `of` were counted (Clopper and Pearson): the shares at which so
 * many hits or more, and so many or fewer, have a chance of 2.5 %. It holds the truth in 95 of 100 cases or more.
 * of: whole, 1 to 1000; hits: whole, 0 to of; else throws. Shares from 0 to 1.
 * Source: C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404–413 (from memory); checked against SciPy.
 * @example exactShare(3, 7) // { share: 0.42857..., low: 0.0989..., high: 0.8159... }
 */
export function exactShare(hits: number, of: number): { share: number; low: number; high: number } {
  invariant(
    Number.isInteger(hits) && Number.isInteger(of) && of >= 1 && of <= 1000 && hits >= 0 && hits <= of,
    "a share needs whole counts, hits up to the number of cases",
  );
  const low = hits === 0 ? 0 : 1 - atMostHas(0.025, of - hits, of);
  const high = hits === of ? 1 : atMostHas(0.025, hits, of);
  return { share: hits / of, low, high };
}

/** The share at which at most `hits` of `of` have the chance p; that chance falls as the share rises. */
function atMostHas(p: number, hits: number, of: number): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (atMost(hits, of, middle) > p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function atMost(hits: number, of: number, share: number): number {
  let log = of * Math.log1p(-share);
  let sum = Math.exp(log);
  for (let k = 1; k <= hits; k++) {
    log += Math.log(((of - k + 1) * share) / (k * (1 - share)));
    sum += Math.exp(log);
  }
  return sum;
}
