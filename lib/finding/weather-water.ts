// What the log's weather takes from its heap overnight, worked out for each cover.

import { heapFigure } from "../log/heap.ts";
import type { HeapCover } from "../log/heap-record.ts";
import type { Log, Measured } from "../log/types.ts";
import { type Input, lift } from "../quantity/combine.ts";
import type { Figure } from "../quantity/figure.ts";
import { onceFor } from "../quantity/once-for.ts";
import type { Spread } from "../quantity/spread.ts";
import { spread, spreadOfQuantity } from "../quantity/spread-of.ts";
import { windAt2M } from "../sand/humid-air.ts";
import { moistureAfter, temperTonight } from "../sand/moisture-tomorrow.ts";
import { LOOSE_KG_M3, type StandingHeap, type WaterLost, waterLostKg } from "../sand/water-lost.ts";

export const covers: readonly HeapCover[] = Object.freeze(["none", "sheet", "lid"]);

export interface CoveredWater {
  readonly cover: HeapCover;
  readonly lost: WaterLost;
  /** After the hours, % of damp mass; undefined where nothing says what the heap starts from. */
  readonly after?: Figure;
  /** What to temper to now; undefined where nothing is wanted. */
  readonly temper?: Figure;
}

export interface WeatherWater {
  /** For each cover, none first. */
  readonly each: readonly CoveredWater[];
  /** The cover that the heap has, as the log says; none where it says nothing. */
  readonly own: HeapCover;
  readonly hours: number;
  readonly airC: number;
  readonly humidityPercent: number;
  /** Wind over the sand, m/s: as written, or as at 2 m where it is said at what height; a draught of 0.2 where the log says none. */
  readonly windMS: number;
  /** % of damp mass. */
  readonly start?: Figure | number;
  readonly want?: number;
  /** True where the mass of the heap or what it starts from has a ± that is not known whole. */
  readonly atLeast: boolean;
  /** What was taken because the log does not say it, each a clause. */
  readonly taken: readonly string[];
  /** Loss, kg, at hours from the start on, uncovered and under a sheet. */
  readonly course: readonly { readonly hours: number; readonly open: Figure; readonly sheet: Figure }[];
  /** True where the sand was hotter than the air by more than this model takes. */
  readonly hotSand: boolean;
}

/** Worked out, or what the log does not say. Undefined where the log says nothing of weather. */
export type WeatherAnswer =
  | { readonly known: WeatherWater; readonly missing?: undefined }
  | { readonly known?: undefined; readonly missing: readonly string[] };

type WeatherLog = Pick<Log, "weather" | "heap" | "heapKg" | "measured" | "wanted">;

/** Evenly spaced in the root of time, by which the skin grows; so many that the course is drawn without a kink. */
const COURSE_STEPS = 12;
/** Air over the hours is not what it was at one moment: our own. */
const SWING = { airC: 3, humidityPercent: 15 } as const;

/**
 * Water for tomorrow from `weather:`, `heap:` and the newest moisture of the log.
 * Air and humidity without a ± are taken to swing by 3 °C and 15 points over the hours (our own). The start is `start:`, else
 * the newest measured moisture; the wish is `want:`, else the wanted moisture.
 * Example: a log with 18 °C, 60 %, 16 h, start 3.8 %, want 3.5 % and a heap of 120 kg.
 */
export function weatherWater(log: WeatherLog): WeatherAnswer | undefined {
  return answerOf(log);
}

const answerOf = onceFor((log: WeatherLog): WeatherAnswer | undefined => {
  const { weather, heap } = log;
  if (!weather) return undefined;
  const mass = heapFigure(log);
  const { airC, humidityPercent, hours } = weather;
  const start = weather.startPercent ?? log.measured.at(-1)?.moisturePercent;
  const want = weather.wantPercent ?? log.wanted?.moisturePercent;
  const from = start ?? want;
  const missing = [
    ...(mass ? [] : ["the mass of the heap (mass, under heap)"]),
    ...(airC ? [] : ["the temperature of the air (air, under weather)"]),
    ...(humidityPercent ? [] : ["the humidity of the air (humidity, under weather)"]),
    ...(hours ? [] : ["how long the heap stands (hours, under weather)"]),
    ...(from ? [] : ["a moisture to start from or to come to (start or want, under weather)"]),
  ];
  if (!mass || !airC || !humidityPercent || !hours || !from) return { missing };
  const windMS = windOverSand(weather);
  const outside = outsideTheModel(airC, hours, windMS);
  if (outside) return { missing: [outside] };
  const own = heap?.cover ?? "none";
  const standing: Omit<StandingHeap, "cover" | "moistureOfDampPercent"> = {
    heapKg: mass.figure,
    hours: inputOf(hours, "hours that the heap stands"),
    airC: swinging(airC, SWING.airC, "the air's temperature over the hours"),
    relativeHumidityPercent: swinging(
      humidityPercent,
      SWING.humidityPercent,
      "the air's humidity over the hours",
    ),
    airMS: windMS,
    shape: heap?.shape ?? "heap",
    ...surfaceOf(heap, mass.figure),
  };
  const startInput = start && inputOf(start, "moisture that the heap starts from");
  const base = startInput ?? inputOf(from, "moisture that is wanted");
  const each = covers.map((cover): CoveredWater => {
    const under = { ...standing, cover, moistureOfDampPercent: base };
    const after = startInput === undefined ? undefined : moistureAfter(under);
    return {
      cover,
      lost: after ?? waterLostKg(under),
      ...(after ? { after: after.moistureOfDampPercent } : {}),
      ...(want
        ? {
            temper: temperTonight({ ...under, moistureOfDampPercent: want.value }).moistureOfDampPercent,
          }
        : {}),
    };
  });
  const course = Array.from({ length: COURSE_STEPS + 1 }, (_, i) => {
    const at = hours.value * (i / COURSE_STEPS) ** 2;
    const lost = (cover: HeapCover) =>
      waterLostKg({ ...standing, hours: at, cover, moistureOfDampPercent: base }).figure;
    return { hours: at, open: lost("none"), sheet: lost("sheet") };
  });
  return {
    known: {
      each,
      own,
      hours: hours.value,
      airC: airC.value,
      humidityPercent: humidityPercent.value,
      windMS,
      ...(startInput === undefined
        ? {}
        : { start: typeof startInput === "number" ? startInput : start!.value }),
      ...(want ? { want: want.value } : {}),
      atLeast: mass.missing.length > 0 || (start !== undefined && start.plusMinus === undefined),
      taken: takenFor(log),
      course,
      hotSand: (weather.sandC?.value ?? airC.value) > airC.value + 10,
    },
  };
});

/** As measured; else from the depth of the sand; else left to its shape. */
function surfaceOf(heap: WeatherLog["heap"], massKg: Figure): Pick<StandingHeap, "exposedM2"> {
  if (heap?.exposedM2) return { exposedM2: inputOf(heap.exposedM2, "the open surface") };
  if (!heap?.depthMm) return {};
  const depth = inputOf(heap.depthMm, "the depth of the sand");
  return {
    exposedM2: lift(
      ({ kg, mm }) => kg / LOOSE_KG_M3 / (mm / 1000),
      { kg: massKg, mm: depth },
      "surface by depth",
    ),
  };
}

/** Why the model says nothing there, as the rest of a sentence; undefined where it does. */
function outsideTheModel(airC: Measured, hours: Measured, windMS: number): string | undefined {
  if (airC.value < 0) return "weather above freezing: what a frozen heap loses is not worked out here";
  if (airC.value > 60) return "air of 60 °C (140 °F) at the most";
  if (hours.value > 240) return "ten days at the most: a heap that stands longer is measured anew";
  return windMS > 10 ? "wind of 10 m/s (22 mph) at the most over the sand itself" : undefined;
}

/** A height below this is as good as over the sand. */
const LOW_M = 0.5;

const isHigh = ({ windAtM }: NonNullable<WeatherLog["weather"]>): boolean => (windAtM?.value ?? 0) > LOW_M;

/** As at 2 m where the log says at what height it blows: a heap in a yard feels less, never more. */
function windOverSand(weather: NonNullable<WeatherLog["weather"]>): number {
  const { windMS, windAtM } = weather;
  if (!windMS) return 0.2;
  return isHigh(weather) ? windAt2M({ windMS: windMS.value, heightM: windAtM!.value }) : windMS.value;
}

function takenFor({ weather, heap }: WeatherLog): string[] {
  return [
    ...(heap?.cover ? [] : ["no cover"]),
    ...(heap?.shape || heap?.exposedM2 || heap?.depthMm ? [] : ["a loose heap with a slope of 35°"]),
    ...(weather?.windMS ? [] : ["a draught of 0.2 m/s (0.7 ft/s)"]),
    ...(weather?.windMS && isHigh(weather)
      ? [
          `wind over the sand as at 2 m (6.6 ft), ${windAt2M({ windMS: 1, heightM: weather.windAtM!.value }).toFixed(2)} of that at ${weather.windAtM!.text} (FAO-56, equation 47; between walls it is less)`,
        ]
      : []),
    ...(weather?.airC?.plusMinus
      ? []
      : [
          `air that swings by ${SWING.airC} °C (${Number((1.8 * SWING.airC).toPrecision(2))} °F) over the hours`,
        ]),
    ...(weather?.humidityPercent?.plusMinus
      ? []
      : [`humidity that swings by ${SWING.humidityPercent} points`]),
  ];
}

function inputOf({ value, plusMinus }: Measured, source: string): Input {
  return plusMinus ? spreadOfQuantity({ value, plusMinus }, { source, says: source }) : value;
}

function swinging(measured: Measured, halfWidth: number, source: string): Spread {
  const { value: mean, plusMinus } = measured;
  if (plusMinus) return spreadOfQuantity({ value: mean, plusMinus }, { source, says: source });
  return spread({ mean, halfWidth, doubt: "method", source, says: source });
}
