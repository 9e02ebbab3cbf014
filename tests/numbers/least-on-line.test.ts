import { expect, test } from "vitest";
import { leastOnLine } from "../../lib/numbers/least-on-line.ts";

test("one valley, two valleys, an end", () => {
  expect(leastOnLine((x) => (x - 3) ** 2, 1, 10).x).toBeCloseTo(3, 4);
  // Two valleys, at 2 and at 20, the second deeper by more than a piece of the grid hides.
  const two = (x: number): number => Math.min(Math.log(x / 2) ** 2, Math.log(x / 20) ** 2 - 1e-2);
  expect(leastOnLine(two, 1, 50).x).toBeCloseTo(20, 3);
  expect(leastOnLine((x) => x, 2, 5)).toEqual({ x: 2, value: 2 });
  expect(leastOnLine((x) => -x, 2, 5).x).toBeCloseTo(5, 12);
});

test("a stretch that is none throws", () => {
  expect(() => leastOnLine((x) => x, 0, 1)).toThrow(RangeError);
  expect(() => leastOnLine((x) => x, 2, 1)).toThrow(RangeError);
});
