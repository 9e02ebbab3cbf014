// The public combine and spread against worked examples of the GUM (JCGM 100:2008). 65,536 draws: a tolerance is half the
// last digit printed, or what draws scatter by.

import { combine, spread } from "../../lib/index.ts";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";
import { mean, sampleStandardDeviation } from "../../lib/numbers/summary.ts";
import { gaugeBlock, impedance, partOf } from "./gum-cases.ts";
import { thermometer } from "./gum-thermometer.ts";
import type { Published } from "./published.ts";

const daily = [172, 116, 13, 144, 106, 31, 60, 125, 163, 41].map((millionths) => 10 + millionths / 1e6);
const parts = ["standard", "difference", "unlike", "gradient"];

export const gumRows: readonly Published[] = [
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
    figure: "ten daily means of a voltage: mean, V; deviation, µV",
    source: "gum h5",
    theirs: ["10.000097", "57"],
    ours: () => [mean(daily), 1e6 * sampleStandardDeviation(daily)],
    tag: "read",
  },
  {
    figure: "ends of a normal source at 95 and 99 %, of a t with seven degrees at 95 %",
    source: "abramowitz",
    theirs: ["1.95996", "2.57583", "2.365"],
    ours: () => {
      const normal = combine(({ x }) => x, { x: spread({ mean: 0, sd: 1 }) }, { draws: 65_536 });
      const t = combine(({ x }) => x, { x: spread({ mean: 0, sd: 1, df: 7 }) }, { draws: 65_536 });
      return [normal.high, normal.quantile(0.995), t.high];
    },
    agree: { within: 1e-3 },
    tag: "from memory",
    note: "drawn",
  },
  {
    figure: "t for 95 % of a source with two degrees of freedom",
    source: "gum",
    theirs: ["4.30"],
    ours: () => [combine(({ x }) => x, { x: spread({ mean: 0, sd: 1, df: 2 }) }).high],
    agree: { within: 0.02 },
    tag: "from memory",
  },
];
