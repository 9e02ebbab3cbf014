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
  type RunLength,
  scatterOf,
  weightedRunLength,
  weightedRunLengthDrawn,
} from "./run-lengths.ts";

const smoothed = () =>
  ewma(
    weighted.map(([x]) => x),
    { target: 50, sd: 2.0539, weight: 0.3, width: 3 },
  );
const outside = (rules: readonly string[]) => chartRunLength(rules, { run: 8 });
const summed = () => cusum(departures, { target: 325, slack: 0.3175, limit: 4.1959 });
const simulated = "250 simulated rows, within 3.5 of their standard errors";
const row = (figure: string, theirs: string, work: () => RunLength, spare = 0) => ({
  figure,
  theirs: [theirs],
  ours: () => [work().mean],
  agree: { within: () => scatterOf(work()) + spare },
});

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
    ...row("values until a false alarm: three-sigma limits", "370.4", () => outside(["outside"])),
    source: "any text",
    tag: "from memory",
    note: simulated,
  },
  {
    ...row("the same: limits and a run of eight", "152.73", () => outside(["outside", "run"])),
    source: "champ",
    tag: "from memory",
    note: simulated,
  },
  {
    ...row("the same: a run of eight alone, 2⁸ − 1", "255", () => outside(["run"])),
    tag: "by hand",
    note: simulated,
  },
  {
    // Of rises alone the mean is 1/Σ(1/(6j)! − 1/(6j + 1)!) = 840; rises and falls exclude each other at once, so both
    // together come nearly twice as often.
    ...row(
      "the same: six that rise or fall, half of 840 for rises alone",
      "420",
      () => chartRunLength(["trend"], { trend: 6 }),
      5,
    ),
    source: "david",
    tag: "from memory",
    note: `${simulated} and 5`,
  },
  {
    ...row("the same: sum of departures, limit 4", "168", () => departuresRunLength(4)),
    source: "montgomery",
    tag: "from memory",
    note: simulated,
  },
  {
    ...row("the same: sum of departures, limit 5", "465", () => departuresRunLength(5)),
    source: "montgomery",
    tag: "from memory",
    note: simulated,
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
    // Limits that are narrow at first see a little earlier than the limits in the end that the 500 is of.
    ...row("the same by simulated rows", "500", weightedRunLengthDrawn, 15),
    source: "lucas",
    tag: "from memory",
    note: `${simulated} and 15`,
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
