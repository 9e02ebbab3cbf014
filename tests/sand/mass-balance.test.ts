import { expect, test } from "vitest";
import { lossIntoPan, massBalance } from "../../lib/sand/mass-balance.ts";
import { byOpening } from "./curve-sands.ts";

const off = (lossG: number) => massBalance({ startG: 100, retainedG: [60, 40 - lossG] });

test("the limits stand at 0.3 and 1 % and belong to the better side", () => {
  expect([0, 0.3, 0.31, 1, 1.01].map((loss) => off(loss).verdict)).toEqual([
    "good",
    "good",
    "look",
    "look",
    "redo",
  ]);
  expect(off(0.3).issues).toEqual([]);
});

test("a gain is judged alike, with its own words", () => {
  expect([-0.3, -0.5, -2].map((loss) => off(loss).verdict)).toEqual(["good", "look", "redo"]);
  const gain = off(-2);
  expect(gain.lossG).toBeCloseTo(-2, 12);
  expect(gain.lossPercent).toBeCloseTo(-2, 12);
  expect(gain.issues).toMatchObject([{ code: "sand/mass-gained", severity: "warning" }]);
  expect(gain.issues[0]!.message).toContain("2 g more than went on");
  expect(off(2).issues).toMatchObject([{ code: "sand/mass-lost" }]);
});

test("the scale's steps may explain a small difference", () => {
  // Twelve readings and the start: 1.96 √(13/12) × 0.1 g = 0.204 g.
  const retainedG = [0, 0, 0.1, 0.2, 0.7, 16.5, 25, 5.7, 0.8, 0.2, 0.2, 0.4];
  const near = massBalance({ startG: 50, retainedG, stepG: 0.1 });
  expect(near.lossG).toBeCloseTo(0.2, 9);
  expect(near).toMatchObject({ verdict: "look", withinScale: true });
  expect(near.issues[0]!.message).toContain("scale may explain");
  expect(massBalance({ startG: 50.1, retainedG, stepG: 0.1 }).withinScale).toBe(false);
  expect(massBalance({ startG: 50, retainedG }).withinScale).toBeUndefined();
});

test("faulty weighings throw", () => {
  expect(() => massBalance({ startG: 0, retainedG: [1] })).toThrow(RangeError);
  expect(() => massBalance({ startG: 1, retainedG: [-1] })).toThrow(RangeError);
  expect(() => massBalance({ startG: 1, retainedG: [1], stepG: 0 })).toThrow(RangeError);
});

test("the whole loss goes into the pan, a gain comes out of it as far as it reaches", () => {
  const sand = byOpening([[0.212, 49]], 1);
  const pan = (lossG: number) => lossIntoPan(sand, lossG).fractions.at(-1)!;
  expect(pan(0.5)).toMatchObject({ label: "pan", mass: 1.5, openingMm: 0 });
  expect(lossIntoPan(sand, 0.5).total).toBeCloseTo(50.5, 12);
  expect(pan(-0.4).mass).toBeCloseTo(0.6, 12);
  expect(pan(-3).mass).toBe(0);
  expect(lossIntoPan(byOpening([[0.212, 49]]), 1)).toMatchObject({ hasPan: true, total: 50 });
  expect(sand.fractions.at(-1)!.mass).toBe(1);
  expect(() => lossIntoPan(sand, Number.NaN)).toThrow(RangeError);
});
