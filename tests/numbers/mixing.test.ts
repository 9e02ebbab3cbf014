import { expect, test } from "vitest";
import { mixed, mixedWords } from "../../lib/numbers/mixing.ts";

test("32 bits are mixed by the finalizer of MurmurHash3", () => {
  // fmix32 of 1 in the published code (from memory); 0 stays 0.
  expect(mixed(1)).toBe(0x514e28b7);
  expect(mixed(0)).toBe(0);
});

test("a bit that changes moves about half of the others", () => {
  const words = Array.from({ length: 32 }, (_, bit) => (mixed(12345) ^ mixed(12345 ^ (1 << bit))) >>> 0);
  const ones = words.map((word) => word.toString(2).replaceAll("0", "").length);
  expect(Math.min(...ones)).toBeGreaterThan(6);
  expect(ones.reduce((sum, n) => sum + n, 0) / 32).toBeCloseTo(16, 0);
});

test("the same start gives the same words, another start others", () => {
  const [a, b, c] = [mixedWords(7), mixedWords(7), mixedWords(8)];
  const first = Array.from({ length: 5 }, a);
  expect(Array.from({ length: 5 }, b)).toEqual(first);
  expect(Array.from({ length: 5 }, c)).not.toEqual(first);
});
