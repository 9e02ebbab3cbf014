// The public combine and spread against worked examples of the GUM (JCGM 100:2008), its Supplement 1 (JCGM 101:2008) and
// others. 65,536 draws: a tolerance is half the last digit printed, or what draws scatter by.

import { combine, printFigure, spread } from "../../lib/index.ts";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";
import {
  comparisonLoss,
  expansion,
  flask,
  gaugeBlock,
  gaugeBlockByDraws,
  hydroxide,
  impedance,
  logarithm,
  massStandard,
  partOf,
  shortest,
  sumOfFour,
} from "./gum-cases.ts";
import { thermometer } from "./gum-thermometer.ts";
import type { Published } from "./published.ts";

const parts = ["standard", "difference", "unlike", "gradient"];
const printedWith = (value: number, half: number): string =>
  printFigure({ value, low: value - half, high: value + half }).text;
const four = (us: readonly number[], even: boolean) =>
  sumOfFour(us.map((u) => (even ? { mean: 0, halfWidth: u * Math.sqrt(3) } : { mean: 0, sd: u })));

export const uncertaintyRows: readonly Published[] = [
  {
    figure: "gauge block: nm past 50 mm",
    source: "gum",
    theirs: ["838"],
    ours: () => [gaugeBlock().mean],
    tag: "read",
  },
  {
    figure: "its u with the second-order terms",
    source: "gum",
    theirs: ["34"],
    ours: () => [gaugeBlock().sd],
    tag: "read",
  },
  {
    figure: "its four parts, nm",
    source: "gum",
    theirs: ["25", "9.7", "2.9", "16.6"],
    ours: () => parts.map((id) => partOf(gaugeBlock(), id)),
    agree: { within: 0.1 },
    tag: "read",
  },
  {
    figure: "its u by the first order",
    source: "gum",
    theirs: ["32"],
    ours: () => [Math.hypot(...parts.map((id) => partOf(gaugeBlock(), id)))],
    tag: "read",
  },
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
    figure: "voltage, current, phase: u of the means",
    source: "gum h2",
    theirs: ["0.0032", "9.5e-6", "7.5e-4"],
    ours: () => impedance().u,
    tag: "read",
  },
  {
    figure: "their correlations",
    source: "gum h2",
    theirs: ["−0.36", "0.86", "−0.65"],
    ours: () => {
      const { correlation } = impedance();
      return [correlation(0, 1), correlation(0, 2), correlation(1, 2)];
    },
    tag: "read",
  },
  {
    figure: "resistance, reactance, impedance, Ω",
    source: "gum h2",
    theirs: ["127.732", "219.847", "254.260"],
    ours: () => [impedance().R.mean, impedance().X.mean, impedance().Z.mean],
    agree: { within: 0.001 },
    tag: "read",
  },
  {
    figure: "their u, Ω",
    source: "gum h2",
    theirs: ["0.071", "0.295", "0.236"],
    ours: () => [impedance().R.sd, impedance().X.sd, impedance().Z.sd],
    agree: { within: 0.0015 },
    tag: "read",
  },
  {
    figure: "how they move together",
    source: "gum h2",
    theirs: ["−0.588", "−0.485", "0.993"],
    ours: () => {
      const { R, X, Z, together } = impedance();
      return [together(R, X), together(R, Z), together(X, Z)];
    },
    agree: { within: 0.01 },
    tag: "read",
  },
  {
    figure: "thermometer: two coefficients of a straight line, °C",
    source: "gum h3",
    theirs: ["−0.1712", "0.00218"],
    ours: () => fitPolynomial(thermometer.t, thermometer.b, 1).coefficients,
    tag: "from memory",
    note: "its eleven readings read",
  },
  {
    figure: "their u, correlation and the scatter",
    source: "gum h3",
    theirs: ["0.0029", "0.00067", "−0.930", "0.0035"],
    ours: () => {
      const { standardErrors: u, covariance, residualSd } = fitPolynomial(thermometer.t, thermometer.b, 1);
      return [u[0]!, u[1]!, covariance[0]![1]! / (u[0]! * u[1]!), residualSd];
    },
    tag: "from memory",
    note: "readings read",
  },
  {
    figure: "the correction at 30 °C and its u",
    source: "gum h3",
    theirs: ["−0.1494", "0.0041"],
    ours: () => {
      const { coefficients: y, covariance: v } = fitPolynomial(thermometer.t, thermometer.b, 1);
      return [y[0]! + 10 * y[1]!, Math.sqrt(v[0]![0]! + 20 * v[0]![1]! + 100 * v[1]![1]!)];
    },
    tag: "from memory",
    note: "readings read",
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
    figure: "t for 95 % of a source with two degrees of freedom",
    source: "gum",
    theirs: ["4.30"],
    ours: () => [combine(({ x }) => x, { x: spread({ mean: 0, sd: 1, df: 2 }) }).high],
    agree: { within: 0.02 },
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
