import { expect, test } from "vitest";
import { classMeanMm, grainClasses } from "../../lib/sand/mean-size.ts";
import { byOpening } from "./curve-sands.ts";

test("classes run from a sieve to the one above; the ends are assumed and say so", () => {
  const classes = grainClasses(
    byOpening(
      [
        [0.075, 1],
        [0.053, 1],
      ],
      1,
    ),
  );
  expect(classes.map(({ lowerMm, upperMm, openEnd }) => [lowerMm, upperMm, openEnd])).toEqual([
    [0.075, 0.15, "upper"],
    [0.053, 0.075, undefined],
    [0.02, 0.053, "lower"],
  ]);
});

test("under a sieve of 0.020 mm or less the pan begins at half its opening", () => {
  expect(grainClasses(byOpening([[0.02, 1]], 1)).at(-1)).toMatchObject({ lowerMm: 0.01, upperMm: 0.02 });
});

test("log-mean is the size whose sphere has the surface of an even mass over d", () => {
  // Mean of 1/d over l..u by Simpson's rule, an independent road to ln(u/l)/(u − l).
  const [l, u, n] = [0.15, 0.212, 200];
  let simpson = 0;
  for (let i = 0; i <= n; i++) {
    const weight = i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2;
    simpson += weight / (l + ((u - l) * i) / n);
  }
  expect(1 / classMeanMm(l, u, "log-mean")).toBeCloseTo(simpson / (3 * n), 9);
});

test("geometric lies below log-mean below arithmetic, within 2 % on sieves √2 apart", () => {
  const [geometric, logMean, arithmetic] = (["geometric", "log-mean", "arithmetic"] as const).map((mean) =>
    classMeanMm(1, Math.SQRT2, mean),
  ) as [number, number, number];
  expect(geometric).toBeLessThan(logMean);
  expect(logMean).toBeLessThan(arithmetic);
  expect(arithmetic / geometric).toBeLessThan(1.02);
});

test("limits must be in order", () => {
  expect(() => classMeanMm(0, 1, "geometric")).toThrow(RangeError);
  expect(() => classMeanMm(1, 1, "log-mean")).toThrow(RangeError);
});
