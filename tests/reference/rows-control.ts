// Control charts against the worked examples of a handbook, and against published rates of false alarms.

import { changePoint } from "../../lib/numbers/change-point.ts";
import { cusum } from "../../lib/numbers/cusum.ts";
import { ewma } from "../../lib/numbers/ewma.ts";
import { individualsChart } from "../../lib/numbers/individuals-chart.ts";
import { departures, flowRate, nile, weighted } from "./control-data.ts";
import type { Published } from "./published.ts";
import {
  chartRunLength,
  departuresRunLength,
  weightedRunLength,
  weightedRunLengthDrawn,
} from "./run-lengths.ts";

const smoothed = () =>
  ewma(
    weighted.map(([x]) => x),
    { target: 50, sd: 2.0539, weight: 0.3, width: 3 },
  );
const summed = () => cusum(departures, { target: 325, slack: 0.3175, limit: 4.1959 });
const SIMULATED = "250 simulated rows; control.test.ts holds 3.5 of their standard errors";

export const controlRows: readonly Published[] = [
  {
    figure: "flow rate of ten batches: mean, mean moving range, limits, limit of the range",
    source: "handbook",
    theirs: ["50.81", "1.8778", "55.8041", "45.8159", "6.1347"],
    ours: () => {
      const { mean, meanMovingRange, upper, lower, rangeUpper } = individualsChart(flowRate);
      return [mean, meanMovingRange, upper, lower, rangeUpper];
    },
    tag: "read",
    note: "3·MR/1.128; with the rounded 2.66 it would be 55.8049",
  },
  {
    figure: "limit of the range over the mean range of two values",
    source: "montgomery runger",
    theirs: ["3.267"],
    ours: () => {
      const { rangeUpper, meanMovingRange } = individualsChart([0, 1]);
      return [rangeUpper / meanMovingRange];
    },
    tag: "read",
  },
  {
    figure: "2.66, as it stands on the trade's cards",
    theirs: ["2.66"],
    ours: () => {
      const { upper, mean } = individualsChart([0, 1]);
      return [upper - mean];
    },
    tag: "common practice",
  },
  {
    figure: "weighted mean of twenty values, λ 0.3",
    source: "handbook",
    theirs: weighted.map(([, z]) => z.toFixed(2)),
    ours: () => smoothed().smoothed,
    agree: { within: 0.0125 },
    tag: "read",
    note: "each rounded from the rounded one before it there",
  },
  {
    figure: "its upper limit in the end",
    source: "handbook",
    theirs: ["52.5884"],
    ours: () => [smoothed().upperInTheEnd],
    tag: "read",
  },
  {
    figure: "its lower limit in the end",
    source: "handbook",
    theirs: ["47.4115"],
    ours: () => [smoothed().lowerInTheEnd],
    agree: { instead: ["47.4116"] },
    tag: "misprint",
    note: "50 − 2.5884, rounded down there",
  },
  {
    figure: "sum of departures of twenty values: first signal, and the sum there",
    source: "handbook",
    theirs: ["14", "4.9400"],
    ours: () => [summed().signals[0]!.at + 1, summed().above[13]!],
    tag: "read",
  },
  {
    figure: "values until a false alarm: three-sigma limits",
    source: "any text",
    theirs: ["370.4"],
    ours: () => [chartRunLength(["outside"], { run: 8 }).mean],
    agree: { share: 0.25 },
    tag: "from memory",
    note: SIMULATED,
  },
  {
    figure: "the same: limits and a run of eight",
    source: "champ",
    theirs: ["152.73"],
    ours: () => [chartRunLength(["outside", "run"], { run: 8 }).mean],
    agree: { share: 0.25 },
    tag: "from memory",
    note: SIMULATED,
  },
  {
    figure: "the same: a run of eight alone, 2⁸ − 1",
    theirs: ["255"],
    ours: () => [chartRunLength(["run"], { run: 8 }).mean],
    agree: { share: 0.25 },
    tag: "by hand",
    note: SIMULATED,
  },
  {
    figure: "the same: six that rise or fall, half of 840 for rises alone",
    source: "david",
    theirs: ["420"],
    ours: () => [chartRunLength(["trend"], { trend: 6 }).mean],
    agree: { share: 0.25 },
    tag: "from memory",
    note: SIMULATED,
  },
  {
    figure: "the same: sum of departures, limits 4 and 5",
    source: "montgomery",
    theirs: ["168", "465"],
    ours: () => [departuresRunLength(4).mean, departuresRunLength(5).mean],
    agree: { share: 0.25 },
    tag: "from memory",
    note: SIMULATED,
  },
  {
    figure: "the same: weighted mean, λ 0.2, 2.962, by Crowder's integral equation",
    source: "lucas",
    theirs: ["500"],
    ours: () => [weightedRunLength(0.2, 2.962)],
    agree: { within: 5 },
    tag: "from memory",
  },
  {
    figure: "the same by simulated rows",
    source: "lucas",
    theirs: ["500"],
    ours: () => [weightedRunLengthDrawn().mean],
    agree: { share: 0.25 },
    tag: "from memory",
    note: SIMULATED,
  },
  {
    figure: "a change in the flow of the Nile: last year before it; means before and after",
    source: "cobb",
    theirs: ["1898", "1097.75", "849.97"],
    ours: () => {
      const { at, before, after } = changePoint(nile)!;
      return [1871 + at - 1, before, after];
    },
    tag: "from memory",
  },
];
