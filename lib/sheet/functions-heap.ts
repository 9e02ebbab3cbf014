// The models of heap, muller, heat and weather that a formula may call.

import { burntShare, sandToMetal, wearFactorDoseKg } from "../sand/burn-out.ts";
import { castingModulusMm, freezingSeconds } from "../sand/freezing.ts";
import { heatedDepthMm } from "../sand/heated-depth.ts";
import { latentHeatKJKg, windAt2M } from "../sand/humid-air.ts";
import {
  carriedRoundRpm,
  panRpm,
  rimSpeedMS,
  sandBedMm,
  trackSharePercent,
  wheelPasses,
} from "../sand/muller-arithmetic.ts";
import { mulledStrengthKPa, mullingMinutes } from "../sand/mulling-time.ts";
import { saturationPressurePa } from "../sand/saturation-pressure.ts";
import { byOrder, byRecord, type Draft } from "./functions-model.ts";

const rise = { startKPa: "kPa", fullKPa: "kPa", tauMin: "min" };

export const heapDrafts: { readonly [name: string]: Draft } = {
  saturationPressurePa: byOrder(saturationPressurePa, { celsius: "°C" }, "Pa"),
  latentHeatKJKg: byOrder(latentHeatKJKg, { celsius: "°C" }, "kJ/kg"),
  windAt2M: byRecord(windAt2M, { windMS: "m/s", heightM: "m" }, "m/s"),
  castingModulusMm: byRecord(castingModulusMm, { volumeMm3: "mm³", surfaceMm2: "mm²" }, "mm"),
  freezingSeconds: byRecord(freezingSeconds, { modulusMm: "mm", constantSMm2: "s/mm²" }, "s"),
  heatedDepthMm: byRecord(
    heatedDepthMm,
    { faceC: "°C", startC: "°C", targetC: "°C", seconds: "s", diffusivityM2S: "m²/s" },
    "mm",
  ),
  burntShare: byRecord(burntShare, { burntSandPerKg: "", sandToMetal: "" }, ""),
  sandToMetal: byRecord(sandToMetal, { flaskL: "L", castingL: "L", metalKg: "kg", sandGCm3: "g/cm³?" }, ""),
  wearFactorDoseKg: byRecord(
    wearFactorDoseKg,
    { wearFactor: "", clayPercent: "% of dry mix", batchKg: "kg", sandToMetal: "" },
    "kg",
  ),
  mulledStrengthKPa: byRecord(mulledStrengthKPa, { minutes: "min", ...rise }, "kPa"),
  mullingMinutes: byRecord(mullingMinutes, { sharePercent: "%", ...rise }, "min"),
  carriedRoundRpm: byRecord(carriedRoundRpm, { diameterMm: "mm" }, "rpm"),
  panRpm: byRecord(panRpm, { motorRpm: "rpm", reduction: "" }, "rpm"),
  rimSpeedMS: byRecord(rimSpeedMS, { diameterMm: "mm", rpm: "rpm" }, "m/s"),
  wheelPasses: byRecord(wheelPasses, { rpm: "rpm", wheels: "", minutes: "min" }, ""),
  sandBedMm: byRecord(sandBedMm, { loadKg: "kg", panDiameterMm: "mm", looseKgM3: "kg/m³?" }, "mm"),
  trackSharePercent: byRecord(
    trackSharePercent,
    { panDiameterMm: "mm", wheelWidthMm: "mm", trackDiameterMm: "mm?" },
    "%",
  ),
};
