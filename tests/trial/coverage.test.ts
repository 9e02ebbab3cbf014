// The honesty of trials on simulated founders with known truth: intervals cover, and chances come true. The tables over
// thousands of founders are printed by npm run honesty; here a few fixed ones, with three standard errors allowed.

import { expect, test } from "vitest";
import { percent, type Share, type Tally, together, tryFounders } from "./coverage.ts";
import { allIlls } from "./founders.ts";
import { truthKinds } from "./founders-truths.ts";

const counts = [5, 7, 9, 12];
const cells = truthKinds.flatMap((kind) => counts.map((batches) => ({ kind, batches })));
type Cell = (typeof cells)[number] & { readonly tally: Tally };

const fitted: readonly Cell[] = cells.map((cell, k) => ({
  ...cell,
  tally: tryFounders({ ...cell, ills: allIlls, drawn: false, founders: 64, first: 1000 * k }),
}));
const drawn: readonly Cell[] = cells.map((cell, k) => ({
  ...cell,
  tally: tryFounders({
    ...cell,
    ills: allIlls,
    drawn: true,
    draws: 256,
    founders: 24,
    first: 50_000 + 100 * k,
  }),
}));

/** The cells of each kind of truth together, then those of each number of batches. */
const pooled = (of: readonly Cell[]): [string, Tally][] => [
  ...truthKinds.map((kind): [string, Tally] => [kind, poolOf(of.filter((cell) => cell.kind === kind))]),
  ...counts.map((n): [string, Tally] => [`${n} batches`, poolOf(of.filter(({ batches }) => batches === n))]),
];
const poolOf = (of: readonly Cell[]): Tally => together(of.map(({ tally }) => tally));

/** The share lies between low and high percent, or within three of its standard errors of that. */
function expectShare(what: string, share: Share, low: number, high: number): void {
  const error = (edge: number): number => 3 * Math.sqrt((edge * (100 - edge)) / share[1]);
  expect(share[1], what).toBeGreaterThan(30);
  expect(percent(share), what).toBeGreaterThan(low - error(low));
  expect(percent(share), what).toBeLessThan(high + error(high));
}

test("curve and new batch cover in 93 to 97 %, for every kind of truth and number of batches", () => {
  for (const { kind, batches, tally } of fitted) {
    expectShare(`curve, ${kind}, ${batches}`, tally.curve, 93, 97);
    expectShare(`new batch, ${kind}, ${batches}`, tally.newBatch, 93, 97);
  }
  const all = poolOf(fitted);
  expectShare("curve", all.curve, 94, 96);
  expectShare("new batch", all.newBatch, 94, 96);
});

test("with the declared bias of the rigs drawn, the true curve is covered in 94 to 98 %", () => {
  for (const [what, { trueCurve }] of pooled(drawn)) expectShare(what, trueCurve, 94, 98);
});

test("the aim's interval, as printed, holds the place that the true curves have", () => {
  for (const [what, { printedAim }] of pooled(drawn)) expectShare(what, printedAim, 93, 98);
});

test("the water in all of a first dose is covered, and the first part seldom too much", () => {
  for (const [what, { dose, notTooMuch }] of pooled(drawn)) {
    expectShare(what, dose, 92, 97);
    expectShare(what, notTooMuch, 86, 93);
  }
});

test("what is given a chance of 70 % comes true in 65 to 75 %", () => {
  for (const [what, { chance }] of pooled(drawn)) {
    expect((100 * chance.promised) / chance.asked, what).toBeGreaterThan(67);
    expect((100 * chance.promised) / chance.asked, what).toBeLessThan(73);
    // Four batches of one founder at one place count as two, for they share the founder's luck.
    expectShare(what, [chance.kept / 2, chance.asked / 2], 65, 75);
  }
});

test("more batches narrow the aim", () => {
  const middleOf = (batches: number): number => {
    const { aimWidths } = poolOf(drawn.filter((cell) => cell.batches === batches));
    return [...aimWidths].sort((a, b) => a - b)[aimWidths.length >> 1]!;
  };
  expect(middleOf(12)).toBeLessThan(0.9 * middleOf(5));
});

test("four batches make a line where only up or down is possible, and no peak and no aim", () => {
  for (const kind of truthKinds) {
    const four = { batches: 4, kind, ills: allIlls };
    const { curve } = tryFounders({ ...four, drawn: false, founders: 100, first: 70_000 });
    expectShare(kind, curve, 91, 98);
    expect(curve[1]).toBe(100);
    expect(tryFounders({ ...four, drawn: true, founders: 5 }).aim[1]).toBe(0);
  }
});
