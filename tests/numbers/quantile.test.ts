import fc from "fast-check";
import { expect, test } from "vitest";
import { quantile, quantileSorted, quantilesInPlace } from "../../lib/numbers/quantile.ts";
import { relativeError, scipy } from "./close.ts";

test("quantiles agree with numpy's default, which is Hyndman and Fan's definition 7", () => {
  for (const [p, x] of scipy.quantiles) {
    expect(relativeError(quantile(scipy.sample, p), x), `p = ${p}`).toBeLessThan(1e-15);
  }
});

test("ends, empty lists and misuse", () => {
  expect(quantile([5], 0.3)).toBe(5);
  expect(quantile([], 0.5)).toBeNaN();
  expect(quantile([1, Number.NaN, 3], 0)).toBeNaN();
  expect(quantilesInPlace(Float64Array.of(1, Number.NaN), [0])).toEqual([Number.NaN]);
  expect(quantilesInPlace(new Float64Array(0), [0.5])).toEqual([Number.NaN]);
  expect(quantileSorted([1, Number.POSITIVE_INFINITY], 0)).toBe(1);
  for (const p of [0.2, 0.5, 0.8]) {
    expect(quantileSorted([1, Number.POSITIVE_INFINITY], p)).toBe(Number.POSITIVE_INFINITY);
    expect(quantileSorted([Number.NEGATIVE_INFINITY, 1], p)).toBe(Number.NEGATIVE_INFINITY);
    // Their distance is more than the largest number.
    expect(quantileSorted([-1e308, 1e308], p)).toBeCloseTo(1e308 * (2 * p - 1), -294);
  }
  expect(() => quantile([1], 1.01)).toThrow(RangeError);
  expect(() => quantilesInPlace(Float64Array.of(1, 2), [0.9, 0.1])).toThrow("upward");
});

const lists = fc.array(
  fc.oneof(fc.integer({ min: 0, max: 4 }), fc.double({ noNaN: true, min: -1e9, max: 1e9 })),
  {
    minLength: 1,
    maxLength: 1500,
  },
);
const share = fc.double({ min: 0, max: 1, noNaN: true });

test("selection gives to the last digit what a sort gives, ties and infinities included", () => {
  fc.assert(
    fc.property(lists, fc.array(share, { maxLength: 5 }), fc.boolean(), (list, shares, infinite) => {
      const values = Float64Array.from(infinite ? [...list, Number.POSITIVE_INFINITY] : list);
      const ps = shares.sort((a, b) => a - b);
      const sorted = values.slice().sort();
      expect(quantilesInPlace(values, ps)).toEqual(ps.map((p) => quantileSorted(sorted, p)));
      expect(values.sort()).toEqual(sorted);
    }),
  );
});

test("a quantile is never below that of a smaller share, and lies among the values", () => {
  fc.assert(
    fc.property(lists, share, share, (list, p, q) => {
      const low = quantile(list, Math.min(p, q));
      const high = quantile(list, Math.max(p, q));
      expect(low).toBeLessThanOrEqual(high);
      expect(low).toBeGreaterThanOrEqual(Math.min(...list));
      expect(high).toBeLessThanOrEqual(Math.max(...list));
    }),
  );
});

/** Values that count how often one of them is read. */
function counted(values: Float64Array): { readonly list: Float64Array; reads(): number } {
  let reads = 0;
  const list = new Proxy(values, {
    get(target, key) {
      if (typeof key === "string" && /^\d+$/.test(key)) reads++;
      return Reflect.get(target, key);
    },
    set: (target, key, value) => Reflect.set(target, key, value),
  });
  return { list, reads: () => reads };
}

test("two limits of 4,096 and of 65,536 draws read half as much as any sort by comparison has to, at most", () => {
  for (const count of [4096, 65_536]) {
    const draws = Float64Array.from(
      { length: count },
      (_, i) => Math.sin(i * 12.9898) * 43_758.5453 * (i % 7),
    );
    // log₂ n! comparisons at least (by hand, from the number of orders), by Stirling; each reads two values.
    const ofSort = 2 * count * (Math.log2(count) - Math.LOG2E);
    const { list, reads } = counted(draws);
    quantilesInPlace(list, [0.025, 0.975]);
    expect(reads(), `${count} draws`).toBeGreaterThan(count);
    expect(reads() / ofSort, `${count} draws`).toBeLessThan(0.5);
  }
});
