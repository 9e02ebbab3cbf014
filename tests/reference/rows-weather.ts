// Vapour, evaporation, drying: against IAPWS, FAO-56, Shah, ASHRAE and the texts of drying.

import { dryingHours } from "../../lib/sand/airing.ts";
import { dryingFront } from "../../lib/sand/drying-front.ts";
import { openWaterKgM2H, outdoorWaterCmDay, stillWaterKgM2H } from "../../lib/sand/evaporation.ts";
import { exposedSurface } from "../../lib/sand/heap-shape.ts";
import {
  latentHeatKJKg,
  pressureAtPa,
  vapourPressureByWetBulbPa,
  vapourPressurePa,
  wetBulbCelsius,
  windAt2M,
} from "../../lib/sand/humid-air.ts";
import { saturationPressurePa } from "../../lib/sand/saturation-pressure.ts";
import type { Published } from "./published.ts";
import type { Source } from "./sources.ts";

const es = saturationPressurePa;
const degrees = [0, 10, 20, 30, 40];
/** A published formula worked out at five temperatures, to five digits. */
const formula = (
  figure: string,
  source: Source,
  by: (t: number) => number,
  tag: "read" | "from memory",
): Published => ({
  figure: `saturation pressure by ${figure}, 0 to 40 °C, Pa`,
  source,
  theirs: degrees.map((t) => String(Number(by(t).toPrecision(5)))),
  ours: () => degrees.map(es),
  agree: { share: 0.0032 },
  tag,
  note: "weather.test.ts holds every degree",
});
/** Water and air, °C; kg/(m² h) at 50 %. */
const shah = [
  [28, 28, "0.1360"],
  [28, 29, "0.1171"],
  [28, 30, "0.0968"],
  [29, 28, "0.1651"],
  [29, 29, "0.1463"],
  [29, 30, "0.1268"],
  [30, 28, "0.1959"],
  [30, 29, "0.1771"],
  [30, 30, "0.1575"],
] as const;
const carrier = (airMS: number): number => {
  const inHg = (0.6 * es(25)) / 3386.389;
  const pounds = ((95 + 0.425 * (airMS / 0.00508)) * inHg) / (latentHeatKJKg(25) / 2.326);
  return (pounds * 0.45359237) / 0.09290304;
};
const still = {
  dryKgM2: 20,
  rateKgM2H: 0.15,
  fromOfDryPercent: 6,
  criticalOfDryPercent: 5,
  balanceOfDryPercent: 0.2,
};
const heap = () => exposedSurface({ heapKg: 100, looseKgM3: 1100, shape: "heap" });
const skins = () =>
  [6, 24, 72].map((hours) =>
    dryingFront({
      airC: 20,
      relativeHumidityPercent: 50,
      hours,
      moistureOfDampPercent: 4,
      looseKgM3: 1100,
      porosity: 0.45,
    }),
  );

export const weatherRows: readonly Published[] = [
  {
    figure: "saturation pressure at 273.16 K, Pa, and 373.1243 K, MPa",
    source: "iapws saturation",
    theirs: ["611.657", "0.101325"],
    ours: () => [es(0.01), es(373.1243 - 273.15) / 1e6],
    tag: "from memory",
  },
  {
    figure: "saturation pressure at 300 K, MPa: a check value",
    source: "if97",
    theirs: ["0.353658941e-2"],
    ours: () => [es(300 - 273.15) / 1e6],
    agree: { share: 1e-4 },
    tag: "read",
    note: "another formulation of the same body; in a public unit test",
  },
  {
    figure: "saturation pressure, 5 to 40 °C, Pa",
    source: "iapws library",
    theirs: ["872.58", "1228.20", "1705.79", "2339.32", "3169.93", "4246.97", "5629.02", "7384.94"],
    ours: () => [5, 10, 15, 20, 25, 30, 35, 40].map(es),
    agree: { share: 1e-4 },
    tag: "computed there",
    note: "IAPWS-95",
  },
  formula("Magnus", "wmo", (t) => 611.2 * Math.exp((17.62 * t) / (243.12 + t)), "from memory"),
  formula("Alduchov & Eskridge", "alduchov", (t) => 610.94 * Math.exp((17.625 * t) / (243.04 + t)), "read"),
  formula("Tetens", "fao", (t) => 610.8 * Math.exp((17.27 * t) / (t + 237.3)), "from memory"),
  formula("Buck", "buck", (t) => 611.21 * Math.exp((17.502 * t) / (240.97 + t)), "read"),
  {
    figure: "pressure at 1800 m, mean saturation pressure of 24.5 and 15 °C, kPa",
    source: "fao",
    theirs: ["81.8", "2.39"],
    ours: () => [pressureAtPa(1800) / 1000, (es(15) + es(24.5)) / 2000],
    tag: "read",
    note: "examples 2 and 3",
  },
  {
    figure: "vapour pressure by wet bulb and by humidity of a day, kPa; wind at 2 m, m/s",
    source: "fao",
    theirs: ["1.91", "1.70", "2.4"],
    ours: () => {
      const day = vapourPressurePa({ airC: 25, relativeHumidityPercent: 54 });
      const night = vapourPressurePa({ airC: 18, relativeHumidityPercent: 82 });
      return [
        vapourPressureByWetBulbPa({ dryC: 25.6, wetC: 19.5, pressurePa: 87_900 }) / 1000,
        (day + night) / 2000,
        windAt2M({ windMS: 3.2, heightM: 10 }),
      ];
    },
    tag: "read",
    note: "examples 4, 5, 14",
  },
  {
    figure: "pressure at 1000 and 2000 m, kPa",
    source: "us atmosphere",
    theirs: ["89.875", "79.495"],
    ours: () => [pressureAtPa(1000) / 1000, pressureAtPa(2000) / 1000],
    agree: { share: 0.006 },
    tag: "from memory",
    note: "ours takes 20 °C at sea level, as FAO-56, the standard 15 °C",
  },
  {
    figure: "wet bulb in air of 20 °C and 50 %, °C",
    source: "stull",
    theirs: ["13.7"],
    ours: () => [wetBulbCelsius({ airC: 20, relativeHumidityPercent: 50 })],
    agree: { within: 0.15 },
    tag: "from memory",
    note: "his own formula's example; FAO-56's coefficient gives 13.8",
  },
  {
    figure: "latent heat, 0 to 40 °C, kJ/kg",
    source: "iapws library",
    theirs: ["2501", "2477", "2454", "2442", "2430", "2406"],
    ours: () => [0, 10, 20, 25, 30, 40].map(latentHeatKJKg),
    agree: { share: 5e-4 },
    tag: "computed there",
  },
  {
    figure: "wet bulb at 20 °C and 50 %, 25 °C and 40 %, °C",
    theirs: ["13.8", "16.2"],
    ours: () => [
      wetBulbCelsius({ airC: 20, relativeHumidityPercent: 50 }),
      wetBulbCelsius({ airC: 25, relativeHumidityPercent: 40 }),
    ],
    agree: { within: 0.1 },
    tag: "by hand",
    note: "the psychrometer equation",
  },
  {
    figure: "evaporation from still water, nine rows, kg/(m² h)",
    source: "shah",
    theirs: shah.map(([, , rate]) => rate),
    ours: () => shah.map(([waterC, airC]) => stillWaterKgM2H({ waterC, airC, relativeHumidityPercent: 50 })),
    agree: { share: 0.01 },
    tag: "from memory",
    note: "table read; formula from memory",
  },
  {
    figure: "evaporation in air of 0, 0.25, 1 m/s, by (95 + 0.425 v)(pw − pa)/Y, kg/(m² h)",
    source: "smith",
    theirs: [0, 0.25, 1].map((airMS) => carrier(airMS).toPrecision(4)),
    ours: () =>
      [0, 0.25, 1].map((airMS) =>
        openWaterKgM2H({ waterC: 25, airC: 25, relativeHumidityPercent: 40, airMS }),
      ),
    agree: { share: 0.007 },
    tag: "from memory",
    note: "formula read; our SI form from memory",
  },
  {
    figure: "rates for a heap at 20 °C and 50 %: still, draughts, wet bulb, kg/(m² h)",
    theirs: ["0.153", "0.186", "0.287", "0.053"],
    ours: () =>
      (
        [
          [20, 0],
          [20, 0.25],
          [20, 1],
          [13.8, 0],
        ] as const
      ).map(([waterC, airMS]) => openWaterKgM2H({ waterC, airC: 20, relativeHumidityPercent: 50, airMS })),
    tag: "by hand",
  },
  {
    figure: "evaporation outdoors, cm a day",
    source: "san diego",
    theirs: ["0.189"],
    ours: () => [outdoorWaterCmDay({ airC: 15, relativeHumidityPercent: 70, windKmDay: 150 })],
    tag: "read",
  },
  {
    figure: "steady and falling rate of drying, h",
    source: "drying texts",
    theirs: ["1.3333", "3.7314"],
    ours: () => [5, 3.5].map((toOfDryPercent) => dryingHours({ ...still, toOfDryPercent })),
    tag: "by hand",
    note: "formula from memory",
  },
  {
    figure: "a heap of 100 kg: its surface, m²; dry skin after 6, 24, 72 h, mm",
    source: "navarri",
    theirs: ["0.954", "8.4", "16.8", "29.2"],
    ours: () => [heap().areaM2, ...skins().map(({ frontMm }) => frontMm)],
    agree: { share: 0.008 },
    tag: "by hand",
    note: "method read",
  },
  {
    figure: "water that it loses, kg",
    source: "navarri",
    theirs: ["0.35", "0.71", "1.22"],
    ours: () => skins().map(({ lossKgM2 }) => lossKgM2 * heap().areaM2),
    agree: { share: 0.015 },
    tag: "by hand",
  },
];
