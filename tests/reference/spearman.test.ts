// Rank correlation against two published examples (both from memory).

import { expect, test } from "vitest";
import { spearman } from "../../lib/numbers/spearman.ts";

// M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973): lightness of tuna against panel scores.
test("nine pairs: ρ 0.6, exact two-sided p 0.0968", () => {
  const x = [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1];
  const y = [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8];
  const { rho, p } = spearman(x, y);
  expect(rho).toBeCloseTo(0.6, 14);
  expect(p).toBeCloseTo(0.0968, 4);
});

// A textbook example of ten pairs, test scores against hours: Σd² = 194.
test("ten pairs: ρ −29/165, p 0.6272 by Student's t", () => {
  const score = [106, 100, 86, 101, 99, 103, 97, 113, 112, 110];
  const hours = [7, 27, 2, 50, 28, 29, 20, 12, 6, 17];
  const { rho, p } = spearman(score, hours);
  expect(rho).toBeCloseTo(-29 / 165, 14);
  expect(p).toBeCloseTo(0.6272, 4);
});
