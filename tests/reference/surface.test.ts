// Theoretical surface against the class table and two sands, worked out by hand; no published example could be read.

import { expect, test } from "vitest";
import { angularityClass, angularityCoefficient } from "../../lib/sand/angularity.ts";
import { classMeanMm } from "../../lib/sand/mean-size.ts";
import { sphereSurfaceCm2G } from "../../lib/sand/specific-surface.ts";
import { theoreticalSurface, theoreticalSurfaceCm2G } from "../../lib/sand/surface.ts";
import { KOREAN_PAGE, NATURAL_BONDED } from "../sand/curve-sands.ts";

// [class lower, upper mm, cm²/g by arithmetic, geometric, log-mean size, AFS multiplier]
const classes = [
  [3.35, 6.7, "4.5", "4.8", "4.7", 3],
  [1.7, 3.35, "9.0", "9.5", "9.3", 5],
  [0.85, 1.7, "17.8", "18.8", "18.5", 10],
  [0.6, 0.85, "31.2", "31.7", "31.5", 20],
  [0.425, 0.6, "44.2", "44.8", "44.6", 30],
  [0.3, 0.425, "62.5", "63.4", "63.1", 40],
  [0.212, 0.3, "88.4", "89.8", "89.3", 50],
  [0.15, 0.212, "125.1", "127.0", "126.3", 70],
  [0.106, 0.15, "176.9", "179.6", "178.7", 100],
  [0.075, 0.106, "250.2", "253.9", "252.7", 140],
  [0.053, 0.075, "353.8", "359.1", "357.3", 200],
  [0.02, 0.053, "620", "695", "669", 300],
] as const;

test.each(classes)("class %d to %d mm", (lower, upper, arithmetic, geometric, logMean) => {
  const digits = arithmetic.includes(".") ? 1 : 0;
  const surface = (mean: "arithmetic" | "geometric" | "log-mean") =>
    sphereSurfaceCm2G(classMeanMm(lower, upper, mean)).toFixed(digits);
  expect([surface("arithmetic"), surface("geometric"), surface("log-mean")]).toEqual([
    arithmetic,
    geometric,
    logMean,
  ]);
});

test("one size: S = 22.64 / d for quartz", () => {
  expect(sphereSurfaceCm2G(1).toFixed(2)).toBe("22.64");
});

test("from No. 70 down the surface is 1.8 × the AFS multiplier within 1 %, in the pan far more", () => {
  for (const [lower, upper, , , , multiplier] of classes.slice(6, 11))
    expect(
      Math.abs(sphereSurfaceCm2G(classMeanMm(lower, upper, "log-mean")) / multiplier / 1.8 - 1),
    ).toBeLessThan(0.011);
  expect(sphereSurfaceCm2G(classMeanMm(0.02, 0.053, "log-mean")) / 300).toBeCloseTo(2.23, 2);
});

test("sand of the Korean page: 125.5 cm²/g geometric, 123.3 arithmetic, 124.7 log-mean; Sauter size 180 µm", () => {
  const by = (mean: "arithmetic" | "geometric" | "log-mean") =>
    theoreticalSurfaceCm2G({ retained: KOREAN_PAGE, mean })!;
  // By hand on rounded factors: 12 419.8 / 99.0 = 125.45.
  expect(Math.abs(by("geometric") - 125.45)).toBeLessThan(0.05);
  expect(Math.abs(by("arithmetic") - 123.3)).toBeLessThan(0.06);
  expect(Math.abs(by("log-mean") - 124.7)).toBeLessThan(0.06);
  expect((theoreticalSurface({ retained: KOREAN_PAGE }).sauterMm! * 1000).toFixed(0)).toBe("180");
});

test("natural bonded sand: 343.9 cm²/g, 65.8 µm, 43 % of it from the pan", () => {
  const { cm2G, sauterMm, panSharePercent } = theoreticalSurface({ retained: NATURAL_BONDED });
  expect(cm2G!.toFixed(1)).toBe("343.9");
  expect((sauterMm! * 1000).toFixed(1)).toBe("65.8");
  expect(panSharePercent.toFixed(0)).toBe("43");
});

test("a made-up actual surface of 163 cm²/g gives E 1.30", () => {
  const cm2G = theoreticalSurfaceCm2G({ retained: KOREAN_PAGE });
  const e = angularityCoefficient(163, cm2G!);
  expect(e.toFixed(2)).toBe("1.30");
  expect(angularityClass(1.3)).toBe("angular");
});
