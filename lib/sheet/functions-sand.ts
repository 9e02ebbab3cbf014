// The models of the sand that a formula may call by their public names, with the units of their arguments.

import { airViscosityUPaS, permeabilityAt20 } from "../sand/air.ts";
import { angularityCoefficient } from "../sand/angularity.ts";
import {
  compactabilityByWeighingPercent,
  compactabilityPercent,
  pressedCompactabilityPercent,
} from "../sand/compactability.ts";
import { compressionKPa, loadForKPa } from "../sand/compression.ts";
import {
  equilibriumCompactabilityPercent,
  equilibriumMoisturePercent,
} from "../sand/equilibrium-moisture.ts";
import { compactedGreenStrengthPercent, moistureGreenStrengthPercent } from "../sand/green-strength-bond.ts";
import { clayOfDryMixToSandPercent, clayOfSandToDryMixPercent } from "../sand/mix-shares.ts";
import {
  dampToDryPercent,
  dryToDampPercent,
  moistureOfDampPercent,
  moistureStepPercent,
} from "../sand/moisture.ts";
import { permeabilityConstant, permeabilityFromGd, permeabilityNumber } from "../sand/permeability.ts";
import { specimenSeconds, specimenWaterMm, withoutLeak } from "../sand/permeability-corrections.ts";
import { kozenyCarmanNumber } from "../sand/permeability-model.ts";
import {
  aspiratorPermeability,
  bleedingVesselPermeability,
  fallingColumnPermeability,
  floatingCanMm,
  movingLevelsCm2,
} from "../sand/permeability-rigs.ts";
import { smallestPortionG } from "../sand/portion.ts";
import { dropForMm, rammerEnergyJ, rammingJKg } from "../sand/rammer.ts";
import { settlingCutUm, settlingSeconds, stokesReynolds } from "../sand/settling.ts";
import { shearKPa } from "../sand/shear.ts";
import { airPorosityPercent, porosityPercent, specimenDensityGCm3 } from "../sand/specimen.ts";
import { splittingKPa } from "../sand/splitting.ts";
import { clayByWashPercent } from "../sand/wash.ts";
import { waterDensityKgM3, waterViscosityMPaS } from "../sand/water.ts";
import { waterPerClay } from "../sand/water-per-clay.ts";
import { waterSensitivity } from "../sand/water-sensitivity.ts";
import { waterToAddKg, waterToLoseKg } from "../sand/water-to-add.ts";
import { heapDrafts } from "./functions-heap.ts";
import { type ArrayModel, byOrder, byRecord, type Draft } from "./functions-model.ts";

const damp = "% of damp mass";
const dryMix = "% of dry mix";
const height = "% of height";
/** The difference of two levels, or the pressure that it stands for. */
const water = "mm|mmH2O";
const cylinder = { heightMm: "mm", diameterMm: "mm" };

/** Every public model of lib/sand that takes plain numbers and gives one; tests/sheet/formula-models.test.ts holds it to that. */
const drafts: { readonly [name: string]: Draft } = {
  airViscosityUPaS: byOrder(airViscosityUPaS, { celsius: "°C" }, "µPa·s"),
  permeabilityAt20: byRecord(permeabilityAt20, { permeability: "", celsius: "°C" }, ""),
  angularityCoefficient: byOrder(
    angularityCoefficient,
    { actualCm2G: "cm²/g", theoreticalCm2G: "cm²/g" },
    "",
  ),
  compactabilityByWeighingPercent: byRecord(
    compactabilityByWeighingPercent,
    { looseG: "g", rammedG: "g" },
    height,
  ),
  compactabilityPercent: byRecord(compactabilityPercent, { filledMm: "mm", rammedMm: "mm" }, height),
  pressedCompactabilityPercent: byRecord(
    pressedCompactabilityPercent,
    { pressedMm: "mm", filledMm: "mm?" },
    height,
  ),
  compressionKPa: byRecord(compressionKPa, { loadKg: "kg", diameterMm: "mm" }, "kPa"),
  loadForKPa: byRecord(loadForKPa, { strengthKPa: "kPa", diameterMm: "mm" }, "kg"),
  equilibriumCompactabilityPercent: byRecord(
    equilibriumCompactabilityPercent,
    { liveClayPercent: dryMix, moistureOfDampPercent: damp },
    height,
  ),
  equilibriumMoisturePercent: byRecord(
    equilibriumMoisturePercent,
    { liveClayPercent: dryMix, compactabilityPercent: height },
    damp,
  ),
  compactedGreenStrengthPercent: byRecord(
    compactedGreenStrengthPercent,
    { strengthKPa: "kPa", compactabilityPercent: height, liveClayPercent: dryMix },
    dryMix,
  ),
  moistureGreenStrengthPercent: byRecord(
    moistureGreenStrengthPercent,
    { strengthKPa: "kPa", moistureOfDampPercent: damp, liveClayPercent: dryMix },
    dryMix,
  ),
  clayOfDryMixToSandPercent: byOrder(clayOfDryMixToSandPercent, { clayOfDryMixPercent: dryMix }, "% of sand"),
  clayOfSandToDryMixPercent: byOrder(clayOfSandToDryMixPercent, { clayOfSandPercent: "% of sand" }, dryMix),
  dampToDryPercent: byOrder(dampToDryPercent, { percentOfDamp: damp }, "% of dry mass"),
  dryToDampPercent: byOrder(dryToDampPercent, { percentOfDry: "% of dry mass" }, damp),
  moistureOfDampPercent: byRecord(moistureOfDampPercent, { dampG: "g", dryG: "g" }, damp),
  moistureStepPercent: byRecord(moistureStepPercent, { stepG: "g", dampG: "g" }, damp),
  permeabilityConstant: byRecord(permeabilityConstant, { airMl: "ml", ...cylinder }, ""),
  permeabilityFromGd: byOrder(permeabilityFromGd, { gd: "" }, ""),
  permeabilityNumber: byRecord(
    permeabilityNumber,
    { airMl: "ml", ...cylinder, waterMm: water, seconds: "s" },
    "",
  ),
  specimenSeconds: byRecord(specimenSeconds, { seconds: "s", blankSeconds: "s" }, "s"),
  specimenWaterMm: byRecord(specimenWaterMm, { waterMm: water, blankWaterMm: water }, "mmH2O"),
  withoutLeak: byRecord(withoutLeak, { permeability: "", leakPermeability: "" }, ""),
  kozenyCarmanNumber: byRecord(kozenyCarmanNumber, { gfn: "", porosity: "", angularity: "" }, ""),
  aspiratorPermeability: byRecord(
    aspiratorPermeability,
    { waterOutMl: "ml", ...cylinder, suctionMm: water, seconds: "s" },
    "",
  ),
  bleedingVesselPermeability: byRecord(
    bleedingVesselPermeability,
    { vesselMl: "ml", ...cylinder, fromMm: water, toMm: water, seconds: "s", airHPa: "hPa?" },
    "",
  ),
  fallingColumnPermeability: byRecord(
    fallingColumnPermeability,
    { columnCm2: "cm²", ...cylinder, fromMm: water, toMm: water, seconds: "s" },
    "",
  ),
  floatingCanMm: byRecord(floatingCanMm, { netG: "g", canCm2: "cm²" }, "mmH2O"),
  movingLevelsCm2: byOrder(movingLevelsCm2, { firstCm2: "cm²", secondCm2: "cm²" }, "cm²"),
  smallestPortionG: byRecord(smallestPortionG, { mainPercent: "%", stepG: "g", steps: "?" }, "g"),
  dropForMm: byRecord(dropForMm, { weightKg: "kg", energyJ: "J?" }, "mm"),
  rammerEnergyJ: byRecord(rammerEnergyJ, { weightKg: "kg", dropMm: "mm" }, "J"),
  rammingJKg: byRecord(rammingJKg, { weightKg: "kg", dropMm: "mm", blows: "", sandG: "g" }, "J/kg"),
  settlingCutUm: byRecord(
    settlingCutUm,
    { depthMm: "mm", seconds: "s", celsius: "°C", grainKgM3: "kg/m³?" },
    "µm",
  ),
  settlingSeconds: byRecord(
    settlingSeconds,
    { grainUm: "µm", depthMm: "mm", celsius: "°C", grainKgM3: "kg/m³?" },
    "s",
  ),
  stokesReynolds: byRecord(stokesReynolds, { grainUm: "µm", celsius: "°C", grainKgM3: "kg/m³?" }, ""),
  shearKPa: byRecord(shearKPa, { loadKg: "kg", diameterMm: "mm", planes: "?" }, "kPa"),
  airPorosityPercent: byRecord(
    airPorosityPercent,
    { densityGCm3: "g/cm³", moistureOfDampPercent: damp, grainGCm3: "g/cm³?" },
    "% of volume",
  ),
  porosityPercent: byRecord(
    porosityPercent,
    { densityGCm3: "g/cm³", moistureOfDampPercent: damp, grainGCm3: "g/cm³?" },
    "% of volume",
  ),
  specimenDensityGCm3: byRecord(specimenDensityGCm3, { massG: "g", ...cylinder }, "g/cm³"),
  splittingKPa: byRecord(splittingKPa, { loadKg: "kg", ...cylinder }, "kPa"),
  clayByWashPercent: byRecord(clayByWashPercent, { startG: "g", grainG: "g" }, dryMix),
  waterDensityKgM3: byOrder(waterDensityKgM3, { celsius: "°C" }, "kg/m³"),
  waterViscosityMPaS: byOrder(waterViscosityMPaS, { celsius: "°C" }, "mPa·s"),
  waterPerClay: byRecord(waterPerClay, { moistureOfDampPercent: damp, clayOfDampPercent: damp }, ""),
  waterSensitivity: byRecord(
    waterSensitivity,
    { moistureA: damp, compactabilityA: height, moistureB: damp, compactabilityB: height },
    "",
  ),
  waterToAddKg: byRecord(
    waterToAddKg,
    { heapKg: "kg", fromOfDampPercent: damp, toOfDampPercent: damp },
    "kg",
  ),
  waterToLoseKg: byRecord(
    waterToLoseKg,
    { heapKg: "kg", fromOfDampPercent: damp, toOfDampPercent: damp },
    "kg",
  ),
};

export const sandModels: readonly ArrayModel[] = Object.entries({ ...drafts, ...heapDrafts }).map(
  ([name, draft]) => ({
    name,
    ...draft,
  }),
);

export const sandModelByName: ReadonlyMap<string, ArrayModel> = new Map(
  sandModels.map((model) => [model.name, model]),
);
