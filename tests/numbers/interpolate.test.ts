import fc from "fast-check";
import { expect, test } from "vitest";
import { linearAt, logLinearAt } from "../../lib/numbers/interpolate.ts";
import { monotoneCubic } from "../../lib/numbers/monotone-cubic.ts";
import { scipy } from "./close.ts";

test("straight lines, in x and in ln x", () => {
  expect(linearAt([0, 10], [5, 7], 5)).toBe(6);
  expect(linearAt([0, 10, 20], [5, 7, 1], 20)).toBe(1);
  expect(logLinearAt([0.1, 10], [0, 100], 1)).toBeCloseTo(50, 12);
  // By hand: 0.2 lies ln(0.2/0.15)/ln(0.212/0.15) = 0.28768/0.34591 = 0.8317 of the way; 21.4 + 0.8317·31.4 = 47.51.
  expect(logLinearAt([0.15, 0.212], [21.4, 52.8], 0.2)).toBeCloseTo(47.51, 2);
});

test("outside the points nothing is made up", () => {
  const at = [linearAt, logLinearAt].flatMap((f) => [f([1, 2], [3, 4], 0.9), f([1, 2], [3, 4], 2.1)]);
  const curve = monotoneCubic([1, 2], [3, 4]);
  for (const y of [...at, curve(0.9), curve(Number.NaN), curve(2.1)]) {
    expect(y).toBeNaN();
  }
});

test("points out of order, doubled, or without a partner throw", () => {
  expect(() => linearAt([1, 1], [3, 4], 1)).toThrow("upward");
  expect(() => linearAt([1, 2], [3], 1)).toThrow("one y for each x");
  expect(() => logLinearAt([0, 2], [3, 4], 1)).toThrow("above 0");
  expect(() => monotoneCubic([1], [3])).toThrow("at least 2");
  expect(() => monotoneCubic([1, 2], [3, Number.NaN])).toThrow("finite y");
});

test.each(Object.entries(scipy.curves))("the curve %s is SciPy's PchipInterpolator", (_, curve) => {
  const f = monotoneCubic(curve.x, curve.y);
  for (const [x, y] of curve.at) expect(f(x), `y at ${x}`).toBeCloseTo(y, 12);
});

const rising = fc
  .array(
    fc.tuple(fc.double({ min: 0.01, max: 10, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true })),
    {
      minLength: 2,
      maxLength: 12,
    },
  )
  .map((steps) => {
    const xs: number[] = [];
    const ys: number[] = [];
    let [x, y] = [0, 0];
    for (const [dx, dy] of steps) {
      x += dx;
      y += dy;
      xs.push(x);
      ys.push(y);
    }
    return { xs, ys };
  });

test("rising points give a curve that never falls", () => {
  fc.assert(
    fc.property(rising, fc.boolean(), ({ xs, ys }, falls) => {
      const heights = falls ? ys.map((y) => -y) : ys;
      const f = monotoneCubic(xs, heights);
      const [first, last] = [xs[0]!, xs[xs.length - 1]!];
      let before = f(first);
      for (let i = 1; i <= 60; i++) {
        const x = Math.min(last, first + ((last - first) * i) / 60);
        const y = f(x);
        expect((y - before) * (falls ? -1 : 1)).toBeGreaterThanOrEqual(-1e-12);
        before = y;
      }
    }),
  );
});
