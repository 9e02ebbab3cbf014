import { expect, test } from "vitest";
import { specificSurface, sphereSurfaceCm2G } from "../../lib/sand/specific-surface.ts";
import { theoreticalSurface } from "../../lib/sand/surface.ts";
import { byOpening, KOREAN_PAGE, NATURAL_BONDED } from "./curve-sands.ts";

test("one sphere by area and mass", () => {
  // 1 mm quartz: area π mm² = 0.0314 cm², mass 2.65e-3 g/mm³ × π/6 mm³.
  expect(sphereSurfaceCm2G(1)).toBeCloseTo((Math.PI * 0.01) / ((2.65e-3 * Math.PI) / 6), 10);
  expect(sphereSurfaceCm2G(0.1, 3000)).toBeCloseTo(200, 10);
  expect(() => sphereSurfaceCm2G(0)).toThrow(RangeError);
});

test("one class has the surface of its mean, and the Sauter size is that mean", () => {
  const one = specificSurface(
    byOpening(
      [
        [0.4, 0],
        [0.1, 7],
      ],
      0,
    ),
  );
  expect(one.cm2G).toBeCloseTo(sphereSurfaceCm2G(0.2), 12);
  expect(one.sauterMm).toBeCloseTo(0.2, 12);
  expect(one.issues).toEqual([]);
});

test("class surfaces add up to the whole, and the pan's bounds hold it", () => {
  const sand = theoreticalSurface({ retained: NATURAL_BONDED });
  const whole = sand.byClass.reduce((sum, one) => sum + (one.massPercent / 100) * one.cm2G, 0);
  expect(whole).toBeCloseTo(sand.cm2G!, 9);
  expect(sand.byClass.reduce((sum, one) => sum + one.surfacePercent, 0)).toBeCloseTo(100, 9);
  expect(sand.panBounds!.low).toBeLessThan(sand.cm2G!);
  expect(sand.panBounds!.high).toBeGreaterThan(sand.cm2G!);
  expect(sand.issues).toContainEqual(
    expect.objectContaining({ code: "sand/pan-drives-surface", severity: "warning" }),
  );
});

test("a mean that lies lower gives more surface", () => {
  const by = (mean: "geometric" | "log-mean" | "arithmetic") =>
    theoreticalSurface({ retained: KOREAN_PAGE, mean }).cm2G!;
  expect(by("geometric")).toBeGreaterThan(by("log-mean"));
  expect(by("log-mean")).toBeGreaterThan(by("arithmetic"));
});

test("faulty masses and a pan alone give issues and no figure", () => {
  const faulty = theoreticalSurface({ retained: { "No. 40": Number.NaN, pan: 1 } });
  expect(faulty.cm2G).toBeUndefined();
  expect(faulty.issues.some(({ severity }) => severity === "error")).toBe(true);
  const alone = theoreticalSurface({ retained: { pan: 1 } });
  expect(alone.cm2G).toBeUndefined();
  expect(alone.issues.map(({ code }) => code)).toContain("sand/too-few-sieves");
});
