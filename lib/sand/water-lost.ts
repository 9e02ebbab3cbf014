// Water that a heap loses while it stands: a range, and what a cover does to it.

import { type Input, lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import type { Source } from "../quantity/source.ts";
import { isSpread } from "../quantity/spread.ts";
import { linear, spread } from "../quantity/spread-of.ts";
import { dryingFrontRelation } from "./drying-front.ts";
import { openWaterRelation } from "./evaporation.ts";
import { exposedSurface, type LyingAs } from "./heap-shape.ts";
import { requireAir, vapourDensityKgM3, vapourPressurePa, wetBulbCelsius } from "./humid-air.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";
import { saturationPressurePa } from "./saturation-pressure.ts";

export type Cover = "none" | "sheet" | "lid";

/** Inputs are numbers, or spreads that carry their own ±. */
export interface StandingHeap {
  /** Damp mass, kg. */
  readonly heapKg: Input;
  readonly moistureOfDampPercent: Input;
  readonly hours: Input;
  readonly airC: Input;
  readonly relativeHumidityPercent: Input;
  /** Air that moves over the sand, m/s; it counts in the upper bound. */
  readonly airMS?: Input;
  readonly shape: LyingAs;
  readonly cover: Cover;
  /** Open surface as measured, m²; else from mass and shape. */
  readonly exposedM2?: Input;
}

export interface WaterLost {
  /** kg over the hours, with its ±. */
  readonly figure: Figure;
  /** What open water of that surface would give off, kg: at the wet bulb, and at the air's own temperature (the bound). */
  readonly openWater: { readonly wetBulbKg: number; readonly airKg: number };
  /** Depth of the dry skin at the end, mm, in the middle of the range. */
  readonly skinMm: number;
  readonly areaM2: number;
}

/** Damp moulding sand as it lies: common practice, 1000 to 1200. */
export const LOOSE_KG_M3 = 1100;
const own = (id: string, says: string, kind: Source["kind"] = "model", normal = false): Source => ({
  id,
  kind,
  shape: { kind: normal ? "normal" : "rectangular" },
  says,
});
const scored = (source: Source) => linear(0, [{ scale: 1, source }]);
/** The front is an isothermal model in still air; wind, sun and water that wicks up undo it: a factor of two at 95 %. */
const model = scored(own("drying of a heap", "the drying front as a model of your sand", "model", true));
const MODEL_LOG_SD = Math.LN2 / 1.959964;
const loose = spread({
  mean: LOOSE_KG_M3,
  halfWidth: 100,
  doubt: "model",
  source: "loose density of damp sand",
  says: "how loosely the sand lies",
});
/** Share of air in the dry skin: 0.45 as in the worked heap, 0.60 by the density of quartz. */
const porosity = spread({
  mean: 0.525,
  halfWidth: 0.075,
  doubt: "model",
  source: "air in the dry skin",
  says: "how much air the dry skin holds",
});
const form = scored(own("form of the heap", "the form of the heap", "method"));
const leak = scored(own("air under the cover", "how often the air under the cover changes"));

/** Changes of the air under a cover in an hour, and the air under it for each m²: our own. */
const COVERED = {
  sheet: { low: 1, high: 30, airM3M2: 0.02 },
  lid: { low: 0.1, high: 3, airM3M2: 0.1 },
} as const;

/**
 * Water that a heap or bin of damp sand loses while it stands, kg, as a range.
 *
 * Uncovered: the drying front (dryingFront) × a factor of two either way, never more than open water of that surface
 * would give off (openWaterKgM2H at the air's temperature) nor than there is. Covered: the air under the cover is
 * saturated and changes 1 to 30 times an hour under a sheet, 0.1 to 3 times under a lid (our own), never more than
 * uncovered. Surface as measured, else ± 20 % for the form.
 *
 * heapKg: > 0. moistureOfDampPercent: > 0, below 100. hours: 0 to 240. airC: 0 to 60 °C, relativeHumidityPercent: 0 to 100,
 * airMS: 0 to 10. Their middle outside: RangeError; draws outside are held at the edge. Sun, rain, frost, hot sand and a
 * floor that draws water are not in it.
 * Source: see dryingFront and openWaterKgM2H; the factor of two is our own, after Singh & Xu 1997 on such formulas.
 * @example
 * waterLostKg({ heapKg: 100, moistureOfDampPercent: 4, hours: 24, airC: 20, relativeHumidityPercent: 50,
 *   shape: "heap", cover: "none" }).figure // { value: 0.78, low: 0.36, high: 1.59 }
 */
export function waterLostKg(heap: StandingHeap): WaterLost {
  checked(heap);
  const { airMS = 0, exposedM2, shape, cover, ...given } = heap;
  const inputs = {
    heapKg: given.heapKg,
    moisture: given.moistureOfDampPercent,
    hours: given.hours,
    airC: given.airC,
    humidity: given.relativeHumidityPercent,
    airMS,
    exposedM2: exposedM2 ?? 0,
    loose,
    porosity,
    model,
    form: exposedM2 === undefined ? form : 0,
    leak: cover === "none" ? 0 : leak,
  };
  type Drawn = { readonly [name in keyof typeof inputs]: number };
  const areaOf = (at: Drawn): number =>
    at.exposedM2 > 0
      ? at.exposedM2
      : exposedSurface({ heapKg: at.heapKg, looseKgM3: at.loose, shape }).areaM2 * (1 + 0.2 * at.form);
  const airC = (at: Drawn): number => held(at.airC, 0, 60);
  const lackOf = (at: Drawn): number =>
    saturationPressurePa(airC(at)) * (1 - held(at.humidity, 0, 100) / 100);
  const frontOf = (at: Drawn, missingPa: number) =>
    dryingFrontRelation({
      missingPa,
      airC: airC(at),
      hours: Math.max(0, at.hours),
      moistureOfDampPercent: at.moisture,
      looseKgM3: at.loose,
      porosity: at.porosity,
    });
  const openOf = (at: Drawn, missingPa: number, waterC: number): number =>
    areaOf(at) * Math.max(0, at.hours) * openWaterRelation(missingPa, waterC, held(at.airMS, 0, 10));
  const lost = (at: Drawn): number => {
    const missingPa = lackOf(at);
    const skin = areaOf(at) * frontOf(at, missingPa).lossKgM2 * Math.exp(MODEL_LOG_SD * at.model);
    const open = Math.min(skin, openOf(at, missingPa, airC(at)), (at.heapKg * at.moisture) / 100);
    if (cover === "none") return open;
    const { low, high, airM3M2 } = COVERED[cover];
    const changes = Math.sqrt(low * high) * (high / low) ** (at.leak / 2);
    const vapour = vapourDensityKgM3(missingPa, airC(at));
    return Math.min(areaOf(at) * airM3M2 * changes * Math.max(0, at.hours) * vapour, open);
  };
  const middle: Drawn = Object.fromEntries(
    Object.entries(inputs).map(([name, input]) => [name, middleOf(input)]),
  ) as Drawn;
  const air = { airC: middle.airC, relativeHumidityPercent: middle.humidity };
  const wetC = wetBulbCelsius(air);
  return {
    figure: figure(
      lift(
        lost as (values: { readonly [name: string]: number }) => number,
        inputs,
        `water lost, ${shape}, ${cover}`,
      ),
    ),
    openWater: {
      wetBulbKg: openOf(middle, saturationPressurePa(wetC) - vapourPressurePa(air), wetC),
      airKg: openOf(middle, lackOf(middle), middle.airC),
    },
    skinMm: cover === "none" ? frontOf(middle, lackOf(middle)).frontMm : 0,
    areaM2: areaOf(middle),
  };
}

const middleOf = (input: Input): number => (isSpread(input) ? input.value : input);
const held = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

function checked(heap: StandingHeap): void {
  const hours = middleOf(heap.hours);
  requireAboveZero("waterLostKg", {
    heapKg: middleOf(heap.heapKg),
    moistureOfDampPercent: middleOf(heap.moistureOfDampPercent),
    dryPercent: 100 - middleOf(heap.moistureOfDampPercent),
  });
  requireFromZero("waterLostKg", { hours, toTenDays: 240 - hours });
  requireAir("waterLostKg", {
    airC: middleOf(heap.airC),
    relativeHumidityPercent: middleOf(heap.relativeHumidityPercent),
  });
  const airMS = middleOf(heap.airMS ?? 0);
  requireFromZero("waterLostKg", { airMS, toGale: 10 - airMS });
  if (heap.exposedM2 !== undefined) requireAboveZero("waterLostKg", { exposedM2: middleOf(heap.exposedM2) });
}
