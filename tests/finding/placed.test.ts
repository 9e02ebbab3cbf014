// Where a figure lies against a range, against a table of the normal distribution.

import { expect, test } from "vitest";
import { placeBatch } from "../../lib/finding/placed.ts";
import { spread } from "../../lib/quantity/spread-of.ts";

const place = (value: number, halfWidth: number, missing: readonly string[] = []) =>
  placeBatch(
    "A",
    { value, spread: spread({ mean: value, halfWidth, kind: "normal", source: "a reading" }), missing },
    40,
    80,
  );

test("below, within, above, and across an edge with the chance of lying within", () => {
  expect(place(60, 5)).toMatchObject({ where: "within", atLeast: false });
  expect(place(95, 5).where).toBe("above");
  expect(place(30, 5).where).toBe("below");
  // The edge in the middle of a symmetric ±: a half. 5 within the edge with ± 10 is 0.98 sd: Φ(0.98) = 0.8365.
  expect(place(80, 10)).toMatchObject({ where: "not told" });
  expect(place(80, 10).chance).toBeCloseTo(0.5, 3);
  expect(place(75, 10).chance).toBeCloseTo(0.8365, 2);
  for (const one of [place(60, 5), place(95, 5), place(30, 5)]) expect(one.chance).toBeGreaterThan(0.97);
});

test("a lower bound is told as one; without a ± the figure alone places it, with no chance", () => {
  expect(place(60, 5, ["repeat"]).atLeast).toBe(true);
  const bare = {
    value: 95,
    spread: spread({ mean: 95, halfWidth: 0, kind: "normal", source: "none" }),
    missing: ["reading"],
  };
  expect(placeBatch("A", bare, 40, 80)).toMatchObject({ where: "above", chance: undefined, atLeast: true });
});
