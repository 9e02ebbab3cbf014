// Control charts against the worked examples of a handbook, and against published rates of false alarms.

import { expect, test } from "vitest";
import { changePoint } from "../../lib/numbers/change-point.ts";
import { cusum } from "../../lib/numbers/cusum.ts";
import { ewma } from "../../lib/numbers/ewma.ts";
import { individualsChart } from "../../lib/numbers/individuals-chart.ts";
import { normalCumulative } from "../../lib/numbers/normal.ts";
import { seeded } from "../seeded.ts";

const flowRate = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

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

// NIST/SEMATECH e-Handbook 6.3.2.4, read: λ 0.3, target 50, s 2.0539.
const weighted = [
  [52, 50.6],
  [47, 49.52],
  [53, 50.56],
  [49.3, 50.18],
  [50.1, 50.16],
  [47, 49.21],
  [51, 49.75],
  [50.1, 49.85],
  [51.2, 50.26],
  [50.5, 50.33],
  [49.6, 50.11],
  [47.6, 49.36],
  [49.9, 49.52],
  [51.3, 50.05],
  [47.8, 49.38],
  [51.2, 49.92],
  [52.6, 50.73],
  [52.4, 51.23],
  [53.6, 51.94],
  [52.1, 51.99],
] as const;

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
  const values = [
    324.925, 324.675, 324.725, 324.35, 325.35, 325.225, 324.125, 324.525, 325.225, 324.6, 324.625, 325.15,
    328.325, 327.25, 327.825, 328.5, 326.675, 327.775, 326.875, 328.35,
  ];
  const chart = cusum(values, { target: 325, slack: 0.3175, limit: 4.1959 });
  expect(chart.signals.map(({ at }) => at + 1)).toEqual([14, 15, 16, 17, 18, 19, 20]);
  expect(chart.signals.every(({ side, since }) => side === "above" && since + 1 === 13)).toBe(true);
  expect(chart.above[13]).toBeCloseTo(4.94, 4);
});

/** Mean number of values until the first signal, and its standard error, over rows of a scatter of 1. */
function runLengths(rows: number, firstOf: (row: number[]) => number): { mean: number; error: number } {
  const random = seeded(20260607);
  const lengths = Array.from({ length: rows }, () => {
    let row = Array.from({ length: 400 }, random.normal);
    let first = firstOf(row);
    while (first < 0 && row.length < 40_000) {
      row = [...row, ...Array.from({ length: row.length * 3 }, random.normal)];
      first = firstOf(row);
    }
    return first + 1;
  });
  const middle = lengths.reduce((all, each) => all + each, 0) / rows;
  const squares = lengths.reduce((all, each) => all + (each - middle) ** 2, 0);
  return { mean: middle, error: Math.sqrt(squares / (rows - 1) / rows) };
}

/** Limits of exactly three standard deviations about 0: a baseline of two values that the rules never see. */
const span = (1.128 * 1) / 2;
const knownLimits = (row: readonly number[]) => {
  const { signals } = individualsChart([-span, span, ...row], { baseline: 2 });
  return signals.filter(({ from }) => from >= 2);
};
const firstBy = (rules: readonly string[], least: { readonly [rule: string]: number }) => (row: number[]) => {
  const ends = knownLimits(row)
    .filter(({ rule }) => rules.includes(rule))
    .map(({ rule, from, to }) => (least[rule] === undefined ? to - 2 : from - 2 + least[rule]! - 1));
  return ends.length === 0 ? -1 : Math.min(...ends);
};

test.each([
  ["three-sigma limits alone: one in 370.4 (any text, 1/0.0027)", ["outside"], 370.4],
  [
    "limits and the run of eight: one in 152.73 (Champ & Woodall 1987, from memory)",
    ["outside", "run"],
    152.73,
  ],
  ["the run of eight alone: one in 255 (2⁸ − 1, by hand)", ["run"], 255],
] as const)("false alarms of %s", (_name, rules, published) => {
  const found = runLengths(250, firstBy(rules, { run: 8 }));
  expect(Math.abs(found.mean - published)).toBeLessThan(3.5 * found.error);
  expect(found.error / found.mean).toBeLessThan(0.08);
});

test("false alarms of six that rise or fall: one in about 420", () => {
  // Of rises alone the mean is 1/Σ(1/(6j)! − 1/(6j + 1)!) = 840 (David & Barton, Combinatorial Chance, 1962, from memory);
  // rises and falls exclude each other at once, so both together come nearly twice as often.
  const rises = 1 / (1 / 720 - 1 / 5040);
  expect(rises).toBeCloseTo(840, 0);
  const found = runLengths(250, firstBy(["trend"], { trend: 6 }));
  expect(Math.abs(found.mean - rises / 2)).toBeLessThan(3.5 * found.error + 5);
});

test("false alarms of the sum of departures: 168 with a limit of 4, 465 with 5 (Montgomery, from memory)", () => {
  for (const [limit, published] of [
    [4, 168],
    [5, 465],
  ] as const) {
    const found = runLengths(250, (row) => cusum(row, { target: 0, slack: 0.5, limit }).signals[0]?.at ?? -1);
    expect(Math.abs(found.mean - published)).toBeLessThan(3.5 * found.error);
  }
});

/** Mean run length of a weighted mean by S. V. Crowder's integral equation (1987), by 61 cells. */
function weightedRunLength(weight: number, width: number): number {
  const h = width * Math.sqrt(weight / (2 - weight));
  const m = 61;
  // Midpoints of cells: each cell's chance is exact, so the error falls with the square of the cell.
  const cell = (2 * h) / m;
  const middles = Array.from({ length: m }, (_, i) => -h + (i + 0.5) * cell);
  const rows = middles.map((from) =>
    middles.map((to) => {
      const end = (edge: number) => normalCumulative((edge - (1 - weight) * from) / weight);
      return end(to + cell / 2) - end(to - cell / 2);
    }),
  );
  let lengths = middles.map(() => 1);
  for (let pass = 0; pass < 8000; pass++) {
    const next = rows.map((row) => row.reduce((all, chance, j) => all + chance * lengths[j]!, 1));
    const moved = Math.max(...next.map((each, i) => Math.abs(each - lengths[i]!)));
    lengths = next;
    if (moved < 1e-5) break;
  }
  return lengths[(m - 1) / 2]!;
}

test("false alarms of the weighted mean: 500 with λ 0.2 and 2.962 (Lucas & Saccucci 1990, from memory)", () => {
  expect(Math.abs(weightedRunLength(0.2, 2.962) - 500)).toBeLessThan(5);
  const found = runLengths(250, (row) => ewma(row, { target: 0, sd: 1 }).signals[0]?.at ?? -1);
  // Limits that are narrow at first see a little earlier than the limits in the end that the 500 is of.
  expect(Math.abs(found.mean - 500)).toBeLessThan(3.5 * found.error + 15);
});

test("a change point in the annual flow of the Nile, 1871 to 1970: after 1898 (Cobb 1978; data from memory)", () => {
  const flow = [
    1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960, 1180, 799, 958,
    1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694, 940, 833, 701, 916, 692, 1020,
    1050, 969, 831, 726, 456, 824, 702, 1120, 1100, 832, 764, 821, 768, 845, 864, 862, 698, 845, 744, 796,
    1040, 759, 781, 865, 845, 944, 984, 897, 822, 1010, 771, 676, 649, 846, 812, 742, 801, 1040, 860, 874,
    848, 890, 744, 749, 838, 1050, 918, 986, 797, 923, 975, 815, 1020, 906, 901, 1170, 912, 746, 919, 718,
    714, 740,
  ];
  expect(flow).toHaveLength(100);
  const change = changePoint(flow)!;
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
