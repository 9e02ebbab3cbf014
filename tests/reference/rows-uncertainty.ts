// The public combine and spread against worked examples of Supplement 1 (JCGM 101:2008) and others. 65,536 draws: a tolerance is half the last digit printed, or what draws scatter by.

import { printFigure } from "../../lib/index.ts";
import {
  comparisonLoss,
  expansion,
  flask,
  gaugeBlockByDraws,
  hydroxide,
  logarithm,
  massStandard,
  shortest,
  sumOfFour,
} from "./gum-cases.ts";
import type { Published } from "./published.ts";

const printedWith = (value: number, half: number): string =>
  printFigure({ value, low: value - half, high: value + half }).text;
const four = (us: readonly number[], even: boolean) =>
  sumOfFour(us.map((u) => (even ? { mean: 0, halfWidth: u * Math.sqrt(3) } : { mean: 0, sd: u })));

export const uncertaintyRows: readonly Published[] = [
  {
    figure: "gauge block by draws: value and u, nm",
    source: "supplement 1",
    theirs: ["838", "36"],
    ours: () => [gaugeBlockByDraws().mean, gaugeBlockByDraws().sd],
    agree: { within: 0.6 },
    tag: "from memory",
  },
  {
    figure: "its 99 % interval, nm",
    source: "supplement 1",
    theirs: ["745", "932"],
    ours: () => [gaugeBlockByDraws().quantile(0.005), gaugeBlockByDraws().quantile(0.995)],
    agree: { within: 2.5 },
    tag: "from memory",
  },
  {
    figure: "mass standard: value and u, mg",
    source: "supplement 1",
    theirs: ["1.234", "0.0754"],
    ours: () => [massStandard().mean, massStandard().sd],
    agree: { within: 0.0006 },
    tag: "from memory",
    note: "inputs read; ten million plain draws give 0.0755",
  },
  {
    figure: "its 95 % interval, mg",
    source: "supplement 1",
    theirs: ["1.0834", "1.3825"],
    ours: () => [massStandard().low, massStandard().high],
    agree: { within: 0.0036 },
    tag: "from memory",
    note: "inputs read; ten million plain draws give 1.0844 and 1.3836",
  },
  {
    figure: "the same by those plain draws",
    theirs: ["1.234", "0.0755", "1.0844", "1.3836"],
    ours: () => {
      const { mean, sd, low, high } = massStandard();
      return [mean, sd, low, high];
    },
    agree: { within: 0.0025 },
    tag: "apart",
  },
  {
    figure: "comparison loss at 0, at 0.010 and at 0.050: values, millionths",
    source: "supplement 1",
    theirs: ["50", "150", "2551"],
    ours: () => [0, 0.01, 0.05].map((x1) => comparisonLoss(x1).mean),
    agree: { within: 2 },
    tag: "from memory",
    note: "exact: 50, 150, 2550",
  },
  {
    figure: "their u",
    source: "supplement 1",
    theirs: ["50", "112", "502"],
    ours: () => [0, 0.01, 0.05].map((x1) => comparisonLoss(x1).sd),
    agree: { within: 3 },
    tag: "from memory",
    note: "exact: 50, 111.8, 502.5",
  },
  {
    figure: "the shortest 95 % interval at 0 and at 0.010: high ends",
    source: "supplement 1",
    theirs: ["150", "367"],
    ours: () => [0, 0.01].map((x1) => shortest(comparisonLoss(x1), 0.95)[1]),
    agree: { within: 3 },
    tag: "from memory",
  },
  {
    figure: "thermal expansion of a copper bar, per kelvin, and its u",
    source: "tn 1900",
    theirs: ["1.7266e-5", "1.76e-6"],
    ours: () => [expansion().mean / 1e6, expansion().sd / 1e6],
    agree: { within: 1e-8 },
    tag: "read",
  },
  {
    figure: "logarithm of an even spread: value and u",
    source: "npl",
    theirs: ["−0.665", "0.606"],
    ours: () => [logarithm().mean, logarithm().sd],
    tag: "read",
  },
  {
    figure: "its shortest 95 % interval, exactly",
    source: "npl",
    theirs: ["−1.89712", "0.09531"],
    ours: () => shortest(logarithm(), 0.95),
    agree: { within: 2e-4 },
    tag: "by hand",
    note: "printed −1.895 and 0.095",
  },
  {
    figure: "weighing by difference: mol/L, and its u",
    source: "eurachem",
    theirs: ["0.102136", "0.0001005"],
    ours: () => [hydroxide().mean, hydroxide().sd],
    agree: { within: 1e-6 },
    tag: "from memory",
    note: "figures read; four inputs from memory",
  },
  {
    figure: "a standard in a flask, mg/L",
    source: "eurachem",
    theirs: ["1002.70"],
    ours: () => [flask().mean],
    tag: "read",
  },
  {
    figure: "its u",
    source: "eurachem",
    theirs: ["0.8352"],
    ours: () => [flask().sd],
    agree: { within: 0.008 },
    tag: "read",
  },
  {
    figure: "sum of four, normal and even: 95 %, ±",
    source: "supplement 1",
    theirs: ["3.92", "3.88"],
    ours: () => [four([1, 1, 1, 1], false).high, four([1, 1, 1, 1], true).high],
    agree: { within: 0.05 },
    tag: "read",
  },
  {
    figure: "sum of four, one ten times as wide: 95 %, ±",
    source: "supplement 1",
    theirs: ["17.0"],
    ours: () => [four([1, 1, 1, 10], true).high],
    agree: { within: 0.1 },
    tag: "from memory",
  },
  {
    figure: "rounding to the ±",
    source: "pdg",
    theirs: ["0.83 ± 0.12", "0.8 ± 0.4"],
    ours: () => [printedWith(0.827, 0.119), printedWith(0.827, 0.367)],
    tag: "from memory",
    note: "the rule of 354 and 949 read, the review's own example from memory",
  },
];
