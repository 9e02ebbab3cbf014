// The table of models that formulas may call, against the models themselves.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { sandModelByName, sandModels } from "../../lib/sheet/functions-sand.ts";
import { faults, worked } from "./formula-scope.ts";

const folder = join(import.meta.dirname, "..", "..", "lib");
const read = (file: string): string => readFileSync(join(folder, file), "utf8");

/** Public functions of lib/sand that give one number or none, by their signatures. */
function scalarModels(): Map<string, string> {
  const found = new Map<string, string>();
  for (const [, list, file] of read("index.ts").matchAll(/export \{([^}]*)\} from "\.\/(sand\/[^"]+)"/g)) {
    const source = read(file!);
    for (const name of list!.split(",").map((each) => each.trim())) {
      const signature = new RegExp(`export function ${name}\\(([^]*?)\\): (number|number \\| null) \\{`).exec(
        source,
      );
      // A signature that runs on into the next function is another's.
      if (signature && !signature[1]!.includes("\n}\n")) found.set(name, signature[1]!);
    }
  }
  return found;
}

/** They take records or lists in a record, or figures that no bench reads off: a metal's heat, effusivities, a humid air. */
const beyondColumns = [
  ...["mullingEfficiencyPercent", "blended", "reductionOf", "mostWaterPerKgMetal", "waterBoiledOffKg"],
  ...["dryingHours", "openWaterKgM2H", "outdoorWaterCmDay", "stillWaterKgM2H"],
  ...["vapourPressurePa", "vapourPressureByWetBulbPa", "wetBulbCelsius", "pressureAtPa"],
  ...["behindGapC", "contactC", "heatIntoSandKJM2", "sandTemperatureC"],
];

test("every public model that takes plain numbers and gives one can stand in a formula, and no other", () => {
  const scalar = scalarModels();
  expect(scalar.size).toBeGreaterThan(45);
  for (const name of beyondColumns) expect(scalar.delete(name), name).toBe(true);
  expect(sandModels.map(({ name }) => name).sort()).toEqual([...scalar.keys()].sort());
});

test("an argument's unit is the one that its name ends in", () => {
  const ends: readonly (readonly [RegExp, string])[] = [
    [/percent/i, "%"],
    [/KgM3$/, "kg/m³"],
    [/GCm3$/, "g/cm³"],
    [/Cm2G$/, "cm²/g"],
    [/Cm2$/, "cm²"],
    [/KPa$/, "kPa"],
    [/HPa$/, "hPa"],
    [/(?<!Per)Kg$/, "kg"],
    [/Ml$/, "ml"],
    [/Mm$/, "mm"],
    [/Um$/, "µm"],
    [/J$/, "J"],
    [/G$/, "g"],
    [/seconds$/i, "s"],
    [/M2S$/, "m²/s"],
    [/MS$/, "m/s"],
    [/SMm2$/, "s/mm²"],
    [/Mm2$/, "mm²"],
    [/Mm3$/, "mm³"],
    [/M$/, "m"],
    [/L$/, "l"],
    [/C$/, "°C"],
    [/rpm$/i, "rpm"],
    [/^minutes$|Min$/, "min"],
    [/^celsius$/, "°C"],
    [/^(?:moisture|compactability)[AB]$/, "%"],
  ];
  for (const { name, args } of sandModels) {
    for (const arg of args) {
      const unit = ends.find(([end]) => end.test(arg.name))?.[1];
      const has = arg.unit?.kind === "percent" ? "%" : arg.unit?.text;
      expect(has, `${arg.name} of ${name}`).toBe(unit);
      if (/OfDamp/.test(arg.name)) expect(arg.unit?.of).toBe("damp mass");
      if (/compactability/.test(arg.name)) expect(arg.unit?.of).toBe("height");
    }
  }
});

test("a result's unit is the one that the name ends in", () => {
  const ends: readonly (readonly [RegExp, string])[] = [
    [/^loadForKPa$/, "kg"],
    [/Percent$/, "%"],
    [/KJKg$/, "kJ/kg"],
    [/PressurePa$/, "Pa"],
    [/Rpm$/, "rpm"],
    [/MS$|At2M$/, "m/s"],
    [/Minutes$/, "min"],
    [/KgM3$/, "kg/m³"],
    [/GCm3$/, "g/cm³"],
    [/MPaS$/, "mPa·s"],
    [/UPaS$/, "µPa·s"],
    [/KPa$/, "kPa"],
    [/JKg$/, "J/kg"],
    [/Cm2$/, "cm²"],
    [/(?<!Per)Kg$/, "kg"],
    [/Um$/, "µm"],
    [/J$/, "J"],
    [/G$/, "g"],
    [/Seconds$/, "s"],
    [/(?:Can|Water)Mm$/, "mmH2O"],
    [/Mm$/, "mm"],
  ];
  for (const { name, unit } of sandModels) {
    const has = unit?.kind === "percent" ? "%" : unit?.text;
    expect(has, name).toBe(ends.find(([end]) => end.test(name))?.[1]);
  }
});

test("the order of the arguments is that of the record, but for those that may be left out", () => {
  const sources = scalarModels();
  for (const { name, args } of sandModels) {
    const signature = sources.get(name)!;
    const written = [...signature.matchAll(/(?:readonly )?(\w+)(\??): (?:number|1 \| 2)/g)].map(
      ([, word]) => word!,
    );
    // Records that are put together from others name some of their members elsewhere.
    const named = args.map((arg) => arg.name).filter((arg) => written.includes(arg));
    if (!/&|Fall|Wetting|TwoMixes|Question|Parameters|pressedMm/.test(signature))
      expect(named, name).toEqual(written);
    expect(
      args.map(({ optional }) => optional),
      name,
    ).toEqual(args.map(({ optional }) => optional).sort());
  }
});

/** The examples of the models' own comments, where they give one; a plain number is taken in the argument's unit. */
test.each([
  ["permeabilityNumber(2000, 50.8, 50.8, 100, 60)", 50.13, 2],
  ["permeabilityNumber(2 l, 2 in, 2 in, 10 cm of water, 1 min)", 50.13, 2],
  ["moistureOfDampPercent(25 g, 0.023414 kg)", 6.344, 3],
  ["compressionKPa(10, 50.8)", 48.38, 2],
  ["specimenDensityGCm3(155, 50.8, 50.8)", 1.505, 3],
  ["compactabilityPercent(120, 66)", 45, 10],
  ["pressedCompactabilityPercent(55)", 45, 10],
  ["pressedCompactabilityPercent(66, 120)", 45, 10],
  ["settlingSeconds(20, 127, 20)", 353, 0],
  ["settlingSeconds(20 µm, 5 in, 68 °F)", 353, 0],
  ["waterViscosityMPaS(293.15 K)", 1.0016, 3],
  ["equilibriumMoisturePercent(8, 45)", 3.903, 3],
  ["dryToDampPercent(4.5)", 4.306, 3],
  ["waterToAddKg(100, 2.5, 3.5)", 1.036, 3],
  ["angularityCoefficient(163, 125.5)", 1.3, 2],
  ["movingLevelsCm2(100, 100)", 50, 10],
  ["floatingCanMm(785, 78.5)", 100, 10],
  ["shearKPa(5, 50.8)", 24.19, 2],
  ["shearKPa(5, 50.8, 2)", 12.09, 1],
  ["rammingJKg(14 lb, 2 in, 3, 155 g)", 61.2, 1],
  ["dropForMm(2)", 161.3, 1],
  ["bleedingVesselPermeability(20000, 50.8, 50.8, 200, 100, 4.03)", 50, 0],
  ["airViscosityUPaS(20)", 18.13, 2],
  ["panRpm(1450 rpm, 60)", 24.17, 2],
  ["freezingSeconds(4.63 mm, 2 s/mm²)", 42.87, 2],
  ["saturationPressurePa(20)", 2339.2, 0],
])("%s is %d", (text, value, digits) => {
  expect(worked(text).value).toBeCloseTo(value, digits);
});

test("arguments are held to their units, and percentages to what they are of", () => {
  expect(worked("equilibriumMoisturePercent(clay, 45)", { clay: 8 }).unit).toBe("% of damp mass");
  expect(faults("equilibriumMoisturePercent(moisture, 45)")).toEqual([
    "moisture | liveClayPercent of equilibriumMoisturePercent is counted in % of dry mix, and this is % of damp mass.",
  ]);
  expect(faults("permeabilityNumber(2000, wet, 50, 100, moisture)")).toEqual([
    "wet | heightMm of permeabilityNumber is counted in mm, and this is g.",
    "moisture | seconds of permeabilityNumber is counted in s, and this is % of damp mass.",
  ]);
  expect(faults("permeabilityFromGd(wet)")[0]).toContain("gd of permeabilityFromGd needs a plain number");
  expect(faults("permeabilityNumber(2000, 50, 50, 100)")[0]).toContain("There are 4 arguments here");
  expect(worked("airViscosityUPaS(20)", {}, { wants: "mPa·s" }).value).toBeCloseTo(0.01813, 5);
});

test("a model keeps nothing from one call to the next", () => {
  const shear = sandModelByName.get("shearKPa")!;
  const two = shear.call([5, 50.8, 2]);
  expect(shear.call([5, 50.8])).toBeCloseTo(2 * two, 12);
  expect(() => shear.call([5, 0])).toThrow(RangeError);
  expect(shear.call([5, 50.8, 2])).toBe(two);
});
