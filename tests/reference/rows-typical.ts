// Typical curves against what was published.

import { kozenyCarmanNumber, permeabilityModel } from "../../lib/sand/permeability-model.ts";
import { temperMoisture } from "../../lib/sand/temper-moisture.ts";
import type { temperWayNames } from "../../lib/sand/temper-ways.ts";
import { typicalPermeability } from "../../lib/sand/typical-permeability.ts";
import { peakWaterRatio, publishedPoints } from "../../lib/sand/typical-points.ts";
import { typicalStrength } from "../../lib/sand/typical-strength.ts";
import type { Published } from "./published.ts";

const PSI = 6.894757;
const voids = [0.36, 0.36, 0.4, 0.4, 0.44, 0.44];
const numbers = [40, 50, 60, 70, 80, 100, 150];
const model = ["201", "119", "314", "186", "479", "283", "129", "76", "201", "119", "307", "181", "89", "53", "139", "82", "213", "126", "66", "39", "102", "61", "156", "93", "50", "30", "78", "46", "120", "71", "32", "19", "50", "30", "77", "45", "14", "8", "22", "13", "34", "20"]; // biome-ignore format: as the table runs
const low = publishedPoints.filter(
  ({ gfn, permeability, clayPercent }) =>
    gfn !== undefined && permeability !== undefined && clayPercent !== undefined && clayPercent <= 12,
);
const strengths = [
  [2.5, 40, 4.34, 38.3],
  [3, 42, 5.523, 46.1],
  [3.5, 45, 6.706, 52.4],
  [3.5, 40, 7.231, 57.4],
] as const;
const series = [
  [6, 4],
  [8, 6],
  [7, 4.5],
  [6.5, 3],
] as const;
const way = (clayPercent: number, name: (typeof temperWayNames)[number], compactabilityPercent = 45) =>
  temperMoisture({ clayPercent, clayKind: "not known", compactabilityPercent }).ways.find(
    (one) => one.way === name,
  )!;

export const typicalRows: readonly Published[] = [
  {
    figure: "permeability number from fineness, 42 cells",
    theirs: model,
    ours: () =>
      numbers.flatMap((gfn) =>
        voids.map((porosity, i) => kozenyCarmanNumber({ gfn, porosity, angularity: i % 2 === 0 ? 1 : 1.3 })),
      ),
    agree: { within: 1.46 },
    tag: "by hand",
    note: "Kozeny–Carman, 12.5 mm/GFN, 3.08e-13 m² a number; typical.test.ts holds each cell closer",
  },
  ...low.map(
    (point): Published => ({
      figure: `a sand low in clay against that model: ${point.label}`,
      source: point.label.startsWith("Glossary") ? "trade glossary" : "shuaib-babata",
      theirs: [String(point.permeability)],
      ours: () => {
        const found = permeabilityModel({ gfn: point.gfn!, clayPercent: point.clayPercent! });
        return [found.low!, found.high!];
      },
      agree: { between: "ours" },
      tag: "read",
      note: "the factor of 2 is our own",
    }),
  ),
  ...(
    [
      ["87.78", 87.78, "6.0"],
      ["73.49", 73.49, "4.9"],
    ] as const
  ).map(
    ([words, gfn, theirs]): Published => ({
      figure: `a clayey sand of fineness ${words}: the range that ignores its clay does not hold`,
      source: "dim",
      theirs: [theirs],
      ours: () => {
        const ignored = permeabilityModel({ gfn, clayPercent: 0 });
        return [ignored.low!, ignored.high!];
      },
      agree: { beyond: "ours" },
      tag: "read",
      note: "36 and 56 % clay; with its clay the model refuses it",
    }),
  ),
  {
    figure: "strength from clay of four states, psi",
    source: ["icri", "honeyman"],
    theirs: ["10", "15", "20", "25"],
    ours: () =>
      strengths.map(
        ([moistureOfDampPercent, compactabilityPercent, clayPercent, mullingEfficiencyPercent]) =>
          typicalStrength({
            clayPercent,
            moistureOfDampPercent,
            compactabilityPercent,
            mullingEfficiencyPercent,
          }).value! / PSI,
      ),
    agree: { share: 0.0016 },
    tag: "by hand",
    note: "constants read; the efficiency is printed to 0.1",
  },
  ...(
    [
      ["5.25 % clay at 48.5 %", 5.25, 3.5, 48.5, "70", "100"],
      ["8 % clay at 39 %", 8, 2.85, 39, "150", "200"],
    ] as const
  ).map(
    ([words, clayPercent, moistureOfDampPercent, compactabilityPercent, from, to]): Published => ({
      figure: `strength of an iron sand, ${words} compactability, kPa`,
      source: "foseco ferrous",
      theirs: [from, to],
      ours: () => {
        const found = typicalStrength({ clayPercent, moistureOfDampPercent, compactabilityPercent });
        return [found.low!, found.high!];
      },
      agree: { between: "ours" },
      tag: "from memory",
      note: "mulling not stated",
    }),
  ),
  {
    figure: "permeability against bentonite and water, nine readings: fit at four places",
    source: "scipy",
    theirs: ["236.8630136986301", "209.28493150684926", "225.32876712328766", "234.71301369863014"],
    ours: () =>
      series.map(
        ([clayPercent, water]) => typicalPermeability({ clayPercent, moistureOfDampPercent: water }).value!,
      ),
    agree: { digits: 10 },
    tag: "computed there",
    note: "readings of Universitas Brawijaya, read",
  },
  {
    figure: "its 95 % for a new batch, low ends",
    source: "scipy",
    theirs: ["222.1360634768739", "192.65586342973023", "211.1542614390151", "219.29174894768727"],
    ours: () =>
      series.map(
        ([clayPercent, water]) => typicalPermeability({ clayPercent, moistureOfDampPercent: water }).low!,
      ),
    agree: { digits: 10 },
    tag: "computed there",
  },
  {
    figure: "compactability over moisture at 46 %, 8 and 9 % clay",
    source: "chinese shop",
    theirs: ["10", "12"],
    ours: () => [8, 9].map((clay) => 46 / way(clay, "equilibrium moisture", 46).value!),
    agree: { between: "theirs" },
    tag: "read",
    note: "a weak source",
  },
  {
    figure: "water at permeability's peak over that at strength's",
    source: "edoziuno",
    theirs: ["1.5"],
    ours: () => [peakWaterRatio],
    tag: "read",
    note: "6 and 4 % water",
  },
  {
    figure: "a thesis' sand, 9 % bentonite with 4.5 % water, lies between the two peaks",
    source: "uns thesis water",
    theirs: ["4.5"],
    ours: () => {
      const nine = way(9, "water per clay");
      return [nine.low!, nine.high!];
    },
    agree: { between: "ours" },
    tag: "read",
  },
  {
    figure: "a hobby recipe, 6.28 % water on 10.71 % clay, lies beyond both peaks",
    source: "ourpastimes",
    theirs: ["6.28"],
    ours: () => {
      const found = way((100 * 1.2) / 11.2, "water per clay");
      return [found.strengthPeak!, found.permeabilityPeak!];
    },
    agree: { beyond: "ours" },
    tag: "by hand",
    note: "masses read",
  },
  {
    figure: "windows of a tailing sand at 4 and 8 % clay, % water",
    source: "abdullah",
    theirs: ["3", "5.5", "3.75", "6.5"],
    ours: () =>
      [4, 8].flatMap((clay) => {
        const found = way(clay, "offset and slope");
        return [found.low!, found.high!];
      }),
    tag: "read",
  },
  {
    figure: "their middles, and the slope between them",
    source: "abdullah",
    theirs: ["4.25", "5.125", "0.22"],
    ours: () => {
      const [four, eight] = [4, 8].map((clay) => way(clay, "offset and slope").value!) as [number, number];
      return [four, eight, (eight - four) / 4];
    },
    tag: "by hand",
  },
];
