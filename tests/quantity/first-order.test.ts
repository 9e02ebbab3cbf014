// Variance to the first order: by hand, and against draws.

import { expect, test } from "vitest";
import { combine, lift } from "../../lib/quantity/combine.ts";
import { firstOrderVariance } from "../../lib/quantity/first-order.ts";
import { spread } from "../../lib/quantity/spread-of.ts";

test("sums by hand: 0.3² + 0.4², a rectangle a²/3, a triangle a²/6 of the difference's halves", () => {
  const a = spread({ mean: 3, sd: 0.3, source: "a" });
  const b = spread({ mean: 5, sd: 0.4, source: "b" });
  expect(firstOrderVariance(lift((v) => v[0]! + v[1]!, [a, b]))).toBeCloseTo(0.25, 12);
  expect(firstOrderVariance(spread("12.4 ± 0.3 g"))).toBeCloseTo(0.03, 12);
  expect(firstOrderVariance(lift(() => 7, [7]))).toBe(0);
});

test("what is shared cancels or adds", () => {
  const a = spread({ mean: 3, sd: 0.3, source: "one scale" });
  const b = spread({ mean: 5, sd: 0.3, source: "one scale" });
  expect(firstOrderVariance(lift((v) => v[1]! - v[0]!, [a, b]))).toBeCloseTo(0, 12);
  expect(firstOrderVariance(lift((v) => v[1]! + v[0]!, [a, b]))).toBeCloseTo(0.36, 12);
});

test("a moisture from two weighings: within a hundredth of the draws", () => {
  const given = { wet: spread("52.4 ± 0.1 g"), dry: spread("50.6 ± 0.1 g") };
  const moisture = ({ wet, dry }: { wet: number; dry: number }) => (100 * (wet - dry)) / wet;
  const { sd } = combine(moisture, given);
  expect(Math.sqrt(firstOrderVariance(lift(moisture, given))) / sd).toBeCloseTo(1, 2);
});
