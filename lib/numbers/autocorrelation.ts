// Whether neighbours in a row of figures go together.

import { mean } from "./summary.ts";

/**
 * Lag-one autocorrelation r₁ = Σ(xᵢ − x̄)(xᵢ₊₁ − x̄)/Σ(xᵢ − x̄)², −1 to 1, of one series or pooled over several: each about
 * its own mean, products and squares summed. groups: each in the order in which it was taken, in one unit. No scatter
 * at all: 0. Any NaN: NaN. In short series it comes out too low, by about (1 + 3r)/n.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.12; certified values in the Statistical Reference
 * Datasets (tests/reference/autocorrelation.test.ts); the bias: M. H. Quenouille and F. H. C. Marriott (1954, from memory).
 * @example lagOneAutocorrelation([[10000001, 10000003, 10000002]]) // -0.5
 */
export function lagOneAutocorrelation(groups: readonly (readonly number[])[]): number {
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

/**
 * How many independent values tell as much of the mean as n that go together: n(1 − r)/(1 + r), at most n.
 * n: values, above 0; r: lag-one autocorrelation, −1 to 1; r below 0 counts as 0, else the doubt would shrink. 1 gives 0.
 * Holds for a first-order autoregressive series that is long against its memory.
 * Source: G. V. Bayley and J. M. Hammersley, Suppl. J. R. Stat. Soc. 8 (1946) 184–197 (from memory; by simulation in
 * tests/trial/before-after.test.ts).
 * @example effectiveCount(12, 0.5) // 4
 */
export function effectiveCount(n: number, r: number): number {
  return r <= 0 ? n : (n * (1 - r)) / (1 + r);
}
