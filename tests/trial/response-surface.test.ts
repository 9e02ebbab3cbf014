// Surfaces against published examples, and their coverage on simulated founders who varied water and clay together.

import { expect, test } from "vitest";
import { lackOfFit } from "../../lib/trial/lack-of-fit.ts";
import { responseSurface } from "../../lib/trial/response-surface.ts";
import { seeded } from "../seeded.ts";

/** ChemReact: Myers, Montgomery & Anderson-Cook, Response Surface Methodology (2009), table 7.6; output of the R package rsm. */
const time = [80, 80, 90, 90, 85, 85, 85, 85, 85, 92.07, 77.93, 85, 85, 85];
const celsius = [170, 180, 170, 180, 175, 175, 175, 175, 175, 175, 175, 182.07, 167.93, 175];
const yields = [80.5, 81.5, 82, 83.5, 83.9, 84.3, 84, 79.7, 79.8, 78.4, 75.6, 78.5, 77, 79.5];
const days = time.map((_, i) => (i < 7 ? "first" : "second"));

test("ChemReact: the maximum and its region are the published ones", () => {
  const { form, why, top, at, used } = responseSurface({ x: time, other: celsius, y: yields, blocks: days });
  expect([form, why, used.length, top!.kind]).toEqual(["quadratic", undefined, 14, "maximum"]);
  expect(top!.x).toBeCloseTo(86.86148, 4);
  expect(top!.other).toBeCloseTo(176.6719, 4);
  // In the first block 84.3656, in the second 4.457530 less; seven batches each.
  expect(at(top!.x, top!.other)!.mean).toBeCloseTo(84.3656 - 4.45753 / 2, 3);
  // Box and Hunter's region in coded units from 0.286707 to 0.476388 and 0.218338 to 0.481728.
  const { x, other } = top!.region!;
  expect(x.low).toBeCloseTo(85 + 5 * 0.286707, 4);
  expect(x.high).toBeCloseTo(85 + 5 * 0.476388, 4);
  expect(other.low).toBeCloseTo(175 + 5 * 0.218338, 4);
  expect(other.high).toBeCloseTo(175 + 5 * 0.481728, 4);
});

test("ChemReact: F for lack of fit 0.5307, p 0.6851, on 3 and 4 degrees of freedom", () => {
  const u = time.map((v) => (v - 85) / 5);
  const v = celsius.map((value) => (value - 175) / 5);
  const design = u.map((a, i) => [1, a, v[i]!, a * v[i]!, a * a, v[i]! ** 2, i < 7 ? 0 : 1]);
  const cells = u.map((a, i) => `${a} ${v[i]} ${days[i]}`);
  // Below 0 throughout, so that the scale as printed alone is looked at.
  const found = lackOfFit(
    design,
    yields.map((y) => y - 100),
    cells,
  )!;
  expect(found.f).toBeCloseTo(0.5307, 4);
  expect(found.p).toBeCloseTo(0.6851, 4);
  expect(found.df).toEqual([3, 4]);
});

test("the sloping ridge of carbon monoxide (Box, Hunter & Hunter 2005, table 10.17) is no optimum", () => {
  const x = [1, 2, 3].flatMap(() => [-1, -1, 0, 0, 1, 1]);
  const other = [-1, 0, 1].flatMap((level) => [0, 0, 0, 0, 0, 0].map(() => level));
  const y = [61.9, 65.6, 80.9, 78, 89.7, 93.8, 72.1, 67.3, 80.1, 81.4, 77.8, 74.8, 66.4, 68.2, 68.9, 66, 60.2, 57.9]; // biome-ignore format: as printed
  const { form, top } = responseSurface({ x, other, y });
  expect(form).toBe("quadratic");
  expect(["ridge", "saddle"]).toContain(top!.kind);
  expect(top!.region).toBeUndefined();
  expect(top!.x).toBeCloseTo(-14.81, 1);
  expect(top!.other).toBeCloseTo(15.44, 1);
});

const water = [2.8, 2.8, 2.8, 3.5, 3.5, 3.5, 4.2, 4.2, 4.2];
const clay = [6, 8, 10, 6, 8, 10, 6, 8, 10];

test("a hill whose top lies beyond what was tried is said to lie outside, a saddle to be one", () => {
  const random = seeded(5);
  const hill = water.map(
    (m, i) => 60 - 4 * (m - 6) ** 2 - 0.5 * (clay[i]! - 14) ** 2 + 0.01 * random.normal(),
  );
  expect(responseSurface({ x: water, other: clay, y: hill }).top!.kind).toBe("outside what was tried");
  const saddle = water.map(
    (m, i) => 60 + 9 * (m - 3.5) ** 2 - 2 * (clay[i]! - 8) ** 2 + 0.01 * random.normal(),
  );
  const { top } = responseSurface({ x: water, other: clay, y: saddle });
  expect([top!.kind, top!.region]).toEqual(["saddle", undefined]);
});

test("as curved as the batches allow: a quadratic, a plane, nothing, and why", () => {
  const y = water.map((m, i) => 10 * m + clay[i]!);
  const first = (count: number) => ({
    x: water.slice(0, count),
    other: clay.slice(0, count),
    y: y.slice(0, count),
  });
  const told = [9, 7, 4].map((count) => responseSurface(first(count))).map(({ form, why }) => [form, why]);
  expect(told).toEqual([
    ["quadratic", undefined],
    ["plane", "too few batches"],
    ["none", "too few batches"],
  ]);
  // Nine batches at two clays hold no bend along clay.
  const two = clay.map((value) => (value < 9 ? 6 : 10));
  expect(responseSurface({ x: water, other: two, y }).why).toBe("too few places");
  const plane = responseSurface(first(7));
  expect(plane.at(3, 7)!.mean).toBeCloseTo(37, 9);
  expect(plane.top).toBeUndefined();
  expect([plane.tried(3, 7), plane.tried(9, 20)]).toEqual([true, false]);
});

test("water that went along with clay: no surface, and it says so", () => {
  const along = clay.map((value, i) => 0.4 * value + [0.05, -0.05, 0][i % 3]!);
  const y = along.map((m) => 10 * m);
  const { form, why, rho, at } = responseSurface({ x: along, other: clay, y });
  expect([form, why, at(3, 8)]).toEqual(["none", "the two went together", undefined]);
  expect(rho).toBeGreaterThan(0.98);
});

test("intervals of mean and new batch cover in 93 to 97 % of simulated founders, with and without days", () => {
  const random = seeded(77);
  const [mean, fresh, both] = [[0, 0], [0, 0], [0, 0]]; // biome-ignore format: three tallies
  for (let n = 0; n < 500; n++) {
    const [top, best, fall, lean] = [random.uniform(50, 90), random.uniform(3, 3.8), random.uniform(4, 12), random.uniform(-2, 3)]; // biome-ignore format: one truth
    const truth = (m: number, c: number): number =>
      top - fall * (m - best - 0.15 * (c - 8)) ** 2 + lean * (c - 8) - 0.2 * (c - 8) ** 2;
    const twoDays = n % 2 === 0;
    const off = random.uniform(-6, 6);
    const x = [...water, 3.2, 3.9, 3.5].map((m) => m + random.uniform(-0.05, 0.05));
    const other = [...clay, 7, 9, 8];
    const blocks = x.map((_, i) => (twoDays && i % 2 === 0 ? "Sunday" : "Saturday"));
    // The mean is that over both days, six batches each.
    const day = (name: string): number => (twoDays ? (name === "Sunday" ? off : -off) : 0);
    const y = x.map((m, i) => truth(m, other[i]!) + day(blocks[i]!) + 2.5 * random.normal());
    const surface = responseSurface({ x, other, y, blocks });
    const [m, c] = [random.uniform(2.9, 4.1), random.uniform(6.2, 9.8)];
    const { low, high, newLow, newHigh } = surface.at(m, c)!;
    const value = truth(m, c) + 2.5 * random.normal();
    both[1]!++;
    if (truth(m, c) >= low && truth(m, c) <= high) mean[0]!++;
    if (value >= newLow && value <= newHigh) fresh[0]!++;
  }
  for (const [held] of [mean, fresh]) {
    expect(held! / both[1]!).toBeGreaterThan(0.93);
    expect(held! / both[1]!).toBeLessThan(0.975);
  }
});
