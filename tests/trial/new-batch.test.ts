// Where a new batch falls: by hand for a line, and one block above the other.

import { expect, test } from "vitest";
import { studentTQuantile } from "../../lib/numbers/distributions.ts";
import { newBatchAt } from "../../lib/trial/new-batch.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";

test("two blocks 10 apart on one line are 10 apart at any place, and each lies on its own batches", () => {
  const x = [3, 3.5, 4, 4.5, 3, 3.5, 4];
  const blocks = ["a", "a", "a", "a", "b", "b", "b"];
  const y = x.map((at, i) => 20 + 10 * at + (blocks[i] === "b" ? 10 : 0));
  const curve = responseCurve({ x, y, blocks }, { peaked: false });
  for (const at of [3, 3.7, 4.5]) {
    const [a, b] = ["a", "b"].map((block) => newBatchAt(curve, at, block, blocks)!.mean) as [number, number];
    expect(a).toBeCloseTo(20 + 10 * at, 9);
    expect(b).toBeCloseTo(30 + 10 * at, 9);
  }
});

test("the interval is that of any text on regression: s √(1 + 1/n + (x − x̄)²/Σ(x − x̄)²)", () => {
  const x = [1, 2, 3, 4];
  const y = [2.1, 3.9, 6.2, 7.8];
  const curve = responseCurve({ x, y }, { peaked: false });
  const s = curve.fit!.residualSd;
  const half = studentTQuantile(0.975, 2) * s * Math.sqrt(1 + 1 / 4 + (4 - 2.5) ** 2 / 5);
  const there = newBatchAt(
    curve,
    4,
    undefined,
    x.map(() => undefined),
  )!;
  expect(there.high - there.mean).toBeCloseTo(half, 9);
  expect(there.mean - there.low).toBeCloseTo(half, 9);
});

test("within a block the interval is that of the whole design, with the block's own column", () => {
  // Balanced, so that at the middle a block stands at the mean of its own two: a new batch has s √(1 + 1/2).
  const x = [1, 3, 1, 3];
  const blocks = ["a", "a", "b", "b"];
  const y = [1.1, 3.2, 2.9, 4.7];
  const curve = responseCurve({ x, y, blocks }, { peaked: false });
  const half = studentTQuantile(0.975, 1) * curve.fit!.residualSd * Math.sqrt(1 + 1 / 2);
  const there = newBatchAt(curve, 2, "a", blocks)!;
  expect(there.mean).toBeCloseTo((1.1 + 3.2) / 2, 9);
  expect(there.high - there.mean).toBeCloseTo(half, 9);
});

test("points only have no interval", () => {
  const curve = responseCurve({ x: [1], y: [2] }, { peaked: false });
  expect(newBatchAt(curve, 1, undefined, [undefined])).toBeUndefined();
});
