import fc from "fast-check";
import { expect, test } from "vitest";
import {
  clayOfDryMixToSandPercent,
  clayOfSandToDryMixPercent,
  clayToWeighKg,
  mixShares,
} from "../../lib/sand/mix-shares.ts";
import { ratioMoisturePercent, waterPerClay } from "../../lib/sand/water-per-clay.ts";

test("damp sand and bagged clay give the same shares as their dry masses and all the water", () => {
  const dry = mixShares({ sandKg: 9.5, clayKg: 0.9, waterKg: 0.5 + 0.1 + 0.3 });
  const damp = mixShares({
    sandKg: 9.8,
    clayKg: 1,
    waterKg: 0.5,
    sandMoisturePercent: (100 * 0.3) / 9.8,
    clayMoisturePercent: 10,
  });
  for (const name of Object.keys(dry) as (keyof typeof dry)[]) expect(damp[name]).toBeCloseTo(dry[name]!, 10);
});

test("shares keep to each other in any recipe", () => {
  const mass = fc.double({ min: 0.1, max: 50, noNaN: true });
  fc.assert(
    fc.property(mass, mass, mass, (sandKg, clayKg, waterKg) => {
      const row = mixShares({ sandKg, clayKg, waterKg });
      expect(clayOfSandToDryMixPercent(row.clayOfSandPercent)).toBeCloseTo(row.clayOfDryMixPercent, 8);
      expect(waterPerClay(row)).toBeCloseTo(row.waterPerClay!, 8);
      const back = ratioMoisturePercent({
        clayOfDryMixPercent: row.clayOfDryMixPercent,
        waterPerClay: row.waterPerClay!,
      });
      expect(back).toBeCloseTo(row.moistureOfDampPercent, 8);
    }),
  );
});

test("no clay: no water per clay", () => {
  expect(mixShares({ sandKg: 10, clayKg: 0, waterKg: 0.4 }).waterPerClay).toBeNull();
});

test("misuse throws", () => {
  const good = { sandKg: 10, clayKg: 1, waterKg: 0.4 };
  for (const bad of [{ sandKg: 0 }, { clayKg: -1 }, { waterKg: Number.NaN }, { sandMoisturePercent: 100 }])
    expect(() => mixShares({ ...good, ...bad })).toThrow(RangeError);
  expect(() => clayToWeighKg({ dryClayKg: 1, clayMoisturePercent: 100 })).toThrow(RangeError);
  expect(() => clayOfDryMixToSandPercent(100)).toThrow(RangeError);
  expect(() => waterPerClay({ moistureOfDampPercent: 4, clayOfDampPercent: 0 })).toThrow(RangeError);
});
