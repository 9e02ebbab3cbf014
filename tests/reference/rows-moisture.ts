// Moisture, drying and wash against published readings and the misprints in them.

import { mean, sampleStandardDeviation } from "../../lib/numbers/summary.ts";
import {
  boundWaterOfClayPercent,
  dryingShiftPercent,
  methodBoundsPercent,
} from "../../lib/sand/drying-method.ts";
import { dryEnough } from "../../lib/sand/drying-stop.ts";
import { dampToDryPercent, dryToDampPercent, moistureOfDampPercent } from "../../lib/sand/moisture.ts";
import { clayByWashPercent, washPlan } from "../../lib/sand/wash.ts";
import { waterToAddKg, waterToLoseKg } from "../../lib/sand/water-to-add.ts";
import { DRYING } from "./drying-curve.ts";
import type { Published } from "./published.ts";

const threeOf = (dampG: number, dryG: readonly number[]) =>
  dryG.map((dry) => moistureOfDampPercent({ dampG, dryG: dry }));
const onDry = () => threeOf(100, [93, 91, 93]).map(dampToDryPercent);

export const moistureRows: readonly Published[] = [
  {
    figure: "moisture of two samples of 25 g, % of damp mass",
    source: "brawijaya 295174056",
    theirs: ["6.34", "4.84"],
    ours: () => threeOf(25, [23.414, 23.79]),
    tag: "read",
  },
  {
    figure: "moisture of the third",
    source: "brawijaya 295174056",
    theirs: ["5.44"],
    ours: () => threeOf(25, [23.638]),
    agree: { instead: ["5.448"] },
    tag: "misprint",
    note: "cut short: 5.448 rounds to 5.45",
  },
  {
    figure: "mean of the three as printed",
    source: "brawijaya 295174056",
    theirs: ["5.54"],
    ours: () => [mean([6.34, 4.84, 5.44])],
    tag: "read",
  },
  {
    figure: "their deviation",
    source: "brawijaya 295174056",
    theirs: ["0.721"],
    ours: () => [sampleStandardDeviation([6.34, 4.84, 5.44])],
    agree: { instead: ["0.755"] },
    tag: "misprint",
    note: "a sum of squares of 1.04 for 1.14",
  },
  {
    figure: "moisture of 1000 g by three dryings, % of damp mass",
    source: "sheet 380910031",
    theirs: ["2.5", "2.0", "3.1"],
    ours: () => threeOf(1000, [975, 980, 969]),
    tag: "read",
  },
  {
    figure: "moisture of 100 g by three dryings, % of dry mass; their mean",
    source: "sheet 348142560",
    theirs: ["7.53", "9.89", "7.53", "8.31"],
    ours: () => [...onDry(), mean(onDry())],
    tag: "read",
  },
  {
    figure: "deviation and coefficient of variation of those",
    source: "sheet 348142560",
    theirs: ["13.64", "1.64"],
    ours: () => [sampleStandardDeviation(onDry()), sampleStandardDeviation(onDry()) / mean(onDry())],
    agree: { instead: ["1.364", "0.164"] },
    tag: "misprint",
    note: "two slips of ten",
  },
  {
    figure: "45 mL on 1 kg of sand, % of damp mass",
    source: "lab note 245583446",
    theirs: ["4.306", "4.306"],
    ours: () => [dryToDampPercent(4.5), moistureOfDampPercent({ dampG: 1045, dryG: 1000 })],
    tag: "by hand",
    note: "masses read",
  },
  {
    figure: "3.0, 3.5, 4.0 % of damp mass, on the dry",
    theirs: ["3.0928", "3.6269", "4.1667"],
    ours: () => [3, 3.5, 4].map(dampToDryPercent),
    tag: "by hand",
  },
  {
    figure: "water for 100 kg from 2.5 to 3.5 %, and to lose from 4.0 to 3.5 %, kg",
    theirs: ["1.036", "0.5181"],
    ours: () => [
      waterToAddKg({ heapKg: 100, fromOfDampPercent: 2.5, toOfDampPercent: 3.5 }),
      waterToLoseKg({ heapKg: 100, fromOfDampPercent: 4, toOfDampPercent: 3.5 }),
    ],
    tag: "by hand",
  },
  {
    figure: "drying curve of three specimens: means of ten minutes, %",
    source: "brawijaya 295174056",
    theirs: ["0.253", "1.01", "2.2", "3.29", "3.99", "4.41", "4.68", "4.88", "5.03", "5.133"],
    ours: () => DRYING[0]!.map((_, i) => mean(DRYING.map((row) => row[i]!))),
    agree: { within: 0.012 },
    tag: "read",
    note: "some are cut off, some rounded there",
  },
  {
    figure: "the first specimen is dry from minute 7 on; what the third still loses, % a minute",
    source: "brawijaya 295174056",
    theirs: ["7", "0.25"],
    ours: () => {
      const of = (row: readonly number[]) =>
        dryEnough({ dampG: 25, weighingsG: row.map((lost) => 25 * (1 - lost / 100)), stepG: 0.01 });
      return [of(DRYING[0]!).at!, of(DRYING[2]!).lastLossPercent!];
    },
    tag: "read",
  },
  {
    figure: "water that dried bentonite keeps at 25, 105, 150 °C, %",
    source: "onal",
    theirs: ["8.8", "5.0", "2.5"],
    ours: () => [25, 105, 150].map((celsius) => boundWaterOfClayPercent(celsius)!),
    tag: "read",
  },
  {
    figure: "what 8 % of it reads higher at 150 °C, and in a pan at most, %",
    source: "onal",
    theirs: ["0.20", "0.40"],
    ours: () => [
      dryingShiftPercent({ clayPercent: 8, fromCelsius: 105, toCelsius: 150 })!,
      methodBoundsPercent("pan", 8)!.high,
    ],
    tag: "by hand",
  },
  {
    figure: "wash at 0 °C over wash at 20 °C: as the viscosities 1.792 and 1.002 mPa·s",
    source: "handbook viscosity",
    theirs: ["1.788"],
    ours: () => [washPlan({ celsius: 0 }).seconds / washPlan({ celsius: 20 }).seconds],
    agree: { share: 0.005 },
    tag: "from memory",
  },
  {
    figure: "clay by wash, 50 g to 39.665 g, %",
    source: "msu-iit",
    theirs: ["20.67"],
    ours: () => [clayByWashPercent({ startG: 50, grainG: 39.665 })],
    tag: "by hand",
    note: "the mean is read; its masses are not shown, these give it",
  },
];
