// D50 between two sieves, and how far it may lie from there.

import { expect, test } from "vitest";
import { middleSize } from "../../lib/sand/middle-size.ts";

const sieve = (openingMm: number, value: number, half: number) => ({
  openingMm,
  passing: { value, low: value - half, high: value + half },
});

test("straight over ln(opening): half way between 80 and 20 % is the geometric mean of the openings", () => {
  const found = middleSize([sieve(0.3, 80, 0), sieve(0.15, 20, 0), sieve(0, 0, 0)])!;
  expect(found.value).toBeCloseTo(Math.sqrt(0.3 * 0.15), 12);
  // By hand: u within 1/(1 + e^∓0.9·ln 2^1.2/0.6) of the way, and nothing from the weighings.
  const may = (0.9 * Math.LN2 ** 1.2) / 0.6;
  expect(found.high).toBeCloseTo(0.15 * 2 ** (1 / (1 + Math.exp(-may))), 12);
  expect(found.low).toBeCloseTo(0.15 * 2 ** (1 / (1 + Math.exp(may))), 12);
});

test("what is measured worse, or lies further apart, is known less", () => {
  const width = (high: number, low: number) => Math.log(high / low);
  const of = (sieves: Parameters<typeof middleSize>[0]) => {
    const { low, high } = middleSize(sieves)!;
    return width(high, low);
  };
  const close = of([sieve(0.3, 80, 1), sieve(0.212, 20, 1)]);
  expect(of([sieve(0.3, 80, 6), sieve(0.212, 20, 6)])).toBeGreaterThan(close);
  expect(of([sieve(0.3, 80, 1), sieve(0.106, 20, 1)])).toBeGreaterThan(1.5 * close);
});

test("nothing is said where the middle lies beyond the stack", () => {
  expect(middleSize([sieve(0.3, 40, 1), sieve(0.15, 20, 1)])).toBeUndefined();
  expect(middleSize([sieve(0.3, 80, 1), sieve(0.15, 60, 1), sieve(0, 0, 0)])).toBeUndefined();
});
