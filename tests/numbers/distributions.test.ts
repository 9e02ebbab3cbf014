import stdlibCumulative from "@stdlib/stats-base-dists-t-cdf";
import stdlibQuantile from "@stdlib/stats-base-dists-t-quantile";
import { expect, test } from "vitest";
import * as d from "../../lib/numbers/distributions.ts";
import { scoreSd } from "../../lib/quantity/scores.ts";
import type { Shape } from "../../lib/quantity/source.ts";
import { relativeError, scipy } from "./close.ts";

test("normal quantile and share agree with SciPy to the stated error", () => {
  for (const [p, x] of scipy["normal quantile"]) {
    expect(relativeError(d.normalQuantile(p), x), `p = ${p}`).toBeLessThan(1e-13);
  }
  for (const [x, p] of scipy["normal cumulative"]) {
    expect(relativeError(d.normalCumulative(x), p), `x = ${x}`).toBeLessThan(2e-14);
  }
});

test("normal table: NIST TN 1297, table B.1, last row; share within one to three sd", () => {
  // Last row (infinitely many degrees of freedom), printed to three decimals.
  for (const [percent, k] of [
    [90, 1.645],
    [95, 1.96],
    [95.45, 2.0],
    [99, 2.576],
    [99.73, 3.0],
  ] as const) {
    expect(d.normalQuantile(0.5 + percent / 200)).toBeCloseTo(k, 3);
  }
  // Abramowitz and Stegun (1964) table 26.1, from memory: Φ(1) = 0.84134 47461, Φ(2) = 0.97724 98681.
  expect(d.normalCumulative(1)).toBeCloseTo(0.8413447461, 10);
  expect(d.normalCumulative(2)).toBeCloseTo(0.9772498681, 10);
});

test("t quantile and share agree with SciPy to the stated error", () => {
  for (const [p, df, x] of scipy["t quantile"]) {
    expect(relativeError(d.studentTQuantile(p, df), x), `p = ${p}, df = ${df}`).toBeLessThan(2e-14);
  }
  for (const [x, df, p] of scipy["t cumulative"]) {
    expect(relativeError(d.studentTCumulative(x, df), p), `x = ${x}, df = ${df}`).toBeLessThan(2e-14);
  }
});

// mpmath 1.3.0, worked to 40 digits: the incomplete beta function by its hypergeometric series, above 50 degrees near the middle by
// Gauss-Legendre quadrature of the density.
test("t keeps its stated errors far out and for many degrees of freedom, and has a share for every x", () => {
  for (const [x, df, share, error] of [
    [-1e10, 0.5, 3.207009754142229e-6, 2e-14],
    [-0.3, 0.7, 0.41461759318566754, 2e-14],
    [-20, 200, 6.678883529193904e-50, 1e-13],
    [-1e5, 59.9, 2.7817456103158876e-248, 1e-13],
    [-1e150, 1.5, 3.770852432016246e-226, 1e-13],
    [-3, 500, 0.0014172459064255697, 1e-10],
    [-1.75, 1e6, 0.04005931020827394, 1e-10],
    [-3, 1e6, 0.0013499312707108985, 1e-10],
    [-9, 1e6 + 1, 1.130486514846828e-19, 1e-12],
    [-30, 1e6 + 1, 6.010045898556883e-198, 1e-12],
    [-0.1, 2e6, 0.4601721677344966, 1e-12],
    [-37, 1e9, 5.72825842877757e-300, 1e-12],
  ] as const) {
    expect(relativeError(d.studentTCumulative(x, df), share), `x = ${x}, df = ${df}`).toBeLessThan(error);
  }
  for (const [p, df, x, error] of [
    [1e-300, 7, -1.4457941326481904e43, 2e-14],
    [1e-100, 2.5, -8.765437882279991e39, 2e-14],
    [1e-16, 0.5, -1.02849115631634e31, 2e-14],
    [0.025, 150, -1.9759053308966206, 2e-14],
    [0.48, 0.7, -0.06800714514000208, 2e-14],
    [0.02, 1e6, -2.053751589691431, 1e-10],
    [1e-300, 2e4, -37.69234541615886, 1e-10],
    [1e-12, 3e5, -7.0347797764324955, 1e-10],
    [1e-300, 1e6 + 1, -37.05982086004619, 1e-13],
    [0.025, 5e6, -1.9599644589944132, 1e-13],
    [1e-9, 1e9, -5.9978070704479505, 1e-13],
  ] as const) {
    expect(relativeError(d.studentTQuantile(p, df), x), `p = ${p}, df = ${df}`).toBeLessThan(error);
  }
  // Its quantile is −1.03e599.
  expect(d.studentTQuantile(1e-300, 0.5)).toBe(Number.NEGATIVE_INFINITY);
  for (const df of [1e6, 1.1e6, 1e9, 1e300, Number.POSITIVE_INFINITY]) {
    for (const x of [50, 1e100, 1e150, 1e300, Number.POSITIVE_INFINITY]) {
      expect([d.studentTCumulative(-x, df), d.studentTCumulative(x, df)], `x = ${x}, df = ${df}`).toEqual([
        0, 1,
      ]);
    }
  }
});

test("t agrees with @stdlib over many degrees of freedom", () => {
  for (const df of [0.1, 0.5, 1, 2.5, 7, 29, 60, 61, 1000, 1e5, 9e5, 1.1e6, 1e9]) {
    for (const x of [-50, -9, -5, -1, -0.1, -1e-4, 0, 0.5, 3]) {
      // Far out in the tail of many degrees both lose digits in e^(−ν/2·ln(1 + x²/ν)).
      const truth = stdlibCumulative(x, df);
      if (truth < 1e-40) continue;
      expect(relativeError(d.studentTCumulative(x, df), truth), `x = ${x}, df = ${df}`).toBeLessThan(1e-11);
    }
    for (const p of [1e-9, 1e-4, 0.025, 0.3, 0.8]) {
      // Its quantile is the coarser one, 2e-9 off where SciPy and the closed forms tell.
      const error = relativeError(d.studentTQuantile(p, df), stdlibQuantile(p, df));
      expect(error, `p = ${p}, df = ${df}`).toBeLessThan(1e-8);
    }
  }
});

test("a tiny share: the share below its quantile is it again, or the quantile is beyond all numbers", () => {
  for (const df of [1, 3, 50, 1e5]) {
    for (const p of [1e-300, 1e-100, 1e-20]) {
      expect(relativeError(d.studentTCumulative(d.studentTQuantile(p, df), df), p)).toBeLessThan(1e-12);
    }
  }
  expect(d.studentTQuantile(1e-300, 0.1)).toBe(Number.NEGATIVE_INFINITY);
});

test("t table: NIST TN 1297, table B.1 (the same as GUM table G.2)", () => {
  // df, then t for 90, 95, 95.45, 99 and 99.73 %, as printed.
  const rows = [
    [1, 6.31, 12.71, 13.97, 63.66, 235.8],
    [2, 2.92, 4.3, 4.53, 9.92, 19.21],
    [3, 2.35, 3.18, 3.31, 5.84, 9.22],
    [4, 2.13, 2.78, 2.87, 4.6, 6.62],
    [5, 2.02, 2.57, 2.65, 4.03, 5.51],
    [6, 1.94, 2.45, 2.52, 3.71, 4.9],
    [8, 1.86, 2.31, 2.37, 3.36, 4.28],
    [10, 1.81, 2.23, 2.28, 3.17, 3.96],
    [15, 1.75, 2.13, 2.18, 2.95, 3.59],
    [20, 1.72, 2.09, 2.13, 2.85, 3.42],
    [30, 1.7, 2.04, 2.09, 2.75, 3.27],
    [50, 1.68, 2.01, 2.05, 2.68, 3.16],
  ];
  // The table takes the shares of one, two and three sd unrounded for 95.45 and 99.73.
  const shares = [0.9, 0.95, 0.954499736, 0.99, 0.997300204];
  for (const [df, ...row] of rows) {
    row.forEach((t, i) => {
      const ours = d.studentTQuantile(0.5 + shares[i]! / 2, df!);
      expect(Math.abs(ours - t), `df = ${df}, ${shares[i]}`).toBeLessThanOrEqual(0.0051);
    });
  }
});

test("t with 1 and 2 degrees of freedom follow their closed forms", () => {
  for (const p of [0.01, 0.2, 0.6, 0.99]) {
    expect(d.studentTQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 10);
    expect(d.studentTQuantile(p, 2)).toBeCloseTo((2 * p - 1) / Math.sqrt(2 * p * (1 - p)), 10);
  }
  expect(d.studentTQuantile(0.975, Number.POSITIVE_INFINITY)).toBe(d.normalQuantile(0.975));
});

test("triangular and arcsine quantiles agree with SciPy", () => {
  for (const [p, x] of scipy["triangular quantile"]) expect(d.triangularQuantile(p)).toBeCloseTo(x, 14);
  for (const [p, x] of scipy["arcsine quantile"]) expect(d.arcsineQuantile(p)).toBeCloseTo(x, 14);
});

test("curvilinear trapezoid agrees with quadrature of its definition", () => {
  // Share below x = mean over the half-width w of (1 + x/w)/2 held to 0..1, by scipy.integrate.quad 1.10.1
  // to an absolute 1e-13: [x, edge, share].
  for (const [x, edge, p] of [
    [0.3, 0.05, 0.6501251878354742],
    [1.0, 0.05, 0.9939508208471609],
    [1.04, 0.05, 0.9997611452839845],
    [0.9, 0.2, 0.9486423315082533],
    [1.0, 0.2, 0.977901945992443],
    [1.1, 0.2, 0.9946406433607408],
    [0.3, 0.5, 0.6647918433002165],
    [1.1, 0.5, 0.9705852105671118],
    [1.4, 0.5, 0.9982950100408661],
    [0.9, 0.9, 0.9090258226797775],
    [1.4, 0.9, 0.9798706414921261],
  ] as const) {
    expect(d.curvilinearTrapezoidQuantile(p, edge)).toBeCloseTo(x, 11);
    expect(d.curvilinearTrapezoidQuantile(1 - p, edge)).toBeCloseTo(-x, 11);
  }
  expect(d.curvilinearTrapezoidQuantile(0.7, 0)).toBeCloseTo(0.4, 14);
});

/** Each distribution: its quantile, and the shape whose closed-form sd it must have. */
const shapes: readonly (readonly [string, (p: number) => number, Shape])[] = [
  ["normal", d.normalQuantile, { kind: "normal" }],
  ["t, 5", (p) => d.studentTQuantile(p, 5), { kind: "t", df: 5 }],
  ["rectangular", (p) => d.rectangularQuantile(p, 3, 5), { kind: "rectangular" }],
  ["triangular", (p) => d.triangularQuantile(p, 3, 5), { kind: "triangular" }],
  ["arcsine", (p) => d.arcsineQuantile(p, 3, 5), { kind: "arcsine" }],
  ...[0, 0.001, 0.3, 0.95].map(
    (edge) =>
      [
        `curvilinear trapezoid, ${edge}`,
        (p: number) => d.curvilinearTrapezoidQuantile(p, edge),
        { kind: "curvilinear trapezoid", edge },
      ] as const,
  ),
];

test.each(shapes)("%s: its sd in closed form is that of its quantiles", (_, quantile, shape) => {
  // ∫ q(p)² dp by the midpoint rule, with the middle taken off: a check of the closed-form sd.
  const count = 100_000;
  const middle = quantile(0.5);
  let squares = 0;
  for (let i = 0; i < count; i++) squares += (quantile((i + 0.5) / count) - middle) ** 2;
  // The tail of t converges slowest: it alone needs this much.
  expect(relativeError(Math.sqrt(squares / count), scoreSd(shape))).toBeLessThan(1e-3);
  expect(quantile(-0.1)).toBeNaN();
  expect(quantile(1.1)).toBeNaN();
  expect(quantile(Number.NaN)).toBeNaN();
});

test("normal and t: the share below a quantile is p", () => {
  for (const p of [1e-6, 0.0013, 0.025, 0.31, 0.5, 0.8, 0.975, 0.9999]) {
    expect(Math.abs(d.normalCumulative(d.normalQuantile(p)) - p)).toBeLessThan(1e-11);
    expect(Math.abs(d.studentTCumulative(d.studentTQuantile(p, 5), 5) - p)).toBeLessThan(1e-11);
  }
});

test("outside their arguments: NaN or a throw, never a number", () => {
  expect(d.studentTQuantile(0.9, 0)).toBeNaN();
  expect(scoreSd({ kind: "t", df: 2 })).toBe(Number.POSITIVE_INFINITY);
  expect(d.curvilinearTrapezoidQuantile(0.9, 1)).toBeNaN();
  expect(() => d.rectangularQuantile(0.5, 2, 2)).toThrow(RangeError);
});
