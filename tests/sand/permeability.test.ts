import { expect, test } from "vitest";
import { airViscosityUPaS, permeabilityAt20 } from "../../lib/sand/air.ts";
import { heightOverArea, permeabilityFromGd, permeabilityNumber } from "../../lib/sand/permeability.ts";
import {
  blankIssues,
  specimenSeconds,
  specimenWaterMm,
  withoutLeak,
} from "../../lib/sand/permeability-corrections.ts";
import { permeabilityIssues } from "../../lib/sand/permeability-issues.ts";
import {
  aspiratorPermeability,
  bleedingVesselPermeability,
  fallingColumnPermeability,
  floatingCanMm,
  movingLevelsCm2,
} from "../../lib/sand/permeability-rigs.ts";

const specimen = { heightMm: 50, diameterMm: 50 };
/** Flow through a specimen of a permeability number, cm³/s at a pressure in mm of water. */
const flowMlS = (number: number, waterMm: number) =>
  (number * (waterMm / 10)) / heightOverArea(specimen) / 60;

test("falling column and two moving levels: a rig run step by step gives its own number back", () => {
  // Levels in tubes of 80 and 120 cm², run by small steps from the flow through a specimen of 65.
  let [high, low, seconds] = [300, 60, 0];
  const start = high - low;
  const dt = 0.0005;
  while (high - low > 100) {
    const ml = flowMlS(65, high - low) * dt;
    high -= (10 * ml) / 80;
    low += (10 * ml) / 120;
    seconds += dt;
  }
  const number = fallingColumnPermeability({
    columnCm2: movingLevelsCm2(80, 120),
    ...specimen,
    fromMm: start,
    toMm: high - low,
    seconds,
  });
  expect(Math.abs(number / 65 - 1)).toBeLessThan(1e-3);
});

test("bleeding vessel: within 5 % of a gas that expands as it goes, closer at low pressure", () => {
  // Isothermal gas: flow at the mean pressure of the specimen, mass leaving by Darcy's law for gases.
  const numberFrom = (fromMm: number, toMm: number) => {
    const airMm = 10 * 1033.23;
    let [gauge, seconds] = [fromMm, 0];
    const dt = 0.002;
    while (gauge > toMm) {
      const ml = flowMlS(50, gauge) * dt * (1 + gauge / (2 * airMm));
      gauge -= (airMm * ml) / 40_000;
      seconds += dt;
    }
    return bleedingVesselPermeability({ vesselMl: 40_000, ...specimen, fromMm, toMm: gauge, seconds });
  };
  expect(Math.abs(numberFrom(200, 100) / 50 - 1)).toBeLessThan(0.01);
  const high = numberFrom(1000, 700) / 50 - 1;
  expect(high).toBeGreaterThan(0.01);
  expect(high).toBeLessThan(0.05);
});

test("thinner air on a mountain: the same fall of the gauge in the same time is less air lost per number", () => {
  const run = { vesselMl: 40_000, ...specimen, fromMm: 200, toMm: 100, seconds: 8 };
  const ratio =
    bleedingVesselPermeability({ ...run, airHPa: 800 }) /
    bleedingVesselPermeability({ ...run, airHPa: 1000 });
  expect(ratio).toBeCloseTo(1.25, 10);
});

test("a bottle that drains is the same test by its own names; a can's weight is its pressure", () => {
  const number = permeabilityNumber({ airMl: 500, ...specimen, waterMm: 50, seconds: 30 });
  expect(aspiratorPermeability({ waterOutMl: 500, ...specimen, suctionMm: 50, seconds: 30 })).toBe(number);
  expect(floatingCanMm({ netG: 400, canCm2: 80 })).toBe(50);
});

test("a blank run comes off: a hose in front of the specimen, by time and by pressure alike", () => {
  // Hose and specimen in a row; the hose would pass 900 as a specimen, the specimen is 70, 100 mm in all.
  const together = 1 / (1 / 70 + 1 / 900);
  const seconds = 1000 / flowMlS(together, 100);
  const blankSeconds = 1000 / flowMlS(900, 100);
  const run = { airMl: 1000, ...specimen };
  const byTime = permeabilityNumber({
    ...run,
    waterMm: 100,
    seconds: specimenSeconds({ seconds, blankSeconds }),
  });
  expect(byTime).toBeCloseTo(70, 8);
  const blankWaterMm = (100 * together) / 900;
  const byPressure = permeabilityNumber({
    ...run,
    waterMm: specimenWaterMm({ waterMm: 100, blankWaterMm }),
    seconds,
  });
  expect(byPressure).toBeCloseTo(70, 8);
});

test("a leak along the wall comes off", () => {
  expect(withoutLeak({ permeability: 80, leakPermeability: 3 })).toBe(77);
});

test("warm air reads low, cold air high; 20 °C changes nothing", () => {
  expect(permeabilityAt20({ permeability: 50, celsius: 20 })).toBe(50);
  expect(permeabilityAt20({ permeability: 50, celsius: 10 }).toFixed(1)).toBe("48.7");
  expect(permeabilityAt20({ permeability: 50, celsius: 40 })).toBeGreaterThan(52);
});

test("more than 100 gf/cm² is refused, by every rig", () => {
  const run = { ...specimen, seconds: 10 };
  expect(() => permeabilityNumber({ ...run, airMl: 2000, waterMm: 1000 })).not.toThrow();
  for (const refused of [
    () => permeabilityNumber({ ...run, airMl: 2000, waterMm: 1001 }),
    () => aspiratorPermeability({ ...run, waterOutMl: 2000, suctionMm: 1001 }),
    () => fallingColumnPermeability({ ...run, columnCm2: 50, fromMm: 1001, toMm: 500 }),
    () => bleedingVesselPermeability({ ...run, vesselMl: 9000, fromMm: 1001, toMm: 500 }),
    () => floatingCanMm({ netG: 5000, canCm2: 40 }),
  ])
    expect(refused).toThrow(/burst/);
});

test("readings that cannot carry a figure are told", () => {
  const codes = (waterMm: number[], seconds: number) =>
    permeabilityIssues({ waterMm, seconds }).map(({ code }) => code.replace("sand/permeability-", ""));
  expect(codes([100], 20)).toEqual([]);
  expect(codes([100], 0)).toEqual(["no-time"]);
  expect(codes([100], 1.5)).toEqual(["short"]);
  expect(codes([1500, 800], 20)).toEqual(["pressure-refused"]);
  expect(codes([100, 0], 20)).toEqual(["no-pressure"]);
  expect(codes([100, 15], 20)).toEqual(["pressure-low"]);
  const blank = (blankSeconds: number) =>
    blankIssues({ seconds: 20, blankSeconds }).map(({ code, severity }) => `${code} ${severity}`);
  expect(blank(2)).toEqual([]);
  expect(blank(5)).toEqual(["sand/blank-large warning"]);
  expect(blank(21)).toEqual(["sand/blank-as-long error"]);
});

test("misuse throws", () => {
  const run = { ...specimen, airMl: 2000, waterMm: 100, seconds: 10 };
  for (const bad of [{ seconds: 0 }, { waterMm: 0 }, { airMl: -1 }, { heightMm: 0 }])
    expect(() => permeabilityNumber({ ...run, ...bad })).toThrow(RangeError);
  const fall = { columnCm2: 50, ...specimen, fromMm: 200, toMm: 100, seconds: 10 };
  expect(() => fallingColumnPermeability({ ...fall, toMm: 200 })).toThrow(RangeError);
  expect(() => bleedingVesselPermeability({ ...fall, vesselMl: 9000, airHPa: 101_325 })).toThrow(RangeError);
  expect(() => specimenSeconds({ seconds: 5, blankSeconds: 5 })).toThrow(RangeError);
  expect(() => specimenWaterMm({ waterMm: 5, blankWaterMm: 6 })).toThrow(RangeError);
  expect(() => withoutLeak({ permeability: 5, leakPermeability: 6 })).toThrow(RangeError);
  expect(() => airViscosityUPaS(293)).toThrow(RangeError);
  expect(() => permeabilityFromGd(0)).toThrow(RangeError);
});
