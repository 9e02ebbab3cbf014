// Quadratic surfaces over two factors against published designs.

import { expect, test } from "vitest";
import { fQuantile } from "../../lib/numbers/f-distribution.ts";
import { stationaryPoint } from "../../lib/numbers/stationary-point.ts";
import { chemical, sloping } from "./response-designs.ts";

test("chemical reaction: coefficients and their errors, to the six digits printed", () => {
  const printed = [
    [84.095427, 0.079631],
    [0.932541, 0.057699],
    [0.577712, 0.057699],
    [0.125, 0.081592],
    [-1.308555, 0.060064],
    [-0.933442, 0.060064],
    [-4.45753, 0.087226],
  ];
  printed.forEach(([estimate, error], k) => {
    expect(Math.abs(chemical.fit.coefficients[k]! - estimate!)).toBeLessThan(6e-7);
    expect(Math.abs(chemical.fit.standardErrors[k]! - error!)).toBeLessThan(6e-7);
  });
  expect(chemical.fit.rSquared).toBeCloseTo(0.9981, 4);
  expect(chemical.fit.degreesOfFreedom).toBe(7);
  expect(chemical.fit.residualSd ** 2).toBeCloseTo(0.02662922, 8);
});

test("its stationary point is a maximum with the published place and eigenvalues", () => {
  const { x, y, kind, eigenvalues, outside } = stationaryPoint(chemical);
  expect(Math.abs(x[0] - 0.3722954)).toBeLessThan(6e-8);
  expect(Math.abs(x[1] - 0.3343802)).toBeLessThan(6e-8);
  expect(85 + 5 * x[0]).toBeCloseTo(86.86148, 5);
  expect(175 + 5 * x[1]).toBeCloseTo(176.6719, 5);
  expect(Math.abs(eigenvalues[0] + 0.9233027)).toBeLessThan(6e-8);
  expect(Math.abs(eigenvalues[1] + 1.3186949)).toBeLessThan(6e-8);
  expect(y).toBeCloseTo(84.3656, 4);
  expect([kind, outside]).toEqual(["maximum", false]);
});

// Worked out apart from the library, from the coefficients and V above.
test("its 95 % region: limit, three statistics, how far it reaches, where four rays leave it", () => {
  const point = stationaryPoint(chemical);
  expect(fQuantile(0.95, 2, 7)).toBeCloseTo(4.737414, 6);
  expect(point.statistic(0.45, 0.45)).toBeCloseTo(4.2661, 4);
  expect(point.statistic(0.5, 0.5)).toBeCloseTo(8.7454, 4);
  expect(point.statistic(0, 0)).toBeCloseTo(180.734, 3);
  expect([point.inRegion(0.45, 0.45), point.inRegion(0.5, 0.5), point.inRegion(0, 0)]).toEqual([
    true,
    false,
    false,
  ]);
  const { bounded, x1, x2 } = point.region;
  expect(bounded).toBe(true);
  expect(x1.low).toBeCloseTo(0.286707, 6);
  expect(x1.high).toBeCloseTo(0.476388, 6);
  expect(x2.low).toBeCloseTo(0.218338, 6);
  expect(x2.high).toBeCloseTo(0.481728, 6);
  for (const [a, b] of [
    [0.469885, point.x[1]],
    [0.288351, point.x[1]],
    [point.x[0], 0.472062],
    [point.x[0], 0.220276],
  ] as const) {
    const outward = 2e-6;
    const [da, db] = [Math.sign(a - point.x[0]) * outward, Math.sign(b - point.x[1]) * outward];
    expect(point.inRegion(a - da, b - db)).toBe(true);
    expect(point.inRegion(a + da, b + db)).toBe(false);
  }
});

test("sloping ridge: coefficients and eigenvalues as published data give them, and no optimum", () => {
  const expected = [78.633333, 4.391667, -6.858333, -9.0625, -4.575, -4.125];
  expected.forEach((b, k) => {
    expect(sloping.fit.coefficients[k]).toBeCloseTo(b, 6);
  });
  expect(sloping.fit.residualSd ** 2).toBeCloseTo(6.37684, 5);
  const { x, kind, eigenvalues, outside, region, inRegion } = stationaryPoint(sloping);
  expect(x[0]).toBeCloseTo(-14.81, 2);
  expect(x[1]).toBeCloseTo(15.44, 2);
  expect(eigenvalues[0]).toBeCloseTo(0.186833, 6);
  expect(eigenvalues[1]).toBeCloseTo(-8.886833, 6);
  expect(kind).toBe("ridge");
  expect(outside).toBe(true);
  expect(region.bounded).toBe(false);
  // It runs out along the crest, far from any trial.
  expect(inRegion(-148, 154)).toBe(true);
});
