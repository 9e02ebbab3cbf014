import { expect, test } from "vitest";
import { clayAfterCyclesKg, heapSteadyState } from "../../lib/sand/heap-steady-state.ts";
import { forecastSeason, poursToFloor, type SeasonDraw, type SeasonPlan } from "../../lib/sand/season.ts";

const draw: SeasonDraw = {
  heap: { sandKg: 92, finesKg: 0, liveClayKg: 8, deadClayKg: 0, otherKg: 0, waterKg: 3.6 },
  burntKgPerKg: 1,
  lostKg: 5,
  driedKg: 0.5,
  newSandFinesPercent: 0,
};
const plan: SeasonPlan = {
  pours: 100,
  metalKg: 2,
  mend: "every pour",
  toLiveClayOfDryMixPercent: 8,
  toMoistureOfDampPercent: 3.5,
  clayMoisturePercent: 0,
  clayLivePercent: 100,
  newSandMoisturePercent: 0,
  betweenPours: 0,
};
const still = (): number[] => [0];

test("mended: the steady state's clay and sand, and its dead clay, to 1e-9 after a hundred pours", () => {
  const { points } = forecastSeason([draw], plan, still);
  const steady = heapSteadyState({ dryKg: 100, liveClayKg: 8, burntPercent: 2, lostPercent: 5 });
  const last = points.at(-1)!;
  expect(last.clayKg.value).toBeCloseTo(100 * steady.clayKg, 9);
  expect(last.newSandKg.value).toBeCloseTo(100 * steady.newSandKg, 9);
  const exact = clayAfterCyclesKg(
    draw.heap,
    { burntPercent: 2, lostPercent: 5, clayKg: steady.clayKg, clayLivePercent: 100 },
    100,
  );
  expect(last.deadClayOfDryMixPercent.value).toBeCloseTo(exact.deadClayKg, 9);
  expect(last.dryKg.value).toBeCloseTo(100, 9);
});

// Said on purpose: burnt sand of one mass eats a larger share of a heap that shrinks.
test("left alone without losses: the geometric course 8 (1 − β)ⁿ exactly; with losses faster than it", () => {
  const kept = forecastSeason([{ ...draw, lostKg: 0 }], { ...plan, mend: "none", pours: 10 }, still);
  expect(kept.points.at(-1)!.liveClayOfDryMixPercent.value).toBeCloseTo(8 * 0.98 ** 10, 10);
  const shrinking = forecastSeason([draw], { ...plan, mend: "none", pours: 10 }, still);
  const share = shrinking.points.at(-1)!.liveClayOfDryMixPercent.value;
  expect(share).toBeLessThan(8 * 0.98 ** 10);
  expect(8 * 0.98 ** 10 - share).toBeLessThan(0.5);
});

test("pours to a floor: 8 % falling 2 % a pour is below 7 after the seventh (6.61), and never within three", () => {
  const course = (pours: number) =>
    forecastSeason([{ ...draw, lostKg: 0 }], { ...plan, mend: "none", pours }, still, { points: false });
  expect(poursToFloor(course(20), 7)).toEqual({ low: 7, value: 7, high: 7 });
  expect(poursToFloor(course(3), 7).value).toBe(Number.POSITIVE_INFINITY);
  expect(course(3).points).toEqual([]);
});

test("a plan that cannot be is refused", () => {
  expect(() => forecastSeason([], plan, still)).toThrow(RangeError);
  expect(() => forecastSeason([draw], { ...plan, clayLivePercent: 7 }, still)).toThrow(RangeError);
  expect(() => forecastSeason([draw], { ...plan, pours: 1.5 }, still)).toThrow(RangeError);
});
