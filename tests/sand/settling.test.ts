import { expect, test } from "vitest";
import {
  settlingCutUm,
  settlingSeconds,
  stokesReynolds,
  stokesVelocityMmS,
} from "../../lib/sand/settling.ts";

test("time and cut are each other's inverse", () => {
  for (const celsius of [5, 20, 35])
    for (const grainUm of [5, 20, 50]) {
      const seconds = settlingSeconds({ grainUm, depthMm: 127, celsius, grainKgM3: 2600 });
      expect(settlingCutUm({ seconds, depthMm: 127, celsius, grainKgM3: 2600 })).toBeCloseTo(grainUm, 9);
    }
});

test("twice the size falls four times as fast, twice the depth takes twice the time", () => {
  const grain = { grainUm: 10, celsius: 20 };
  expect(stokesVelocityMmS({ ...grain, grainUm: 20 })).toBeCloseTo(4 * stokesVelocityMmS(grain), 12);
  expect(settlingSeconds({ ...grain, depthMm: 200 })).toBeCloseTo(
    2 * settlingSeconds({ ...grain, depthMm: 100 }),
    8,
  );
});

test("where Stokes' law fails there is no figure, but there is a Reynolds number that says so", () => {
  expect(stokesReynolds({ grainUm: 82, celsius: 20 })).toBeLessThan(0.5);
  expect(() => settlingSeconds({ grainUm: 82, depthMm: 127, celsius: 20 })).not.toThrow();
  expect(stokesReynolds({ grainUm: 83, celsius: 20 })).toBeGreaterThan(0.5);
  expect(() => settlingSeconds({ grainUm: 83, depthMm: 127, celsius: 20 })).toThrow(/Stokes/);
  expect(() => settlingCutUm({ depthMm: 127, seconds: 10, celsius: 20 })).toThrow(/Stokes/);
});

test("misuse throws", () => {
  const good = { grainUm: 20, depthMm: 127, celsius: 20 };
  for (const bad of [
    { grainUm: 0 },
    { grainUm: Number.NaN },
    { depthMm: -1 },
    { celsius: 120 },
    { celsius: -1 },
    { grainKgM3: 900 },
  ])
    expect(() => settlingSeconds({ ...good, ...bad })).toThrow(RangeError);
  expect(() => settlingCutUm({ depthMm: 127, seconds: 0, celsius: 20 })).toThrow(RangeError);
});
