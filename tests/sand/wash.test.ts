import { expect, test } from "vitest";
import { jarClayPercent } from "../../lib/sand/jar.ts";
import { rigWords, rigWordsFor } from "../../lib/sand/rig-words.ts";
import { settlingCutUm } from "../../lib/sand/settling.ts";
import { clayByWashIssues, clayByWashPercent, washPlan } from "../../lib/sand/wash.ts";

test("half the depth takes half the time, and the cut stays", () => {
  const whole = washPlan({ celsius: 12 });
  const half = washPlan({ celsius: 12, depthMm: 63.5 });
  expect(half.seconds).toBeCloseTo(whole.seconds / 2, 9);
  expect(settlingCutUm({ depthMm: 63.5, seconds: half.seconds, celsius: 12 })).toBeCloseTo(20, 9);
  expect(whole.firstSeconds).toBe(2 * whole.seconds);
});

test("grain heavier than the sand, and a wash that took the grain along", () => {
  const codes = (grainG: number) => clayByWashIssues({ startG: 50, grainG }).map(({ code }) => code);
  expect([50, 46, 22].flatMap(codes)).toEqual([]);
  expect(codes(51)).toEqual(["sand/grain-above-start"]);
  expect(codes(15)).toEqual(["sand/wash-took-most"]);
});

test("whatever is said of the wash, nothing caustic goes into it", () => {
  const words = rigWords.flatMap((rig) => Object.values(rig)).join(" ");
  expect(words).toMatch(/never caustic soda/);
  expect(words.replace(/never caustic soda/g, "")).not.toMatch(/caustic|hydroxide|\blye\b/i);
});

test("a jar reads between its own mixes and nowhere else", () => {
  const mixes = [
    { clayPercent: 8, layerMm: 14 },
    { clayPercent: 4, layerMm: 6 },
  ];
  expect(jarClayPercent({ layerMm: 10, mixes })).toEqual({ value: 6, issues: [] });
  expect(jarClayPercent({ layerMm: 20, mixes }).issues[0]!.code).toBe("sand/jar-outside-mixes");
  expect(jarClayPercent({ layerMm: 20, mixes }).value).toBeUndefined();
  const flat = [...mixes, { clayPercent: 6, layerMm: 15 }];
  expect(jarClayPercent({ layerMm: 10, mixes: flat }).issues[0]!.code).toBe("sand/jar-mixes-do-not-rise");
});

test("every rig names its hazard, and every pressure and dead weight its limit or stop", () => {
  expect(rigWords.every(({ hazard, shows, doubt }) => hazard !== "" && shows !== "" && doubt !== "")).toBe(
    true,
  );
  // Suction on glass has the smaller limit of the test's own card.
  for (const { hazard } of rigWordsFor("permeability"))
    expect(hazard).toMatch(/suction/.test(hazard) ? /200 mm of water/ : /1 m of water/);
  for (const test of ["green compression", "green shear", "splitting"])
    expect(rigWordsFor(test)[0]!.hazard).toMatch(/stop under the load/);
  for (const row of rigWordsFor("moisture")) expect(row.hazard).toMatch(/not used for food again/);
  expect(rigWordsFor("moisture", "pan")).toHaveLength(1);
});

test("misuse throws", () => {
  expect(() => clayByWashPercent({ startG: 0, grainG: 1 })).toThrow(RangeError);
  expect(() => washPlan({ celsius: -5 })).toThrow(RangeError);
  expect(() => jarClayPercent({ layerMm: 5, mixes: [{ clayPercent: 4, layerMm: 6 }] })).toThrow(RangeError);
});
