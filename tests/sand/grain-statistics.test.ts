import { expect, test } from "vitest";
import { grainStatistics } from "../../lib/sand/grain-statistics.ts";
import { KOREAN_PAGE, NATURAL_BONDED } from "./curve-sands.ts";

test("a three-screen sand on the whole stack has every figure", () => {
  const sand = grainStatistics({ retained: KOREAN_PAGE });
  // By hand on the printed percentages: 65.8 of 99.0 lie finer than No. 70 … D50 between No. 100 and No. 70.
  const share = (50 - (100 * 14.1) / 99) / ((100 * 50.1) / 99);
  expect(sand.d50Mm).toBeCloseTo(0.15 * (0.212 / 0.15) ** share, 6);
  expect(sand.uniformity).toBeCloseTo(sand.d60Mm! / sand.d10Mm!, 12);
  expect(sand.curvature).toBeCloseTo(sand.d30Mm! ** 2 / (sand.d60Mm! * sand.d10Mm!), 12);
  expect(Object.values(sand.graphic).every(Number.isFinite)).toBe(true);
  expect(Object.values(sand.moment).every(Number.isFinite)).toBe(true);
  // The example of the comment.
  expect(sand.d50Mm!.toFixed(3)).toBe("0.192");
  expect(sand.uniformity!.toFixed(2)).toBe("1.55");
});

test("much sand in the pan takes the fine percentiles away, in one issue that names them", () => {
  const sand = grainStatistics({ retained: NATURAL_BONDED });
  expect(sand.d10Mm).toBeUndefined();
  expect(sand.uniformity).toBeUndefined();
  expect(sand.graphic.meanPhi).toBeUndefined();
  expect(sand.d30Mm).toBeDefined();
  const reach = sand.issues.filter(({ code }) => code === "sand/beyond-finest-sieve");
  expect(reach).toHaveLength(1);
  expect(reach[0]!.message).toContain("D10");
  expect(reach[0]!.message).toContain("φ84");
  expect(reach[0]!.message).not.toContain("D30");
});

test("extendEnds gives the missing figures and says that nothing was measured there", () => {
  const sand = grainStatistics({ retained: NATURAL_BONDED, extendEnds: true });
  expect(sand.d10Mm).toBeLessThan(0.053);
  expect(sand.issues.map(({ code }) => code)).toContain("sand/curve-extended");
  expect(sand.issues.map(({ code }) => code)).not.toContain("sand/beyond-finest-sieve");
});

test("grams or percent, and the order of the record, make no difference", () => {
  const scaled = Object.fromEntries(
    Object.entries(KOREAN_PAGE)
      .reverse()
      .map(([label, mass]) => [label, mass * 2]),
  );
  const [a, b] = [grainStatistics({ retained: KOREAN_PAGE }), grainStatistics({ retained: scaled })];
  expect(b.d10Mm).toBeCloseTo(a.d10Mm!, 12);
  expect(b.moment.kurtosis).toBeCloseTo(a.moment.kurtosis!, 9);
  expect(b.graphic.skewness).toBeCloseTo(a.graphic.skewness!, 9);
});

test("faulty masses give issues and no figures", () => {
  const sand = grainStatistics({ retained: { "No. 40": -1, pan: 2 } });
  expect(sand.d50Mm).toBeUndefined();
  expect(sand.graphic.meanPhi).toBeUndefined();
  expect(sand.issues.some(({ severity }) => severity === "error")).toBe(true);
});

test("one sieve and a pan: no size, and both ends say why", () => {
  const sand = grainStatistics({ retained: { "No. 40": 1, pan: 1 } });
  expect(sand.d90Mm).toBeUndefined();
  expect(sand.d10Mm).toBeUndefined();
  const codes = sand.issues.map(({ code }) => code);
  expect(codes).toContain("sand/beyond-coarsest-sieve");
  expect(codes).toContain("sand/beyond-finest-sieve");
});

test("a pan alone is a stack without sieves", () => {
  const sand = grainStatistics({ retained: { pan: 1 } });
  expect(sand.d50Mm).toBeUndefined();
  expect(sand.issues.map(({ code }) => code)).toContain("sand/too-few-sieves");
});
