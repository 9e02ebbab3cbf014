// Control charts against the worked examples of a handbook, and a river; rates of false alarms are rows of rows-control.ts.

import { expect, test } from "vitest";
import { changePoint } from "../../lib/numbers/change-point.ts";
import { cusum } from "../../lib/numbers/cusum.ts";
import { ewma } from "../../lib/numbers/ewma.ts";
import { individualsChart } from "../../lib/numbers/individuals-chart.ts";
import { seeded } from "../seeded.ts";
import { departures, flowRate, nile, weighted } from "./control-data.ts";

test("individuals and moving range: flow rate of ten batches (NIST/SEMATECH e-Handbook 6.3.2.2, read)", () => {
  const chart = individualsChart(flowRate);
  expect(chart.mean).toBeCloseTo(50.81, 10);
  expect(chart.meanMovingRange).toBeCloseTo(1.8778, 4);
  expect(chart.upper).toBeCloseTo(55.8041, 4);
  expect(chart.lower).toBeCloseTo(45.8159, 4);
  expect(chart.rangeUpper).toBeCloseTo(6.1347, 4);
  expect(chart.signals).toEqual([]);
});

test("the constants of two values: 2/√π and 1 + 3·√(2 − 4/π)·√π/2 (by hand) to the figures of the tables", () => {
  const chart = individualsChart([0, 1]);
  const d2 = 2 / Math.sqrt(Math.PI);
  const d3 = Math.sqrt(2 - 4 / Math.PI);
  expect(3 / (chart.upper - chart.mean)).toBeCloseTo(d2, 3);
  expect(chart.rangeUpper).toBeCloseTo(1 + (3 * d3) / d2, 3);
  // 2.66, as it stands on the trade's cards.
  expect(chart.upper - chart.mean).toBeCloseTo(2.66, 2);
});

test("weighted mean of twenty values (NIST/SEMATECH e-Handbook 6.3.2.4, read)", () => {
  const chart = ewma(
    weighted.map(([x]) => x),
    { target: 50, sd: 2.0539, weight: 0.3, width: 3 },
  );
  // Printed to two decimals, each from the rounded one before it: half a step and what that carries on.
  for (const [i, [, z]] of weighted.entries()) expect(Math.abs(chart.smoothed[i]! - z)).toBeLessThan(0.0125);
  expect(chart.upperInTheEnd).toBeCloseTo(52.5884, 4);
  // Printed 47.4115; 50 − 2.5884 is 47.4116.
  expect(Math.abs(chart.lowerInTheEnd - 47.4115)).toBeLessThan(1.5e-4);
  expect(chart.smoothed.filter((z) => z > 52.5884 || z < 47.4115)).toEqual([]);
});

test("sum of departures of twenty values (NIST/SEMATECH e-Handbook 6.3.2.3, read)", () => {
  const chart = cusum(departures, { target: 325, slack: 0.3175, limit: 4.1959 });
  expect(chart.signals.map(({ at }) => at + 1)).toEqual([14, 15, 16, 17, 18, 19, 20]);
  expect(chart.signals.every(({ side, since }) => side === "above" && since + 1 === 13)).toBe(true);
  expect(chart.above[13]).toBeCloseTo(4.94, 4);
});

test("a change point in the annual flow of the Nile, 1871 to 1970: after 1898 (Cobb 1978; data from memory)", () => {
  expect(nile).toHaveLength(100);
  const change = changePoint(nile)!;
  expect(1871 + change.at).toBe(1899);
  // Cobb's fits: about 1100 before and 850 after.
  expect(Math.abs(change.before - 1097.75)).toBeLessThan(0.01);
  expect(Math.abs(change.after - 849.97)).toBeLessThan(0.01);
  expect(change.p).toBe(1 / 2000);
  expect(change.earliest).toBeGreaterThanOrEqual(25);
  expect(change.latest).toBeLessThanOrEqual(31);
});

test("shuffles cry wolf as often as they say, and the span of dates holds the change", () => {
  const random = seeded(11);
  const rows = 400;
  let alarms = 0;
  let held = 0;
  for (let i = 0; i < rows; i++) {
    // An exponential scatter: shuffling asks for no normal one.
    const still = Array.from({ length: 24 }, () => -Math.log(1 - random.uniform()));
    if (changePoint(still, { shuffles: 99 })!.p <= 0.05) alarms++;
    const at = random.integer(3, 21);
    const moved = Array.from({ length: 24 }, (_, k) => random.normal() + (k >= at ? 1.5 : 0));
    const found = changePoint(moved, { shuffles: 1 })!;
    if (found.earliest <= at && at <= found.latest) held++;
  }
  // 0.05 and at least 0.95, each with 3.5 standard errors.
  expect(Math.abs(alarms / rows - 0.05)).toBeLessThan(3.5 * Math.sqrt((0.05 * 0.95) / rows));
  expect(held / rows).toBeGreaterThan(0.95 - 3.5 * Math.sqrt((0.05 * 0.95) / rows));
});
