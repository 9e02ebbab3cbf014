// Rank correlation against two published examples (both from memory).

import { expect, test } from "vitest";
import { spearman } from "../../lib/numbers/spearman.ts";
import { scores, tuna } from "./statistics-data.ts";

// M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973): lightness of tuna against panel scores.
test("nine pairs: ρ 0.6, exact two-sided p 0.0968", () => {
  const { rho, p } = spearman(tuna.x, tuna.y);
  expect(rho).toBeCloseTo(0.6, 14);
  expect(p).toBeCloseTo(0.0968, 4);
});

// A textbook example of ten pairs, test scores against hours: Σd² = 194.
test("ten pairs: ρ −29/165, p 0.6272 by Student's t", () => {
  const { rho, p } = spearman(scores.x, scores.y);
  expect(rho).toBeCloseTo(-29 / 165, 14);
  expect(p).toBeCloseTo(0.6272, 4);
});
