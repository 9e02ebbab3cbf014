// The public combine and spread against worked examples of the GUM (JCGM 100:2008), its Supplement 1 (JCGM 101:2008)
// and others. 65,536 draws; a tolerance is stated at each check: half the last digit printed, or what draws scatter by.

import { expect, test } from "vitest";
import { combine, type Figure, lift, type Spread, spread } from "../../lib/index.ts";
import { lowerTriangle } from "../../lib/numbers/cholesky.ts";
import { mean } from "../../lib/numbers/summary.ts";
import { drawing, drawsOf } from "../../lib/quantity/drawing.ts";

const draws = { draws: 65_536 };

function near(ours: number, printed: number, tolerance: number): void {
  expect(Math.abs(ours - printed), `${ours} against ${printed}`).toBeLessThan(tolerance);
}

/** The narrowest interval that holds a share of the draws: JCGM 101:2008 7.7. */
function shortest(figure: Figure, share: number): [number, number] {
  const sorted = drawsOf(figure, drawing(figure.sources, { count: draws.draws })).sort();
  const held = Math.round(share * sorted.length);
  let best = 0;
  for (let k = 0; k + held < sorted.length; k++) {
    if (sorted[k + held]! - sorted[k]! < sorted[best + held]! - sorted[best]!) best = k;
  }
  return [sorted[best]!, sorted[best + held]!];
}

// GUM H.1, a gauge block compared with a standard: lengths in nm, l = l_s + d − l_s(δα·θ + α_s·δθ).
const length = (v: {
  readonly standard: number;
  readonly difference: number;
  readonly expansion: number;
  readonly warm: number;
  readonly swing: number;
  readonly unlike: number;
  readonly gradient: number;
}): number =>
  v.standard +
  v.difference -
  v.standard * (v.unlike * (v.warm + v.swing) + v.expansion * v.gradient) -
  50_000_000;

test("GUM H.1: 838 nm past 50 mm; four parts 25, 9.7, 2.9, 16.6; u 34 with the second-order terms", () => {
  const l = combine(
    length,
    {
      standard: spread({ mean: 50_000_623, sd: 25, source: "standard" }),
      difference: spread({ mean: 215, sd: Math.hypot(5.8, 3.9, 6.7), source: "difference" }),
      expansion: spread({ mean: 11.5e-6, halfWidth: 2e-6, source: "expansion" }),
      warm: spread({ mean: -0.1, sd: 0.2, source: "warm" }),
      swing: spread({ mean: 0, halfWidth: 0.5, kind: "arcsine", source: "swing" }),
      unlike: spread({ mean: 0, halfWidth: 1e-6, source: "unlike" }),
      gradient: spread({ mean: 0, halfWidth: 0.05, source: "gradient" }),
    },
    draws,
  );
  near(l.mean, 838, 0.5);
  // 33.807 from the printed inputs; draws of 65,536 scatter the sd by about 0.3 %.
  near(l.sd, 33.807, 0.25);
  const part = (id: string): number =>
    l.sd * Math.sqrt((l.shares.find((share) => share.id === id)?.percent ?? 0) / 100);
  near(part("standard"), 25, 0.1);
  near(part("difference"), 9.7, 0.05);
  near(part("unlike"), 2.9, 0.05);
  near(part("gradient"), 16.6, 0.05);
  // First order alone, as H.1.4 adds them: 32 nm.
  near(Math.hypot(part("standard"), part("difference"), part("unlike"), part("gradient")), 31.66, 0.15);
});

// JCGM 101:2008, 9.5: the same with Student's t and inexact limits; figures from memory.
test("Supplement 1, 9.5: 838 nm, u 36, 99 % from 745 to 932 nm", () => {
  const l = combine(
    ({ standard, repeats, random, systematic, ...rest }) =>
      length({ standard, difference: 215 + repeats + random + systematic, ...rest }),
    {
      standard: spread({ mean: 50_000_623, sd: 25, df: 18, source: "standard" }),
      repeats: spread({ mean: 0, sd: 5.8, df: 24, source: "repeats" }),
      random: spread({ mean: 0, sd: 3.9, df: 5, source: "random" }),
      systematic: spread({ mean: 0, sd: 6.7, df: 8, source: "systematic" }),
      expansion: spread({ mean: 11.5e-6, halfWidth: 2e-6, source: "expansion" }),
      warm: spread({ mean: -0.1, sd: 0.2, source: "warm" }),
      swing: spread({ mean: 0, halfWidth: 0.5, kind: "arcsine", source: "swing" }),
      unlike: spread({
        mean: 0,
        halfWidth: 1e-6,
        kind: "curvilinear trapezoid",
        edge: 0.1,
        source: "unlike",
      }),
      gradient: spread({
        mean: 0,
        halfWidth: 0.05,
        kind: "curvilinear trapezoid",
        edge: 0.5,
        source: "gradient",
      }),
    },
    draws,
  );
  near(l.mean, 838, 0.6);
  near(l.sd, 36, 0.6);
  near(l.quantile(0.005), 745, 2.5);
  near(l.quantile(0.995), 932, 2.5);
});

// GUM H.2: five readings each of a voltage (V), a current (A) and a phase (rad), taken together.
const readings = [
  [5.007, 4.994, 5.005, 4.99, 4.999],
  [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
  [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
];

test("GUM H.2: resistance, reactance and impedance from readings that move together", () => {
  const means = readings.map((list) => mean(list));
  const covariance = readings.map((a, i) =>
    readings.map((b, j) => a.reduce((all, v, k) => all + (v - means[i]!) * (b[k]! - means[j]!), 0) / (5 * 4)),
  );
  const u = covariance.map((row, i) => Math.sqrt(row[i]!));
  near(u[0]!, 0.0032, 5e-5);
  near(u[1]!, 9.5e-6, 5e-8);
  near(u[2]!, 7.5e-4, 5e-6);
  near(covariance[0]![1]! / (u[0]! * u[1]!), -0.36, 0.005);
  near(covariance[0]![2]! / (u[0]! * u[2]!), 0.86, 0.005);
  near(covariance[1]![2]! / (u[1]! * u[2]!), -0.65, 0.005);
  // Three shared sources make the correlation.
  const lower = lowerTriangle(covariance);
  const scores = ["first", "second", "third"].map((source) => spread({ mean: 0, sd: 1, source }));
  const [V, I, phase] = lower.map((row, i) =>
    lift((z) => means[i]! + row[0]! * z[0]! + row[1]! * z[1]! + row[2]! * z[2]!, scores),
  ) as [Spread, Spread, Spread];
  const R = combine(({ V, I, phase }) => (V / I) * Math.cos(phase), { V, I, phase }, draws);
  const X = combine(({ V, I, phase }) => (V / I) * Math.sin(phase), { V, I, phase }, draws);
  const Z = combine(({ V, I }) => V / I, { V, I }, draws);
  for (const [figure, value, sd] of [
    [R, 127.732, 0.071],
    [X, 219.847, 0.295],
    [Z, 254.26, 0.236],
  ] as const) {
    near(figure.mean, value, 0.001);
    near(figure.sd, sd, 0.0015);
  }
  const together = (a: Figure, b: Figure): number => {
    const both = combine(({ a, b }) => a + b, { a, b }, draws);
    return (both.sd ** 2 - a.sd ** 2 - b.sd ** 2) / (2 * a.sd * b.sd);
  };
  near(together(R, X), -0.588, 0.01);
  near(together(R, Z), -0.485, 0.01);
  near(together(X, Z), 0.993, 0.001);
});

// JCGM 101:2008, 9.3, calibration of a mass standard in air (mg); inputs read, results from memory, and those of
// 10⁷ plain draws, 0.0755 and 1.0844 to 1.3836, worked out apart.
test("Supplement 1, 9.3: 1.234 mg, u 0.0755, 95 % from 1.084 to 1.383, where first order says 0.0539", () => {
  const off = combine(
    ({ weight, added, air, own, reference }) =>
      (weight + added) * (1 + (air - 1.2) * (1 / own - 1 / reference)) - 100_000,
    {
      weight: spread({ mean: 100_000, sd: 0.05, source: "weight" }),
      added: spread({ mean: 1.234, sd: 0.02, source: "added" }),
      air: spread({ mean: 1.2, halfWidth: 0.1, source: "air" }),
      own: spread({ mean: 8000, halfWidth: 1000, source: "own density" }),
      reference: spread({ mean: 8000, halfWidth: 50, source: "reference density" }),
    },
    draws,
  );
  near(off.mean, 1.234, 0.0006);
  near(off.sd, 0.0755, 0.0005);
  near(off.low, 1.084, 0.0025);
  near(off.high, 1.3835, 0.0025);
  // The densities act only together with the air: shares of single sources miss that, and the figure says so.
  expect(off.actTogether).toBe(true);
});

// JCGM 101:2008, 9.4, comparison loss in a microwave power meter (figures from memory, in millionths): y = x₁² + x₂².
// Exact: mean x₁² + 2u², variance 4x₁²u² + 4u⁴.
test("Supplement 1, 9.4: comparison loss at 0, 0.010 and 0.050, where first order gives 0 at 0", () => {
  const loss = (x1: number): Figure =>
    combine(
      ({ a, b }) => 1e6 * (a * a + b * b),
      {
        a: spread({ mean: x1, sd: 0.005, source: "real part" }),
        b: spread({ mean: 0, sd: 0.005, source: "imaginary part" }),
      },
      draws,
    );
  const none = loss(0);
  near(none.mean, 50, 0.3);
  near(none.sd, 50, 0.5);
  const [from, to] = shortest(none, 0.95);
  near(from, 0, 0.1);
  near(to, 149.79, 1.5);
  const small = loss(0.01);
  near(small.mean, 150, 0.5);
  near(small.sd, 112, 1);
  const [low, high] = shortest(small, 0.95);
  near(low, 0, 1);
  near(high, 367, 3);
  const large = loss(0.05);
  near(large.mean, 2550, 2);
  near(large.sd, 502.5, 3);
  const [least, most] = shortest(large, 0.95);
  near(least, 1590, 25);
  near(most, 3543, 25);
  near(most - least, 3543 - 1590, 15);
});

// NIST Technical Note 1900, example E13: thermal expansion of a copper bar.
test("NIST TN 1900 E13: 1.7266e-5 per kelvin, u 1.76e-6", () => {
  const { mean: middle, sd } = combine(
    ({ l0, l1, t0, t1 }) => (1e6 * (l1 - l0)) / (l0 * (t1 - t0)),
    {
      l0: spread({ mean: 1.4999, sd: 1e-4 }),
      l1: spread({ mean: 1.5021, sd: 2e-4 }),
      t0: spread({ mean: 288.15, sd: 0.02 }),
      t1: spread({ mean: 373.1, sd: 0.05 }),
    },
    draws,
  );
  near(middle, 17.266, 0.005);
  near(sd, 1.76, 0.01);
});

// NPL report DEM-ES-011, 9.2: ln X, X evenly between 0.1 and 1.1; exact −0.664900, 0.606227, shortest 95 % −1.89712 to 0.09531.
test("NPL DEM-ES-011 9.2: the logarithm of an even spread", () => {
  const figure = combine(({ x }) => Math.log(x), { x: spread({ mean: 0.6, halfWidth: 0.5 }) }, draws);
  near(figure.mean, -0.6649, 5e-5);
  near(figure.sd, 0.606227, 5e-5);
  const [low, high] = shortest(figure, 0.95);
  near(low, -1.89712, 2e-4);
  near(high, 0.09531, 2e-4);
});

// Eurachem/CITAC QUAM 2012, example A2: strength of a sodium hydroxide solution, mol/L. The difference of two weighings
// has the linearity of the balance twice. Molar mass 204.2212 g/mol, its u, the burette and the repeats from memory.
test("Eurachem A2: 0.102136 mol/L, u 0.0001005; linearity entering twice", () => {
  const weighed = combine(
    ({ full, empty }) => full - empty,
    {
      full: spread({ mean: 60.545, halfWidth: 0.00015, source: "linearity, full" }),
      empty: spread({ mean: 60.1562, halfWidth: 0.00015, source: "linearity, empty" }),
    },
    draws,
  );
  near(weighed.mean, 0.3888, 1e-7);
  near(weighed.sd, (0.00015 * Math.SQRT2) / Math.sqrt(3), 1e-6);
  const { mean: strength, sd } = combine(
    ({ weighed, purity, molar, burette, warm, repeat }) =>
      (1000 * weighed * purity * repeat) / (molar * (18.64 + burette + warm)),
    {
      weighed,
      purity: spread({ mean: 1, halfWidth: 0.0005, source: "purity" }),
      molar: spread({ mean: 204.2212, sd: 0.0038, source: "molar mass" }),
      burette: spread({ mean: 0, halfWidth: 0.03, kind: "triangular", source: "burette" }),
      warm: spread({ mean: 0, halfWidth: 18.64 * 2.1e-4 * 3, kind: "normal", source: "temperature" }),
      repeat: spread({ mean: 1, sd: 0.0005, source: "repeats" }),
    },
    draws,
  );
  near(strength, 0.102136, 1e-6);
  near(sd, 0.0001005, 1e-6);
});
