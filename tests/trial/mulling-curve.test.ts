// The mulling curve against certified fits, a brute search, and founders whose truth is known.

import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { fitCurve } from "../../lib/numbers/curve-fit.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";
import { mulledStrengthKPa, mullingMinutes } from "../../lib/sand/mulling-time.ts";
import { mullingComparison } from "../../lib/trial/mulling-comparison.ts";
import { chanceWithin, mullingCurve } from "../../lib/trial/mulling-curve.ts";
import { leastMulled, squaresForStrength, squaresForTime } from "../../lib/trial/mulling-profile.ts";
import { nistSet } from "../reference/nist-data.ts";
import { seeded } from "../seeded.ts";

const infinite = Number.POSITIVE_INFINITY;
/** NIST StRD BoxBOD, G. E. P. Box, W. G. Hunter and J. S. Hunter (1978); data and certified figures from memory. */
const boxBod = { minutes: [1, 2, 3, 5, 7, 10], strengthKPa: [109, 149, 149, 191, 213, 224] };

test("NIST BoxBOD and Misra1a are this form with S0 = 0", () => {
  const model = (t: number, [full, rate]: readonly number[]): number =>
    mulledStrengthKPa({ minutes: t, startKPa: 0, fullKPa: full!, tauMin: 1 / rate! });
  const box = fitCurve(model, [100, 0.75], boxBod.minutes, boxBod.strengthKPa);
  expect(box.parameters[0]).toBeCloseTo(213.80940889, 5);
  expect(box.parameters[1]).toBeCloseTo(0.54723748542, 8);
  expect(box.residualSumOfSquares).toBeCloseTo(1168.0088766, 4);
  const { rows } = nistSet("Misra1a");
  const [y, x] = [0, 1].map((k) => rows.map((row) => row[k]!)) as [number[], number[]];
  const misra = fitCurve(model, [250, 0.0005], x, y);
  expect(misra.parameters[0]).toBeCloseTo(238.94212918, 5);
  expect(misra.parameters[1]).toBeCloseTo(5.5015643181e-4, 11);
  expect(misra.residualSumOfSquares).toBeCloseTo(0.12455138894, 8);
});

test("the constrained search finds what the free fit finds", () => {
  const readings = { minutes: [1, 2, 4, 8, 12, 20], strengthKPa: [30, 47, 59, 73, 74, 78] };
  const { startKPa, fullKPa, tauMin, squares } = leastMulled(readings);
  const fit = fitCurve(
    (t: number, [s, f, tau]) => f! - (f! - s!) * Math.exp(-t / tau!),
    [20, 70, 3],
    readings.minutes,
    readings.strengthKPa,
  );
  expect(startKPa).toBeCloseTo(fit.parameters[0]!, 2);
  expect(fullKPa).toBeCloseTo(fit.parameters[1]!, 2);
  expect(tauMin).toBeCloseTo(fit.parameters[2]!, 2);
  expect(squares).toBeCloseTo(fit.residualSumOfSquares, 6);
  const curve = mullingCurve("a", readings);
  expect(curve.fit?.standardErrors[1]).toBeCloseTo(fit.standardErrors[1]!, 6);
});

test("the profile is the least over a fine grid of every curve that has the held figure", () => {
  const readings = { minutes: [2, 4, 8, 15], strengthKPa: [31, 50, 60, 71] };
  const squares = (startKPa: number, fullKPa: number, tauMin: number): number =>
    readings.minutes.reduce(
      (all, minutes, i) =>
        all + (readings.strengthKPa[i]! - mulledStrengthKPa({ minutes, startKPa, fullKPa, tauMin })) ** 2,
      0,
    );
  // Held: 95 % at 9 minutes. For each S0 and S∞ one τ has it.
  let [timeBrute, fullBrute] = [infinite, infinite];
  for (let full = 55; full <= 95; full += 0.25)
    for (let start = 0; start < 0.94 * full; start += 0.25) {
      const tau = 9 / Math.log((full - start) / (0.05 * full));
      timeBrute = Math.min(timeBrute, squares(start, full, tau));
    }
  const timeHeld = squaresForTime(readings, 0.95, 9);
  expect(timeHeld).toBeLessThanOrEqual(timeBrute + 1e-9);
  expect(timeHeld).toBeGreaterThan(timeBrute - 0.05);
  // Held: a full bond of 80.
  for (let start = 0; start < 80; start += 0.25)
    for (let tau = 0.5; tau < 30; tau *= 1.005) fullBrute = Math.min(fullBrute, squares(start, 80, tau));
  const fullHeld = squaresForStrength(readings, infinite, 80);
  expect(fullHeld).toBeLessThanOrEqual(fullBrute + 1e-9);
  expect(fullHeld).toBeGreaterThan(fullBrute - 0.05);
});

test("at the ends of the interval the squares have risen by t²s²", () => {
  const readings = { minutes: [1, 2, 4, 8, 12, 20], strengthKPa: [30, 47, 59, 73, 74, 78] };
  const curve = mullingCurve("a", readings);
  const { low, high, value } = curve.timeTo(95);
  const rise = (studentTQuantile(0.975, curve.degreesOfFreedom) * curve.scatterKPa) ** 2;
  const least = leastMulled(readings).squares;
  expect(low).toBeLessThan(value);
  expect(high).toBeLessThan(4 * 20);
  for (const end of [low, high])
    expect((squaresForTime(readings, 0.95, end) - least) / rise).toBeCloseTo(1, 1);
  const full = curve.strengthAt(infinite);
  for (const end of [full.low, full.high])
    expect((squaresForStrength(readings, infinite, end) - least) / rise).toBeCloseTo(1, 3);
  expect(value).toBeCloseTo(mullingMinutes({ sharePercent: 95, ...curve }), 9);
});

test("readings that have not flattened leave the time open above; a straight rise has none", () => {
  const short = mullingCurve("short", { minutes: [2, 4, 6, 8], strengthKPa: [28, 38, 46, 52] }).timeTo(95);
  expect(short.high).toBe(infinite);
  expect(short.low).toBeGreaterThan(4);
  const straight = mullingCurve("straight", { minutes: [2, 4, 6, 8], strengthKPa: [20, 30, 40, 50] });
  expect(straight.straight).toBe(true);
  expect(straight.fullKPa).toBe(infinite);
  expect(straight.timeTo(95)).toMatchObject({ value: infinite, high: infinite });
  // Mulled already: nothing is to be gained, and the least time is none.
  const done = mullingCurve("done", { minutes: [1, 3, 6, 10, 15], strengthKPa: [70, 71, 69, 70, 70] });
  expect(done.timeTo(90)).toMatchObject({ low: 0 });
  expect(done.timeTo(90).value).toBeLessThan(1);
});

test("psi or kPa, one order or another: the same time", () => {
  const minutes = [1, 2, 4, 8, 12, 20];
  const strengthKPa = [30, 47, 59, 73, 74, 78];
  const metric = mullingCurve("a", { minutes, strengthKPa }).timeTo(95);
  const psi = mullingCurve("a", { minutes, strengthKPa: strengthKPa.map((s) => s / 6.894757) }).timeTo(95);
  const turned = mullingCurve("a", {
    minutes: [...minutes].reverse(),
    strengthKPa: [...strengthKPa].reverse(),
  }).timeTo(95);
  for (const other of [psi, turned]) {
    expect(other.value).toBeCloseTo(metric.value, 4);
    expect(other.low).toBeCloseTo(metric.low, 3);
    expect(other.high).toBeCloseTo(metric.high, 3);
  }
});

test("hand against machine: told apart where they are, not where they are not", () => {
  const slow = mullingCurve("hand", {
    minutes: [2, 5, 10, 15, 20, 30],
    strengthKPa: [24, 38, 52, 60, 64, 68],
  });
  const quick = mullingCurve("machine", {
    minutes: [1, 2, 4, 6, 9, 14],
    strengthKPa: [30, 45, 62, 69, 72, 74],
  });
  const apart = mullingComparison(quick, slow, 95);
  expect(apart).toMatchObject({ slower: "hand", quicker: "machine", told: true });
  expect(apart.times.value).toBeCloseTo(slow.timeTo(95).value / quick.timeTo(95).value, 0);
  expect(apart.chance).toBeGreaterThan(0.99);
  const again = mullingCurve("again", quick.readings);
  expect(mullingComparison(quick, again, 95).told).toBe(false);
  expect(chanceWithin(quick.timeTo(95), quick.timeTo(95).high)).toBeCloseTo(0.975, 2);
});

test("misuse throws", () => {
  expect(() => mullingCurve("a", { minutes: [1, 1, 2], strengthKPa: [1, 2, 3] })).toThrow(Misuse);
  expect(() => mullingCurve("a", { minutes: [1, 2, 3], strengthKPa: [1, 2] })).toThrow(Misuse);
  expect(() => mullingCurve("a", { minutes: [1, 2, 3], strengthKPa: [0, 2, 3] })).toThrow(Misuse);
});

// 250 founders a case gave 100 % at a scatter of 2 %, 96 to 100 % at 5 %; 1,000 gave 94 to 98 % at 10 %: the limits leave chance its room.
// Four readings close it for few founders, six for most, rough ones for some: an interval that were always open would hold everything.
test.each([
  [[2, 4, 8, 15], 0.05, 0.05],
  [[1, 2, 4, 8, 12, 20], 0.05, 0.6],
  [[1, 2, 4, 6, 9, 12, 16, 20], 0.1, 0.3],
])(
  "simulated founders, readings at %j, scatter %d: the interval holds the true time",
  (minutes, scatter, closes) => {
    const random = seeded(2026);
    let [held, closed] = [0, 0];
    const founders = 100;
    for (let founder = 0; founder < founders; founder++) {
      const fullKPa = random.uniform(50, 110);
      const shape = { fullKPa, startKPa: fullKPa * random.uniform(0, 0.6), tauMin: random.uniform(1, 7) };
      const strengthKPa = minutes.map((at) =>
        Math.max(1, mulledStrengthKPa({ ...shape, minutes: at }) + scatter * fullKPa * random.normal()),
      );
      const { low, high } = mullingCurve("founder", { minutes, strengthKPa }).timeTo(95);
      const truth = mullingMinutes({ sharePercent: 95, ...shape });
      if (low <= truth && truth <= high) held += 1;
      if (Number.isFinite(high)) closed += 1;
    }
    expect(held / founders).toBeGreaterThanOrEqual(0.9);
    expect(closed / founders).toBeGreaterThan(closes);
  },
);
