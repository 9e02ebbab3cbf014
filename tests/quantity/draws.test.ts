// The draws: every source sees each score just once, and no two sources see them in one order.

import { expect, test } from "vitest";
import { quantileSorted } from "../../lib/numbers/quantile.ts";
import { drawing, drawsOf } from "../../lib/quantity/drawing.ts";
import { figure } from "../../lib/quantity/figure.ts";
import { hashText, type PermutationKey, permutationKey } from "../../lib/quantity/permutation.ts";
import { scoreSd, scores } from "../../lib/quantity/scores.ts";
import type { Shape, Source } from "../../lib/quantity/source.ts";
import { shifted } from "../../lib/quantity/spread-of.ts";

const shapes: readonly Shape[] = [
  { kind: "normal" },
  { kind: "t", df: 7 },
  { kind: "rectangular" },
  { kind: "triangular" },
  { kind: "arcsine" },
  { kind: "curvilinear trapezoid", edge: 0.5 },
];

function drawn(id: string, shape: Shape = { kind: "normal" }, count = 4096): Float64Array {
  const source: Source = { id, kind: "reading", shape };
  return drawsOf(shifted(0, 1, source), drawing([source], { count }));
}

/** The place of draw i in a table of 2^bits scores, round by round. */
function permuted(i: number, bits: number, key: PermutationKey): number {
  const mask = (1 << bits) - 1;
  const shift = (bits + 1) >>> 1;
  let x = i & mask;
  for (let round = 0; round < 4; round++) {
    x = Math.imul(x + (key.add[round]! & mask), key.multiply[round]!) & mask;
    x ^= x >>> shift;
  }
  return x;
}

function correlation(a: Float64Array, b: Float64Array): number {
  let [ab, aa, bb] = [0, 0, 0];
  for (let i = 0; i < a.length; i++) {
    ab += a[i]! * b[i]!;
    aa += a[i]! ** 2;
    bb += b[i]! ** 2;
  }
  return ab / Math.sqrt(aa * bb);
}

test("a permutation takes every place once, at every size", () => {
  for (const bits of [4, 8, 12, 13, 16]) {
    const key = permutationKey(`source of ${bits} bits`);
    const seen = new Set(Array.from({ length: 1 << bits }, (_, i) => permuted(i, bits, key)));
    expect(seen.size).toBe(1 << bits);
  }
});

test("the unrolled permutation is the plain one", () => {
  const key = permutationKey("weighing of No. 40");
  const table = scores({ kind: "normal" }, 4096);
  const draws = drawn("weighing of No. 40");
  for (let i = 0; i < 4096; i++) expect(draws[i]).toBe(table[permuted(i, 12, key)]);
});

test.each(shapes)("scores of $kind have mean 0 and the shape's own sd", (shape) => {
  const table = scores(shape, 4096);
  const mean = table.reduce((all, score) => all + score, 0) / table.length;
  const sd = Math.sqrt(table.reduce((all, score) => all + score ** 2, 0) / table.length);
  expect(Math.abs(mean)).toBeLessThan(1e-12);
  // A t tail beyond the last midpoint is lost; the bounded shapes lose less than 1e-5.
  expect(Math.abs(sd / scoreSd(shape) - 1)).toBeLessThan(shape.kind === "t" ? 2e-3 : 1e-5);
});

test("tails of a single source are the tabled ones (Abramowitz & Stegun tables 26.1 and 26.10)", () => {
  const normal = figure(shifted(0, 1, { kind: "reading", shape: { kind: "normal" } }));
  expect(Math.abs(normal.high - 1.95996)).toBeLessThan(5e-4);
  expect(Math.abs(normal.quantile(0.995) - 2.57583)).toBeLessThan(5e-4);
  const t = figure(shifted(0, 1, { kind: "reading", shape: { kind: "t", df: 7 } }));
  expect(Math.abs(t.high - 2.365)).toBeLessThan(1e-3);
});

test("permutations of hundreds of sources do not correlate", () => {
  const sources = Array.from({ length: 240 }, (_, i) => drawn(`weighing of sieve ${i} on 2026-03-${i % 28}`));
  const found: number[] = [];
  for (let i = 0; i < sources.length; i++) {
    for (let j = 0; j < i; j++) found.push(correlation(sources[i]!, sources[j]!));
  }
  const sd = Math.sqrt(found.reduce((all, r) => all + r * r, 0) / found.length);
  const kurtosis = found.reduce((all, r) => all + r ** 4, 0) / found.length / sd ** 4;
  // Random permutations of n: sd 1/√(n − 1) = 0.01563, kurtosis 3; 28,680 pairs give sd to 0.4 %, kurtosis to 0.03.
  expect(sd).toBeGreaterThan(0.01563 * 0.97);
  expect(sd).toBeLessThan(0.01563 * 1.03);
  expect(kurtosis).toBeGreaterThan(2.85);
  expect(kurtosis).toBeLessThan(3.2);
  expect(Math.max(...found.map(Math.abs))).toBeLessThan(0.085);
});

test("neither do neighbouring draws, nor the squares, nor sums of three", () => {
  const lags: number[] = [];
  const squares: number[] = [];
  const triples: number[] = [];
  for (let k = 0; k < 200; k++) {
    const [a, b, c] = [drawn(`a ${k}`), drawn(`b ${k}`), drawn(`c ${k}`)];
    lags.push(correlation(a.subarray(0, 4095), a.subarray(1)));
    squares.push(
      correlation(
        a.map((x) => x * x - 1),
        b.map((x) => x * x - 1),
      ),
    );
    triples.push(
      correlation(
        a.map((x, i) => x * b[i]!),
        c,
      ),
    );
  }
  for (const found of [lags, squares, triples]) {
    const sd = Math.sqrt(found.reduce((all, r) => all + r * r, 0) / found.length);
    expect(sd).toBeGreaterThan(0.0115);
    expect(sd).toBeLessThan(0.0205);
  }
});

test("Kolmogorov: sums of two rectangular scores over 300 pairs of sources follow the triangle", () => {
  const shape: Shape = { kind: "rectangular" };
  let beyond = 0;
  const trials = 300;
  for (let k = 0; k < trials; k++) {
    const a = drawn(`left ${k}`, shape);
    const b = drawn(`right ${k}`, shape);
    const sums = a.map((x, i) => (x + b[i]!) / 2).sort();
    let distance = 0;
    sums.forEach((x, i) => {
      const cumulative = x < 0 ? (1 + x) ** 2 / 2 : 1 - (1 - x) ** 2 / 2;
      distance = Math.max(distance, Math.abs(cumulative - (i + 0.5) / sums.length));
    });
    // 1.358/√n is passed by 5 % of plain random samples (Kolmogorov–Smirnov table); stratified ones pass it less.
    if (distance > 1.358 / Math.sqrt(sums.length)) beyond++;
  }
  expect(beyond / trials).toBeLessThan(0.05);
});

test("95 % limits of a sum of eleven are right to about 1.6 % rms", () => {
  const misses: number[] = [];
  for (let k = 0; k < 120; k++) {
    const total = new Float64Array(4096);
    for (let s = 0; s < 11; s++)
      drawn(`sum ${k} part ${s}`).forEach((x, i) => {
        total[i]! += x;
      });
    total.sort();
    const half = (quantileSorted(total, 0.975) - quantileSorted(total, 0.025)) / 2;
    misses.push(half / (1.959964 * Math.sqrt(11)) - 1);
  }
  const rms = Math.sqrt(misses.reduce((all, miss) => all + miss * miss, 0) / misses.length);
  expect(rms).toBeLessThan(0.022);
  expect(Math.abs(misses.reduce((all, miss) => all + miss, 0) / misses.length)).toBeLessThan(0.005);
});

test("ids that differ in one letter or in order hash far apart", () => {
  const ids = Array.from({ length: 5000 }, (_, i) => `weighing ${i}`);
  expect(new Set(ids.map((id) => hashText(id))).size).toBeGreaterThan(4995);
  expect(hashText("ab")).not.toBe(hashText("ba"));
});

test("two shapes under one id, or a count that is no power of two, throw", () => {
  const a: Source = { id: "one", kind: "rig", shape: { kind: "normal" } };
  const b: Source = { id: "one", kind: "rig", shape: { kind: "rectangular" } };
  expect(() => drawing([a, b])).toThrow("two shapes");
  expect(() => drawing([a], { count: 1000 })).toThrow("powers of two");
});
