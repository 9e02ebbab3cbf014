// The doubt of a share by draws, against the derivative of the lever rule, and against what is shared.

import { expect, test } from "vitest";
import { blendDraws } from "../../lib/finding/blend-draws.ts";
import { spread } from "../../lib/quantity/spread-of.ts";

const coarse = spread({ mean: 50, sd: 0.8, source: "coarse" });
const fine = spread({ mean: 90, sd: 1.2, source: "fine" });

test("two numbers of their own: sd of the share by first derivatives", () => {
  const { shares } = blendDraws([[coarse], [fine]], [70], [0, 1], undefined);
  // x = (f − 70)/(f − c): ∂x/∂f = (70 − c)/(f − c)², ∂x/∂c = (f − 70)/(f − c)².
  const sd = Math.hypot((20 / 1600) * 1.2, (20 / 1600) * 0.8);
  expect((shares[0]!.high - shares[0]!.low) / (2 * 1.96 * sd)).toBeCloseTo(1, 1);
  expect(shares[0]!.low + shares[1]!.high).toBeCloseTo(1, 2);
  expect(shares.map(({ mayBeNought }) => mayBeNought)).toEqual([false, false]);
});

test("an aim at the coarse sand's own number: half of the draws have none of the fine one", () => {
  const { shares, cost } = blendDraws([[coarse], [fine]], [50], [0, 1], [1, 3]);
  expect(shares[1]).toMatchObject({ low: 0, mayBeNought: true });
  expect(shares[1]!.high).toBeGreaterThan(0.02);
  expect(shares[0]!.mayBeNought).toBe(false);
  expect(cost!.low).toBeCloseTo(1, 9);
  expect(cost!.high).toBeCloseTo(1 + 2 * shares[1]!.high, 9);
});

test("what both sands and the aim share cancels; a sand that is not free has no share", () => {
  const shared = { source: "openings of one set", sd: 2 };
  const of = [50, 90].map((mean) => [spread({ mean, ...shared })]);
  const { shares } = blendDraws(of, [spread({ mean: 70, ...shared })], [0, 1], undefined);
  expect(shares[0]!.high - shares[0]!.low).toBeLessThan(1e-6);
  const held = blendDraws([[coarse], [fine], [spread("60 ± 1")]], [70], [0, 1], undefined);
  expect(held.shares[2]).toEqual({ low: 0, high: 0, mayBeNought: true });
});
