// Percent of what: published recipes on every basis, and how much water their clay has.

import { clayOfDryMixToSandPercent, mixShares } from "../../lib/sand/mix-shares.ts";
import { publishedWaterPerClay, ratioMoisturePercent, waterPerClay } from "../../lib/sand/water-per-clay.ts";
import type { Published } from "./published.ts";

const student = (clayKg: number) => mixShares({ sandKg: 550, clayKg, waterKg: 28 });
const hobby = () => mixShares({ sandKg: 10, clayKg: 1.2, waterKg: 0.75 });
const thesis = (waterKg: number) => mixShares({ sandKg: 4400, clayKg: 600, waterKg });
const exam = () => mixShares({ sandKg: 10, clayKg: 0.8, waterKg: 0.5 });
const yard = (waterKg: number) => mixShares({ sandKg: 25, clayKg: 1.5, additiveKg: 0.5, waterKg });

export const recipeRows: readonly Published[] = [
  {
    figure: "22, 33, 44 g of clay in 550 g of sand, % of sand",
    source: "student design 109009337",
    theirs: ["4", "6", "8"],
    ours: () => [22, 33, 44].map((clay) => student(clay).clayOfSandPercent),
    tag: "read",
  },
  {
    figure: 'the same and 28 mL, "5 %": clay and water, % of damp mass',
    source: "student design 109009337",
    theirs: ["3.67", "5.40", "7.07", "4.67", "4.58", "4.50"],
    ours: () => [
      ...[22, 33, 44].map((clay) => student(clay).clayOfDampPercent),
      ...[22, 33, 44].map((clay) => student(clay).moistureOfDampPercent),
    ],
    tag: "by hand",
    note: "masses read; the sheet's percent is of the sand",
  },
  {
    figure: "10 lb, 1.2 lb, 12 oz: clay of damp and of dry mix, water of damp mass, %; water per clay",
    source: "ourpastimes",
    theirs: ["10.04", "10.71", "6.28", "0.625"],
    ours: () => {
      const mix = hobby();
      return [mix.clayOfDampPercent, mix.clayOfDryMixPercent, mix.moistureOfDampPercent, mix.waterPerClay!];
    },
    tag: "by hand",
    note: "masses read",
  },
  {
    figure: "100 lb and 9 lb, clay of dry mix; with a pound of wood flour, %",
    source: "makerspace",
    theirs: ["8.26", "8.18"],
    ours: () =>
      [0, 1].map(
        (additiveKg) => mixShares({ sandKg: 100, clayKg: 9, waterKg: 0, additiveKg }).clayOfDryMixPercent,
      ),
    tag: "by hand",
    note: "masses read",
  },
  {
    figure: "1 kg and 120 g, clay of dry mix, %",
    source: "nz supplier",
    theirs: ["10.71"],
    ours: () => [mixShares({ sandKg: 1, clayKg: 0.12, waterKg: 0 }).clayOfDryMixPercent],
    tag: "by hand",
    note: "masses read",
  },
  {
    figure: "4,400 g and 600 g, clay of dry mix, %",
    source: "turkish thesis",
    theirs: ["12"],
    ours: () => [thesis(80).clayOfDryMixPercent],
    tag: "read",
  },
  {
    figure: "the same with 80 and 160 mL: clay of sand, water of damp mass, %; water per clay",
    source: "turkish thesis",
    theirs: ["13.64", "1.57", "3.10", "0.133", "0.267"],
    ours: () => {
      const [dry, wet] = [thesis(80), thesis(160)];
      const water = [dry.moistureOfDampPercent, wet.moistureOfDampPercent];
      return [dry.clayOfSandPercent, ...water, dry.waterPerClay!, wet.waterPerClay!];
    },
    tag: "by hand",
    note: "masses read",
  },
  {
    figure: "10 kg, 0.8 kg, 0.5 kg: clay of dry mix, water of damp mass, %; water per clay",
    source: "exam note",
    theirs: ["7.41", "4.42", "0.625"],
    ours: () => [exam().clayOfDryMixPercent, exam().moistureOfDampPercent, exam().waterPerClay!],
    tag: "by hand",
    note: "masses read",
  },
  {
    figure: "5 % of the mix per 100 of sand",
    source: "ts 5360",
    theirs: ["5.26"],
    ours: () => [clayOfDryMixToSandPercent(5)],
    tag: "by hand",
    note: "shares read as that thesis quotes them",
  },
  {
    figure: "6, 8, 10 % of the dry mix per 100 of sand",
    theirs: ["6.383", "8.696", "11.111"],
    ours: () => [6, 8, 10].map(clayOfDryMixToSandPercent),
    tag: "by hand",
  },
  {
    figure: "water per clay at 9 % bentonite and 4.5 % water",
    source: "uns thesis water",
    theirs: ["0.50"],
    ours: () => [waterPerClay({ moistureOfDampPercent: 4.5, clayOfDampPercent: 9 })],
    tag: "read",
  },
  {
    figure: "water per clay at the peaks of strength and of permeability",
    source: "subbarao",
    theirs: ["0.4", "0.6"],
    ours: () => [publishedWaterPerClay.strengthPeak, publishedWaterPerClay.permeabilityPeak],
    tag: "read",
  },
  {
    figure: "clay to water 10 : 4 on 10 % clay, % of damp mass",
    source: "wasserbindung",
    theirs: ["3.85"],
    ours: () => [
      ratioMoisturePercent({
        clayOfDryMixPercent: 10,
        waterPerClay: publishedWaterPerClay.strengthPeak,
      }),
    ],
    tag: "by hand",
    note: "ratio read",
  },
  {
    figure: "25 kg sand, 1.5 kg bentonite, 0.5 kg additive, 500 and 800 mL: water of damp mass, %; per clay",
    theirs: ["1.82", "2.88", "0.33", "0.53"],
    ours: () => [
      yard(0.5).moistureOfDampPercent,
      yard(0.8).moistureOfDampPercent,
      yard(0.5).waterPerClay!,
      yard(0.8).waterPerClay!,
    ],
    tag: "common practice",
    note: "a mix of the yard on a cool and a warm day; percentages by hand",
  },
];
