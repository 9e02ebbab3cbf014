import { expect, test } from "vitest";
import { fitQuadraticSurface } from "../../lib/numbers/quadratic-surface.ts";
import { stationaryPoint } from "../../lib/numbers/stationary-point.ts";
import { seeded } from "../seeded.ts";

/** A central composite plan of two factors with three trials in the middle. */
const plan = [
  [-1, -1], [1, -1], [-1, 1], [1, 1], [-1.4, 0], [1.4, 0], [0, -1.4], [0, 1.4], [0, 0], [0, 0], [0, 0],
] as const; // biome-ignore format: one plan, one line
const x1 = plan.map(([a]) => a);
const x2 = plan.map(([, b]) => b);

function surface(height: (a: number, b: number) => number, scatter: number, seed: number) {
  const random = seeded(seed);
  return fitQuadraticSurface(
    x1,
    x2,
    plan.map(([a, b]) => height(a, b) + scatter * random.normal()),
  );
}

test("a known hill, valley and saddle", () => {
  const hill = stationaryPoint(surface((a, b) => 9 - 2 * (a - 0.3) ** 2 - (b + 0.2) ** 2, 1e-3, 1));
  expect(hill.kind).toBe("maximum");
  expect(hill.x[0]).toBeCloseTo(0.3, 2);
  expect(hill.x[1]).toBeCloseTo(-0.2, 2);
  expect(hill.eigenvalues[0]).toBeCloseTo(-1, 2);
  expect(hill.eigenvalues[1]).toBeCloseTo(-2, 2);
  expect(Math.abs(hill.eigenvectors[0][1])).toBeCloseTo(1, 3);
  expect(stationaryPoint(surface((a, b) => a * a + b * b + a * b, 1e-3, 2)).kind).toBe("minimum");
  expect(stationaryPoint(surface((a, b) => 2 * a * a - b * b, 1e-3, 3)).kind).toBe("saddle");
});

test("a level crest, pure noise and a tilted plane have no optimum", () => {
  const crest = stationaryPoint(surface((a, b) => 5 - (a + b) ** 2, 0.2, 4));
  const noise = stationaryPoint(surface(() => 5, 1, 5));
  const plane = stationaryPoint(surface((a, b) => 5 + a + 2 * b, 0.3, 6));
  expect([crest.kind, noise.kind, plane.kind]).toEqual(["ridge", "ridge", "ridge"]);
});

test("a hill beyond the trials is said to lie outside them", () => {
  expect(stationaryPoint(surface((a, b) => -((a - 3) ** 2) - (b - 3) ** 2, 0.01, 7)).outside).toBe(true);
  expect(stationaryPoint(surface((a, b) => -((a - 0.5) ** 2) - b ** 2, 0.01, 8)).outside).toBe(false);
});

test("the coding of the factors changes neither the kind nor the region", () => {
  const heights = surface((a, b) => 9 - 2 * (a - 0.3) ** 2 - (b + 0.2) ** 2 - a * b, 0.2, 9);
  const y = plan.map(([a, b], i) => heights.at(a, b).value + heights.fit.residuals[i]!);
  const coded = stationaryPoint(fitQuadraticSurface(x1, x2, y));
  const raw = stationaryPoint(
    fitQuadraticSurface(
      x1.map((a) => 3.4 + 0.4 * a),
      x2.map((b) => 8 + 2 * b),
      y,
    ),
  );
  expect(raw.kind).toBe(coded.kind);
  expect(raw.x[0]).toBeCloseTo(3.4 + 0.4 * coded.x[0], 9);
  expect(raw.region.x1.low).toBeCloseTo(3.4 + 0.4 * coded.region.x1.low, 7);
  expect(raw.region.x2.high).toBeCloseTo(8 + 2 * coded.region.x2.high, 7);
  expect(raw.statistic(3.4, 8)).toBeCloseTo(coded.statistic(0, 0), 7);
});

test("the reach is that of a fine grid", () => {
  const point = stationaryPoint(surface((a, b) => 9 - 2 * a * a - b * b - 1.5 * a * b, 0.25, 10));
  const { x1: first, x2: second, bounded } = point.region;
  expect(bounded).toBe(true);
  const inside: [number, number][] = [];
  const [wide, tall] = [first.high - first.low, second.high - second.low];
  const steps = 400;
  for (let i = 0; i <= steps; i++) {
    for (let j = 0; j <= steps; j++) {
      const at: [number, number] = [
        first.low + (wide * (1.4 * i)) / steps - 0.2 * wide,
        second.low + (tall * (1.4 * j)) / steps - 0.2 * tall,
      ];
      if (point.inRegion(...at)) inside.push(at);
    }
  }
  const ends = [0, 1].flatMap((k) => [Math.min, Math.max].map((of) => of(...inside.map((at) => at[k]!))));
  const expected = [first.low, first.high, second.low, second.high];
  ends.forEach((end, k) => {
    expect(Math.abs(end - expected[k]!)).toBeLessThan((1.5 * 1.4 * (k < 2 ? wide : tall)) / steps);
  });
});

test("the region covers the true top in 95 % of 1,000 simulated trials", () => {
  const random = seeded(11);
  const runs = 1000;
  let covered = 0;
  for (let k = 0; k < runs; k++) {
    const [a0, b0] = [random.uniform(-0.5, 0.5), random.uniform(-0.5, 0.5)];
    const y = plan.map(([a, b]) => 9 - 2 * (a - a0) ** 2 - 1.5 * (b - b0) ** 2 + 0.6 * random.normal());
    if (stationaryPoint(fitQuadraticSurface(x1, x2, y)).inRegion(a0, b0)) covered++;
  }
  // 95 % within three standard errors of 1,000 trials.
  expect(Math.abs(covered / runs - 0.95)).toBeLessThan(0.021);
});

test("no degree of freedom, or too few places: nothing is known", () => {
  const six = plan.slice(2, 8);
  const exact = stationaryPoint(
    fitQuadraticSurface(
      six.map(([a]) => a),
      six.map(([, b]) => b),
      [1, 2, 3, 5, 4, 1],
    ),
  );
  expect([exact.kind, exact.region.bounded, exact.inRegion(0, 0)]).toEqual(["ridge", false, false]);
  const line = stationaryPoint(
    fitQuadraticSurface([0, 1, 2, 3, 4, 5, 6], [0, 1, 2, 3, 4, 5, 6], [1, 2, 3, 4, 3, 2, 1]),
  );
  expect([line.kind, line.outside, line.x[0]]).toEqual(["ridge", true, NaN]);
});

test("a surface without any scatter is held to its top", () => {
  const { kind, region } = stationaryPoint(
    fitQuadraticSurface([-1, 1, -1, 1, 0, 2, 0], [-1, -1, 1, 1, 0, 0, 2], [8, 8, 8, 8, 10, 6, 6]),
  );
  expect(kind).toBe("maximum");
  expect(region.x1.high - region.x1.low).toBeLessThan(1e-12);
});

test("misuse throws", () => {
  const hill = surface((a, b) => -a * a - b * b, 0.1, 12);
  expect(() => stationaryPoint(hill, 95)).toThrow(RangeError);
  expect(() => fitQuadraticSurface([1], [1, 2], [1, 2])).toThrow("a surface needs x1 and x2 for each y");
  expect(() => fitQuadraticSurface([1], [1], [1], { blocks: [] })).toThrow("a block for each y");
});
