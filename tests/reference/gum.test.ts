// What the rows of rows-uncertainty.ts do not hold: figures from the exact solution, and how sources act. 65,536 draws; a
// tolerance is stated at each check: half the last digit, or what draws scatter by.

import { expect, test } from "vitest";
import {
  comparisonLoss,
  expansion,
  gaugeBlock,
  hydroxide,
  impedance,
  logarithm,
  massStandard,
  partOf,
  shortest,
  weighed,
} from "./gum-cases.ts";

function near(ours: number, exact: number, tolerance: number): void {
  expect(Math.abs(ours - exact), `${ours} against ${exact}`).toBeLessThan(tolerance);
}

test("GUM H.1: u 33.807 from the printed inputs; the smaller parts closer; 31.66 by the first order", () => {
  // Draws of 65,536 scatter the sd by about 0.3 %.
  near(gaugeBlock().sd, 33.807, 0.25);
  near(partOf(gaugeBlock(), "difference"), 9.7, 0.05);
  near(partOf(gaugeBlock(), "unlike"), 2.9, 0.05);
  near(partOf(gaugeBlock(), "gradient"), 16.6, 0.05);
  const parts = ["standard", "difference", "unlike", "gradient"].map((id) => partOf(gaugeBlock(), id));
  near(Math.hypot(...parts), 31.66, 0.15);
});

test("GUM H.2: reactance and impedance move together", () => {
  const { X, Z, together } = impedance();
  near(together(X, Z), 0.993, 0.001);
});

// Results from memory, and those of 10⁷ plain draws, 0.0755 and 1.0844 to 1.3836, worked out apart.
test("Supplement 1, 9.3: u 0.0755, 95 % from 1.084 to 1.383, where first order says 0.0539", () => {
  const off = massStandard();
  near(off.mean, 1.234, 0.0006);
  near(off.sd, 0.0755, 0.0005);
  near(off.low, 1.084, 0.0025);
  near(off.high, 1.3835, 0.0025);
  // The densities act only together with the air: shares of single sources miss that, and the figure says so.
  expect(off.actTogether).toBe(true);
});

// Exact: mean x₁² + 2u², variance 4x₁²u² + 4u⁴.
test("Supplement 1, 9.4: comparison loss at 0, at 0.010 and at 0.050, where first order gives 0 at 0", () => {
  const [none, small, large] = [0, 0.01, 0.05].map(comparisonLoss) as [
    ReturnType<typeof comparisonLoss>,
    ReturnType<typeof comparisonLoss>,
    ReturnType<typeof comparisonLoss>,
  ];
  near(none.mean, 50, 0.3);
  near(none.sd, 50, 0.5);
  const [from, to] = shortest(none, 0.95);
  near(from, 0, 0.1);
  near(to, 149.79, 1.5);
  near(small.mean, 150, 0.5);
  near(small.sd, 112, 1);
  const [low, high] = shortest(small, 0.95);
  near(low, 0, 1);
  near(high, 367, 3);
  near(large.mean, 2550, 2);
  near(large.sd, 502.5, 3);
  const [least, most] = shortest(large, 0.95);
  near(least, 1590, 25);
  near(most, 3543, 25);
  near(most - least, 3543 - 1590, 15);
});

test("NIST TN 1900 E13: 1.7266e-5 per kelvin; NPL 9.2: exact −0.664900 and 0.606227", () => {
  near(expansion().mean, 17.266, 0.005);
  near(expansion().sd, 1.76, 0.01);
  near(logarithm().mean, -0.6649, 5e-5);
  near(logarithm().sd, 0.606227, 5e-5);
});

test("Eurachem A2: linearity enters a difference of weighings twice", () => {
  near(weighed().mean, 0.3888, 1e-7);
  near(weighed().sd, (0.00015 * Math.SQRT2) / Math.sqrt(3), 1e-6);
  near(hydroxide().mean, 0.102136, 1e-6);
  near(hydroxide().sd, 0.0001005, 1e-6);
});
