// Heat, freezing and burn-out: their limits, and the ranges against the plate that they are taken from.

import { expect, test } from "vitest";
import { mostWaterPerKgMetal, waterBoiledOffKg } from "../../lib/sand/boiled-off.ts";
import {
  bondLostC,
  burntSandPerKgMetal,
  burntShare,
  clayBurntPerKgMetal,
  sandToMetal,
  wearFactorDoseKg,
} from "../../lib/sand/burn-out.ts";
import {
  freezingByShape,
  freezingConstantSMm2,
  freezingConstants,
  freezingSeconds,
} from "../../lib/sand/freezing.ts";
import {
  behindGapC,
  heatedDepthMm,
  heatIntoSandKJM2,
  sandTemperatureC,
} from "../../lib/sand/heated-depth.ts";
import { type Metal, metalNames } from "../../lib/sand/metals.ts";
import { diffusivityM2S, effusivity, metalHeats, sandHeats } from "../../lib/sand/moulding-heat.ts";
import { plateHeatedDepths } from "../../lib/sand/plate-cooling.ts";

const flemings = sandHeats[0]!;

test.each<[Metal, "sodium bentonite" | "calcium bentonite", number, number]>([
  ["aluminium", "sodium bentonite", 500, 638],
  ["aluminium", "calcium bentonite", 300, 550],
  ["brass and bronze", "sodium bentonite", 500, 700],
  ["brass and bronze", "calcium bentonite", 300, 600],
  ["grey iron", "calcium bentonite", 316, 700],
])("%s on %s: the range follows from the plate at %i to %i °C", (metal, clayKind, hot, cool) => {
  const all = metalHeats[metal].flatMap((one) =>
    plateHeatedDepths({ metal: one, sand: flemings, targetsC: [hot, cool] }).map((at) => at.sandKgPerKg),
  );
  const { low, high } = burntSandPerKgMetal({ metal, clayKind });
  // The ends are rounded and hold the spread of the sands and of the grid.
  expect(Math.max(...all) / high > 0.85 && Math.max(...all) / high < 1.1).toBe(true);
  expect(Math.min(...all) / low > 0.85 && Math.min(...all) / low < 1.35).toBe(true);
});

test("a heat balance closes: what the plate's sand takes is no more than the metal gives", () => {
  const metal = metalHeats.aluminium[0]!;
  const targetsC = [60, 100, 150, 200, 300, 400, 500, 600];
  const at = plateHeatedDepths({ metal, sand: flemings, targetsC });
  for (let i = 1; i < at.length; i++) expect(at[i]!.perHalf).toBeLessThan(at[i - 1]!.perHalf);
  // Sand past 300 °C cannot hold more heat above 20 °C than the metal gives down to it.
  const past300 = at[4]!.sandKgPerKg * flemings.heatJKgK * 280;
  const given = 1080 * (720 - 660.3) + 397e3 + 1130 * (660.3 - 300);
  expect(past300).toBeLessThan(given);
  expect(past300).toBeGreaterThan(0.2 * given);
});

test("the spread has the ends for its 95 %, one source for all pours, and its share of clay", () => {
  const sand = burntSandPerKgMetal({ metal: "aluminium", clayKind: "sodium bentonite" });
  expect(sand.spread.low).toBeCloseTo(0.02, 3);
  expect(sand.spread.high).toBeCloseTo(0.25, 2);
  expect(sand.spread.value).toBeCloseTo(Math.sqrt(0.005), 10);
  const clay = clayBurntPerKgMetal({ metal: "aluminium", clayKind: "sodium bentonite", liveClayPercent: 8 });
  expect(clay.spread.high / sand.spread.high).toBeCloseTo(0.08, 8);
  expect([clay.low, clay.high]).toEqual([0.0016, 0.02]);
  expect(clay.spread.shares.map(({ id }) => id)).toEqual(sand.spread.shares.map(({ id }) => id));
  expect(sand.tag).toBe("our own");
});

test("a clay of unknown kind spans both; calcium bentonite burns sooner everywhere", () => {
  for (const metal of metalNames) {
    const [sodium, calcium, either] = (["sodium bentonite", "calcium bentonite", undefined] as const).map(
      (clayKind) => burntSandPerKgMetal({ metal, clayKind }),
    );
    expect(calcium!.high).toBeGreaterThan(sodium!.high);
    expect([either!.low, either!.high]).toEqual([sodium!.low, calcium!.high]);
    expect(either!.tag).toBe("our own");
  }
  expect(bondLostC["calcium bentonite"]).toBeLessThan(bondLostC["sodium bentonite"]);
  // 1180 and 600 °F, as printed.
  expect([((1180 - 32) / 1.8).toFixed(0), ((600 - 32) / 1.8).toFixed(0)]).toEqual(["638", "316"]);
});

test("heat that went in is what the sand holds: the integral of the temperatures", () => {
  const face = { faceC: 660, startC: 20, seconds: 100, diffusivityM2S: diffusivityM2S(flemings) };
  let kJ = 0;
  for (let mm = 0.05; mm < 100; mm += 0.1)
    kJ += (sandTemperatureC({ ...face, depthMm: mm }) - 20) * flemings.densityKgM3 * flemings.heatJKgK * 1e-7;
  expect(heatIntoSandKJM2({ ...face, effusivity: effusivity(flemings) }) / kJ).toBeCloseTo(1, 4);
});

test("a face behind a gap lags, and comes up to a held face as the gap closes", () => {
  const given = {
    bodyC: 660,
    startC: 20,
    seconds: 60,
    diffusivityM2S: diffusivityM2S(flemings),
    conductivityWMK: 0.61,
  };
  const at = (gapWM2K: number, depthMm: number) => behindGapC({ ...given, gapWM2K, depthMm });
  expect(at(100, 0) > 250 && at(100, 0) < 450).toBe(true);
  for (const depthMm of [0, 2, 10]) {
    const held = sandTemperatureC({ faceC: 660, ...given, depthMm });
    expect(Math.abs(at(1e6, depthMm) - held)).toBeLessThan(0.5);
    // Where two ways to work out the same product meet.
    expect(Math.abs(at(605, depthMm) - at(606, depthMm))).toBeLessThan(1);
  }
});

test("targets that the sand never passes, or never lacked", () => {
  const sand = { faceC: 595, startC: 20, seconds: 60, diffusivityM2S: 3.6e-7 };
  expect(heatedDepthMm({ ...sand, targetC: 638 })).toBe(0);
  expect(heatedDepthMm({ ...sand, targetC: 20 })).toBe(Number.POSITIVE_INFINITY);
  expect(heatedDepthMm({ ...sand, targetC: 300, seconds: 0 })).toBe(0);
});

test("a lump freezes sooner than a plate of its modulus, more superheat later", () => {
  const metal = metalHeats.aluminium[0]!;
  const { plateSeconds, sphereSeconds } = freezingByShape({ modulusMm: 10, metal, sand: flemings });
  expect(sphereSeconds).toBeLessThan(plateSeconds);
  expect(
    freezingSeconds({ modulusMm: 20, constantSMm2: 2 }) / freezingSeconds({ modulusMm: 10, constantSMm2: 2 }),
  ).toBe(4);
  expect(freezingConstants("aluminium", 780).high).toBeGreaterThan(freezingConstants("aluminium").high);
  expect(freezingConstants("aluminium", 500).high).toBeLessThan(freezingConstants("aluminium").high);
});

test("nothing is made up outside the limits", () => {
  const metal = metalHeats.aluminium[0]!;
  const calls: readonly (() => unknown)[] = [
    () => heatedDepthMm({ faceC: 20, startC: 20, targetC: 20, seconds: 1, diffusivityM2S: 1e-7 }),
    () => heatedDepthMm({ faceC: 600, startC: 20, targetC: 100, seconds: -1, diffusivityM2S: 1e-7 }),
    () => heatedDepthMm({ faceC: 600, startC: 20, targetC: 100, seconds: 1, diffusivityM2S: 0 }),
    () => heatedDepthMm({ faceC: 600, startC: 20, targetC: Number.NaN, seconds: 1, diffusivityM2S: 1e-7 }),
    () => freezingSeconds({ modulusMm: 0, constantSMm2: 2 }),
    () => freezingConstantSMm2({ metal, sand: flemings, pouredC: 600 }),
    () => plateHeatedDepths({ metal, sand: flemings, pouredC: 600, targetsC: [300] }),
    () => plateHeatedDepths({ metal, sand: flemings, targetsC: [20] }),
    () => clayBurntPerKgMetal({ metal: "aluminium", liveClayPercent: 101 }),
    () => burntShare({ burntSandPerKg: 0, sandToMetal: 3 }),
    () => sandToMetal({ flaskL: 1, castingL: 1, metalKg: 1 }),
    () => wearFactorDoseKg({ wearFactor: -0.1, clayPercent: 8, batchKg: 1, sandToMetal: 3 }),
    () => waterBoiledOffKg({ sandKg: 1, fromC: 90 }),
    () => mostWaterPerKgMetal({ metal, moistureOfDampPercent: 0 }),
  ];
  for (const call of calls) expect(call).toThrow(RangeError);
});
