import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { informedFit } from "../../lib/numbers/informed-fit.ts";

/** Ends for the mean and for a new observation by a plain sum over a grid of slopes and scatters: numpy 2.4.6, scipy 1.17.1. */
const byGrid = [
  [3.0, 37.87656, 31.936, 43.458, 26.555, 48.829],
  [3.4, 42.0, 36.496, 47.504, 30.992, 53.008],
  [4.1, 49.21602, 43.235, 55.785, 38.131, 60.935],
] as const;

test("three points and a slope of 11 ± 3: mean and ends as by numerical integration", () => {
  const fit = informedFit(
    [2.8, 3.3, 4.1].map((x) => [1, x]),
    [35, 43, 48],
    [{ row: [0, 1], mean: 11, sd: 3 }],
  );
  for (const [x, mean, low, high, newLow, newHigh] of byGrid) {
    const found = fit.at([1, x]);
    expect(found.mean).toBeCloseTo(mean, 3);
    const ends = [found.low, found.high, found.newLow, found.newHigh];
    [low, high, newLow, newHigh].forEach((end, k) => {
      expect(Math.abs(ends[k]! - end)).toBeLessThan(0.005);
    });
  }
});

test("a bend beside the slope, four points: within the step of the grid", () => {
  const size = 66.25;
  const fit = informedFit(
    [3, 3.5, 4.2, 4.8].map((x) => [1, x - 4.5, (x - 4.5) ** 2]),
    [60, 66, 70, 69],
    [
      { row: [0, 1, 0], mean: -0.024 * size, sd: 0.048 * size },
      { row: [0, 0, 1], mean: -0.0134 * size, sd: 0.033 * size },
    ],
  );
  for (const [x, mean, low, high] of [
    [3, 60.11, 59.485, 61.613],
    [4, 69.267, 67.994, 69.732],
  ] as const) {
    const found = fit.at([1, x - 4.5, (x - 4.5) ** 2]);
    expect(Math.abs(found.mean - mean)).toBeLessThan(0.03);
    expect(Math.abs(found.low - low)).toBeLessThan(0.08);
    expect(Math.abs(found.high - high)).toBeLessThan(0.08);
  }
});

test("many points outweigh the prior, none leave it", () => {
  const x = Array.from({ length: 12 }, (_, i) => i / 4);
  const y = x.map((v, i) => 2 + 5 * v + [0.1, -0.1, 0.05][i % 3]!);
  const slope = (sd: number): number =>
    informedFit(
      x.map((v) => [1, v]),
      y,
      [{ row: [0, 1], mean: -20, sd }],
    ).coefficients[1]!;
  expect(Math.abs(slope(10) - 5)).toBeLessThan(0.05);
  // Two points and a slope all but unknown: the mean at one of them is Student's t of the scatter's own ten degrees.
  const design = [
    [1, 0],
    [1, 1],
  ];
  const two = informedFit(design, [4, 6], [{ row: [0, 1], mean: 2, sd: 1e6 }], { sd: 1, df: 10 });
  expect(Math.abs(two.at([1, 0]).high - 6.228139)).toBeLessThan(0.005);
  // One place says nothing of a slope.
  const one = informedFit(
    [
      [1, 3],
      [1, 3],
      [1, 3],
    ],
    [4, 5, 6],
    [{ row: [0, 1], mean: 7, sd: 1 }],
  );
  expect(one.coefficients[1]).toBeCloseTo(7, 6);
});

test("misuse throws", () => {
  const design = [
    [1, 0],
    [1, 1],
    [1, 2],
  ];
  expect(() => informedFit(design, [1, 2, 4], [{ row: [0, 1], mean: 1, sd: 0 }])).toThrow(Misuse);
  expect(() => informedFit(design.slice(1), [2, 4], [{ row: [0, 1], mean: 1, sd: 1 }])).toThrow(
    "their scatter",
  );
  expect(() => informedFit([[1, 0], [1, 0], [1, 0]], [1, 2, 4], [])).toThrow("cannot tell"); // biome-ignore format: one design
});
