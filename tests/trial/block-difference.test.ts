import { expect, test } from "vitest";
import { blockDifference } from "../../lib/trial/block-difference.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";
import { seeded } from "../seeded.ts";

test("two clays on one curve: the offset is found, and its interval covers it in 95 %", () => {
  const random = seeded(41);
  let covered = 0;
  const trials = 600;
  for (let n = 0; n < trials; n++) {
    const offset = random.uniform(-10, 10);
    const x = [5, 7, 9, 11, 5, 7, 9, 11];
    const blocks = x.map((_, i) => (i < 4 ? "a" : "b"));
    const y = x.map((at, i) => 20 + 6 * at - 0.2 * at * at + (i < 4 ? 0 : offset) + 2 * random.normal());
    const { low, high, difference, df } = blockDifference(responseCurve({ x, y, blocks }, { peaked: true }))!;
    expect(df).toBe(4);
    expect(Math.abs(difference - offset)).toBeLessThan(12);
    if (offset >= low && offset <= high) covered++;
  }
  // Three standard errors: 3·√(0.05·0.95/600).
  expect(Math.abs(covered / trials - 0.95)).toBeLessThan(0.027);
});

test("one block, or a curve of points only, has no difference", () => {
  const x = [5, 6, 7, 8, 9];
  expect(blockDifference(responseCurve({ x, y: x }, { peaked: false }))).toBeUndefined();
  expect(blockDifference(responseCurve({ x: [5], y: [1] }, { peaked: false }))).toBeUndefined();
});
