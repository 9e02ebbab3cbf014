import { expect, test } from "vitest";
import { fCumulative, fQuantile } from "../../lib/numbers/f-distribution.ts";
import { logGamma } from "../../lib/numbers/log-gamma.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";
import { relativeError } from "./close.ts";
import { scipyFits } from "./scipy-fits.ts";

test("F agrees with SciPy to the stated error", () => {
  for (const [x, a, b, p] of scipyFits["f cumulative"]) {
    // SciPy's own error in so small a tail is larger than ours.
    expect(relativeError(fCumulative(x, a, b), p), `${x}, ${a}, ${b}`).toBeLessThan(
      p < 1e-20 ? 1e-10 : 1e-12,
    );
  }
  for (const [p, a, b, x] of scipyFits["f quantile"]) {
    expect(relativeError(fQuantile(p, a, b), x), `${p}, ${a}, ${b}`).toBeLessThan(1e-12);
  }
});

test("ln Γ agrees with SciPy to the stated error", () => {
  for (const [z, value] of scipyFits["log gamma"]) {
    expect(Math.abs(logGamma(z) - value) / Math.max(1, Math.abs(value)), `${z}`).toBeLessThan(1e-13);
  }
});

// Printed tables (from memory): F 95 % for 1 and 10, 2 and 10, 9 and 40.
test("printed tables", () => {
  for (const [a, b, x] of [
    [1, 10, 4.965],
    [2, 10, 4.103],
    [9, 40, 2.124],
  ] as const) {
    expect(fQuantile(0.95, a, b)).toBeCloseTo(x, 3);
  }
});

test("F with one degree above is t², and 1/F has the degrees exchanged", () => {
  for (const df of [1, 3, 8.5, 40]) {
    expect(relativeError(fQuantile(0.95, 1, df), studentTQuantile(0.975, df) ** 2)).toBeLessThan(1e-12);
    expect(relativeError(fQuantile(0.1, 4, df), 1 / fQuantile(0.9, df, 4))).toBeLessThan(1e-12);
  }
});

test("ends, and what lies outside", () => {
  expect([fCumulative(-1, 2, 3), fCumulative(Infinity, 2, 3)]).toEqual([0, 1]);
  expect([fQuantile(0, 2, 3), fQuantile(1, 2, 3)]).toEqual([0, Infinity]);
  for (const nothing of [fCumulative(1, 0, 3), fQuantile(0.5, 2, -1), fQuantile(95, 2, 7), logGamma(0)]) {
    expect(nothing).toBeNaN();
  }
  expect([fQuantile(0.5, 5, Infinity), fQuantile(0.5, Infinity, 5), fCumulative(1, 5, Infinity)]).toEqual([
    NaN,
    NaN,
    NaN,
  ]);
});
