import { expect, test } from "vitest";
import { constant } from "../../lib/quantity/spread-of.ts";
import { forecastSeason } from "../../lib/sand/season.ts";
import type { Band } from "../../lib/sand/season-bands.ts";
import { ownBurnOut } from "../../lib/trial/own-burn-out.ts";
import { type FounderHabits, leftAlone, simulatedHeap } from "./heap-founders.ts";

const habits: FounderHabits = { heapKg: 60, metalKg: 4, pours: 16, testEvery: 2, scatter: 0.08, later: 6 };
const holds = ({ low, high }: Band, truth: number): boolean => low <= truth && truth <= high;

// tests/bench/heap-season.ts has the table of many founders; here 60, so that 95 % comes within ± 8.5 points (3 sd).
test("95 % intervals of burn-out, and of live clay after six more pours, hold the truth", () => {
  const count = 60;
  let [own, later] = [0, 0];
  for (let seed = 1; seed <= count; seed++) {
    const heap = simulatedHeap(seed * 7919 + 5, habits);
    const found = ownBurnOut(heap.history, { draws: 512 });
    const season = forecastSeason(found.now, leftAlone(habits), found.scores);
    if (holds(found.own, heap.burntKgPerKg)) own++;
    if (holds(season.points.at(-1)!.liveClayOfDryMixPercent, heap.laterPercent)) later++;
  }
  expect(own / count).toBeGreaterThan(0.86);
  expect(later / count).toBeGreaterThan(0.86);
});

test("a short record of a large heap has not moved the figure; a long one of a small heap has", () => {
  const short = simulatedHeap(3, { ...habits, heapKg: 200, pours: 4, metalKg: 1, burntKgPerKg: 0.07 });
  expect(ownBurnOut(short.history).moved).toBe(false);
  const long = simulatedHeap(3, { ...habits, heapKg: 40, metalKg: 5, pours: 40, burntKgPerKg: 0.07 });
  const found = ownBurnOut(long.history);
  expect(found.moved).toBe(true);
  expect(found.own.high).toBeLessThan(0.5 * found.prior.high);
});

test("no test at all leaves the range as it was", () => {
  const { history } = simulatedHeap(4, habits);
  const events = history.events.filter(({ kind }) => kind !== "tested" && kind !== "live clay");
  const { own, prior, moved, widthShare } = ownBurnOut({ ...history, events });
  expect(moved).toBe(false);
  expect(widthShare).toBeGreaterThan(0.97);
  expect(own.low / prior.low).toBeCloseTo(1, 1);
});

// By hand: of 100 kg, 20 pours of 2.5 kg at f kg/kg leave 8 (1 − 0.025 f)²⁰; 7.24 % is f = 0.2.
test("live clay measured sharply gives back the burnt sand that it was made from", () => {
  const { history } = simulatedHeap(1, habits);
  const pours = Array.from({ length: 20 }, (_, k) => ({
    kind: "pour" as const,
    id: `${k}`,
    date: `${k}`,
    metalKg: constant(2.5),
  }));
  const start = { ...history.start, dryKg: constant(100), liveClayOfDryMixPercent: constant(8) };
  const percent = 8 * (1 - 0.025 * 0.2) ** 20;
  const found = ownBurnOut({
    ...history,
    start,
    unwrittenLossPercent: constant(0),
    betweenPours: 0,
    events: [...pours, { kind: "live clay", date: "end", percent, sd: 0.01 }],
  });
  expect(found.own.value).toBeCloseTo(0.2, 2);
  expect(found.effectiveDraws).toBeGreaterThan(400);
});
