import { expect, test } from "vitest";
import { lowerTriangle } from "../../lib/numbers/cholesky.ts";

test("L·Lᵀ gives the covariance back; a textbook matrix", () => {
  // A widely printed example (from memory): whole numbers all the way.
  const V = [
    [4, 12, -16],
    [12, 37, -43],
    [-16, -43, 98],
  ];
  expect(lowerTriangle(V)).toEqual([
    [2, 0, 0],
    [6, 1, 0],
    [-8, 5, 3],
  ]);
});

test("a direction without variance gets zeros; what is no covariance throws; NaN stays NaN", () => {
  expect(lowerTriangle([[1, 1], [1, 1]])).toEqual([[1, 0], [1, 0]]); // biome-ignore format: two matrices
  expect(lowerTriangle([[0, 0], [0, 4]])).toEqual([[0, 0], [0, 2]]); // biome-ignore format: two matrices
  expect(() => lowerTriangle([[1, 2], [2, 1]])).toThrow(RangeError); // biome-ignore format: a matrix
  expect(() => lowerTriangle([[1, 0.5], [0.4, 1]])).toThrow("symmetric"); // biome-ignore format: a matrix
  expect(() => lowerTriangle([[1, 2]])).toThrow("square");
  expect(lowerTriangle([[NaN]])).toEqual([[NaN]]);
});
