import { expect, test } from "vitest";
import {
  countingScatterPercent,
  grainCount,
  portionAdvice,
  smallestPortionG,
} from "../../lib/sand/portion.ts";

test("too little, good, too much", () => {
  const of = (portionG: number) => portionAdvice({ frameMm: 200, portionG });
  expect([30, 50, 100, 130].map((g) => of(g).verdict)).toEqual(["too little", "good", "good", "too much"]);
  expect(of(30).issues).toMatchObject([{ code: "sand/portion-small" }]);
  expect(of(130).issues).toMatchObject([{ code: "sand/portion-large" }]);
});

test("an 8 in frame and a portion poured to the ounce are near enough", () => {
  expect(portionAdvice({ frameMm: 203.2, portionG: 50 }).verdict).toBe("good");
  expect(portionAdvice({ frameMm: 200, portionG: 49.9 }).verdict).toBe("good");
  expect(portionAdvice({ frameMm: 200, portionG: 47 }).verdict).toBe("too little");
  expect(portionAdvice({ frameMm: 200, portionG: 106 }).verdict).toBe("too much");
});

test("a kitchen scale on a small frame: the frame takes less than the scale wants", () => {
  const advice = portionAdvice({ frameMm: 100, portionG: 15, stepG: 0.1 });
  expect(advice.verdict).toBe("good");
  expect(advice.scaleLowG).toBeCloseTo(20, 12);
  expect(advice.issues).toMatchObject([{ code: "sand/portion-below-scale" }]);
});

test("a main sieve holds twenty steps of the scale", () => {
  expect(smallestPortionG({ mainPercent: 10, stepG: 0.1 })).toBeCloseTo(20, 12);
  expect(smallestPortionG({ mainPercent: 25, stepG: 1, steps: 10 })).toBeCloseTo(40, 12);
  expect(() => smallestPortionG({ mainPercent: 0, stepG: 0.1 })).toThrow(RangeError);
});

test("grains in a gram by the volume of a sphere, and chance as one over the root of their number", () => {
  // 1 mm quartz sphere: 2.65 × π/6 mg = 1.3875 mg.
  expect(grainCount(1, 1)).toBeCloseTo(1000 / 1.38753, 1);
  expect(countingScatterPercent(1.3875e-3 * 100, 1)).toBeCloseTo(10, 2);
  expect(() => countingScatterPercent(0, 1)).toThrow(RangeError);
  expect(() => grainCount(-1, 1)).toThrow(RangeError);
  expect(() => portionAdvice({ frameMm: 0, portionG: 50 })).toThrow(RangeError);
});

test("the scatter is that of coarse grains dropped at random into portions", () => {
  // One grain in twenty is coarse, 1,000 grains a portion: 50 coarse ones on average. Binomial: √(50 × 0.95) / 50.
  let state = 12345;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const counts = Array.from({ length: 2000 }, () => {
    let coarse = 0;
    for (let i = 0; i < 1000; i++) if (next() < 0.05) coarse++;
    return coarse;
  });
  const sdPercent = 2 * Math.sqrt(counts.reduce((sum, n) => sum + (n - 50) ** 2, 0) / counts.length);
  const said = countingScatterPercent(50 / grainCount(1, 1), 1);
  expect(said / sdPercent).toBeGreaterThan(0.95);
  expect(said / sdPercent).toBeLessThan(1.1);
});
