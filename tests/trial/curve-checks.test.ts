// A wild batch, a form that does not fit, days as scatter, a turning place beside blocks, and density by its span.

import { expect, test } from "vitest";
import type { BatchFigures } from "../../lib/log/batch-figures.ts";
import { fitLinear } from "../../lib/numbers/least-squares.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";
import { blockScatter } from "../../lib/trial/block-scatter.ts";
import { offDensity } from "../../lib/trial/density-span.ts";
import { lackOfFit } from "../../lib/trial/lack-of-fit.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";
import { trialProperty } from "../../lib/trial/trial-property.ts";
import { outlyingRow } from "../../lib/trial/wild-batch.ts";
import { nistText } from "../reference/nist-data.ts";
import { seeded } from "../seeded.ts";

/** Stack loss: K. A. Brownlee, Statistical Theory and Methodology (1965); data and residual from memory. */
const air = [80, 80, 75, 62, 62, 62, 62, 62, 58, 58, 58, 58, 58, 58, 50, 50, 50, 50, 50, 56, 70];
const water = [27, 27, 25, 24, 22, 23, 24, 24, 23, 18, 18, 17, 18, 19, 18, 18, 19, 19, 20, 20, 20];
const acid = [89, 88, 90, 87, 87, 87, 93, 93, 87, 80, 89, 88, 82, 93, 89, 86, 72, 79, 80, 82, 91];
const loss = [42, 37, 37, 28, 18, 18, 19, 20, 15, 14, 14, 13, 11, 12, 8, 7, 8, 8, 9, 15, 15];

test("stack loss: row 21 has an externally studentised residual of −3.330; numpy 2.4.6, scipy 1.17.1 for p and off", () => {
  const fit = fitLinear(
    air.map((a, i) => [1, a, water[i]!, acid[i]!]),
    loss,
  );
  const found = outlyingRow(fit)!;
  expect([found.row, found.df]).toEqual([20, 16]);
  expect(found.t).toBeCloseTo(-3.330493319, 8);
  expect(found.p).toBeCloseTo(0.0889988413, 8);
  expect(found.off).toBeCloseTo(-10.11607459, 7);
});

test("t is what leaving the row out and forecasting it gives", () => {
  const x = [0, 1, 2, 3, 4, 5, 6];
  const y = [1, 2.2, 2.9, 4.1, 9, 6.1, 6.8];
  const { row, t, df, off } = outlyingRow(
    fitLinear(
      x.map((v) => [1, v]),
      y,
    ),
  )!;
  const keep = x.map((_, i) => i).filter((i) => i !== row);
  const rest = fitLinear(
    keep.map((i) => [1, x[i]!]),
    keep.map((i) => y[i]!),
  );
  const there = rest.coefficients[0]! + rest.coefficients[1]! * x[row]!;
  const [v00, v01, v11] = [rest.covariance[0]![0]!, rest.covariance[0]![1]!, rest.covariance[1]![1]!];
  const se = Math.sqrt(v00 + 2 * x[row]! * v01 + x[row]! ** 2 * v11 + rest.residualSd ** 2);
  expect([row, df]).toEqual([4, 4]);
  expect(off).toBeCloseTo(y[row]! - there, 10);
  expect(t).toBeCloseTo((y[row]! - there) / se, 10);
});

test("a wild batch is cried in at most 1 of 20 trials without one, and found where it lies eight scatters off", () => {
  const random = seeded(8);
  let [cried, found] = [0, 0];
  const trials = 700;
  for (let n = 0; n < trials; n++) {
    const count = 6 + (n % 5);
    const x = Array.from({ length: count }, (_, i) => i);
    const y = x.map((v) => 50 + 3 * v - 0.4 * v * v + random.normal());
    const odd = random.integer(0, count - 1);
    const curve = (of: readonly number[]) => outlyingRow(responseCurve({ x, y: of }, { peaked: true }).fit!)!;
    if (curve(y).p <= 0.05) cried++;
    const bent = curve(y.map((v, i) => (i === odd && count > 8 ? v + 8 : v)));
    if (count > 8 && bent.p <= 0.05 && bent.row === odd) found++;
  }
  // So few trials give the share to within 1 in 100.
  expect(cried / trials).toBeLessThan(0.07);
  expect(cried / trials).toBeGreaterThan(0.03);
  // Two in five of the trials have nine or ten batches.
  expect(found / (0.4 * trials)).toBeGreaterThan(0.7);
});

test("five batches, an exact line, no degree of freedom: none is wild", () => {
  const bent = (x: readonly number[], y: readonly number[]) =>
    fitLinear(
      x.map((v) => [1, v, v * v]),
      y,
    );
  expect(outlyingRow(bent([1, 2, 3, 4, 5], [1, 2, 9, 2, 1]))).toBeUndefined();
  expect(outlyingRow(bent([0, 1, 2, 3, 4, 5], [0, 0, 0, 0, 0, 0]))).toBeUndefined();
});

test("lack of fit: said in 1 of 20 straight trials at most, found in a bent one, silent without repeats", () => {
  const random = seeded(12);
  const x = [0, 0, 1, 1, 2, 2, 3];
  const design = x.map((v) => [1, v]);
  const cells = x.map(String);
  let said = 0;
  const trials = 900;
  for (let n = 0; n < trials; n++) {
    const y = x.map((v) => 60 + 4 * v + 2 * random.normal());
    if (lackOfFit(design, y, cells)!.p < 0.05) said++;
  }
  expect(said / trials).toBeLessThan(0.065);
  expect(said / trials).toBeGreaterThan(0.025);
  expect(lackOfFit(design, [10, 10.1, 40, 40.2, 12, 11.9, 41], cells)!.p).toBeLessThan(0.001);
  expect(lackOfFit(design, [10, 11, 12, 13, 14, 15, 16], x.map((_, i) => String(i)))).toBeUndefined(); // biome-ignore format: one call
  expect(lackOfFit(design, [10, 10, 12, 12, 14, 14, 19], cells)).toBeUndefined();
});

test("SiRstv (NIST StRD): five instruments as blocks; the mean squares are the certified ones", () => {
  const text = nistText("SiRstvt");
  const rows = text
    .slice(text.lastIndexOf("Instrument"))
    .split("\n")
    .map((line) => line.trim().split(/\s+/).map(Number))
    .filter((row) => row.length === 5 && row.every((v) => v > 100));
  const y = rows.flat();
  const blocks = y.map((_, i) => String(i % 5));
  const fit = fitLinear(
    blocks.map((block) => [1, ...["1", "2", "3", "4"].map((name) => (block === name ? 1 : 0))]),
    y,
  );
  const { variance, ofNewBatch } = blockScatter(
    y.map(() => [1]),
    y,
    blocks,
    fit,
  );
  // Balanced: (MS between − MS within)/5 a block, and a sixth of a block's worth for the mean of these five.
  const [between, within] = [0.0127865654, 0.010831828];
  expect(variance).toBeCloseTo(((between - within) / 5) * 1.2, 9);
  const fresh = ofNewBatch(1 / 25);
  expect(fresh.variance).toBeCloseTo((1.2 / 5) * between + (1 + 1 / 25 - 1.2 / 5) * within, 9);
  expect(fresh.df).toBeGreaterThan(15);
  expect(fresh.df).toBeLessThan(24);
});

test("three days or more: the interval of a new batch covers one of another day in 93 to 98 %; of two days it does not claim to", () => {
  const random = seeded(61);
  let [covered, asked] = [0, 0];
  for (let n = 0; n < 600; n++) {
    const days = 3 + (n % 3);
    const ratio = [0, 0.5, 1, 2][n % 4]!;
    const x = Array.from({ length: 3 * days }, (_, i) => 2.8 + (2 * (i % 3)) / 2 + random.uniform(-0.2, 0.2));
    const offsets = Array.from({ length: days }, () => ratio * random.normal());
    const blocks = x.map((_, i) => `day ${Math.floor(i / 3)}`);
    const truth = (m: number): number => 70 - 5 * (m - 3.6) ** 2;
    const y = x.map((m, i) => truth(m) + offsets[Math.floor(i / 3)]! + random.normal());
    const curve = responseCurve({ x, y, blocks }, { peaked: true });
    expect(curve.newBlock).toBe(true);
    const where = random.uniform(2.9, 4.7);
    const { newLow, newHigh } = curve.at(where)!;
    const fresh = truth(where) + ratio * random.normal() + random.normal();
    asked++;
    if (fresh >= newLow && fresh <= newHigh) covered++;
  }
  expect(covered / asked).toBeGreaterThan(0.93);
  expect(covered / asked).toBeLessThan(0.98);
  const x = [1, 2, 3, 4, 1, 2, 3, 4];
  const y = [1, 2, 3, 2, 2, 3, 4, 3.1];
  const named = (block: (i: number) => string | undefined) =>
    responseCurve({ x, y, blocks: x.map((_, i) => block(i)) }, { peaked: true }).newBlock;
  expect([named((i) => (i < 4 ? "a" : "b")), named(String), named(() => undefined)]).toEqual([
    false,
    true,
    undefined,
  ]);
});

test("blocks that cannot be told from the axis take no offset, and leave a curve", () => {
  const x = [3, 3.01, 4, 4.01, 5, 5.01];
  const blocks = ["a", "a", "b", "b", "c", "c"];
  const curve = responseCurve(
    { x: x.map(Math.round), y: [1, 1.1, 3, 3.2, 2, 2.1], blocks },
    { peaked: false },
  );
  expect([curve.blocks.length, curve.newBlock]).toEqual([0, false]);
  expect(Number.isFinite(curve.at(4)!.mean)).toBe(true);
});

/** Rows of a log with one strength each; only what trialProperty reads. */
const rowsOf = (strengths: readonly number[], blocks: readonly string[], density?: readonly number[]) =>
  strengths.map((value, i) => ({
    batch: { name: `B${i}`, block: blocks[i] },
    tests: {
      "green compression": {
        test: "green compression",
        unit: "kPa",
        value,
        shared: { value, sources: [] },
        missing: [],
      },
      ...(density?.[i] ? { density: { value: density[i] } } : {}),
    },
  })) as unknown as readonly BatchFigures[];

test("the top of a curve with blocks: Fieller's limits are where the F test of the place turns", () => {
  const x = [2.4, 2.8, 3.2, 3.6, 4, 2.6, 3, 3.4, 3.8, 4.2];
  const blocks = x.map((_, i) => (i < 5 ? "Saturday" : "Sunday"));
  const wobble = [0.6, -0.8, 0.3, 0.5, -0.4, -0.5, 0.7, -0.3, 0.2, -0.3];
  const y = x.map((m, i) => 70 - 12 * (m - 3.3) ** 2 + (i < 5 ? 0 : 6) + wobble[i]!);
  const { optimum, curve } = trialProperty("green compression", rowsOf(y, blocks), x, undefined);
  expect(curve.blocks).toEqual(["Sunday"]);
  const full = curve.fit!;
  // What the parabola with its top at x₀ leaves over, both days with an offset of their own.
  const excess = (top: number): number => {
    const rest = fitLinear(
      x.map((m, i) => [1, (m - top) ** 2, i < 5 ? 0 : 1]),
      y,
    ).residualSumOfSquares;
    return (rest - full.residualSumOfSquares) / full.residualSd ** 2 - studentTQuantile(0.975, 6) ** 2;
  };
  expect(optimum!.bounded).toBe(true);
  expect(Math.abs(excess(optimum!.low))).toBeLessThan(1e-6);
  expect(Math.abs(excess(optimum!.high))).toBeLessThan(1e-6);
  expect(Math.abs(optimum!.x - 3.3)).toBeLessThan(0.1);
});

test("density: the largest set within a span of 3 % is kept, nearest to the median where two are as large", () => {
  expect(offDensity([1.5, 1.55, 1.56, 1.57])).toEqual([true, false, false, false]);
  // Each lies within 3 % of the middle one; the two ends are 5 % apart and are not joined.
  expect(offDensity([1.5, 1.512, 1.54, 1.578, 1.58])).toEqual([false, false, false, true, true]);
  expect(offDensity([1.5, 1.51, 1.6, 1.61, 1.605, 1.7])).toEqual([true, true, false, false, false, true]);
  expect(offDensity([1.5, 1.5, 1.6, 1.6, 1.7, 1.7])).toEqual([true, true, false, false, true, true]);
  expect(offDensity([1.5, 1.545, 1.52])).toEqual([false, false, false]);
  expect(offDensity([1.5, undefined, 1.7])).toEqual([false, false, false]);
});

test("a strength without its density is said to be so", () => {
  const of = (density?: readonly number[]) =>
    trialProperty("green compression", rowsOf([50, 60, 55], [], density), [3, 3.5, 4], undefined)
      .densityUnknown;
  expect([of(), of([1.5, 0, 1.52]), of([1.5, 1.51, 1.52])]).toEqual([true, true, false]);
});
